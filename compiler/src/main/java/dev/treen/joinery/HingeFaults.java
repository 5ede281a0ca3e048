package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Side;
import dev.treen.source.Span;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is to be said of hinges (rules of the trade J-20). */
final class HingeFaults {
    private final HingeSizes sizes;
    private final HingePlace place;
    private final Joint joint;
    private final LengthFormat format;

    HingeFaults(HingeSizes sizes, LengthFormat format) {
        this.sizes = sizes;
        this.place = sizes.place();
        this.joint = place.meeting().joint();
        this.format = format;
    }

    /** What makes the joint impossible. */
    Optional<Finding> impossible() {
        if (sizes.reach().value().signum() <= 0 || sizes.wide().value().signum() <= 0
                || sizes.knuckle().value().signum() <= 0) {
            return Optional.of(unfit("long", "A hinge has a length, a leaf and a knuckle").build());
        }
        boolean counted = joint.number("count")
                .filter(n -> n.doubleValue() < 1 || n.doubleValue() > 20
                        || n.doubleValue() != Math.rint(n.doubleValue()))
                .isEmpty();
        if (!counted) {
            return Optional.of(unfit("count", "A lid or door has 1 to 20 hinges in a line").build());
        }
        Length takes = sizes.reach().value().times(sizes.count()).plus(
                sizes.count() > 1 ? sizes.end().value().times(2) : Length.ZERO);
        if (takes.compareTo(place.line()) > 0) {
            return Optional.of(unfit("long", "The hinges are longer than the line they stand on")
                    .found("They and what is left at the ends take " + format.text(takes) + " of "
                            + format.text(place.line()) + ".")
                    .remedy(FastenerFaults.auto(joint, "long"))
                    .build());
        }
        return leaf().or(this::overhang);
    }

    private Optional<Finding> leaf() {
        if (sizes.lies().signum() <= 0) {
            return Optional.of(unfit("set", "The leaves do not lie on the wood")
                    .found("The pin stands out " + format.text(sizes.set().value()) + ", and a leaf is "
                            + format.text(sizes.wide().value()) + " wide from its middle.")
                    .build());
        }
        for (boolean hung : new boolean[]{true, false}) {
            Length deep = sizes.deep(hung).value();
            if (sizes.lies().compareTo(place.surface(hung)) >= 0 || deep.compareTo(place.behind(hung)) >= 0) {
                return Optional.of(unfit("wide", "The hinges are too large for `" + name(hung) + "`")
                        .found("A leaf lies on " + format.text(sizes.lies()) + " and is let in " + format.text(deep)
                                + "; the wood is " + format.text(place.surface(hung)) + " by "
                                + format.text(place.behind(hung)) + ".")
                        .remedy(FastenerFaults.auto(joint, "wide"))
                        .build());
            }
        }
        return Optional.empty();
    }

    /** Both faces must be flush where the knuckle stands. */
    private Optional<Finding> overhang() {
        Side pin = place.pin();
        for (boolean hung : new boolean[]{true, false}) {
            Length out = Length.ofMm(place.body(hung).coordinate(pin))
                    .minus(place.face())
                    .times(pin.sign());
            if (out.signum() > 0) {
                return Optional.of(Finding.of(JoineryFindings.MEETS_WRONGLY, joint.at(),
                        "`" + name(hung) + "` stands out where the hinges of `" + joint.left().name() + "` turn")
                        .found("It stands out " + format.text(out) + " on the side of the pin.")
                        .because("The knuckle lies in the face of both parts; name the flush side with `pin` if it is"
                                + " another.")
                        .remedy(Remedy.choice("lay both flush there: make `" + name(hung) + "` " + format.text(out)
                                + " smaller on that side, or move it by as much; or write another `pin`"))
                        .about(joint.left().name())
                        .about(joint.right().name())
                        .about(joint.name())
                        .build());
            }
        }
        return Optional.empty();
    }

    /** What can be done and should not be. */
    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        closing().ifPresent(findings::add);
        beside().ifPresent(findings::add);
        screws().ifPresent(findings::add);
        return findings;
    }

    /** Let in too deep or not deep enough for its knuckle. */
    private Optional<Finding> closing() {
        Length room = sizes.deepHung().value().plus(sizes.deepFixed().value()).plus(place.gap());
        Length open = sizes.knuckle().value().minus(room);
        Length fine = Length.nearest(Figures.standard().value("hinge.open"), Length.ofMm(1).dividedBy(10));
        if (open.signum() >= 0 && open.compareTo(fine) <= 0) {
            return Optional.empty();
        }
        boolean bound = open.signum() < 0;
        return Optional.of(said(JoineryFindings.HINGE_BINDS, "deep", bound
                ? "The hinges bind before `" + joint.left().name() + "` is shut"
                : "The hinges keep `" + joint.left().name() + "` from closing")
                .found("The knuckle is " + format.text(sizes.knuckle().value())
                        + " thick; the recesses and the gap make "
                        + format.text(room) + ".")
                .because(bound
                        ? "Leaves that lie too deep press the parts together at the pin and pull the screws out (Fairham,"
                                + " Woodwork Joints: hinge-bound; set the gauge a shade under)."
                        : "Half the knuckle goes into each part, or all of it into one (Noyes, Handwork in Wood).")
                .remedy(FastenerFaults.auto(joint, "deep"))
                .build());
    }

    private Optional<Finding> beside() {
        Length least = HingeRules.beside();
        for (boolean hung : new boolean[]{true, false}) {
            Length left = place.surface(hung).minus(sizes.lies());
            if (left.compareTo(least) < 0) {
                return Optional.of(said(JoineryFindings.HINGE_WIDE, "wide",
                        "The leaves leave hardly any wood beside them"
                                + " in `" + name(hung) + "`")
                        .found("A leaf lies on " + format.text(sizes.lies()) + " of "
                                + format.text(place.surface(hung)) + ".")
                        .because("What is left breaks out when the recess is chopped; 3 mm stay (common practice, no"
                                + " source).")
                        .remedy(FastenerFaults.auto(joint, "wide"))
                        .build());
            }
        }
        return Optional.empty();
    }

    private Optional<Finding> screws() {
        Length behind = Length.nearest(Figures.standard().value("screw.behind"), Length.ofMm(1));
        for (boolean hung : new boolean[]{true, false}) {
            Length deep = sizes.deep(hung).value();
            Length left = place.behind(hung).minus(deep).minus(sizes.screws().value());
            if (left.compareTo(behind) < 0) {
                boolean out = left.signum() <= 0;
                return Optional.of(said(
                        out ? JoineryFindings.LEAVES_WOOD : JoineryFindings.NEARLY_THROUGH, "screws",
                        "The screws of the hinges come " + (out ? "" : "nearly ") + "through `" + name(hung) + "`")
                        .found("They are " + format.text(sizes.screws().value()) + " long, let in "
                                + format.text(deep) + ", in wood of " + format.text(place.behind(hung)) + ".")
                        .because("2 mm of wood stay under their points (common practice, no source).")
                        .remedy(FastenerFaults.auto(joint, "screws"))
                        .build());
            }
        }
        return Optional.empty();
    }

    private String name(boolean hung) {
        return (hung ? joint.left() : joint.right()).name();
    }

    private Finding.Builder unfit(String property, String headline) {
        return said(JoineryFindings.DOES_NOT_FIT, property, headline);
    }

    private Finding.Builder said(FindingKind kind, String property, String headline) {
        Span at = joint.given(property).map(setting -> setting.valueAt()).orElse(joint.at());
        return Faults.said(joint, kind, at, headline);
    }

}

package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Keys in a mitre: thin slips of wood glued into saw cuts across the outer corner, once the mitre is glued (rules of the
 * trade J-16).
 *
 * @param thick of each
 * @param deep from the outer corner toward the inner one
 */
record MitreKeys(MitreCorner corner, int count, Measure thick, Measure deep) {
    /** The figure of how thick a key is; there where a mitre has keys. */
    static final String THICK = "key_thick";

    /** The square root of two, to a part in 10^11. */
    private static final BigFraction ROOT_2 = BigFraction.of(141_421_356_237L).divide(100_000_000_000L);

    /** A slip of veneer in the cut of the finest saw (common practice, no source). */
    private static final Length FINEST = Length.ofMm(3).dividedBy(10);

    static final List<PropertySchema> PROPERTIES = List.of(
            PropertySchema.optional(
                    "keys",
                    Shape.Plain.COUNT,
                    "none",
                    "How many keys are let into saw cuts across the outer corner, their grain across the joint."),
            PropertySchema.optional(
                    THICK,
                    new Shape.LengthOrAuto(),
                    "3 mm or 1/8 in, less in a thin corner",
                    "How thick a key is: the cut of a saw, or a third of a flat frame's thickness."),
            PropertySchema.optional(
                    "key_deep",
                    new Shape.LengthOrAuto(),
                    "half of the way from the outer corner to the inner one",
                    "How deep the keys go, from the outer corner; not over two thirds."));

    /** The keys that a mitre asks for, if any. */
    static Optional<MitreKeys> of(MitreCorner corner, Surroundings surroundings) {
        Joint joint = corner.meeting().joint();
        return joint.number("keys").map(DovetailSizes::whole).map(count -> {
            Measure high = corner.meeting().left().along(corner.free());
            Measure thick = joint.length(THICK).orElseGet(() -> usual(high, corner, count, surroundings));
            Measure deep = joint.length("key_deep").orElseGet(() -> half(corner, surroundings));
            return new MitreKeys(corner, count, thick, deep);
        });
    }

    private static Measure usual(Measure high, MitreCorner corner, int count, Surroundings surroundings) {
        Length saw = surroundings.inches() ? Length.ofInches(1, 8) : Length.ofMm(3);
        Length value = saw.min(corner.height().dividedBy(3L * Math.max(1, count)));
        return Ruled.of(THICK, value, "the cut of a saw, or a third of the wood", Ruled.PRACTICE, high);
    }

    private static Measure half(MitreCorner corner, Surroundings surroundings) {
        Length step = surroundings.markOfTheRule();
        Length value = Length.nearest(corner.cutMm() / 2, step).roundDownTo(step).max(step);
        return Ruled.at(corner.meeting().joint().at(), "key_deep", value,
                "half of the way from the outer corner to the inner one", Ruled.PRACTICE,
                List.of(corner.toLeft().how(), corner.toRight().how()));
    }

    List<Figure> figures() {
        Joint joint = corner.meeting().joint();
        return List.of(
                new Figure(THICK, thick, joint.given(THICK).isEmpty()),
                new Figure("key_deep", deep, joint.given("key_deep").isEmpty()));
    }

    /** A key before it is planed flush: as long, across the corner, as the slot is at its mouth. */
    LoosePiece piece() {
        return LoosePiece.of(LoosePiece.Kind.KEY, deep.value().times(2), deep.value(), thick.value(), count);
    }

    /** Where the lower face of a key lies along the edge; they stand evenly. */
    private Length from(int number) {
        return corner.low()
                .plus(corner.height().times(number + 1L).dividedBy(count + 1L))
                .minus(thick.value().dividedBy(2));
    }

    List<Cut> cuts() {
        BigFraction leg = deep.value().mm().multiply(ROOT_2);
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            var slot = corner.slot(leg, from(i).mm(), from(i).plus(thick.value()).mm());
            for (Meeting.Placed part : List.of(corner.meeting().left(), corner.meeting().right())) {
                cuts.add(new Cut.Carve(part.part().name(), slot, corner.meeting().origin()));
            }
        }
        return cuts;
    }

    private Remedy nothingBetter() {
        Joint joint = corner.meeting().joint();
        return count < 1
                ? Faults.setting(joint, "keys", "1", "take one key, or leave `keys` out")
                : Faults.setting(
                        joint, thick.value().signum() <= 0 ? THICK : "key_deep", "auto", "let Treen choose their size");
    }

    Optional<Finding> impossible(LengthFormat format) {
        if (count < 1 || thick.value().signum() <= 0 || deep.value().signum() <= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, count < 1 ? "keys" : THICK,
                    "The keys of this mitre are nothing")
                    .found("A whole number of keys is wanted, one or more, and some thickness and depth.")
                    .remedy(nothingBetter())
                    .build());
        }
        if (thick.value().times(count).compareTo(corner.height()) >= 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "keys", "The keys take all of the corner")
                    .found(count + " keys of " + format.text(thick.value()) + " in " + format.text(corner.height())
                            + ".")
                    .remedy(Faults.setting(corner.meeting().joint(), "keys", "1", "take one key"))
                    .build());
        }
        if (thick.value().compareTo(FINEST) < 0) {
            return Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "keys", "These keys are thinner than any saw cuts")
                    .found(count + " of them in " + format.text(corner.height()) + " are " + format.text(thick.value())
                            + " thick.")
                    .remedy(Faults.setting(corner.meeting().joint(), "keys", "2", "take two keys"))
                    .build());
        }
        double share = share();
        return share < 1 ? Optional.empty()
                : Optional.of(begun(JoineryFindings.DOES_NOT_FIT, "key_deep", "The keys come out at the inner corner")
                        .found("They are " + format.text(deep.value()) + " deep.")
                        .remedy(Faults.setting(corner.meeting().joint(), "key_deep", "auto",
                                "go half of the way: `key_deep auto`"))
                        .build());
    }

    /** How much of the way from the outer to the inner corner the keys take. */
    private double share() {
        double way = (corner.toLeft().value().toDoubleMm() + corner.toRight().value().toDoubleMm()) / Math.sqrt(2);
        return deep.value().toDoubleMm() / way;
    }

    Optional<Finding> weak() {
        return share() <= 2 / 3.0 + 1e-9
                ? Optional.empty()
                : Optional.of(begun(JoineryFindings.SPLINE_TOO_DEEP, "key_deep",
                        "The keys go nearly through the corner")
                        .found("They take " + Math.round(100 * share()) + " % of the way to the inner corner.")
                        .because(
                                "Over two thirds the mitre itself holds nothing any more (common practice, no source).")
                        .remedy(Faults.setting(corner.meeting().joint(), "key_deep", "auto",
                                "go half of the way: `key_deep auto`"))
                        .build());
    }

    private Finding.Builder begun(FindingKind kind, String property, String headline) {
        Joint joint = corner.meeting().joint();
        return Finding.of(kind, joint.given(property).map(Setting::valueAt).orElseGet(joint::at), headline)
                .about(joint.left().name())
                .about(joint.right().name())
                .about(joint.name());
    }

    /** Sawn and filled when the mitres are glued. */
    static Work work(List<MadeJoint> statement, List<String> names) {
        return new Work(
                Work.Stage.AFTER_GLUE,
                "Saw the slots across the glued corners, glue in the keys and plane them flush",
                names,
                List.of(),
                "fine saw or a jig that holds the corner at 45°, chisel, block plane",
                List.of(
                        new Work.GaugeSetting("key", Work.figure(statement, THICK)),
                        new Work.GaugeSetting("depth", Work.figure(statement, "key_deep"))),
                "the lower edge",
                "the keys' grain runs across the joint; they are planed inward from the corner",
                "Hold the work in a jig; keep hands out of the line of the saw.");
    }
}

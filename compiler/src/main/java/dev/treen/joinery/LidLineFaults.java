package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.finding.Severity;
import dev.treen.model.Joint;
import dev.treen.model.Part;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.source.Span;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What stands in the way of a saw that cuts a lid free, and lines that do not go round. */
final class LidLineFaults {
    /** Joints that run across the line by their nature: the walls' corners, which are laid out for it or can bear it. */
    private static final Set<String> CORNERS = Set.of("mitre", "spline", "butt", "rebate", "dovetail", "finger");

    private final SawLine line;
    private final Joint joint;
    private final Meeting meeting;
    private final Surroundings surroundings;
    private final LengthFormat format;
    private final Set<String> sawn = new HashSet<>();

    LidLineFaults(SawLine line, Surroundings surroundings) {
        this.line = line;
        this.meeting = line.meeting();
        this.joint = meeting.joint();
        this.surroundings = surroundings;
        this.format = surroundings.settings().format();
        surroundings.alike(meeting).forEach(each -> sawn.add(each.right().part().name()));
    }

    /** What makes the line impossible. */
    Optional<Finding> impossible() {
        Optional<String> wrong = line.tall().value().signum() <= 0 ? Optional.of(SawLine.TALL)
                : line.kerf().value().signum() <= 0 ? Optional.of(SawLine.KERF)
                        : line.dress().value().signum() < 0 ? Optional.of(SawLine.DRESS) : Optional.empty();
        if (wrong.isPresent()) {
            return Optional.of(said(JoineryFindings.DOES_NOT_FIT, at(wrong.get()), switch (wrong.get()) {
                case SawLine.TALL -> "The lid has no height";
                case SawLine.KERF -> "A saw without a kerf cuts nothing free";
                default -> "Less than nothing is planed off the rims";
            }).remedy(Faults.setting(joint, wrong.get(), "auto", "let Treen choose: `" + wrong.get() + " auto`"))
                    .build());
        }
        String wall = meeting.right().part().name();
        if (line.box().signum() <= 0) {
            Length high = meeting.right().along(line.axis()).value();
            return Optional.of(said(JoineryFindings.DOES_NOT_FIT, at(SawLine.TALL),
                    "The line leaves `" + wall + "` nothing below the lid")
                    .found("The lid takes " + format.text(line.tall().value()) + " and the saw and the planing "
                            + format.text(line.lost()) + ", of " + format.text(high) + ".")
                    .remedy(Faults.setting(joint, SawLine.TALL, "auto", "let Treen choose: `tall auto`"))
                    .build());
        }
        return uneven();
    }

    /** A wall whose edge lies elsewhere than that of the first one, so that the line would step. */
    private Optional<Finding> uneven() {
        return surroundings.alike(meeting).stream().findFirst()
                .flatMap(first -> SawLine.of(first, surroundings))
                .filter(first -> first.axis() != line.axis() || !first.low().equals(line.low())
                        || !first.high().equals(line.high()))
                .map(first -> said(JoineryFindings.DOES_NOT_FIT, joint.at(),
                        "The line does not go round: in `" + meeting.right().part().name()
                                + "` it lies elsewhere than in `" + first.meeting().right().part().name() + "`")
                        .found(format.text(line.low().minus(first.low()).abs()) + " lie between both.")
                        .because(
                                "It is gauged from the walls' edges, which have to lie in one plane; so must the kerf.")
                        .related(meeting.right().placing().span(), "`" + meeting.right().part().name() + "` lies here")
                        .remedy(Remedy.choice("make the walls end in one plane, and write `tall` and `kerf`"))
                        .build());
    }

    /** What can be sawn and should not be; what concerns the whole line is told {@code once}. */
    List<Finding> all(boolean once) {
        List<Finding> findings = new ArrayList<>();
        if (once) {
            leftOut().ifPresent(findings::add);
        }
        Set<String> told = new HashSet<>();
        for (Surroundings.Made made : surroundings.cuts(meeting.right().part())) {
            bounds(made.cut()).filter(box -> counts(made)).flatMap(box -> hit(made, box))
                    .filter(finding -> told.add(made.by().joint().name()))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    /** A wall that holds the panel and is not sawn. */
    private Optional<Finding> leftOut() {
        return surroundings.ofLeft(meeting.left().part()).stream()
                .filter(other -> other.joint().kind().equals(Groove.KIND))
                .filter(other -> !sawn.contains(other.right().part().name()))
                .findFirst()
                .map(other -> said(JoineryFindings.DOES_NOT_FIT, joint.at(),
                        "The line does not go round: `" + other.right().part().name() + "` is not sawn")
                        .found("`" + joint.left().name() + "` lies in its groove and goes with the lid.")
                        .because("A lid comes free when the saw has gone through every wall round its panel.")
                        .related(other.joint().at(), "held here")
                        .remedy(Remedy.choice("write `" + other.right().part().name() + "` into the line too"))
                        .build());
    }

    /** Whether a cut counts: not what is laid out for the line, nor the hinges that lie on it. */
    private boolean counts(Surroundings.Made made) {
        Joint other = made.by().joint();
        boolean hinges = other.kind().equals(Hinge.KIND) && other.left().is(meeting.left().part());
        boolean corner = CORNERS.contains(other.kind()) && sawn.contains(other.left().name())
                && sawn.contains(other.right().name()) && !key(made);
        return !hinges && !corner && !other.kind().equals(LidLine.KIND);
    }

    /** Whether it is a key sawn in across a mitre, which the line would halve. */
    private static boolean key(Surroundings.Made made) {
        return made.by().joint().kind().equals(Mitre.KIND) && !(made.cut() instanceof Cut.Slice);
    }

    private static Optional<Box> bounds(Cut cut) {
        return switch (cut) {
            case Cut.Hollow(String part, Box space, var origin) -> Optional.of(space);
            case Cut.Stopped stopped -> Optional.of(stopped.space());
            case Cut.Slice slice -> Optional.empty();
            case Cut.Carve(String part, Convex body, var origin) -> Optional.of(body.bounds());
            case Cut.RoundHole(String part, Convex rod, var origin) -> Optional.of(rod.bounds());
            case Cut.Bore(String part, Convex body, var origin) -> Optional.of(body.bounds());
        };
    }

    private Optional<Finding> hit(Surroundings.Made made, Box box) {
        Optional<Box> wood = box.overlap(surroundings.grown(meeting.right()));
        if (wood.isEmpty()) {
            return Optional.empty();
        }
        Length low = Length.ofMm(wood.get().min().get(line.axis()));
        Length high = Length.ofMm(wood.get().max().get(line.axis()));
        boolean through = line.slice().meets(new BoxCorner.Heights(low, high));
        Length near = low.minus(line.high()).max(line.low().minus(high));
        Length least = Length.nearest(Figures.standard().value("lid.line.groove"), Length.ofMm(1));
        boolean groove = made.by().joint().kind().equals(Groove.KIND);
        if (!through && !(groove && near.compareTo(least) < 0)) {
            return Optional.empty();
        }
        return Optional.of(finding(made.by().joint(), through, near, least, made.by().joint().left()));
    }

    private Finding finding(Joint other, boolean through, Length near, Length least, Part mate) {
        String wall = meeting.right().part().name();
        String with = mate.is(meeting.right().part()) ? other.right().name() : mate.name();
        boolean steel = Set.of("screw", "nail", Hinge.KIND).contains(other.kind());
        String what = other.kind().replace('_', ' ');
        Finding.Builder finding = said(JoineryFindings.LINE_CUTS, at(SawLine.TALL), through
                ? "The line of the lid runs through the " + what + " of `" + with + "` in `" + wall + "`"
                : "The line of the lid runs close to the " + what + " of `" + with + "` in `" + wall + "`")
                .because(steel
                        ? "A saw that meets steel loses its teeth, and at a machine throws them."
                        : through
                                ? "What lies there is sawn apart and holds nothing any more."
                                : "The rim above a groove breaks away when it is planed or lifted; 4 mm stay (common"
                                        + " practice, no source).")
                .related(other.at(), "the joint in the way")
                .remedy(Remedy.choice("move the line with `tall`, or the joint"));
        if (!through) {
            finding.severity(Severity.WARNING)
                    .found(format.text(near.max(Length.ZERO)) + " of wood stay between them; " + format.text(least)
                            + " are wanted.");
        }
        return finding.build();
    }

    private Span at(String property) {
        return joint.given(property).map(setting -> setting.valueAt()).orElse(joint.at());
    }

    private Finding.Builder said(FindingKind kind, Span at, String headline) {
        return Faults.said(joint, kind, at, headline);
    }
}

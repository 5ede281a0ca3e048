package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Origin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A dovetailed corner: the left part has the tails, the right one the pins (rules of the trade J-11, J-12). Its slopes are
 * exact where they are written as 1:n.
 */
final class Dovetail implements JointKind {
    static final String KIND = "dovetail";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "Tails on the end of the left part hold between pins on the right one: it cannot be pulled apart along the"
                    + " tails, glue or none. Give the tails to the part that is pulled: the side of a drawer.",
            "joint dovetail left to front, right to front { tails 3; slope 1:8 }",
            List.of(
                    PropertySchema.optional(
                            "tails",
                            Shape.Plain.COUNT,
                            "tails about two and a half times as wide as the left part is thick, none over 44 mm",
                            "How many tails there are."),
                    PropertySchema.optional(
                            "slope",
                            Shape.Plain.ANGLE,
                            "1:8, in softwood 1:6",
                            "How far the tails spread, as `1:8` or an angle."),
                    PropertySchema.optional(
                            "pin",
                            new Shape.LengthOrAuto(),
                            "a third of the left part's thickness, not under 3 mm",
                            "How thick a pin is where it is thinnest, at its outer face."),
                    PropertySchema.optional(
                            "half_pin",
                            new Shape.LengthOrAuto(),
                            "as a pin, not under 4 mm",
                            "How thick the pins at both edges are where they are thinnest."),
                    PropertySchema.optional(
                            "cut",
                            new Shape.OneOf(List.of("through", "lapped")),
                            "through",
                            "Whether the tails come through the right part, or stop behind a lap of it as in the front"
                                    + " of a drawer."),
                    PropertySchema.optional(
                            "lap",
                            new Shape.LengthOrAuto(),
                            "none; lapped: 6 mm, in thin wood a third of it",
                            "What the right part keeps before the tails."),
                    PropertySchema.optional(
                            "mitre",
                            Shape.Plain.LENGTH,
                            "none",
                            "How far down from the upper edge the corner is mitred instead: it hides a groove or a"
                                    + " moulding.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<BoxCorner> corner = BoxCorner.of(meeting);
        if (corner.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "Dovetails join the ends of two parts at a corner, written inside to inside: their ends meet along"
                            + " its inner edge."));
        }
        DovetailSizes sizes = DovetailSizes.of(corner.get(), meeting.joint(), surroundings);
        DovetailFaults faults = new DovetailFaults(meeting.joint(), sizes, surroundings.settings());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        return Effect.of(additions(sizes), sizes.figures(meeting.joint()), cuts(sizes, meeting.origin()))
                .saying(faults.weak());
    }

    private static List<Addition> additions(DovetailSizes sizes) {
        BoxCorner corner = sizes.corner();
        return List.of(
                new Addition(
                        corner.first().part().name(),
                        corner.outFirst(),
                        Mitre.named(sizes.deep(), "corner with " + corner.second().part().name())),
                new Addition(
                        corner.second().part().name(),
                        corner.outSecond(),
                        Mitre.named(corner.thicknessOfFirst(), "corner with " + corner.first().part().name())));
    }

    /** Sockets for the pins out of the first part, sockets for the tails out of the second. */
    private static List<Cut> cuts(DovetailSizes sizes, Origin origin) {
        BoxCorner corner = sizes.corner();
        String tailed = corner.first().part().name();
        String pinned = corner.second().part().name();
        Length deep = sizes.deep().value();
        Length lean = sizes.lean();
        List<Cut> cuts = new ArrayList<>();
        List<BoxCorner.Heights> pins = sizes.pins();
        for (int i = 0; i < pins.size(); i++) {
            BoxCorner.Heights pin = pins.get(i);
            // The outer pins are straight at the edges of the wall.
            BoxCorner.Heights inside = new BoxCorner.Heights(
                    i == 0 ? pin.from() : pin.from().minus(lean),
                    i == pins.size() - 1 ? pin.to() : pin.to().plus(lean));
            cuts.add(new Cut.Carve(tailed, corner.wedge(deep, inside, pin, origin), origin));
        }
        for (BoxCorner.Heights tail : sizes.ends()) {
            cuts.add(new Cut.Carve(pinned, corner.wedge(deep, tail.in(lean), tail, origin), origin));
        }
        if (sizes.mitre().value().signum() > 0) {
            cuts.add(new Cut.Carve(tailed, corner.half(false, sizes.top(), corner.high(), origin), origin));
            cuts.add(new Cut.Carve(pinned, corner.half(true, sizes.top(), corner.high(), origin), origin));
        }
        return cuts;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> tailed = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> pinned = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        MadeJoint first = statement.getFirst();
        boolean lapped = first.figure("lap").isPresent();
        Work.GaugeSetting tails = new Work.GaugeSetting("base line of the tails", Work.figure(statement, "deep"));
        Work.GaugeSetting pins = new Work.GaugeSetting(
                "base line of the pins", BoxCorner.of(first.meeting()).orElseThrow().thicknessOfFirst().value());
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Gauge, saw and chop the tails",
                        tailed,
                        List.of(),
                        "cutting gauge, dovetail square, fine saw, chisel",
                        List.of(tails),
                        "the end, shot square; the tails square across it",
                        "the saw cuts are square across the end: only the tails' slope may be off",
                        "Chop from both faces, the work clamped and both hands behind the edge."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Scribe the pins from the tails as cut, saw them in the waste" + (lapped
                                ? " as far as the lap lets the saw, and chop the sockets"
                                : " and chop between them"),
                        pinned,
                        tailed,
                        "knife, fine saw, chisel",
                        lapped
                                ? List.of(pins, new Work.GaugeSetting("lap", Work.figure(statement, "lap")))
                                : List.of(pins),
                        "the inside face; each corner marked with its own number",
                        "it goes together once, with light taps, and closes at the base line",
                        "Pare away from the hand that holds the work."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the slopes of the tails and tap the dovetails home",
                        Rebate.names(statement),
                        List.of(),
                        "glue brush, mallet, cauls cut out for the pins",
                        List.of(),
                        "",
                        "diagonals equal while the glue is wet",
                        "Read the glue's label."));
    }
}

package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.JointSchema;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.solid.Round;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A butt joint with dowels in it: rods glued into holes in both parts (rules of the trade J-15). */
final class Dowel implements JointKind {
    private static final JointSchema SCHEMA = JointSchema.to(
            "dowel",
            "Rods glued into holes in both parts hold a butted end or edge and keep it in its place. The holes are bored"
                    + " a little deeper than the dowels are long, and the dowels are grooved, so that air and glue get out.",
            "joint dowel rail to stile_left, rail to stile_right { count 2; thick 8 }",
            List.of(
                    PropertySchema.optional(
                            "count",
                            Shape.Plain.COUNT,
                            "two or more: at an end 75 mm apart, along an edge 240 mm",
                            "How many dowels there are."),
                    PropertySchema.optional(
                            "thick",
                            new Shape.LengthOrAuto(),
                            "the thickest usual rod up to half the wood",
                            "How thick the dowels are."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "half the dowel and 1.5 mm; in thin wood two thirds of it",
                            "How deep the holes in the right part are bored."),
                    PropertySchema.optional(
                            "long",
                            new Shape.LengthOrAuto(),
                            "30 mm, less where the wood is thin",
                            "How long the dowels are: 3 mm shorter than both holes."),
                    PropertySchema.optional(
                            "every",
                            new Shape.LengthOrAuto(),
                            "75 mm at an end, 240 mm along an edge",
                            "How far apart the dowels are at the most."),
                    Butt.THROUGH));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<DowelSizes.Seat> seat = DowelSizes.Seat.of(meeting);
        if (seat.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "Dowels want the end or edge of one part at a side of the other."));
        }
        for (String name : List.of("thick", "deep", "long", "every")) {
            Optional<Effect> nothing = meeting.joint().length(name)
                    .flatMap(size -> Faults.ofNoSize(meeting.joint(), name.equals("every") ? "spaced" : name, size));
            if (nothing.isPresent()) {
                return nothing.get();
            }
        }
        DowelSizes sizes = DowelSizes.of(seat.get(), surroundings);
        DowelFaults faults = new DowelFaults(sizes, surroundings.settings().format());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        Optional<Butt.Cover> cover = meeting.face().isPresent() ? Optional.empty() : Butt.cover(meeting);
        List<Figure> figures = new ArrayList<>(sizes.figures());
        cover.ifPresent(each -> figures.add(each.figure()));
        return Effect.of(cover.map(each -> List.of(each.addition())).orElse(List.of()), figures, holes(meeting, sizes))
                .saying(faults.weak().stream().toList())
                .taking(Hardware.Kind.DOWEL, sizes.count(), sizes.thick(), sizes.dowel())
                .taking(List.of(LoosePiece.of(LoosePiece.Kind.DOWEL, sizes.dowel().value(), sizes.thick().value(),
                        sizes.thick().value(), sizes.count())));
    }

    private static List<Cut> holes(Meeting meeting, DowelSizes sizes) {
        Side face = sizes.seat().face();
        BigFraction radius = sizes.thick().value().dividedBy(2).mm();
        List<Cut> holes = new ArrayList<>();
        for (Vec3 middle : sizes.middles()) {
            holes.add(new Cut.RoundHole(
                    meeting.right().part().name(),
                    Round.rod(middle, face, sizes.deep().value().mm(), radius, meeting.joint().name()),
                    meeting.origin()));
            holes.add(new Cut.RoundHole(
                    meeting.left().part().name(),
                    Round.rod(middle, face.opposite(), sizes.deepLeft().value().mm(), radius, meeting.joint().name()),
                    meeting.origin()));
        }
        return holes;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> parts = Rebate.names(statement);
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Mark out and bore for the dowels, both parts of each joint from the same face and edge",
                        parts,
                        List.of(),
                        "gauge, dowelling jig or centre points, bit with a stop",
                        List.of(
                                new Work.GaugeSetting("bit", Work.figure(statement, "thick")),
                                new Work.GaugeSetting("stop, right", Work.figure(statement, "deep")),
                                new Work.GaugeSetting("stop, left", Work.figure(statement, "deep_left"))),
                        "the face side; ends shot square first",
                        "a dowel goes in by hand; the joint closes dry, with the dowels of "
                                + "a size that can be drawn out again",
                        "Clamp the work; keep hands clear of the bit."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the dowels in one part, then the joints, and clamp along the dowels",
                        parts,
                        List.of(),
                        "glue brush, mallet, clamps",
                        List.of(new Work.GaugeSetting("dowel", Work.figure(statement, "long"))),
                        "",
                        "closed all round, diagonals equal",
                        "Groove the dowels: glue shut in a hole can split the wood."));
    }
}

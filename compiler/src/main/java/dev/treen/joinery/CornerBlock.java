package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A block glued into the inside corner of two parts, to stiffen it (rules of the trade J-01, J-g and M-12). */
public final class CornerBlock implements JointKind {
    /** The word of the language. */
    public static final String KIND = "corner_block";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The left part, a block, is glued into the corner of the two right ones, long grain on both: it stiffens a corner"
                    + " that holds little by itself. Screw it too, with `screw`, where it bears a load.",
            "joint corner_block block into apron, leg { bevel 12 }",
            List.of(PropertySchema.optional(
                    "bevel",
                    Shape.Plain.LENGTH,
                    "0: it stays square",
                    "How much is taken off the edge that looks into the room, on both its sides.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        List<Meeting> all = surroundings.alike(meeting);
        List<Side> faces = all.stream().flatMap(other -> other.face().stream()).distinct().toList();
        if (face.isEmpty() || faces.size() != 2 || faces.get(0).axis() == faces.get(1).axis()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "A corner block lies with two of its faces, square to each other, on two parts of one joint."));
        }
        Joint joint = meeting.joint();
        Measure bevel = joint.length("bevel").orElseGet(() -> Measure.written("bevel", Length.ZERO, joint.at()));
        Box box = meeting.left().box();
        Length least = Length.ofMm(box.extent(faces.get(0).axis())).min(Length.ofMm(box.extent(faces.get(1).axis())));
        if (bevel.value().compareTo(least) >= 0) {
            return Effect.only(Faults.said(joint, JoineryFindings.DOES_NOT_FIT, bevel.at(),
                    "The bevel leaves nothing of a face of `" + joint.left().name() + "`")
                    .found("Its smaller face is " + surroundings.settings().format().text(least) + " wide.")
                    .build());
        }
        List<Cut> cuts = new ArrayList<>();
        List<Figure> figures = new ArrayList<>();
        boolean first = all.getFirst().joint().right().is(joint.right());
        if (bevel.value().signum() > 0) {
            figures.add(new Figure("bevel", bevel, false));
        }
        if (first && bevel.value().signum() > 0) {
            cuts.add(new Cut.Carve(
                    joint.left().name(), corner(box, faces, bevel.value(), meeting), meeting.origin()));
        }
        return Effect.of(List.of(), figures, cuts).saying(endGrain(meeting, face.get()).stream().toList());
    }

    /** What is taken off the edge away from both faces. */
    private static Convex corner(Box box, List<Side> faces, Length bevel, Meeting meeting) {
        Side one = faces.get(0).opposite();
        Side two = faces.get(1).opposite();
        Axis along = Meeting.third(one.axis(), two.axis());
        Vec3 edge = Vec3.ZERO.with(along, box.min().get(along))
                .with(one.axis(), box.coordinate(one))
                .with(two.axis(), box.coordinate(two));
        return Convex.prism(
                List.of(
                        edge,
                        edge.minus(Vec3.along(one.axis(), bevel.times(one.sign()))),
                        edge.minus(Vec3.along(two.axis(), bevel.times(two.sign())))),
                Vec3.along(along, box.extent(along)),
                meeting.origin());
    }

    /** End grain holds no glue. */
    private static Optional<Finding> endGrain(Meeting meeting, Side face) {
        Joint joint = meeting.joint();
        boolean ofBlock = meeting.left().measure(face.axis()) == 0;
        boolean ofOther = meeting.right().measure(face.axis()) == 0;
        if (!ofBlock && !ofOther) {
            return Optional.empty();
        }
        String part = (ofBlock ? joint.left() : joint.right()).name();
        return Optional.of(Faults.said(
                joint, JoineryFindings.BLOCK_END_GRAIN, joint.at(),
                "`" + joint.left().name() + "` is glued to `" + joint.right().name() + "` on end grain")
                .found("The end of `" + part + "` lies there.")
                .because(
                        "Glue hardly holds on end grain: a quarter of the wood's strength at best (Wood Handbook ch. 10).")
                .remedy(Remedy.choice("turn the grain of the block along the corner, or screw it"))
                .build());
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> blocks = Fastening.named(statement, true);
        boolean bevelled = Work.figure(statement, "bevel").signum() > 0;
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Plane the two faces of the blocks that are glued square to each other"
                                + (bevelled ? ", and bevel the edge across from them" : ""),
                        blocks,
                        List.of(),
                        "plane, square",
                        Fastening.settings(statement, "bevel"),
                        "the corner they are to fill",
                        "no light between block and corner",
                        "Plane a long strip and saw it up: short pieces are not held by hand at a machine."),
                new Work(
                        Work.Stage.GLUE,
                        "Rub the blocks into their corners with glue until they hold",
                        Rebate.names(statement),
                        List.of(),
                        "glue brush",
                        List.of(),
                        "",
                        "they stay where they are and are not pressed askew",
                        "Read the glue's label."));
    }
}

package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A mitre: both parts run to the outer corner and are cut along its diagonal. Written inside to inside, each gains the
 * other's thickness at that end (rules of the trade J-02: outside = inside + 2t).
 */
final class Mitre implements JointKind {
    static final String KIND = "mitre";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "Two ends meet along the diagonal of the corner, so that no end grain shows. Near end grain the glue is"
                    + " weak: good for small boxes. With a loose tongue in it, it is written as a `spline`.",
            "joint mitre front to left, left to back { keys 2 }",
            MitreKeys.PROPERTIES);

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<MitreCorner> found = MitreCorner.of(meeting);
        if (found.isEmpty()) {
            return Effect.only(wrong(meeting));
        }
        MitreCorner corner = found.get();
        Optional<MitreKeys> keys = MitreKeys.of(corner, surroundings);
        Optional<Finding> impossible = keys.flatMap(each -> each.impossible(surroundings.settings().format()));
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        List<Cut> cuts = new ArrayList<>(corner.slices());
        keys.ifPresent(each -> cuts.addAll(each.cuts()));
        return Effect.of(corner.additions(), keys.map(MitreKeys::figures).orElse(List.of()), cuts)
                .saying(keys.flatMap(MitreKeys::weak).stream().toList())
                .taking(keys.map(MitreKeys::piece).stream().toList());
    }

    static Measure named(Measure measure, String label) {
        return new Measure(measure.value(), measure.at(), measure.how().named(label));
    }

    static Finding wrong(Meeting meeting) {
        Joint joint = meeting.joint();
        return Faults.meetsWrongly(
                meeting,
                "`" + joint.left().name() + "` and `" + joint.right().name()
                        + "` do not meet at a corner of their ends",
                "A mitre is written inside to inside: the ends of both parts meet along the inner edge of the"
                        + " corner, and each is lengthened by the other's thickness.");
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        Set<String> parts = new LinkedHashSet<>();
        statement.forEach(made -> {
            parts.add(made.joint().left().name());
            parts.add(made.joint().right().name());
        });
        List<String> names = new ArrayList<>(parts);
        Work cut = new Work(
                Work.Stage.AFTER_LENGTH,
                "Saw and shoot the mitres, opposite parts together so that they come out equal",
                names,
                List.of(),
                "mitre box and mitre shooting board, or a stop",
                List.of(),
                "the inside face, at 45°",
                "two mitres held together make a square corner; opposite parts are equal in length",
                "Keep fingers behind the iron; a short part is held in a jig, never by hand alone.");
        Work glue = new Work(
                Work.Stage.GLUE,
                "Glue the mitres",
                names,
                List.of(),
                "band clamp or cord, glue brush",
                List.of(),
                "",
                "diagonals equal while the glue is wet",
                "Read the glue's label; wipe squeeze-out before it sets.");
        boolean keyed = statement.getFirst().figure(MitreKeys.THICK).isPresent();
        return keyed
                ? List.of(cut, LoosePiece.making(statement, LoosePiece.Kind.KEY), glue,
                        MitreKeys.work(statement, names))
                : List.of(cut, glue);
    }

}

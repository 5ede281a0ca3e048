package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Plane;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A mitre: both parts run to the outer corner and are cut along its diagonal. Written inside to inside, each gains the
 * other's thickness at that end (rules of the trade J-02: outside = inside + 2t).
 */
final class Mitre implements JointKind {
    static final String KIND = "mitre";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "Two ends meet along the diagonal of the corner, so that no end grain shows. Near end grain the glue is"
                    + " weak: good for small boxes.",
            "joint mitre front to left, left to back",
            List.of());

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> left = meeting.endOfLeft();
        Optional<Side> right = meeting.endOfRight();
        if (left.isEmpty() || right.isEmpty() || left.get().axis() == right.get().axis()) {
            return Effect.only(wrong(meeting));
        }
        Measure toLeft = meeting.right().along(left.get().axis());
        Measure toRight = meeting.left().along(right.get().axis());
        String corner = "corner with ";
        List<Addition> additions = List.of(
                new Addition(
                        meeting.left().part().name(),
                        left.get(),
                        named(toLeft, corner + meeting.right().part().name())),
                new Addition(
                        meeting.right().part().name(),
                        right.get(),
                        named(toRight, corner + meeting.left().part().name())));
        return Effect.of(additions, List.of(), cuts(meeting, left.get(), right.get(), toLeft, toRight));
    }

    static Measure named(Measure measure, String label) {
        return new Measure(measure.value(), measure.at(), measure.how().named(label));
    }

    /** The plane through the inner and the outer edge of the corner; each part keeps its own side. */
    private static List<Cut> cuts(Meeting meeting, Side left, Side right, Measure out, Measure across) {
        BoxContact.Edge edge = meeting.edge().orElseThrow();
        Vec3 inner = edge.from();
        Vec3 outward = Vec3.along(left.axis(), signed(out, left)).plus(Vec3.along(right.axis(), signed(across, right)));
        Axis free = edge.along();
        Vec3 normal = Vec3.along(free, BigFraction.ONE).cross(outward);
        Plane plane = Plane.through(inner, normal);
        Vec3 ofLeft = meeting.left().box().centre();
        Plane keepLeft = plane.side(ofLeft) <= 0 ? plane : plane.flip();
        return List.of(
                new Cut.Slice(meeting.left().part().name(), keepLeft, meeting.origin()),
                new Cut.Slice(meeting.right().part().name(), keepLeft.flip(), meeting.origin()));
    }

    private static BigFraction signed(Measure measure, Side side) {
        return side.sign() > 0 ? measure.value().mm() : measure.value().mm().negate();
    }

    private static Finding wrong(Meeting meeting) {
        Joint joint = meeting.joint();
        return Finding.of(
                JoineryFindings.MEETS_WRONGLY,
                joint.at(),
                "`" + joint.left().name() + "` and `" + joint.right().name()
                        + "` do not meet at a corner of their ends")
                .related(meeting.left().placing().span(), "`" + joint.left().name() + "` lies here")
                .related(meeting.right().placing().span(), "`" + joint.right().name() + "` lies here")
                .because("A mitre is written inside to inside: the ends of both parts meet along the inner edge of the"
                        + " corner, and each is lengthened by the other's thickness.")
                .about(joint.left().name())
                .about(joint.right().name())
                .build();
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
                "Glue the mitres and nothing else: panels stay dry in their grooves",
                names,
                List.of(),
                "band clamp or cord, glue brush",
                List.of(),
                "",
                "diagonals equal while the glue is wet",
                "Read the glue's label; wipe squeeze-out before it sets.");
        return List.of(cut, glue);
    }

}

package dev.treen.joinery;

import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.solid.Side;
import java.util.List;
import java.util.Optional;

/** A butt joint: one part runs through and covers the end of the other (rules of the trade J-01). */
final class Butt implements JointKind {
    /** Which part covers the other's end, for all joints that leave one end square. */
    static final PropertySchema THROUGH = PropertySchema.optional(
            "through", Shape.Plain.PART, "the left part", "Which of the two runs through to the outside.");

    private static final JointSchema SCHEMA = JointSchema.to(
            "butt",
            "One part runs through; the other stops at its face. End grain holds no glue to speak of: nail, screw or"
                    + " dowel it.",
            "joint butt side to top { through top }",
            List.of(THROUGH));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    /** At a corner, the part that runs through and what covers the other's end is added to it. */
    record Cover(Addition addition, Figure figure) {}

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        if (meeting.face().isPresent()) {
            return Effect.of(List.of(), List.of(), List.of());
        }
        return cover(meeting)
                .map(cover -> Effect.of(List.of(cover.addition()), List.of(cover.figure()), List.of()))
                .orElseGet(() -> Effect.only(Groove.meetsWrongly(
                        meeting, "A butt joint wants the end of one part at the face or the edge of the other.")));
    }

    /** Which part runs through at a corner, and how far; nothing where two parts meet otherwise. */
    static Optional<Cover> cover(Meeting meeting) {
        boolean rightRuns = meeting.joint()
                .word("through")
                .filter(meeting.joint().right().name()::equals)
                .isPresent();
        if (meeting.edge().isEmpty()
                || meeting.endOfLeft().map(Side::axis).equals(meeting.endOfRight().map(Side::axis))) {
            return Optional.empty();
        }
        Optional<Side> end = rightRuns ? meeting.endOfRight() : meeting.endOfLeft();
        Meeting.Placed runs = rightRuns ? meeting.right() : meeting.left();
        Meeting.Placed stops = rightRuns ? meeting.left() : meeting.right();
        Measure added = Mitre.named(
                stops.along(end.orElseThrow().axis()), "corner with " + stops.part().name());
        return Optional.of(new Cover(
                new Addition(runs.part().name(), end.orElseThrow(), added),
                new Figure(rightRuns ? "over_left" : "over_right", added, true)));
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> parts = Rebate.names(statement);
        return List.of(
                Work.of(Work.Stage.AFTER_LENGTH, "Shoot the ends square", parts, "shooting board"),
                new Work(
                        Work.Stage.GLUE,
                        "Nail, screw or dowel the butt joints; glue alone does not hold end grain",
                        parts,
                        List.of(),
                        "drill, hammer or screwdriver",
                        List.of(),
                        "",
                        "corners square",
                        "Bore pilot holes near ends, so that the wood does not split."));
    }
}

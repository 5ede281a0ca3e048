package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A housing: the end of a shelf let into a side across its grain (rules of the trade J-04). */
final class Housing implements JointKind {
    /** Where a trench stops, plain or with a dovetail in it. */
    static final PropertySchema STOP = PropertySchema.optional(
            "stop",
            new Shape.LengthOrAuto(),
            "none: it runs through",
            "How far the trench stays from an edge of the right part, with `from` and the edge's name;"
                    + " the left part is notched to hide its end.");

    private static final JointSchema SCHEMA = JointSchema.into(
            "housing",
            "The end of the left part is let into a trench across the right one; it carries weight and keeps the"
                    + " shelf flat.",
            "joint housing shelf into side { deep auto; stop 10 from front }",
            List.of(
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a quarter of the right part's thickness",
                            "How deep the trench is; not over a third of the thickness."),
                    STOP));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> side = meeting.face();
        if (side.isEmpty() || meeting.left().measure(side.get().axis()) != 0) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A housing wants the end of the left part against the face of the right one."));
        }
        Measure wall = meeting.right().along(side.get().axis());
        Measure deep = meeting.joint().length("deep").orElseGet(() -> quarter(wall, surroundings));
        Optional<Effect> nothing = Faults.ofNoSize(meeting.joint(), "deep", deep);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("deep", deep, meeting.joint().given("deep").isEmpty()));
        List<Cut> cuts = new ArrayList<>();
        List<Finding> faults = new ArrayList<>();
        Box space = Rebate.step(meeting.left().box(), side.get(), deep.value());
        Optional<Measure> stop = meeting.joint().length("stop");
        if (stop.isPresent()) {
            figures.add(new Figure("stop", stop.get(), false));
            Optional<Box> ahead = ahead(meeting, side.get(), stop.get().value());
            if (ahead.isEmpty() || ahead.get().contains(space)) {
                faults.add(wrongStop(meeting.joint(), stop.get(), ahead.isEmpty(), surroundings));
            } else if (ahead.get().overlap(space).isPresent()) {
                Box solid = ahead.get();
                cuts.add(new Cut.Hollow(
                        meeting.left().part().name(), solid.overlap(space).orElseThrow(), meeting.origin()));
                space = behind(space, solid, stopSide(meeting.joint()).orElseThrow());
            }
        }
        cuts.addFirst(new Cut.Hollow(meeting.right().part().name(), space, meeting.origin()));
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        side.get(),
                        Mitre.named(deep, "housing with " + meeting.right().part().name()))),
                figures,
                cuts)
                .saying(faults);
    }

    static Optional<Side> stopSide(Joint joint) {
        return Direction.named(joint.word("stop.from").orElse("front")).map(d -> Side.of(Axes.of(d.axis()), d.sign()));
    }

    /** What lies before the stop, all of the right part up to it; nothing where that edge has no such name. */
    static Optional<Box> ahead(Meeting meeting, Side face, Length stop) {
        Box right = meeting.right().box();
        return stopSide(meeting.joint())
                .filter(side -> side.axis() != face.axis())
                .filter(side -> side.axis() != Axes.of(meeting.left().placing().thickness().axis()))
                .filter(side -> stop.signum() > 0)
                .map(side -> {
                    Axis along = side.axis();
                    Box all = new Box(
                            right.min().with(face.axis(), Groove.FAR.negate()),
                            right.max().with(face.axis(), Groove.FAR));
                    BigFraction at = right.coordinate(side).subtract(stop.mm().multiply(side.sign()));
                    return side.sign() > 0
                            ? new Box(all.min().with(along, at), all.max().with(along, Groove.FAR))
                            : new Box(all.min().with(along, Groove.FAR.negate()), all.max().with(along, at));
                });
    }

    /** The trench, cut short at the stop. */
    static Box behind(Box space, Box ahead, Side stop) {
        Axis axis = stop.axis();
        return stop.sign() > 0
                ? new Box(space.min(), space.max().with(axis, ahead.min().get(axis)))
                : new Box(space.min().with(axis, ahead.max().get(axis)), space.max());
    }

    static Finding wrongStop(Joint joint, Measure stop, boolean noEdge, Surroundings surroundings) {
        return Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                stop.at(),
                noEdge
                        ? "The housing for `" + joint.left().name() + "` cannot stop at that edge"
                        : "The stop leaves no housing for `" + joint.left().name() + "`")
                .found(noEdge
                        ? "The housing does not run toward it; write `from front`, or another edge at its end."
                        : surroundings.settings().format().text(stop.value()) + " is as long as the housing.")
                .about(joint.name())
                .build();
    }

    /** A quarter of the thickness (Port Townsend School of Woodworking), to the nearest 0.5 mm or 1/32 in below. */
    private static Measure quarter(Measure wall, Surroundings surroundings) {
        return Ruled.onMark("deep", wall.value().dividedBy(4), "a quarter of the thickness, on a mark of the rule",
                "Port Townsend School of Woodworking, joinery rules", wall, surroundings);
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> receiving = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        List<String> entering = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        MadeJoint first = statement.getFirst();
        List<Work.GaugeSetting> settings = first.figures().stream()
                .map(f -> new Work.GaugeSetting(f.name().equals("deep") ? "depth" : "stop", f.measure().value()))
                .toList();
        Work trench = new Work(
                Work.Stage.AFTER_LENGTH,
                "Cut the housings for " + String.join(", ", entering) + ", both sides marked out together",
                receiving,
                entering,
                "knife, fine saw, chisel and router plane",
                settings,
                "the face side; the width scribed from the part as made, never measured",
                "the shelf goes in by hand and stays",
                "Clamp the side before paring; keep both hands behind the edge.");
        List<Work> works = new ArrayList<>(List.of(trench));
        if (first.figure("stop").isPresent()) {
            works.add(new Work(
                    Work.Stage.AFTER_MEASURING,
                    "Notch the corners of " + String.join(", ", entering) + " over the stopped housings",
                    entering,
                    receiving,
                    "fine saw and chisel",
                    settings,
                    "the housing as cut",
                    "the notch hides the end of the housing",
                    ""));
        }
        works.add(new Work(
                Work.Stage.GLUE,
                "Glue the housings and clamp across them",
                Rebate.names(statement),
                List.of(),
                "clamps and cauls",
                List.of(),
                "",
                "diagonals equal",
                "Read the glue's label."));
        return works;
    }
}

package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.quantity.Unit;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A housing: the end of a shelf let into a side across its grain (rules of the trade J-04). */
final class Housing implements JointKind {
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
                    PropertySchema.optional(
                            "stop",
                            new Shape.LengthOrAuto(),
                            "none: it runs through",
                            "How far the trench stays from an edge, with `from` and the edge's name.")));

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
        Axis axis = side.get().axis();
        Measure wall = meeting.right().along(axis);
        boolean inches = surroundings.settings().units() == Unit.IN;
        Measure deep = meeting.joint().length("deep").orElseGet(() -> quarter(wall, inches));
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("deep", deep, meeting.joint().given("deep").isEmpty()));
        Box space = Rebate.step(meeting.left().box(), side.get(), deep.value());
        Optional<Measure> stop = meeting.joint().length("stop");
        if (stop.isPresent()) {
            figures.add(new Figure("stop", stop.get(), false));
            space = stopped(space, meeting.joint().word("stop.from").orElse("front"), stop.get().value());
        }
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        side.get(),
                        Mitre.named(deep, "housing in " + meeting.right().part().name()))),
                figures,
                List.of(new Cut.Hollow(meeting.right().part().name(), space)));
    }

    private static Box stopped(Box space, String from, Length stop) {
        Optional<dev.treen.model.Direction> direction = dev.treen.model.Direction.named(from);
        if (direction.isEmpty()) {
            return space;
        }
        Axis axis = Axes.of(direction.get().axis());
        if (Exact.compare(stop.mm(), space.extent(axis)) >= 0) {
            return space;
        }
        return direction.get().sign() > 0
                ? new Box(space.min(), space.max().with(axis, space.max().get(axis).subtract(stop.mm())))
                : new Box(space.min().with(axis, space.min().get(axis).add(stop.mm())), space.max());
    }

    /** A quarter of the thickness (Port Townsend School of Woodworking), to the nearest 0.5 mm or 1/32 in below. */
    private static Measure quarter(Measure wall, boolean inches) {
        Length step = inches ? Length.ofInches(1, 32) : Length.ofMm(1).dividedBy(2);
        Length deep = wall.value().dividedBy(4).roundDownTo(step).max(step);
        return new Measure(
                deep,
                wall.at(),
                Derivation.rule(
                        "deep",
                        Measure.datum(deep),
                        "a quarter of the thickness, on a mark of the rule",
                        "Port Townsend School of Woodworking, joinery rules",
                        List.of(wall.how())));
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
                "the width scribed from the shelf as made, never measured",
                "the shelf goes in by hand and stays",
                "Clamp the side before paring; keep both hands behind the edge.");
        List<Work> works = new ArrayList<>(List.of(trench));
        if (first.figure("stop").isPresent()) {
            works.add(new Work(
                    Work.Stage.AFTER_MEASURING,
                    "Notch the front corners of the shelf over the stopped housings",
                    entering,
                    receiving,
                    "fine saw and chisel",
                    settings,
                    "marked from the housing",
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

package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A rebated corner or edge: the left part lies in a step cut out of the right one, whose lip covers its end (rules of the
 * trade J-03).
 */
final class Rebate implements JointKind {
    private static final JointSchema SCHEMA = JointSchema.into(
            "rebate",
            "The left part lies in a step cut in the right one, whose lip covers its end.",
            "joint rebate side into front { deep 5 }",
            List.of(PropertySchema.optional(
                    "deep",
                    new Shape.LengthOrAuto(),
                    "half the right part's thickness",
                    "How deep the step is cut into the right part; the lip is what is left.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> end = meeting.face().or(meeting::endOfLeft);
        if (end.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A rebate wants the end or edge of the left part at the right part."));
        }
        Axis axis = end.get().axis();
        Measure wall = meeting.right().along(axis);
        Measure deep = meeting.joint().length("deep").orElseGet(() -> half(wall));
        Addition entering = new Addition(
                meeting.left().part().name(), end.get(),
                Mitre.named(deep, "rebate in " + meeting.right().part().name()));
        Figure figure = new Figure("deep", deep, meeting.joint().given("deep").isEmpty());
        Box step = step(meeting.left().box(), end.get(), deep.value());
        Cut cut = new Cut.Hollow(meeting.right().part().name(), step);
        Optional<Side> covering = meeting.endOfRight();
        List<Addition> additions = covering.isEmpty()
                ? List.of(entering)
                : List.of(
                        entering,
                        new Addition(
                                meeting.right().part().name(),
                                covering.get(),
                                Mitre.named(
                                        meeting.left().along(covering.get().axis()),
                                        "lip over " + meeting.left().part().name())));
        return Effect.of(additions, List.of(figure), List.of(cut));
    }

    /** The space that the left part fills when it is moved by {@code deep} toward {@code side}. */
    static Box step(Box left, Side side, Length deep) {
        Length low = Length.ofMm(left.min().get(side.axis()));
        Length high = Length.ofMm(left.max().get(side.axis()));
        Vec3 min = side.sign() > 0 ? left.min().with(side.axis(), high.mm())
                : left.min().with(side.axis(), low.minus(deep).mm());
        Vec3 max = side.sign() > 0 ? left.max().with(side.axis(), high.plus(deep).mm())
                : left.max().with(side.axis(), low.mm());
        return new Box(min, max);
    }

    private static Measure half(Measure wall) {
        Length deep = wall.value().dividedBy(2);
        return new Measure(
                deep,
                wall.at(),
                Derivation.rule(
                        "deep",
                        Measure.datum(deep),
                        "half of the thickness",
                        "common practice, no source",
                        List.of(wall.how())));
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        Set<String> cut = new LinkedHashSet<>();
        statement.forEach(made -> cut.add(made.joint().right().name()));
        Work.GaugeSetting[] settings = statement.getFirst().figures().stream()
                .map(f -> new Work.GaugeSetting("depth", f.measure().value()))
                .toArray(Work.GaugeSetting[]::new);
        return List.of(
                Work.of(
                        Work.Stage.AFTER_LENGTH,
                        "Cut the rebates, their width scribed from the parts that lie in them",
                        List.copyOf(cut),
                        "rebate plane or fine saw, gauge",
                        settings),
                new Work(
                        Work.Stage.GLUE,
                        "Glue and pin the rebates",
                        names(statement),
                        List.of(),
                        "clamps, brads",
                        List.of(),
                        "",
                        "square by its diagonals",
                        "Bore for brads near an end."));
    }

    /** Every part of the statement once, in order. */
    static List<String> names(List<MadeJoint> statement) {
        Set<String> names = new LinkedHashSet<>();
        statement.forEach(made -> {
            names.add(made.joint().left().name());
            names.add(made.joint().right().name());
        });
        return List.copyOf(names);
    }
}

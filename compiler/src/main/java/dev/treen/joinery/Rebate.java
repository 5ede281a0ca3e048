package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Setting;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.source.Span;
import java.util.ArrayList;
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
            "joint rebate side into front { lip 4 }",
            List.of(
                    PropertySchema.optional(
                            "lip",
                            new Shape.LengthOrAuto(),
                            "at a corner half the right part's thickness, along an edge two thirds of it",
                            "What stays of the right part beside the step: it covers the end of the left one."),
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "what the lip leaves",
                            "How deep the step is cut into the right part. Write this or the lip, not both."),
                    PropertySchema.optional(
                            "stop",
                            new Shape.LengthOrAuto(),
                            "none: it runs through",
                            "How far the step stays from both ends of the right part, or from the one named with `from`, so"
                                    + " that it does not show in an open corner; `auto` goes as far as the left part does.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> end = meeting.face().or(meeting::endOfLeft);
        if (end.isEmpty() || meeting.left().measure(end.get().axis()) == 2) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A rebate wants the end or edge of the left part at the right part."));
        }
        Optional<Side> covering = meeting.endOfRight();
        if (covering.isPresent() && covering.get().axis() == end.get().axis()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A rebated corner wants the two parts square to each other."));
        }
        Measure wall = meeting.right().along(end.get().axis());
        Measure lip = lip(meeting, wall, covering.isPresent(), surroundings);
        Measure deep = deep(meeting.joint(), wall, lip);
        List<Finding> faults = faults(meeting.joint(), wall, lip, deep, surroundings);
        if (deep.value().signum() <= 0) {
            return Effect.only(faults.getFirst());
        }
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("deep", deep, meeting.joint().given("deep").isEmpty()),
                new Figure("lip", lip, meeting.joint().given("lip").isEmpty()),
                new Figure("wide", meeting.left().along(beside(meeting, end.get())), true)));
        Optional<CutStop> stop = CutStop.of(meeting, end.get(), deep);
        Optional<Finding> wrong = stop.flatMap(each -> runsThrough(meeting, end.get())
                ? each.fault(meeting, surroundings) : Optional.of(endsWithIt(meeting)));
        List<Finding> said = new ArrayList<>(faults);
        wrong.ifPresent(said::add);
        List<Cut> cuts = new ArrayList<>();
        Box space = space(meeting, end.get(), deep);
        if (stop.isPresent() && wrong.isEmpty()) {
            cuts.addAll(stop.get().cuts(meeting, space, Length.ZERO, meeting.origin()));
            figures.add(new Figure("stop", stop.get().length(), meeting.joint().given("stop").isEmpty()));
        } else {
            cuts.add(new Cut.Hollow(meeting.right().part().name(), space, meeting.origin()));
        }
        return Effect.of(additions(meeting, end.get(), covering, deep), figures, cuts).saying(said);
    }

    /** A step across the grain, or at a corner, is as long as what lies in it. */
    private static Finding endsWithIt(Meeting meeting) {
        Joint joint = meeting.joint();
        return Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                joint.given("stop").map(Setting::valueAt).orElse(joint.at()),
                "The rebate for `" + joint.left().name() + "` has no ends to stop short of")
                .found("It runs across the grain of `" + joint.right().name() + "`, or at its corner, as far as `"
                        + joint.left().name() + "` does.")
                .because("Only a step along the grain is planed through to both ends.")
                .about(joint.left().name())
                .about(joint.name())
                .remedy(Remedy.choice("leave out `stop`"))
                .build();
    }

    private static List<Addition> additions(
            Meeting meeting, Side end, Optional<Side> covering, Measure deep) {
        Addition entering = new Addition(
                meeting.left().part().name(), end,
                Mitre.named(deep, "rebate with " + meeting.right().part().name()));
        return covering.map(side -> List.of(
                entering,
                new Addition(
                        meeting.right().part().name(),
                        side,
                        Mitre.named(
                                meeting.left().along(side.axis()),
                                "corner with " + meeting.left().part().name()))))
                .orElse(List.of(entering));
    }

    /** The lip as given, or what a given depth leaves, or Treen's own. */
    private static Measure lip(Meeting meeting, Measure wall, boolean corner, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Optional<Measure> given = joint.length("lip");
        if (given.isPresent()) {
            return given.get();
        }
        return joint.length("deep").map(deep -> less("lip", wall, deep)).orElseGet(() -> {
            Length share = corner ? wall.value().dividedBy(2) : wall.value().times(2).dividedBy(3);
            Length value = share.roundUpTo(surroundings.markOfTheRule()).min(wall.value());
            return Ruled.of("lip", value, (corner ? "half" : "two thirds") + " of the thickness, on a mark of the rule",
                    Ruled.PRACTICE, wall);
        });
    }

    private static Measure deep(Joint joint, Measure wall, Measure lip) {
        return joint.length("deep").orElseGet(() -> less("deep", wall, lip));
    }

    private static Measure less(String label, Measure wall, Measure other) {
        Length value = wall.value().minus(other.value());
        return new Measure(
                value,
                other.at(),
                Derivation.combined(label, Measure.datum(value), "−", wall.how().named("thickness"), other.how()));
    }

    private static List<Finding> faults(
            Joint joint, Measure wall, Measure lip, Measure deep, Surroundings surroundings) {
        LengthFormat format = surroundings.settings().format();
        if (lip.value().plus(deep.value()).equals(wall.value()) && deep.value().signum() > 0) {
            return List.of();
        }
        Span at = joint.given("lip").or(() -> joint.given("deep")).map(Setting::valueAt).orElse(joint.at());
        boolean both = joint.given("lip").isPresent() && joint.given("deep").isPresent();
        Finding.Builder finding = Finding.of(
                JoineryFindings.DOES_NOT_FIT,
                at,
                both
                        ? "Lip and depth of the rebate do not make up the thickness of `" + joint.right().name() + "`"
                        : "The rebate leaves `" + joint.left().name() + "` nothing to lie in")
                .found("A lip of " + format.text(lip.value()) + " and a depth of " + format.text(deep.value())
                        + " in " + format.text(wall.value()) + ".")
                .related(wall.at(), "`" + joint.right().name() + "` is this thick")
                .about(joint.name());
        if (both) {
            finding.remedy(Remedy.choice("leave out `lip` or `deep`: each follows from the other"));
        } else {
            finding.remedy(Remedy.choice("write a lip smaller than the thickness"));
        }
        return List.of(finding.build());
    }

    /** What is taken away: planed through to both ends where it runs along the grain, for the strip is rebated whole. */
    private static Box space(Meeting meeting, Side end, Measure deep) {
        Box step = step(meeting.left().box(), end, deep.value());
        if (!runsThrough(meeting, end)) {
            return step;
        }
        Axis along = running(meeting, end);
        return new Box(step.min().with(along, Groove.FAR.negate()), step.max().with(along, Groove.FAR));
    }

    private static boolean runsThrough(Meeting meeting, Side end) {
        return meeting.edge().isEmpty() && meeting.right().measure(running(meeting, end)) == 0;
    }

    /** The axis on which the step is as wide as the left part is there. */
    private static Axis beside(Meeting meeting, Side end) {
        return Meeting.third(end.axis(), running(meeting, end));
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

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        return RebateWorks.of(statement);
    }

    /** Whether the step runs along the grain of the part it is cut in. */
    static boolean alongTheGrain(MadeJoint made) {
        Meeting meeting = made.meeting();
        return meeting.contact() instanceof BoxContact.Edge edge
                ? meeting.right().measure(edge.along()) == 0
                : meeting.face().stream().anyMatch(face -> meeting.right().measure(running(meeting, face)) == 0);
    }

    /** The axis along which the left part's edge or end lies on the right part. */
    static Axis running(Meeting meeting, Side face) {
        Axis thick = Axes.of(meeting.left().placing().thickness().axis());
        return thick == face.axis() ? thick : Meeting.third(face.axis(), thick);
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

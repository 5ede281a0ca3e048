package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.LengthFormat;
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
                    + " shelf flat. Rebated, only a tongue goes in: its shoulder covers the edge of the trench, and at"
                    + " the corner of a box it leaves wood before the end.",
            "joint housing shelf into side { deep auto; stop 10 from front }",
            List.of(
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a quarter of the right part's thickness",
                            "How deep the trench is; not over a third of the thickness."),
                    HousingTongue.SCHEMA,
                    HousingStop.SCHEMA));

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
        LengthFormat format = surroundings.settings().format();
        Box through = Rebate.step(meeting.left().box(), side.get(), deep.value());
        Optional<HousingTongue> tongue = HousingTongue.of(meeting, through, surroundings);
        Optional<Finding> impossible = tongue.flatMap(each -> each.impossible(format));
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        Optional<HousingStop> stop = HousingStop.of(meeting, side.get(), surroundings);
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("deep", deep, meeting.joint().given("deep").isEmpty()));
        tongue.ifPresent(each -> figures.addAll(each.figures()));
        stop.ifPresent(each -> figures.add(
                new Figure("stop", each.length(), meeting.joint().given("stop").isEmpty())));
        List<Finding> faults = new ArrayList<>();
        stop.flatMap(each -> each.fault(through, surroundings)).ifPresent(faults::add);
        tongue.flatMap(each -> each.weak(format)).ifPresent(faults::add);
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        side.get(),
                        Mitre.named(deep, "housing with " + meeting.right().part().name()))),
                figures,
                cuts(meeting, through, tongue, stop.filter(each -> each.fault(through, surroundings).isEmpty())))
                .saying(faults);
    }

    private static List<Cut> cuts(
            Meeting meeting, Box through, Optional<HousingTongue> tongue, Optional<HousingStop> stop) {
        String left = meeting.left().part().name();
        Box open = stop.map(each -> each.behind(through)).orElse(through);
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut.Hollow(
                meeting.right().part().name(), tongue.map(each -> each.trench(open)).orElse(open), meeting.origin()));
        tongue.ifPresent(each -> cuts.add(new Cut.Hollow(left, each.waste(), meeting.origin())));
        stop.flatMap(each -> each.notch(through))
                .ifPresent(notch -> cuts.add(new Cut.Hollow(left, notch, meeting.origin())));
        return cuts;
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
        boolean rebated = first.figure("tongue").isPresent();
        List<Work.GaugeSetting> settings = first.figures().stream()
                .filter(f -> !f.name().equals("shoulder"))
                .map(f -> new Work.GaugeSetting(f.name().equals("deep") ? "depth" : f.name(), f.measure().value()))
                .toList();
        Work trench = new Work(
                Work.Stage.AFTER_LENGTH,
                "Cut the housings for " + String.join(", ", entering) + ", both sides marked out together",
                receiving,
                entering,
                "knife, fine saw, chisel and router plane",
                settings,
                rebated
                        ? "the face side; the place marked from the part as made, the width of the tongue beside its"
                                + " whole face"
                        : "the face side; the width scribed from the part as made, never measured",
                rebated ? "the bottom is flat and the sides are square" : "the shelf goes in by hand and stays",
                "Clamp the side before paring; keep both hands behind the edge.");
        List<Work> works = new ArrayList<>(List.of(trench));
        if (rebated) {
            works.add(new Work(
                    Work.Stage.AFTER_MEASURING,
                    "Rebate the ends of " + String.join(", ", entering) + " to tongues that fit the housings",
                    entering,
                    receiving,
                    "marking gauge, fine saw, shoulder plane",
                    settings.stream().filter(s -> !s.name().equals("stop")).toList(),
                    "the face that stays whole; the tongue gauged from the housing as cut",
                    "the tongue goes in by hand and the shoulder closes",
                    "Clamp the work; keep both hands behind the edge."));
        }
        if (first.figure("stop").isPresent()) {
            works.add(new Work(
                    Work.Stage.AFTER_MEASURING,
                    "Notch the corners of " + String.join(", ", entering) + " over the stopped housings",
                    entering,
                    receiving,
                    "fine saw and chisel",
                    settings.stream().filter(s -> !s.name().equals("tongue")).toList(),
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

package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A housing whose shelf is dovetailed into it and slides in from an edge (rules of the trade J-13). */
final class SlidingDovetail implements JointKind {
    private static final String KIND = "sliding_dovetail";

    private static final JointSchema SCHEMA = JointSchema.into(
            KIND,
            "The end of the left part is a dovetail that slides into a trench of its shape across the right one: a shelf"
                    + " that ties its sides together. It goes in from an edge, so one end of the trench stays open.",
            "joint sliding_dovetail shelf into side { stop 10 from front }",
            List.of(
                    PropertySchema.optional(
                            "deep",
                            new Shape.LengthOrAuto(),
                            "a third of the right part's thickness",
                            "How deep the trench is."),
                    PropertySchema.optional(
                            "slope",
                            Shape.Plain.ANGLE,
                            "1:8, in softwood 1:6",
                            "How far a side of the dovetail leans, as `1:8` or an angle."),
                    PropertySchema.optional(
                            "sides",
                            new Shape.OneOf(List.of("one", "both")),
                            "one",
                            "Whether one side of the dovetail leans (barefaced), on the low side of the left part or the"
                                    + " one named with `from`, or both."),
                    PropertySchema.optional(
                            "taper",
                            new Shape.LengthOrAuto(),
                            "none; `taper auto`: a hundredth of its length, toward the stopped end or the front",
                            "How much narrower the dovetail and its trench are at the end that goes in first, with `from`"
                                    + " and the name of that end: it slides freely and closes all at once."),
                    HousingStop.SCHEMA));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<Side> face = meeting.face();
        if (face.isEmpty() || meeting.left().measure(face.get().axis()) != 0) {
            return Effect.only(Groove.meetsWrongly(
                    meeting, "A sliding dovetail wants the end of the left part against the face of the right one."));
        }
        Joint joint = meeting.joint();
        Measure wall = meeting.right().along(face.get().axis());
        Measure deep = joint.length("deep").orElseGet(() -> Ruled.third("deep", wall, surroundings));
        Optional<Effect> nothing = Faults.ofNoSize(joint, "deep", deep);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        Optional<HousingStop> stop = HousingStop.of(meeting, face.get(), surroundings);
        SlidingDovetailSizes sizes = SlidingDovetailSizes.of(meeting, face.get(), deep, stop, surroundings);
        SlidingDovetailFaults faults = new SlidingDovetailFaults(sizes, surroundings.settings().format());
        Box open = stop.map(each -> each.behind(sizes.through())).orElse(sizes.through());
        Optional<Finding> impossible = faults.impossible()
                .or(() -> stop.flatMap(each -> each.fault(sizes.through(), surroundings)))
                .or(() -> faults.stuck(stop, open));
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        return Effect.of(
                List.of(new Addition(
                        meeting.left().part().name(),
                        face.get(),
                        Mitre.named(deep, "dovetail in " + meeting.right().part().name()))),
                sizes.figures(stop),
                cuts(sizes, stop.flatMap(each -> each.notch(sizes.through())), open))
                .saying(faults.weak().stream().toList());
    }

    private static List<Cut> cuts(SlidingDovetailSizes sizes, Optional<Box> notch, Box open) {
        Meeting meeting = sizes.meeting();
        String left = meeting.left().part().name();
        List<Cut> cuts = new ArrayList<>();
        cuts.add(new Cut.Carve(meeting.right().part().name(), sizes.tail(open), meeting.origin()));
        sizes.pared().forEach(waste -> cuts.add(new Cut.Carve(left, waste, meeting.origin())));
        notch.ifPresent(box -> cuts.add(new Cut.Hollow(left, box, meeting.origin())));
        return cuts;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> entering = statement.stream().map(m -> m.joint().left().name()).distinct().toList();
        List<String> receiving = statement.stream().map(m -> m.joint().right().name()).distinct().toList();
        Work.GaugeSetting deep = new Work.GaugeSetting("depth", Work.figure(statement, "deep"));
        Work.GaugeSetting neck = new Work.GaugeSetting("neck", Work.figure(statement, "neck"));
        boolean tapered = statement.getFirst().figure("taper").isPresent();
        List<Work.GaugeSetting> necks = tapered
                ? List.of(deep, neck, new Work.GaugeSetting("neck, narrow end", Work.figure(statement, "neck_narrow")))
                : List.of(deep, neck);
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Saw the sides of the dovetailed trenches against a bevelled block and clear them",
                        receiving,
                        List.of(),
                        "bevel, block, fine saw, chisel and router plane, or a dovetail cutter",
                        tapered ? necks : List.of(deep),
                        tapered
                                ? "the face side; the mouth of the trench marked out at both ends, and a line drawn"
                                        + " between"
                                : "the face side; the trench a hair narrower toward its closed end",
                        "the bottom is flat; both sides lean as the block",
                        "Clamp the side before paring; keep both hands behind the edge."),
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Plane the dovetails on the ends to the trenches as cut"
                                + (tapered ? "" : ", the last quarter tapered (Fairham)"),
                        entering,
                        receiving,
                        "shoulder plane or dovetail plane, bevel, chisel",
                        necks,
                        "the shoulder",
                        tapered
                                ? "it slides by hand until little is left, and closes all at once under light taps"
                                : "it slides by hand to the last quarter, and taps home",
                        "Pare away from the fingers."),
                new Work(
                        Work.Stage.GLUE,
                        "Slide the dovetails home, with glue on the last 50 mm at the front only",
                        Rebate.names(statement),
                        List.of(),
                        "glue brush, mallet and block",
                        List.of(),
                        "",
                        "shoulders closed, diagonals equal",
                        "Read the glue's label; long dovetails seize when glue swells them."));
    }
}

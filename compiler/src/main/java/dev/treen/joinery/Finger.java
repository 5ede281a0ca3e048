package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A finger joint: square fingers of equal width, by turns of the left and the right part (rules of the trade J-14). */
final class Finger implements JointKind {
    static final String KIND = "finger";

    private static final JointSchema SCHEMA = JointSchema.to(
            KIND,
            "Square fingers of equal width interlock at a corner. Much long grain is glued to long grain, so that it is"
                    + " strong; without glue it slides apart.",
            "joint finger front to left, front to right { fingers 7 }",
            List.of(
                    PropertySchema.optional(
                            "fingers",
                            Shape.Plain.COUNT,
                            "an odd count of fingers about `wide`",
                            "How many fingers there are, of both parts together; an odd count makes both edges alike."
                                    + " The left part has the outermost."),
                    PropertySchema.optional(
                            "wide",
                            new Shape.LengthOrAuto(),
                            "as wide as the left part is thick",
                            "About how wide a finger is: the height is shared out evenly.")));

    @Override
    public JointSchema schema() {
        return SCHEMA;
    }

    @Override
    public Effect make(Meeting meeting, Surroundings surroundings) {
        Optional<BoxCorner> found = BoxCorner.of(meeting);
        if (found.isEmpty()) {
            return Effect.only(Groove.meetsWrongly(
                    meeting,
                    "Fingers join the ends of two parts at a corner, written inside to inside: their ends meet along its"
                            + " inner edge."));
        }
        BoxCorner corner = found.get();
        Joint joint = meeting.joint();
        Measure wide = joint.length("wide").orElseGet(corner::thicknessOfFirst);
        Optional<Effect> nothing = Faults.ofNoSize(joint, "wide", wide);
        if (nothing.isPresent()) {
            return nothing.get();
        }
        FingerLayout layout = FingerLayout.of(
                corner, joint.number("fingers").map(DovetailSizes::whole), wide.value(), surroundings);
        FingerFaults faults = new FingerFaults(joint, layout, surroundings.settings());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        return Effect.of(
                additions(corner),
                List.of(
                        new Figure("deep", corner.thicknessOfSecond(), true),
                        new Figure("finger", finger(layout, wide), joint.given("fingers").isEmpty())),
                cuts(meeting, layout))
                .saying(faults.weak());
    }

    private static Measure finger(FingerLayout layout, Measure wide) {
        return Ruled.at(wide.at(), "finger", layout.finger(),
                "the height shared out over " + layout.count() + " fingers"
                        + (layout.line().isPresent() ? ", without what goes where the lid is cut free" : ""),
                Ruled.PRACTICE,
                List.of(layout.corner().first().part().width().how(), wide.how()));
    }

    private static List<Addition> additions(BoxCorner corner) {
        String first = corner.first().part().name();
        String second = corner.second().part().name();
        return List.of(
                new Addition(
                        first, corner.outFirst(), Mitre.named(corner.thicknessOfSecond(), "corner with " + second)),
                new Addition(
                        second, corner.outSecond(), Mitre.named(corner.thicknessOfFirst(), "corner with " + first)));
    }

    private static List<Cut> cuts(Meeting meeting, FingerLayout layout) {
        List<Cut> cuts = new ArrayList<>();
        boolean ofLeft = true;
        for (BoxCorner.Heights finger : layout.fingers()) {
            Meeting.Placed without = ofLeft ? layout.corner().second() : layout.corner().first();
            cuts.add(new Cut.Hollow(
                    without.part().name(), layout.corner().block(finger.from(), finger.to()), meeting.origin()));
            ofLeft = !ofLeft;
        }
        return cuts;
    }

    @Override
    public List<Work> works(List<MadeJoint> statement) {
        List<String> parts = Rebate.names(statement);
        Work.GaugeSetting finger = new Work.GaugeSetting("finger", Work.figure(statement, "finger"));
        return List.of(
                new Work(
                        Work.Stage.AFTER_LENGTH,
                        "Cut the fingers, all parts at one setting, their mates offset by one finger",
                        parts,
                        List.of(),
                        "fine saw and chisel, or a cutter with a jig that steps by one finger",
                        List.of(finger, new Work.GaugeSetting("depth", Work.figure(statement, "deep"))),
                        "the lower edge, which is marked on every part",
                        "the fingers of two offcuts go together by hand",
                        "Back the work with scrap; keep hands out of the cutter's way."),
                new Work(
                        Work.Stage.GLUE,
                        "Glue the sides of the fingers and clamp both ways",
                        parts,
                        List.of(),
                        "glue brush, clamps, cauls",
                        List.of(),
                        "",
                        "diagonals equal while the glue is wet",
                        "Read the glue's label."));
    }
}

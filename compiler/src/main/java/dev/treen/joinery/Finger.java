package dev.treen.joinery;

import dev.treen.finding.Finding;
import dev.treen.model.Joint;
import dev.treen.model.JointSchema;
import dev.treen.model.Measure;
import dev.treen.model.PropertySchema;
import dev.treen.model.Shape;
import dev.treen.quantity.Length;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A finger joint: square fingers of equal width, by turns of the left and the right part (rules of the trade J-14). */
final class Finger implements JointKind {
    static final String KIND = "finger";
    private static final int FEWEST = 3;

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
        int count = joint.number("fingers").map(DovetailSizes::whole)
                .orElseGet(() -> odd(corner.height(), wide.value()));
        FingerFaults faults = new FingerFaults(joint, corner, count, surroundings.settings());
        Optional<Finding> impossible = faults.impossible();
        if (impossible.isPresent()) {
            return Effect.only(impossible.get());
        }
        return Effect.of(
                additions(corner),
                List.of(
                        new Figure("deep", corner.thicknessOfSecond(), true),
                        new Figure("finger", finger(corner, count, wide), joint.given("fingers").isEmpty())),
                cuts(meeting, corner, count))
                .saying(faults.weak());
    }

    /** {@code 2 · round((height / wide − 1) / 2) + 1}, and not under three. */
    static int odd(Length height, Length wide) {
        BigFraction half = height.ratioTo(wide).subtract(BigFraction.ONE).divide(2).add(BigFraction.of(1, 2));
        BigInteger pairs = half.signum() <= 0 ? BigInteger.ZERO : half.getNumerator().divide(half.getDenominator());
        int rounded = pairs.min(BigInteger.valueOf(DovetailSizes.MOST / 2 - 1)).intValue();
        return Math.max(FEWEST, 2 * rounded + 1);
    }

    private static Measure finger(BoxCorner corner, int count, Measure wide) {
        Length value = corner.height().dividedBy(count);
        return Ruled.at(wide.at(), "finger", value, "the height shared out over " + count + " fingers", Ruled.PRACTICE,
                List.of(corner.first().part().width().how(), wide.how()));
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

    private static List<Cut> cuts(Meeting meeting, BoxCorner corner, int count) {
        List<Cut> cuts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            BoxCorner.Heights finger = finger(corner, count, i);
            Meeting.Placed without = i % 2 == 0 ? corner.second() : corner.first();
            cuts.add(new Cut.Hollow(
                    without.part().name(), corner.block(finger.from(), finger.to()), meeting.origin()));
        }
        return cuts;
    }

    /** The finger that is so many from the lowest; even ones belong to the left part. */
    static BoxCorner.Heights finger(BoxCorner corner, int count, int number) {
        Length each = corner.height().dividedBy(count);
        return new BoxCorner.Heights(
                corner.low().plus(each.times(number)), corner.low().plus(each.times(number + 1L)));
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

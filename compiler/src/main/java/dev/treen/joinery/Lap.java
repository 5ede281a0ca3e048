package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Two parts square to each other that share a block of wood, as halvings and bridles do: each fills it, and each is cut
 * there so that both together fill it once. Where they meet tells what it is called.
 *
 * @param where how the two lie
 * @param along the axis of the left part's length
 * @param across the axis of the right part's length
 * @param through the axis through both, along which the block is shared out
 * @param block what both fill
 * @param endOfLeft the end of the left part that reaches over the right one; absent where they cross
 * @param endOfRight the end of the right part that reaches over the left one, at a corner written inside to inside
 */
record Lap(
        Meeting meeting,
        Where where,
        Axis along,
        Axis across,
        Axis through,
        Box block,
        Optional<Side> endOfLeft,
        Optional<Side> endOfRight) {

    /** The figure of {@link #reach()}. */
    static final String REACH = "reach";

    /** How two parts lie that share a block. */
    enum Where {
        /** Both run on: they are written filling the same space. */
        CROSS("cross"),
        /** The ends of both. */
        CORNER("corner"),
        /** The end of the left part somewhere along the right one. */
        TEE("tee");

        private final String word;

        Where(String word) {
            this.word = word;
        }

        /** As makers call it. */
        String word() {
            return word;
        }
    }

    /** The lap of two parts whose lengths are square to each other, unless they meet in another way. */
    static Optional<Lap> of(Meeting meeting) {
        Axis along = Axes.of(meeting.left().placing().length().axis());
        Axis across = Axes.of(meeting.right().placing().length().axis());
        if (along == across) {
            return Optional.empty();
        }
        Axis through = Meeting.third(along, across);
        return switch (meeting.contact()) {
            case BoxContact.Overlapping(Box shared) -> crossing(meeting, along, across, through, shared);
            case BoxContact.FaceToFace face -> face.side().axis() == along
                    ? Optional.of(tee(meeting, face.side(), across, through))
                    : Optional.empty();
            case BoxContact.Edge edge -> edge.along() == through
                    ? Optional.of(corner(meeting, along, across, through))
                    : Optional.empty();
            case BoxContact.Corner corner -> Optional.empty();
            case BoxContact.Apart apart -> Optional.empty();
        };
    }

    /** Each must run on past the other, or lie flush with it. */
    private static Optional<Lap> crossing(Meeting meeting, Axis along, Axis across, Axis through, Box shared) {
        boolean overRight = shared.extent(along).equals(meeting.right().box().extent(along));
        boolean overLeft = shared.extent(across).equals(meeting.left().box().extent(across));
        return overRight && overLeft
                ? Optional.of(new Lap(
                        meeting, Where.CROSS, along, across, through, shared, Optional.empty(), Optional.empty()))
                : Optional.empty();
    }

    private static Lap tee(Meeting meeting, Side end, Axis across, Axis through) {
        Length wide = meeting.right().along(end.axis()).value();
        Box reach = Rebate.step(meeting.left().box(), end, wide);
        Box block = reach.overlap(meeting.right().box()).orElseThrow();
        Where where = flush(meeting, across) ? Where.CORNER : Where.TEE;
        return new Lap(meeting, where, end.axis(), across, through, block, Optional.of(end), Optional.empty());
    }

    /** Whether the left part's edge lies at or past the end of the right one. */
    private static boolean flush(Meeting meeting, Axis across) {
        for (int sign : new int[]{-1, 1}) {
            Side side = Side.of(across, sign);
            Length left = Length.ofMm(meeting.left().box().coordinate(side)).times(sign);
            if (left.compareTo(Length.ofMm(meeting.right().box().coordinate(side)).times(sign)) >= 0) {
                return true;
            }
        }
        return false;
    }

    private static Lap corner(Meeting meeting, Axis along, Axis across, Axis through) {
        Side left = meeting.endOfLeft().orElseThrow();
        Side right = meeting.endOfRight().orElseThrow();
        Box ofLeft = Rebate.step(meeting.left().box(), left, meeting.right().along(along).value());
        Box ofRight = Rebate.step(meeting.right().box(), right, meeting.left().along(across).value());
        return new Lap(
                meeting,
                Where.CORNER,
                along,
                across,
                through,
                ofLeft.overlap(ofRight).orElseThrow(),
                Optional.of(left),
                Optional.of(right));
    }

    /** What both parts gain: the end of each goes on to the other's far edge. */
    List<Addition> additions() {
        List<Addition> additions = new ArrayList<>();
        String left = meeting.left().part().name();
        String right = meeting.right().part().name();
        endOfLeft.ifPresent(side -> additions.add(
                new Addition(left, side, Mitre.named(meeting.right().along(along), where.word() + " with " + right))));
        endOfRight.ifPresent(side -> additions.add(
                new Addition(right, side, Mitre.named(meeting.left().along(across), where.word() + " with " + left))));
        return additions;
    }

    /** The block between two places along the axis through both. */
    Box between(Length low, Length high) {
        return TenonSizes.between(block, through, low.mm(), high.mm());
    }

    /** The block, out through the part on one side of a place. */
    Box beyond(Length place, int sign) {
        BigFraction far = Groove.FAR.multiply(sign);
        return sign > 0
                ? TenonSizes.between(block, through, place.mm(), far)
                : TenonSizes.between(block, through, far, place.mm());
    }

    /** Where the block begins, through both. */
    Length low() {
        return Length.ofMm(block.min().get(through));
    }

    /** Where the block ends, through both. */
    Length high() {
        return Length.ofMm(block.max().get(through));
    }

    /** How far the left part reaches over the right one: what a rigid joint holds of the right part's width. */
    Figure reach() {
        return new Figure(REACH, Mitre.named(meeting.right().along(along), REACH), true);
    }
}

package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The sizes of a tenon, as {@link TenonRules} settled them, and where it stands.
 *
 * @param form how it ends
 * @param end the side of the left part that enters
 * @param across the axis across the tenon's width
 * @param thin the axis through its thickness
 * @param thick how thick the tenon is
 * @param reach how far it reaches into the right part
 * @param low how far it stays from the left part's edge on the low side of {@code across}
 * @param high the same on the high side
 * @param haunch how far the haunch reaches that fills a set-back at a corner; zero for none
 * @param count how many tenons share the width, with as much between them as one is thick
 * @param beside how many stand side by side in the thickness, with as much between them as one is thick
 * @param middle the coordinate of their middle along {@code thin}
 */
record TenonSizes(
        Form form,
        Side end,
        Axis across,
        Axis thin,
        Measure thick,
        Measure reach,
        Measure low,
        Measure high,
        Measure haunch,
        int count,
        int beside,
        Length middle) {

    /** How a tenon ends. */
    enum Form {
        /** In the wood. */
        STOPPED,
        /** On the other side. */
        THROUGH,
        /** As short as a groove is deep. */
        STUB,
        /** In a panel's groove, which it fills; no mortise is cut. */
        IN_GROOVE,
        /** It is a piece by itself, in mortises in both parts. */
        LOOSE
    }

    boolean through() {
        return form == Form.THROUGH;
    }

    /** Whether what it enters is as deep as it is long. */
    boolean fills() {
        return form == Form.THROUGH || form == Form.IN_GROOVE;
    }

    boolean loose() {
        return form == Form.LOOSE;
    }

    /** Whether the left part lies flush with, or nearly at, the end of the right one on that side. */
    static boolean atEnd(Meeting meeting, Axis across, int sign) {
        if (meeting.right().measure(across) != 0) {
            return false;
        }
        Side side = Side.of(across, sign);
        Length beyond = Length.ofMm(meeting.right().box().coordinate(side)
                .subtract(meeting.left().box().coordinate(side))
                .multiply(sign));
        return beyond.compareTo(meeting.left().along(across).value().dividedBy(3)) < 0;
    }

    /** Whether a haunch fills the set-back on that side. */
    boolean haunched(Meeting meeting, int sign) {
        return haunch.value().signum() > 0 && atEnd(meeting, across, sign);
    }

    /** How much of the thickness the tenons and what lies between them take. */
    Length takes() {
        return thick.value().times(2L * beside - 1);
    }

    /** Where the tenons stand, as boxes that reach the whole way in. */
    List<Box> tenons(Meeting meeting) {
        Box left = meeting.left().box();
        Box slab = Rebate.step(left, end, reach.value());
        Length one = one(meeting);
        List<Box> boxes = new ArrayList<>();
        for (Length start : starts(meeting)) {
            thinned(slab).forEach(strip -> boxes.add(between(strip, across, start.mm(), start.plus(one).mm())));
        }
        return boxes;
    }

    /** The middles of the tenons along {@code across}. */
    List<Length> middles(Meeting meeting) {
        Length half = one(meeting).dividedBy(2);
        return starts(meeting).stream().map(half::plus).toList();
    }

    private List<Length> starts(Meeting meeting) {
        Length from = Length.ofMm(meeting.left().box().min().get(across)).plus(low.value());
        Length step = one(meeting).plus(thick.value());
        List<Length> starts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            starts.add(from.plus(step.times(i)));
        }
        return starts;
    }

    /** How wide one tenon is. */
    private Length one(Meeting meeting) {
        Length width = meeting.left().along(across).value().minus(low.value()).minus(high.value());
        return width.minus(thick.value().times(count - 1L)).dividedBy(count);
    }

    /** The haunches: from the tenon to the edge, short. */
    List<Box> haunches(Meeting meeting) {
        if (haunch.value().signum() <= 0) {
            return List.of();
        }
        Box left = meeting.left().box();
        List<Box> boxes = new ArrayList<>();
        for (Box slab : thinned(Rebate.step(left, end, haunch.value()))) {
            if (haunched(meeting, -1) && low.value().signum() > 0) {
                boxes.add(between(
                        slab,
                        across,
                        left.min().get(across),
                        Length.ofMm(left.min().get(across)).plus(low.value()).mm()));
            }
            if (haunched(meeting, 1) && high.value().signum() > 0) {
                boxes.add(between(
                        slab,
                        across,
                        Length.ofMm(left.max().get(across)).minus(high.value()).mm(),
                        left.max().get(across)));
            }
        }
        return boxes;
    }

    /** The strips of a slab that the thicknesses of the tenons take. */
    private List<Box> thinned(Box slab) {
        Length from = middle.minus(takes().dividedBy(2));
        List<Box> strips = new ArrayList<>();
        for (int i = 0; i < beside; i++) {
            Length start = from.plus(thick.value().times(2L * i));
            strips.add(between(slab, thin, start.mm(), start.plus(thick.value()).mm()));
        }
        return strips;
    }

    /** {@code box} cut off at two places along {@code axis}. */
    static Box between(Box box, Axis axis, BigFraction low, BigFraction high) {
        return new Box(box.min().with(axis, low), box.max().with(axis, high));
    }
}

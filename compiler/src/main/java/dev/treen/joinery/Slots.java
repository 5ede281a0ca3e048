package dev.treen.joinery;

import dev.treen.model.Direction;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Side;
import dev.treen.wood.Figures;
import java.util.Optional;

/**
 * The slots in a held part, in which screws travel where one part moves with the seasons and the other does not (rules of
 * the trade M-09 and M-25: shank + travel + 0.5 mm).
 *
 * @param axis along which it runs
 * @param low how far the screw can travel from where it stands at the bench toward the low side
 * @param high the same toward the high side
 */
record Slots(Axis axis, Length low, Length high) {
    private static final Length HUNDREDTH = Length.ofMm(1).dividedBy(100);

    /** How much longer it is than the screw is thick. */
    Length room() {
        return low.plus(high);
    }

    /** The slot for the screw at a place of the row, where its wood moves too much for a plain hole. */
    static Optional<Slots> of(Driven driven, Length along, Surroundings surroundings) {
        Meeting meeting = driven.meeting();
        boolean none = meeting.joint().word("slots").filter("none"::equals).isPresent();
        if (none) {
            return Optional.empty();
        }
        Optional<Slots> one = along(driven, driven.row(), along, surroundings);
        Optional<Slots> other = along(driven, driven.beside(), driven.middle(driven.beside()), surroundings);
        boolean second = other.isPresent()
                && (one.isEmpty() || other.get().room().compareTo(one.get().room()) > 0);
        return second ? other : one;
    }

    private static Optional<Slots> along(Driven driven, Axis axis, Length at, Surroundings surroundings) {
        Meeting.Placed left = driven.meeting().left();
        Meeting.Placed right = driven.meeting().right();
        Nature ofLeft = surroundings.nature(left.part());
        Nature ofRight = surroundings.nature(right.part());
        int measureLeft = left.measure(axis);
        int measureRight = right.measure(axis);
        double unit = ofRight.swelling(measureRight, 100) - ofLeft.swelling(measureLeft, 100);
        Length from = fixed(driven, unit >= 0 ? right : left, axis);
        double x = at.minus(from).toDoubleMm();
        double far = Math.abs(x);
        // How far the screw, which goes with the right part, moves outward in the slot of the left one.
        double wet = ofRight.swelling(measureRight, far) - ofLeft.swelling(measureLeft, far);
        double dry = ofLeft.shrinking(measureLeft, far) - ofRight.shrinking(measureRight, far);
        double most = Math.max(Math.abs(wet), Math.abs(dry));
        if (most <= Figures.standard().value("two-fixed-lines.error")) {
            return Optional.empty();
        }
        double ease = Figures.standard().value("top.slot.ease") / 2;
        double out = Math.max(0, Math.max(wet, dry)) + ease;
        double in = Math.max(0, -Math.min(wet, dry)) + ease;
        Length outward = Length.nearest(out, HUNDREDTH);
        Length inward = Length.nearest(in, HUNDREDTH);
        return Optional.of(x < 0 ? new Slots(axis, outward, inward) : new Slots(axis, inward, outward));
    }

    /** The line of the moving part that stays where it is: its middle, or the side that the joint names. */
    private static Length fixed(Driven driven, Meeting.Placed moving, Axis axis) {
        return driven.meeting().joint().word("fixed")
                .flatMap(Direction::named)
                .filter(way -> Axes.of(way.axis()) == axis)
                .map(way -> Length.ofMm(moving.box().coordinate(Side.of(axis, way.sign()))))
                .orElseGet(() -> Length.ofMm(moving.box().centre().get(axis)));
    }
}

package dev.treen.solid;

import java.util.Collection;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Straight moves of one solid past others, exact for any rational direction.
 *
 * <p>Two convex pieces share volume during one stretch of a straight move and at no other time. It begins when the front
 * faces of the moving piece have come up to the back faces of the other over their common shadow, and ends when the back
 * faces have passed the front ones. Over a pair of faces the way between is a linear function, so its least and greatest
 * values are at corners of the common shadow. Sliding along a face is free.
 */
public final class Motion {

    private Motion() {
    }

    /**
     * Whether a solid can move straight by a distance without sharing volume with an obstacle on the way. A solid that
     * shares volume at the start cannot move.
     *
     * @param distance in millimetres, not negative
     */
    public static boolean canMove(Solid moving, Collection<Solid> obstacles, Side to, BigFraction distance) {
        return canMove(moving, obstacles, to.unit().times(distance));
    }

    /** Whether a solid can move by a vector without sharing volume with an obstacle on the way. */
    public static boolean canMove(Solid moving, Collection<Solid> obstacles, Vec3 by) {
        return by.isZero() || free(moving, obstacles, by).map(Rat::of).filter(f -> f.lessThan(Rat.ONE)).isEmpty();
    }

    /**
     * How far a solid can move before it meets an obstacle, counted in lengths of {@code way} (millimetres when that has
     * length one); nothing when no obstacle is in its way.
     */
    public static Optional<BigFraction> free(Solid moving, Collection<Solid> obstacles, Vec3 way) {
        Lane lane = new Lane(way);
        Optional<Rat> nearest = Optional.empty();
        for (Solid obstacle : obstacles) {
            for (Intervals.Stretch stretch : lane.meetings(moving, obstacle)) {
                if (stretch.high().signum() > 0) {
                    Rat start = stretch.low().max(Rat.ZERO);
                    nearest = Optional.of(nearest.isEmpty() ? start : nearest.get().min(start));
                }
            }
        }
        return nearest.map(Rat::toFraction);
    }
}

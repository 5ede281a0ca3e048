package dev.treen.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
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
        Optional<Rat> nearest = Optional.empty();
        for (Solid obstacle : obstacles) {
            for (Intervals.Stretch stretch : meetings(moving, obstacle, way)) {
                if (stretch.high().signum() > 0) {
                    Rat start = stretch.low().max(Rat.ZERO);
                    nearest = Optional.of(nearest.isEmpty() ? start : nearest.get().min(start));
                }
            }
        }
        return nearest.map(Rat::toFraction);
    }

    /** The stretches of an endless move, backwards and forwards, in which pieces of both share volume. */
    static List<Intervals.Stretch> meetings(Solid moving, Solid obstacle, Vec3 way) {
        Shadow shadow = new Shadow(way);
        List<Intervals.Stretch> stretches = new ArrayList<>();
        for (Convex a : moving.pieces()) {
            for (Convex b : obstacle.pieces()) {
                meeting(a, b, way, shadow).ifPresent(stretches::add);
            }
        }
        return stretches;
    }

    private static Optional<Intervals.Stretch> meeting(Convex a, Convex b, Vec3 way, Shadow shadow) {
        if (shadow.square()) {
            if (apartSideways(a.bounds(), b.bounds(), way)) {
                return Optional.empty();
            }
            if (a.isBox() && b.isBox()) {
                return Optional.of(boxes(a.bounds(), b.bounds(), shadow));
            }
        }
        Optional<Rat> start = extreme(shadow.faces(a, 1), shadow.faces(b, -1), shadow, false);
        return start.map(low -> new Intervals.Stretch(low,
                extreme(shadow.faces(a, -1), shadow.faces(b, 1), shadow, true).orElseThrow()));
    }

    private static boolean apartSideways(Box a, Box b, Vec3 way) {
        for (Axis axis : Axis.values()) {
            if (way.at(axis).isZero() && a.gapRat(b, axis).signum() >= 0) {
                return true;
            }
        }
        return false;
    }

    private static Intervals.Stretch boxes(Box a, Box b, Shadow shadow) {
        Rat one = shadow.height(b.min()).minus(shadow.height(a.max()));
        Rat other = shadow.height(b.max()).minus(shadow.height(a.min()));
        return new Intervals.Stretch(one.min(other), one.max(other));
    }

    /** The least (or greatest) way from the moving faces to the others over their common shadow. */
    private static Optional<Rat> extreme(List<Shadow.Cover> moving, List<Shadow.Cover> others, Shadow shadow,
            boolean greatest) {
        Optional<Rat> best = Optional.empty();
        for (Shadow.Cover from : moving) {
            for (Shadow.Cover to : others) {
                Optional<Poly> common = from.shadow().intersect(to.shadow());
                for (Vec2 corner : common.map(Poly::corners).orElse(List.of())) {
                    Rat way = shadow.height(to.plane(), corner).minus(shadow.height(from.plane(), corner));
                    if (best.isEmpty() || way.lessThan(best.get()) != greatest) {
                        best = Optional.of(way);
                    }
                }
            }
        }
        return best;
    }
}

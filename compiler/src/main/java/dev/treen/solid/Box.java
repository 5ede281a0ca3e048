package dev.treen.solid;

import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A box along the axes, from its lowest to its highest corner, with some extent along each axis.
 *
 * @param min the left, front, bottom corner
 * @param max the right, back, top corner
 */
public record Box(Vec3 min, Vec3 max) {

    /**
     * Checks that the box has volume.
     *
     * @throws IllegalArgumentException if it has none
     */
    public Box {
        if (!min.x.lessThan(max.x) || !min.y.lessThan(max.y) || !min.z.lessThan(max.z)) {
            throw new IllegalArgumentException("a box needs an extent along each axis: " + min + " to " + max);
        }
    }

    /** The box with its lowest corner at {@code at} and the given extents. */
    public static Box at(Vec3 at, Vec3 size) {
        return new Box(at, at.plus(size));
    }

    /** The box with whole coordinates, lowest corner first. */
    public static Box of(long x0, long y0, long z0, long x1, long y1, long z1) {
        return new Box(Vec3.of(x0, y0, z0), Vec3.of(x1, y1, z1));
    }

    /** The extents along the three axes. */
    public Vec3 size() {
        return max.minus(min);
    }

    /** The extent along one axis. */
    public BigFraction extent(Axis axis) {
        return max.at(axis).minus(min.at(axis)).toFraction();
    }

    /** The coordinate of the surface on the given side, along that side's axis. */
    public BigFraction coordinate(Side side) {
        return face(side).toFraction();
    }

    Rat face(Side side) {
        return (side.sign() < 0 ? min : max).at(side.axis());
    }

    /** The volume in cubic millimetres. */
    public BigFraction volume() {
        Vec3 size = size();
        return size.x.times(size.y).times(size.z).toFraction();
    }

    /** The point in the middle. */
    public Vec3 centre() {
        return min.plus(max).times(Rat.of(1, 2));
    }

    /** The box moved by a vector. */
    public Box translate(Vec3 by) {
        return new Box(min.plus(by), max.plus(by));
    }

    /** The smallest box around both. */
    public Box join(Box other) {
        return new Box(lowest(min, other.min), highest(max, other.max));
    }

    /** The box both share, or nothing when they share no volume. */
    public Optional<Box> overlap(Box other) {
        Vec3 low = highest(min, other.min);
        Vec3 high = lowest(max, other.max);
        boolean real = low.x.lessThan(high.x) && low.y.lessThan(high.y) && low.z.lessThan(high.z);
        return real ? Optional.of(new Box(low, high)) : Optional.empty();
    }

    /** Whether a point lies in the box or on its surface. */
    public boolean contains(Vec3 point) {
        return lowest(min, point).equals(min) && highest(max, point).equals(max);
    }

    /** Whether the other box lies within this one, surfaces allowed to touch. */
    public boolean contains(Box other) {
        return contains(other.min) && contains(other.max);
    }

    /**
     * The free way between both along one axis: positive when they are apart there, zero when they meet, negative by the
     * length they share.
     */
    public BigFraction gap(Box other, Axis axis) {
        return gapRat(other, axis).toFraction();
    }

    Rat gapRat(Box other, Axis axis) {
        Rat low = min.at(axis).max(other.min.at(axis));
        Rat high = max.at(axis).min(other.max.at(axis));
        return low.minus(high);
    }

    /** How this box and another lie to each other. */
    public BoxContact contact(Box other) {
        return BoxContact.between(this, other);
    }

    /** The smallest box after a turn, about the turned box. */
    public Box turn(Turn turn) {
        return turn.equals(Turn.NONE) ? this : Convex.box(this, Origin.STOCK).turn(turn).bounds();
    }

    static Vec3 lowest(Vec3 a, Vec3 b) {
        return new Vec3(a.x.min(b.x), a.y.min(b.y), a.z.min(b.z));
    }

    static Vec3 highest(Vec3 a, Vec3 b) {
        return new Vec3(a.x.max(b.x), a.y.max(b.y), a.z.max(b.z));
    }
}

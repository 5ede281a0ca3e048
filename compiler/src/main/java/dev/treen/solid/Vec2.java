package dev.treen.solid;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** An exact point on paper or in a plane: two fractions. */
public final class Vec2 {

    final Rat u;
    final Rat v;

    Vec2(Rat u, Rat v) {
        this.u = u;
        this.v = v;
    }

    /** The point with the given coordinates. */
    public static Vec2 of(BigFraction u, BigFraction v) {
        return new Vec2(Rat.of(u), Rat.of(v));
    }

    /** The first coordinate, to the right on paper. */
    public BigFraction u() {
        return u.toFraction();
    }

    /** The second coordinate, up on paper. */
    public BigFraction v() {
        return v.toFraction();
    }

    Vec2 minus(Vec2 other) {
        return new Vec2(u.minus(other.u), v.minus(other.v));
    }

    Rat cross(Vec2 other) {
        return u.times(other.v).minus(v.times(other.u));
    }

    Rat inner(Vec2 other) {
        return u.times(other.u).plus(v.times(other.v));
    }

    /** The point that divides the way to {@code other} in the proportion of the two given distances from a line. */
    Vec2 between(Rat here, Vec2 other, Rat there) {
        Rat total = there.minus(here);
        return new Vec2(
                u.times(there).minus(other.u.times(here)).dividedBy(total),
                v.times(there).minus(other.v.times(here)).dividedBy(total));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Vec2 that && u.equals(that.u) && v.equals(that.v);
    }

    @Override
    public int hashCode() {
        return u.hashCode() * 31 + v.hashCode();
    }

    @Override
    public String toString() {
        return "(" + u + ", " + v + ")";
    }
}

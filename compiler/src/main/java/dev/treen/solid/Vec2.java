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

    /**
     * Whether {@code point} lies to the left (1) or the right (−1) of the line from {@code from} to {@code to}, or on it (0):
     * exactly, though doubles answer first where they are sure. Each of them is off by less than 2^-50 of itself, so the
     * product of two differences by less than 2^-47 of the product of the sums.
     */
    static int turn(Vec2 from, Vec2 to, Vec2 point) {
        double fu = from.u.toDouble();
        double fv = from.v.toDouble();
        double tu = to.u.toDouble();
        double tv = to.v.toDouble();
        double pu = point.u.toDouble();
        double pv = point.v.toDouble();
        double near = (tu - fu) * (pv - fv) - (tv - fv) * (pu - fu);
        double doubt = ((Math.abs(tu) + Math.abs(fu)) * (Math.abs(pv) + Math.abs(fv))
                + (Math.abs(tv) + Math.abs(fv)) * (Math.abs(pu) + Math.abs(fu))) * 0x1p-46;
        if (near > doubt) {
            return 1;
        }
        if (near < -doubt) {
            return -1;
        }
        return to.minus(from).cross(point.minus(from)).signum();
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

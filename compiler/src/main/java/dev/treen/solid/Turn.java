package dev.treen.solid;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact turning or mirroring of space about the origin: lengths, angles and volumes stay as they are.
 *
 * <p>A turn is known by where it takes the three axes. Quarter turns and mirrors are exact by nature; a turn by any other
 * angle uses a direction with rational sine and cosine (see {@link Directions}) and is then exact for that direction.
 *
 * @param x where the arrow (1, 0, 0) goes
 * @param y where the arrow (0, 1, 0) goes
 * @param z where the arrow (0, 0, 1) goes
 */
public record Turn(Vec3 x, Vec3 y, Vec3 z) {

    /** The turn that leaves everything in place. */
    public static final Turn NONE = new Turn(Side.RIGHT.unit(), Side.BACK.unit(), Side.TOP.unit());

    /**
     * Checks that the three arrows are of length one and square to each other.
     *
     * @throws IllegalArgumentException if they are not
     */
    public Turn {
        boolean unit = x.inner(x).equals(Rat.ONE) && y.inner(y).equals(Rat.ONE) && z.inner(z).equals(Rat.ONE);
        if (!unit || !x.inner(y).isZero() || !y.inner(z).isZero() || !z.inner(x).isZero()) {
            throw new IllegalArgumentException(
                    "a turn takes the axes to three arrows of length one, square to each other");
        }
    }

    /** The turn (or mirroring) that takes the three axes to the three given ways, for instance a part's length to the right. */
    public static Turn of(Side x, Side y, Side z) {
        return new Turn(x.unit(), y.unit(), z.unit());
    }

    /** A turn by {@code count} quarters about an axis, counter-clockwise when looking against the axis. */
    public static Turn quarter(Axis axis, int count) {
        int quarters = Math.floorMod(count, 4);
        BigFraction cos = BigFraction.of(quarters == 0 ? 1 : quarters == 2 ? -1 : 0);
        BigFraction sin = BigFraction.of(quarters == 1 ? 1 : quarters == 3 ? -1 : 0);
        return about(axis, Vec2.of(cos, sin));
    }

    /** The mirror image across the plane through the origin square to {@code axis}. */
    public static Turn mirror(Axis axis) {
        return switch (axis) {
            case X -> of(Side.LEFT, Side.BACK, Side.TOP);
            case Y -> of(Side.RIGHT, Side.FRONT, Side.TOP);
            case Z -> of(Side.RIGHT, Side.BACK, Side.BOTTOM);
        };
    }

    /**
     * A turn about an axis by the angle whose cosine and sine are given, as from {@link Directions#rational(double)}.
     *
     * @throws IllegalArgumentException if the squares of both do not add up to one
     */
    public static Turn about(Axis axis, Vec2 cosineAndSine) {
        Rat c = cosineAndSine.u;
        Rat s = cosineAndSine.v;
        return switch (axis) {
            case X -> new Turn(Side.RIGHT.unit(), new Vec3(Rat.ZERO, c, s), new Vec3(Rat.ZERO, s.negate(), c));
            case Y -> new Turn(new Vec3(c, Rat.ZERO, s.negate()), Side.BACK.unit(), new Vec3(s, Rat.ZERO, c));
            case Z -> new Turn(new Vec3(c, s, Rat.ZERO), new Vec3(s.negate(), c, Rat.ZERO), Side.TOP.unit());
        };
    }

    /** Where a point or arrow goes. */
    public Vec3 apply(Vec3 point) {
        return x.times(point.x).plus(y.times(point.y)).plus(z.times(point.z));
    }

    /** Where a plane goes. */
    public Plane apply(Plane plane) {
        return Plane.of(apply(plane.normal()), plane.offsetRat());
    }

    /** This turn followed by another. */
    public Turn then(Turn next) {
        return new Turn(next.apply(x), next.apply(y), next.apply(z));
    }

    /** The turn that undoes this one. */
    public Turn inverse() {
        return new Turn(new Vec3(x.x, y.x, z.x), new Vec3(x.y, y.y, z.y), new Vec3(x.z, y.z, z.z));
    }

    /** Whether this mirrors, so that a left hand becomes a right hand. */
    public boolean mirrors() {
        return x.cross(y).inner(z).signum() < 0;
    }
}

package dev.treen.solid;

import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A flat surface with a material side: the points {@code p} with {@code normal · p = offset}, material where it is less.
 *
 * <p>The normal is kept as whole numbers without a common divisor, so two planes are equal exactly when they are the same
 * surface facing the same way. The normal points out of the material.
 */
public final class Plane {

    private final Vec3 normal;
    private final Rat offset;

    private Plane(Vec3 normal, Rat offset) {
        this.normal = normal;
        this.offset = offset;
    }

    /**
     * The plane {@code normal · p = offset} with material where it is less.
     *
     * @throws IllegalArgumentException if the normal is zero
     */
    public static Plane of(Vec3 normal, BigFraction offset) {
        return of(normal, Rat.of(offset));
    }

    static Plane of(Vec3 normal, Rat offset) {
        if (normal.isZero()) {
            throw new IllegalArgumentException("a plane needs a normal that is not zero");
        }
        Rat factor = Rat.primitiveFactor(normal.x, normal.y, normal.z);
        return factor.equals(Rat.ONE)
                ? new Plane(normal, offset)
                : new Plane(normal.times(factor), offset.times(factor));
    }

    /** The plane through a point, with the given normal pointing out of the material. */
    public static Plane through(Vec3 point, Vec3 normal) {
        return of(normal, normal.inner(point));
    }

    /**
     * The plane through three points that are seen counter-clockwise from outside the material.
     *
     * @throws IllegalArgumentException if the points lie on one line
     */
    public static Plane through(Vec3 a, Vec3 b, Vec3 c) {
        return through(a, b.minus(a).cross(c.minus(a)));
    }

    /** The plane square to an axis at the given coordinate, looking to {@code side}. */
    public static Plane at(Side side, BigFraction coordinate) {
        return at(side, Rat.of(coordinate));
    }

    static Plane at(Side side, Rat coordinate) {
        return new Plane(side.unit(), side.sign() < 0 ? coordinate.negate() : coordinate);
    }

    /** The outward normal: whole numbers without a common divisor. */
    public Vec3 normal() {
        return normal;
    }

    /** The value of {@code normal · p} on the plane. */
    public BigFraction offset() {
        return offset.toFraction();
    }

    Rat offsetRat() {
        return offset;
    }

    /** The same surface with the material on its other side. */
    public Plane flip() {
        return new Plane(normal.negate(), offset.negate());
    }

    /** Where a point lies: minus one in the material, zero on the plane, plus one outside. */
    public int side(Vec3 point) {
        return value(point).signum();
    }

    /** {@code normal · point − offset}: the signed distance times the length of the normal. */
    Rat value(Vec3 point) {
        return normal.inner(point).minus(offset);
    }

    /** The plane moved by a vector. */
    public Plane translate(Vec3 by) {
        return new Plane(normal, offset.plus(normal.inner(by)));
    }

    /** The side this plane looks to, when it is square to an axis. */
    public java.util.Optional<Side> side() {
        Side found = squareSide();
        return java.util.Optional.ofNullable(found);
    }

    private @Nullable Side squareSide() {
        boolean x = !normal.x.isZero();
        boolean y = !normal.y.isZero();
        boolean z = !normal.z.isZero();
        if (x && !y && !z) {
            return Side.of(Axis.X, normal.x.signum());
        }
        if (y && !x && !z) {
            return Side.of(Axis.Y, normal.y.signum());
        }
        return z && !x && !y ? Side.of(Axis.Z, normal.z.signum()) : null;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Plane that && normal.equals(that.normal) && offset.equals(that.offset);
    }

    @Override
    public int hashCode() {
        return normal.hashCode() * 31 + offset.hashCode();
    }

    @Override
    public String toString() {
        return normal + " · p <= " + offset;
    }
}

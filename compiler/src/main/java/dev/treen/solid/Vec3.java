package dev.treen.solid;

import dev.treen.quantity.Length;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** An exact point or arrow in space: three fractions, in millimetres where it is a place. */
public final class Vec3 {

    /** The origin. */
    public static final Vec3 ZERO = new Vec3(Rat.ZERO, Rat.ZERO, Rat.ZERO);

    final Rat x;
    final Rat y;
    final Rat z;

    Vec3(Rat x, Rat y, Rat z) {
        this.x = x;
        this.y = y;
        this.z = z;
    }

    /** The point with the given coordinates. */
    public static Vec3 of(BigFraction x, BigFraction y, BigFraction z) {
        return new Vec3(Rat.of(x), Rat.of(y), Rat.of(z));
    }

    /** The point with the given whole coordinates. */
    public static Vec3 of(long x, long y, long z) {
        return new Vec3(Rat.of(x), Rat.of(y), Rat.of(z));
    }

    /** The point with the given lengths as coordinates. */
    public static Vec3 of(Length x, Length y, Length z) {
        return of(x.mm(), y.mm(), z.mm());
    }

    /** The vector of the given signed length along an axis. */
    public static Vec3 along(Axis axis, Length length) {
        return along(axis, length.mm());
    }

    /** The vector of the given signed length along an axis. */
    public static Vec3 along(Axis axis, BigFraction length) {
        return along(axis, Rat.of(length));
    }

    static Vec3 along(Axis axis, Rat length) {
        return switch (axis) {
            case X -> new Vec3(length, Rat.ZERO, Rat.ZERO);
            case Y -> new Vec3(Rat.ZERO, length, Rat.ZERO);
            case Z -> new Vec3(Rat.ZERO, Rat.ZERO, length);
        };
    }

    /** The coordinate along x. */
    public BigFraction x() {
        return x.toFraction();
    }

    /** The coordinate along y. */
    public BigFraction y() {
        return y.toFraction();
    }

    /** The coordinate along z. */
    public BigFraction z() {
        return z.toFraction();
    }

    /** The coordinate along {@code axis}. */
    public BigFraction get(Axis axis) {
        return at(axis).toFraction();
    }

    Rat at(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** This point with its coordinate along {@code axis} replaced. */
    public Vec3 with(Axis axis, BigFraction value) {
        return with(axis, Rat.of(value));
    }

    Vec3 with(Axis axis, Rat value) {
        return switch (axis) {
            case X -> new Vec3(value, y, z);
            case Y -> new Vec3(x, value, z);
            case Z -> new Vec3(x, y, value);
        };
    }

    /** The sum of both vectors. */
    public Vec3 plus(Vec3 other) {
        return new Vec3(x.plus(other.x), y.plus(other.y), z.plus(other.z));
    }

    /** The vector from {@code other} to this point. */
    public Vec3 minus(Vec3 other) {
        return new Vec3(x.minus(other.x), y.minus(other.y), z.minus(other.z));
    }

    /** The vector of the same length that points the other way. */
    public Vec3 negate() {
        return new Vec3(x.negate(), y.negate(), z.negate());
    }

    /** This vector, {@code factor} times as long. */
    public Vec3 times(BigFraction factor) {
        return times(Rat.of(factor));
    }

    Vec3 times(Rat factor) {
        return new Vec3(x.times(factor), y.times(factor), z.times(factor));
    }

    /** The scalar product. */
    public BigFraction dot(Vec3 other) {
        return inner(other).toFraction();
    }

    Rat inner(Vec3 other) {
        return x.times(other.x).plus(y.times(other.y)).plus(z.times(other.z));
    }

    /** The vector product, at right angles to both by the right-hand rule. */
    public Vec3 cross(Vec3 other) {
        return new Vec3(
                y.times(other.z).minus(z.times(other.y)),
                z.times(other.x).minus(x.times(other.z)),
                x.times(other.y).minus(y.times(other.x)));
    }

    Rat square() {
        return inner(this);
    }

    /** The squared length, which is exact where the length itself may have a root in it. */
    public BigFraction lengthSquared() {
        return inner(this).toFraction();
    }

    /** The length to double precision. */
    public double length() {
        return Math.sqrt(inner(this).toDouble());
    }

    boolean isZero() {
        return x.isZero() && y.isZero() && z.isZero();
    }

    /** The shortest vector of whole numbers that points the same way; this vector must not be zero. */
    Vec3 primitive() {
        return times(Rat.primitiveFactor(x, y, z));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Vec3 that && x.equals(that.x) && y.equals(that.y) && z.equals(that.z);
    }

    @Override
    public int hashCode() {
        return (x.hashCode() * 31 + y.hashCode()) * 31 + z.hashCode();
    }

    @Override
    public String toString() {
        return "(" + x + ", " + y + ", " + z + ")";
    }
}

package dev.treen.quantity;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact angle; it may be negative.
 *
 * @param degrees the angle in degrees
 */
public record Angle(BigFraction degrees) implements Incline, Comparable<Angle> {
    /** Square to something. */
    public static final Angle RIGHT = ofDegrees(90);

    /** Keeps the sign above the line, so that equal angles are equal records. */
    public Angle {
        degrees = Exact.canonical(degrees);
    }

    /** A whole number of degrees. */
    public static Angle ofDegrees(long degrees) {
        return new Angle(BigFraction.of(degrees));
    }

    /**
     * Brings an angle that a formula gave back among the exact ones.
     *
     * @param degrees degrees
     * @param step    how fine the answer is, in degrees, above zero
     * @throws IllegalArgumentException if {@code degrees} is not finite or {@code step} is not above zero
     */
    public static Angle nearest(double degrees, BigFraction step) {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("an angle must be a finite number");
        }
        BigFraction steps = BigFraction.from(degrees).divide(Exact.positive(step, "a rounding step"));
        return new Angle(step.multiply(Exact.nearest(steps)));
    }

    /** The sum, exact. */
    public Angle plus(Angle other) {
        return new Angle(degrees.add(other.degrees));
    }

    /** The difference, exact. */
    public Angle minus(Angle other) {
        return new Angle(degrees.subtract(other.degrees));
    }

    /** This many times the angle, exact. */
    public Angle times(BigFraction factor) {
        return new Angle(degrees.multiply(factor));
    }

    /** What is missing to a right angle, exact: a bevel set from the other arm. */
    public Angle complement() {
        return RIGHT.minus(this);
    }

    /** −1, 0 or 1 as this is below, at or above zero. */
    public int signum() {
        return degrees.signum();
    }

    @Override
    public double toDoubleDegrees() {
        return degrees.doubleValue();
    }

    @Override
    public double toDoubleTangent() {
        return Math.tan(Math.toRadians(toDoubleDegrees()));
    }

    @Override
    public String text() {
        return DecimalText.degrees(degrees, 2);
    }

    @Override
    public int compareTo(Angle other) {
        return Exact.compare(degrees, other.degrees);
    }
}

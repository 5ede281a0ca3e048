package dev.treen.quantity;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact length, or an exact difference of two: it may be negative.
 *
 * @param mm the length in millimetres, a fraction in lowest terms with its sign above the line
 */
public record Length(BigFraction mm) implements Comparable<Length> {
    /** No length at all. */
    public static final Length ZERO = new Length(BigFraction.ZERO);

    /** One inch, 25.4 mm by definition (international yard and pound agreement, 1959). */
    public static final Length INCH = new Length(BigFraction.of(127, 5));

    /** One foot: twelve inches. */
    public static final Length FOOT = INCH.times(12);

    /** Keeps the sign above the line, so that equal lengths are equal records. */
    public Length {
        mm = Exact.canonical(mm);
    }

    /** A whole number of millimetres. */
    public static Length ofMm(long mm) {
        return new Length(BigFraction.of(mm));
    }

    /** An exact number of millimetres. */
    public static Length ofMm(BigFraction mm) {
        return new Length(mm);
    }

    /**
     * {@code numerator/denominator} inches.
     *
     * @throws ArithmeticException if the denominator is zero
     */
    public static Length ofInches(long numerator, long denominator) {
        return ofInches(BigFraction.of(numerator, denominator));
    }

    /** An exact number of inches. */
    public static Length ofInches(BigFraction inches) {
        return INCH.times(inches);
    }

    /**
     * Brings a number that nature's formulas gave back among the exact lengths.
     *
     * @param mm   millimetres
     * @param step how fine the answer is, above zero
     * @return the multiple of {@code step} nearest to {@code mm}, ties away from zero
     * @throws IllegalArgumentException if {@code mm} is not a finite number or {@code step} is not above zero
     */
    public static Length nearest(double mm, Length step) {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("a length must be a finite number");
        }
        return new Length(BigFraction.from(mm)).roundTo(step);
    }

    /** The sum, exact. */
    public Length plus(Length other) {
        return new Length(mm.add(other.mm));
    }

    /** The difference, exact; negative if {@code other} is the longer. */
    public Length minus(Length other) {
        return new Length(mm.subtract(other.mm));
    }

    /** The same length the other way. */
    public Length negate() {
        return new Length(mm.negate());
    }

    /** This many times as long, exact. */
    public Length times(BigFraction factor) {
        return new Length(mm.multiply(factor));
    }

    /** This many times as long. */
    public Length times(long factor) {
        return new Length(mm.multiply(factor));
    }

    /**
     * An exact share of this length.
     *
     * @throws ArithmeticException if {@code divisor} is zero
     */
    public Length dividedBy(BigFraction divisor) {
        return new Length(mm.divide(divisor));
    }

    /**
     * An exact share of this length.
     *
     * @throws ArithmeticException if {@code divisor} is zero
     */
    public Length dividedBy(long divisor) {
        return new Length(mm.divide(divisor));
    }

    /**
     * How many times {@code other} goes into this, exact and without a unit.
     *
     * @throws ArithmeticException if {@code other} is zero
     */
    public BigFraction ratioTo(Length other) {
        return Exact.canonical(mm.divide(other.mm));
    }

    /** The length without its sign. */
    public Length abs() {
        return new Length(mm.abs());
    }

    /** The shorter of the two. */
    public Length min(Length other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** The longer of the two. */
    public Length max(Length other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** −1, 0 or 1 as this is below, at or above zero. */
    public int signum() {
        return mm.signum();
    }

    /** Whether this is no length at all. */
    public boolean isZero() {
        return mm.signum() == 0;
    }

    /** Inches, exact. */
    public BigFraction inches() {
        return ratioTo(INCH);
    }

    /** Millimetres as a floating number: for nature's formulas only, never for deciding whether parts meet. */
    public double toDoubleMm() {
        return mm.doubleValue();
    }

    /**
     * The least multiple of {@code step} that is not shorter.
     *
     * @throws IllegalArgumentException if {@code step} is not above zero
     */
    public Length roundUpTo(Length step) {
        return step.times(BigFraction.of(Exact.ceiling(stepsOf(step))));
    }

    /**
     * The greatest multiple of {@code step} that is not longer.
     *
     * @throws IllegalArgumentException if {@code step} is not above zero
     */
    public Length roundDownTo(Length step) {
        return step.times(BigFraction.of(Exact.floor(stepsOf(step))));
    }

    /**
     * The nearest multiple of {@code step}; a tie goes away from zero.
     *
     * @throws IllegalArgumentException if {@code step} is not above zero
     */
    public Length roundTo(Length step) {
        return step.times(BigFraction.of(Exact.nearest(stepsOf(step))));
    }

    private BigFraction stepsOf(Length step) {
        return mm.divide(Exact.positive(step.mm, "a rounding step"));
    }

    @Override
    public int compareTo(Length other) {
        return Exact.compare(mm, other.mm);
    }

    /** Millimetres for a person reading a log: the exact fraction, e.g. {@code 127/5 mm}. */
    @Override
    public String toString() {
        return DecimalText.exact(mm) + " mm";
    }
}

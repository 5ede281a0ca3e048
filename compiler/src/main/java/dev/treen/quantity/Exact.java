package dev.treen.quantity;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Order and whole-number steps of exact fractions, in one place because each has a sign that is easy to get wrong.
 * Use {@link #compare} in place of the library's own {@code compareTo}, which orders two negative fractions by their
 * size without the sign.
 */
public final class Exact {
    static final BigFraction HALF = BigFraction.of(1, 2);

    private Exact() {
    }

    /** The same value with its sign above the line; the library may keep it below. */
    public static BigFraction canonical(BigFraction value) {
        return value.getDenominator().signum() < 0
                ? BigFraction.of(value.getNumerator().negate(), value.getDenominator().negate())
                : value;
    }

    /** Below zero, zero or above as {@code a} is less than, equal to or more than {@code b}. */
    public static int compare(BigFraction a, BigFraction b) {
        BigFraction left = canonical(a);
        BigFraction right = canonical(b);
        return left.getNumerator()
                .multiply(right.getDenominator())
                .compareTo(right.getNumerator().multiply(left.getDenominator()));
    }

    /** The largest whole number that is not above {@code value}. */
    public static BigInteger floor(BigFraction value) {
        BigFraction v = canonical(value);
        BigInteger numerator = v.getNumerator();
        BigInteger denominator = v.getDenominator();
        return numerator.subtract(numerator.mod(denominator)).divide(denominator);
    }

    /** The smallest whole number that is not below {@code value}. */
    public static BigInteger ceiling(BigFraction value) {
        return floor(value.negate()).negate();
    }

    /** The nearest whole number; a tie goes away from zero, so that a value and its negative read alike. */
    public static BigInteger nearest(BigFraction value) {
        BigInteger size = floor(value.abs().add(HALF));
        return value.signum() < 0 ? size.negate() : size;
    }

    /** Whether {@code value} has no fraction. */
    public static boolean isWhole(BigFraction value) {
        return value.getDenominator().abs().equals(BigInteger.ONE);
    }

    /** {@code value}, if it is above zero; a step or a divisor of the program's own that is not is a mistake. */
    static BigFraction positive(BigFraction value, String what) {
        if (value.signum() <= 0) {
            throw new IllegalArgumentException(what + " must be above zero");
        }
        return value;
    }
}

package dev.treen.quantity;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whole-number steps of exact fractions, in one place because each has a sign that is easy to get wrong. */
final class Exact {
    static final BigFraction HALF = BigFraction.of(1, 2);

    private Exact() {
    }

    /** The same value with its sign above the line; the library may keep it below. */
    static BigFraction canonical(BigFraction value) {
        return value.getDenominator().signum() < 0
                ? BigFraction.of(value.getNumerator().negate(), value.getDenominator().negate())
                : value;
    }

    /** The largest whole number that is not above {@code value}. */
    static BigInteger floor(BigFraction value) {
        BigFraction v = canonical(value);
        BigInteger numerator = v.getNumerator();
        BigInteger denominator = v.getDenominator();
        return numerator.subtract(numerator.mod(denominator)).divide(denominator);
    }

    /** The smallest whole number that is not below {@code value}. */
    static BigInteger ceiling(BigFraction value) {
        return floor(value.negate()).negate();
    }

    /** The nearest whole number; a tie goes away from zero, so that a value and its negative read alike. */
    static BigInteger nearest(BigFraction value) {
        BigInteger size = floor(value.abs().add(HALF));
        return value.signum() < 0 ? size.negate() : size;
    }

    /** Whether {@code value} has no fraction. */
    static boolean isWhole(BigFraction value) {
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

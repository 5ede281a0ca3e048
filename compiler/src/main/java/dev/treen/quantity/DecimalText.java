package dev.treen.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Writes an exact number in decimal figures: always with a point, never with separators, never {@code -0}, whatever
 * the machine's locale. Ties go away from zero.
 */
public final class DecimalText {
    private static final BigInteger FIVE = BigInteger.valueOf(5);

    private DecimalText() {
    }

    /**
     * Up to {@code decimals} places, trailing zeros left out.
     *
     * @throws IllegalArgumentException if {@code decimals} is below zero
     */
    public static String write(BigFraction value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * Up to {@code decimals} places of a number that nature's formulas gave.
     *
     * @throws IllegalArgumentException if {@code value} is not finite or {@code decimals} is below zero
     */
    public static String write(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only a finite number can be written");
        }
        return write(BigFraction.from(value), decimals);
    }

    /**
     * Exactly {@code decimals} places, as a column of money wants it.
     *
     * @throws IllegalArgumentException if {@code decimals} is below zero
     */
    public static String fixed(BigFraction value, int decimals) {
        return rounded(value, decimals).toPlainString();
    }

    /** A ratio in percent, e.g. {@code 12.5%} for an eighth. */
    public static String percent(BigFraction ratio, int decimals) {
        return write(ratio.multiply(100), decimals) + "%";
    }

    /** An angle, e.g. {@code 7.13°}. */
    public static String degrees(BigFraction degrees, int decimals) {
        return write(degrees, decimals) + "°";
    }

    /** A temperature, e.g. {@code 21.5 °C}. */
    public static String celsius(BigFraction degrees, int decimals) {
        return write(degrees, decimals) + " °C";
    }

    /** The whole of the number: as a decimal if it has an end, as a fraction in lowest terms if not. */
    public static String exact(BigFraction value) {
        BigFraction v = Exact.canonical(value);
        BigInteger numerator = v.getNumerator();
        BigInteger denominator = v.getDenominator();
        // Only twos and fives below the line come to an end in tenths.
        int twos = denominator.getLowestSetBit();
        BigInteger odd = denominator.shiftRight(twos);
        int fives = 0;
        while (odd.mod(FIVE).signum() == 0) {
            odd = odd.divide(FIVE);
            fives++;
        }
        return odd.equals(BigInteger.ONE) ? write(v, Math.max(twos, fives)) : numerator + "/" + denominator;
    }

    private static BigDecimal rounded(BigFraction value, int decimals) {
        if (decimals < 0) {
            throw new IllegalArgumentException("places after the point are not below zero");
        }
        BigDecimal numerator = new BigDecimal(value.getNumerator());
        return numerator.divide(new BigDecimal(value.getDenominator()), decimals, RoundingMode.HALF_UP);
    }
}

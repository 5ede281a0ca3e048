package dev.treen.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Reads numbers exactly as they are written: {@code 2.5}, {@code 3/8}, {@code 2 3/8}. Digits are 0 to 9 and the
 * point is a point, whatever the locale. A number that is too long is turned down after a glance.
 */
public final class NumberText {
    /** The most digits a number may have, before and after the point together. */
    public static final int MAX_DIGITS = 30;

    private static final int QUOTED = 20;

    private NumberText() {
    }

    /** A whole or decimal number, with a minus sign or without: {@code 9}, {@code 2.5}, {@code -0.4}. */
    public static Outcome<BigFraction> decimal(String text) {
        int start = text.startsWith("-") ? 1 : 0;
        int digits = 0;
        int point = -1;
        for (int i = start; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                if (++digits > MAX_DIGITS) {
                    return tooLong();
                }
            } else if (c == '.' && point < 0 && i > start && i < text.length() - 1) {
                point = i;
            } else {
                return notANumber(text, c == ',' ? "; write the decimal point as a point" : "");
            }
        }
        return digits == 0 ? notANumber(text, "") : Outcome.of(fractionOf(new BigDecimal(text)));
    }

    /**
     * A fraction of two whole numbers, as the lexer finds them beside a bar.
     *
     * @param numerator   digits
     * @param denominator digits; zero is refused
     */
    public static Outcome<BigFraction> fraction(String numerator, String denominator) {
        return whole(numerator).then(top -> whole(denominator).then(bottom -> bottom.signum() == 0
                ? Refusal.divisionByZero().<BigFraction>asOutcome()
                : Outcome.of(BigFraction.of(top, bottom))));
    }

    /**
     * A whole number and a fraction: {@code 2 3/8}.
     *
     * @param whole       digits
     * @param numerator   digits
     * @param denominator digits; zero is refused
     */
    public static Outcome<BigFraction> mixed(String whole, String numerator, String denominator) {
        return whole(whole).then(units -> fraction(numerator, denominator).map(rest -> rest.add(units)));
    }

    private static Outcome<BigInteger> whole(String text) {
        return text.startsWith("-") || text.indexOf('.') >= 0
                ? notANumber(text, "")
                : decimal(text).map(BigFraction::getNumerator);
    }

    private static BigFraction fractionOf(BigDecimal value) {
        return BigFraction.of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    private static <T> Outcome<T> tooLong() {
        return new Refusal(Refusal.Kind.TOO_LONG, "a number may have at most " + MAX_DIGITS + " digits").asOutcome();
    }

    static <T> Outcome<T> notANumber(String text, String hint) {
        // Only the beginning is repeated: a message must stay a line, whatever was pasted into the file.
        String quoted = text.length() <= QUOTED ? text : text.substring(0, QUOTED) + "…";
        return new Refusal(Refusal.Kind.NOT_A_NUMBER, "\"" + quoted + "\" is not a number" + hint).asOutcome();
    }
}

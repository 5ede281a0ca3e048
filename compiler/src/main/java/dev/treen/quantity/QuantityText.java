package dev.treen.quantity;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Writes any quantity for a person: a hover, a list, a message. */
public final class QuantityText {
    private static final int NUMBER_DECIMALS = 4;
    private static final BigInteger MINUTES_IN_HOUR = BigInteger.valueOf(60);
    private static final BigInteger HOURS_IN_DAY = BigInteger.valueOf(24);

    private QuantityText() {
    }

    /**
     * The quantity in the units that suit its size, rounded for reading.
     *
     * @param quantity what to write
     * @param format   how lengths are written; areas and volumes follow it into metres or feet
     */
    public static String write(Quantity quantity, LengthFormat format) {
        BigFraction amount = quantity.amount();
        return switch (quantity.dimension()) {
            case NUMBER -> DecimalText.write(amount, NUMBER_DECIMALS);
            case LENGTH -> format.text(Length.ofMm(amount));
            case AREA -> inUnit(quantity, metric(format) ? OutputUnit.SQUARE_METRE : OutputUnit.SQUARE_FOOT);
            case VOLUME -> inUnit(quantity, metric(format) ? OutputUnit.LITRE : OutputUnit.BOARD_FOOT);
            case ANGLE -> DecimalText.degrees(amount, 2);
            case TEMPERATURE -> DecimalText.celsius(amount, 1);
            case MASS -> mass(amount);
            case DURATION -> duration(amount);
            case MONEY -> DecimalText.fixed(amount, 2);
        };
    }

    /** A range as a project writes it, {@code 6 mm .. 9 mm}. */
    public static String write(QuantityRange range, LengthFormat format) {
        return write(range.low(), format) + " .. " + write(range.high(), format);
    }

    private static String inUnit(Quantity quantity, OutputUnit unit) {
        return unit.text(quantity, 3).orElseThrow();
    }

    private static boolean metric(LengthFormat format) {
        return switch (format) {
            case LengthFormat.Metric _ -> true;
            case LengthFormat.FractionalInches _ -> false;
        };
    }

    private static String mass(BigFraction grams) {
        return Exact.compare(grams.abs(), BigFraction.of(1000)) < 0
                ? DecimalText.write(grams, 0) + " g"
                : DecimalText.write(grams.divide(1000), 2) + " kg";
    }

    /** Whole minutes, in the largest units that they fill: {@code 2 d 3 h 15 min}. */
    private static String duration(BigFraction minutes) {
        BigInteger whole = Exact.nearest(minutes);
        BigInteger[] hours = whole.abs().divideAndRemainder(MINUTES_IN_HOUR);
        BigInteger[] days = hours[0].divideAndRemainder(HOURS_IN_DAY);
        String text = (part(days[0], " d ") + part(days[1], " h ") + part(hours[1], " min ")).strip();
        return text.isEmpty() ? "0 min" : whole.signum() < 0 ? "-" + text : text;
    }

    private static String part(BigInteger count, String unit) {
        return count.signum() == 0 ? "" : count + unit;
    }
}

package dev.treen.quantity;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How lengths are written for the bench. Rounded figures are for reading only: they are never added up again.
 */
public sealed interface LengthFormat {
    /** Millimetres to a tenth, as fits are spoken of. */
    static LengthFormat millimetres() {
        return new Metric(1);
    }

    /** Inches to the nearest thirty-second, as cabinet work is set out. */
    static LengthFormat inches() {
        return inches(32);
    }

    /** Inches to the nearest of so many divisions, with a + or - where a length lies a shade off its mark. */
    static LengthFormat inches(int denominator) {
        return new FractionalInches(denominator, false, Remainder.SIGN);
    }

    /** The names by which a maker asks for a way of writing lengths. */
    List<String> NAMES = List.of("mm", "in", "in/16", "in/32", "in/64");

    /** The way of that name (see {@link #NAMES}). */
    static Optional<LengthFormat> named(String name) {
        return switch (name) {
            case "mm" -> Optional.of(millimetres());
            case "in", "in/32" -> Optional.of(inches());
            case "in/16" -> Optional.of(inches(16));
            case "in/64" -> Optional.of(inches(64));
            default -> Optional.empty();
        };
    }

    /** Whether figures are inches, and areas and volumes go with them. */
    default boolean imperial() {
        return unit().equals("in");
    }

    /** The figure alone, for a column whose head names the unit. */
    String figure(Length length);

    /** The figure with its unit. */
    String text(Length length);

    /** The unit of {@link #figure}. */
    String unit();

    /** The exact length for which the written figure stands. */
    Length shown(Length length);

    /** What the figure adds to the true length (negative: what it leaves out); zero if nothing was rounded. */
    default Length loss(Length length) {
        return shown(length).minus(length);
    }

    /**
     * Millimetres in decimals.
     *
     * @param decimals at most this many places after the point, 0 to 6; zeros at the end are left out
     */
    record Metric(int decimals) implements LengthFormat {
        /**
         * Checks the places.
         *
         * @throws IllegalArgumentException if {@code decimals} is not from 0 to 6
         */
        public Metric {
            if (decimals < 0 || decimals > 6) {
                throw new IllegalArgumentException("millimetres are written with 0 to 6 places after the point");
            }
        }

        @Override
        public String figure(Length length) {
            return DecimalText.write(length.mm(), decimals);
        }

        @Override
        public String text(Length length) {
            return figure(length) + " mm";
        }

        @Override
        public String unit() {
            return "mm";
        }

        @Override
        public Length shown(Length length) {
            return length.roundTo(Length.ofMm(BigFraction.of(BigInteger.ONE, BigInteger.TEN.pow(decimals))));
        }
    }

    /** How fractional inches say that a length is not on the mark. */
    enum Remainder {
        /** They do not. */
        SILENT,
        /**
         * "heavy" or "light" behind the figure, if the length is more than an eighth of a division off its mark.
         * Common practice, no source; the threshold is Treen's own.
         */
        HEAVY_LIGHT,
        /** + or - behind the figure, for the same: short enough for lists and drawings. */
        SIGN,
        /** "just over" or "just under" before the figure, if the length is off its mark at all. */
        JUST
    }

    /**
     * Inches and reduced fractions, to the nearest mark of a rule; a tie goes to the mark further from zero.
     *
     * @param denominator divisions to the inch: 1, 2, 4, 8, 16, 32 or 64
     * @param feet        whether {@link #text} gives twelve inches as a foot
     * @param remainder   how a length off the mark is told
     */
    record FractionalInches(int denominator, boolean feet, Remainder remainder) implements LengthFormat {
        private static final BigInteger TWELVE = BigInteger.valueOf(12);
        private static final BigFraction NOTICED = BigFraction.of(1, 8);

        /**
         * Checks the divisions.
         *
         * @throws IllegalArgumentException if no rule is divided so
         */
        public FractionalInches {
            if (denominator < 1 || denominator > 64 || Integer.bitCount(denominator) != 1) {
                throw new IllegalArgumentException("an inch is divided in 1, 2, 4, 8, 16, 32 or 64");
            }
        }

        /** Inches only, and silent about what is off the mark. */
        public FractionalInches(int denominator) {
            this(denominator, false, Remainder.SILENT);
        }

        @Override
        public String figure(Length length) {
            return marked(length, inches(marks(length).abs(), ""));
        }

        @Override
        public String text(Length length) {
            return marked(length, feet ? feetAndInches(marks(length).abs()) : inches(marks(length).abs(), " in"));
        }

        @Override
        public String unit() {
            return "in";
        }

        @Override
        public Length shown(Length length) {
            return length.roundTo(Length.ofInches(1, denominator));
        }

        private BigInteger marks(Length length) {
            return Exact.nearest(length.inches().multiply(denominator));
        }

        private String inches(BigInteger marks, String unit) {
            BigInteger[] parts = marks.divideAndRemainder(BigInteger.valueOf(denominator));
            BigFraction rest = BigFraction.of(parts[1], BigInteger.valueOf(denominator));
            String fraction = rest.signum() == 0 ? "" : rest.getNumerator() + "/" + rest.getDenominator();
            if (fraction.isEmpty()) {
                return parts[0] + unit;
            }
            return (parts[0].signum() == 0 ? fraction : parts[0] + " " + fraction) + unit;
        }

        private String feetAndInches(BigInteger marks) {
            BigInteger[] parts = marks.divideAndRemainder(TWELVE.multiply(BigInteger.valueOf(denominator)));
            if (parts[0].signum() == 0) {
                return inches(parts[1], " in");
            }
            return parts[1].signum() == 0 ? parts[0] + " ft" : parts[0] + " ft " + inches(parts[1], " in");
        }

        private static boolean unnoticed(BigFraction off) {
            return Exact.compare(off.abs(), NOTICED) <= 0;
        }

        private static String behindFigure(String text, String sign) {
            boolean unit = text.endsWith(" in") || text.endsWith(" ft");
            int end = unit ? text.length() - " in".length() : text.length();
            return text.substring(0, end) + sign + text.substring(end);
        }

        /** Puts the sign and the word for the remainder round a figure that was written without either. */
        private String marked(Length length, String figure) {
            String signed = marks(length).signum() < 0 ? "-" + figure : figure;
            // In divisions, and of the size without its sign: a negative length is as heavy as its positive.
            BigFraction off = length.abs().minus(shown(length).abs()).inches().multiply(denominator);
            return switch (remainder) {
                case SILENT -> signed;
                case HEAVY_LIGHT ->
                    unnoticed(off) ? signed : signed + (off.signum() > 0 ? " heavy" : " light");
                case SIGN -> unnoticed(off) ? signed : behindFigure(signed, off.signum() > 0 ? "+" : "-");
                case JUST -> off.signum() == 0 ? signed : (off.signum() > 0 ? "just over " : "just under ") + signed;
            };
        }
    }
}

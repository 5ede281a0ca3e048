package dev.treen.drawing;

import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The slant of an edge, whichever way it leans.
 *
 * @param in the two ways in which the edge runs
 * @param text how a bevel is set to it
 */
record Slope(Set<Measured> in, String text) {
    private static final double NEAR = 0.02;
    private static final double STEEPEST_RATIO = 20;

    /** The slope of an edge with these runs, if it is one. */
    static Optional<Slope> of(Measured one, Length alongOne, Measured other, Length alongOther) {
        if (alongOne.isZero() || alongOther.isZero()) {
            return Optional.empty();
        }
        return Optional.of(new Slope(Set.of(one, other), text(alongOne.abs(), alongOther.abs())));
    }

    static String text(Length one, Length other) {
        BigFraction ratio = one.compareTo(other) > 0 ? one.ratioTo(other) : other.ratioTo(one);
        double value = ratio.doubleValue();
        // Dovetails are spoken of as one in so many; other bevels in degrees.
        if (value > 3 && Math.abs(value - Math.rint(value)) < NEAR * value && value < STEEPEST_RATIO) {
            return "1:" + Math.round(value);
        }
        return DecimalText.write(Math.toDegrees(Math.atan(1 / value)), 1) + "°";
    }
}

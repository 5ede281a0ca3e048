package dev.treen.solid;

import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Exact directions for angles that have no exact sine.
 *
 * <p>What the trade gives as a slope, 1:8 or 1:6, is a fraction as it stands and needs nothing from here; so are 45° faces
 * and all quarter turns. For other angles, a point is taken that lies exactly on the unit circle and has fractions as
 * coordinates: ((1 − t²)/(1 + t²), 2t/(1 + t²)) for a fraction t near tan(angle/2), the classical rational
 * parametrisation. A turn by it keeps all lengths exactly; only the angle differs, by at most {@link #ERROR_RADIANS}. For
 * t the fraction with the smallest denominator within the bound is chosen, which keeps later arithmetic short.
 */
public final class Directions {

    /** The largest difference between the angle asked for and the angle given: one millimetre in a kilometre. */
    public static final double ERROR_RADIANS = 1e-6;

    private Directions() {
    }

    /**
     * The cosine and sine, exact fractions on the unit circle, of an angle within {@link #ERROR_RADIANS} of the one given
     * (and exactly it for multiples of 90°).
     *
     * @throws IllegalArgumentException if the angle is not a finite number
     */
    public static Vec2 rational(double angleDegrees) {
        if (!Double.isFinite(angleDegrees)) {
            throw new IllegalArgumentException("an angle is a finite number of degrees: " + angleDegrees);
        }
        double quarters = Math.rint(angleDegrees / 90);
        // The rest is at most 45 degrees either way, so t stays below one half and its error doubles at most.
        Vec2 rest = small(Math.toRadians(angleDegrees - quarters * 90));
        return switch ((int) Math.floorMod((long) quarters, 4L)) {
            case 0 -> rest;
            case 1 -> new Vec2(rest.v.negate(), rest.u);
            case 2 -> new Vec2(rest.u.negate(), rest.v.negate());
            default -> new Vec2(rest.v, rest.u.negate());
        };
    }

    private static Vec2 small(double radians) {
        // d(angle)/dt = 2/(1 + t²) <= 2; a little is left for the rounding of tan.
        double t = Math.tan(Math.abs(radians) / 2);
        Rat near = simplest(t - ERROR_RADIANS * 0.499, t + ERROR_RADIANS * 0.499);
        Rat signed = radians < 0 ? near.negate() : near;
        Rat scale = Rat.ONE.plus(signed.square()).inverse();
        return new Vec2(Rat.ONE.minus(signed.square()).times(scale), signed.times(2).times(scale));
    }

    /** The fraction with the smallest denominator between two numbers (by their continued fractions). */
    private static Rat simplest(double low, double high) {
        return low <= 0 ? Rat.ZERO : simplest(exact(low), exact(high));
    }

    private static Rat simplest(Rat low, Rat high) {
        BigInteger whole = low.numerator().divide(low.denominator());
        Rat floor = Rat.of(BigFraction.of(whole));
        if (floor.equals(low)) {
            return low;
        }
        Rat next = floor.plus(Rat.ONE);
        return next.compareTo(high) <= 0
                ? next
                : floor.plus(simplest(high.minus(floor).inverse(), low.minus(floor).inverse()).inverse());
    }

    private static Rat exact(double value) {
        return Rat.of(BigFraction.from(value));
    }
}

package dev.treen.quantity;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact slope, as dovetails and tapers are set out: {@code 1:8} leans one for a run of eight.
 *
 * @param rise what it leans for a run of one; zero or above
 */
public record Slope(BigFraction rise) implements Incline, Comparable<Slope> {
    private static final BigFraction ANGLE_STEP = BigFraction.of(1, 10_000);
    private static final int LONGEST_RUN = 50;
    private static final int MILLION = 1_000_000;
    private static final double STEEPEST = 1000;

    /**
     * Checks the sign: which way a slope leans is for the joint to say.
     *
     * @throws IllegalArgumentException if {@code rise} is below zero
     */
    public Slope {
        rise = Exact.canonical(rise);
        if (rise.signum() < 0) {
            throw new IllegalArgumentException("a slope is not below zero");
        }
    }

    /**
     * The slope {@code rise:run}.
     *
     * @throws IllegalArgumentException if {@code rise} is below zero or {@code run} is not above it
     */
    public static Slope of(long rise, long run) {
        return new Slope(BigFraction.of(rise).divide(Exact.positive(BigFraction.of(run), "the run of a slope")));
    }

    /** The slope {@code rise:run} that a user wrote, or a refusal. */
    public static Outcome<Slope> of(BigFraction rise, BigFraction run) {
        if (run.signum() == 0) {
            return Refusal.divisionByZero().asOutcome();
        }
        BigFraction ratio = rise.divide(run);
        return ratio.signum() < 0
                ? Refusal.mismatch("a slope is written with two numbers above zero").asOutcome()
                : Outcome.of(new Slope(ratio));
    }

    /**
     * The slope of an angle below 90°: {@code 1:n} where that is what the angle was written as, else its tangent to the
     * nearest millionth, which over a part of 1 m is a thousandth of a millimetre.
     */
    public static Slope near(Angle angle) {
        for (int run = 1; run <= LONGEST_RUN; run++) {
            Slope slope = of(1, run);
            if (slope.toAngle().equals(angle)) {
                return slope;
            }
        }
        double tangent = Math.min(Math.abs(angle.toDoubleTangent()), STEEPEST);
        return new Slope(BigFraction.of(Math.round(tangent * MILLION), MILLION));
    }

    /** What the slope leans over a run, exact. */
    public Length over(Length run) {
        return run.times(rise);
    }

    /** The angle it stands for, to the nearest ten-thousandth of a degree: the true one has no end of digits. */
    public Angle toAngle() {
        return Angle.nearest(toDoubleDegrees(), ANGLE_STEP);
    }

    @Override
    public double toDoubleDegrees() {
        return Math.toDegrees(Math.atan(toDoubleTangent()));
    }

    @Override
    public double toDoubleTangent() {
        return rise.doubleValue();
    }

    /** In the lowest whole numbers, {@code 1:8} or {@code 2:15}. */
    @Override
    public String text() {
        return rise.getNumerator() + ":" + rise.getDenominator();
    }

    @Override
    public int compareTo(Slope other) {
        return Exact.compare(rise, other.rise);
    }
}

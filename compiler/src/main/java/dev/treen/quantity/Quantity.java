package dev.treen.quantity;

import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * An exact amount of something measurable, as a project's expressions handle it. Arithmetic never throws: what cannot
 * be worked out is a refusal that says why.
 *
 * @param amount    how much, in the base unit of the dimension
 * @param dimension of what
 */
public record Quantity(BigFraction amount, Dimension dimension) {
    /** A product with a longer numerator or denominator than this is refused: squaring in a loop must not hang. */
    public static final int MAX_BITS = 4096;

    /** Keeps the sign above the line, so that equal quantities are equal records. */
    public Quantity {
        amount = Exact.canonical(amount);
    }

    /** A plain number or count. */
    public static Quantity number(long value) {
        return number(BigFraction.of(value));
    }

    /** A plain number or ratio. */
    public static Quantity number(BigFraction value) {
        return new Quantity(value, Dimension.NUMBER);
    }

    /** A length. */
    public static Quantity of(Length length) {
        return new Quantity(length.mm(), Dimension.LENGTH);
    }

    /** An angle. */
    public static Quantity of(Angle angle) {
        return new Quantity(angle.degrees(), Dimension.ANGLE);
    }

    /** This as a length, if it is one. */
    public Optional<Length> asLength() {
        return as(Dimension.LENGTH).map(Length::new);
    }

    /** This as an angle, if it is one. */
    public Optional<Angle> asAngle() {
        return as(Dimension.ANGLE).map(Angle::new);
    }

    /** This as a plain number, if it is one. */
    public Optional<BigFraction> asNumber() {
        return as(Dimension.NUMBER);
    }

    /** This as a whole number, if it is one and an {@code int} can hold it; it may be negative. */
    public OptionalInt asWhole() {
        return as(Dimension.NUMBER)
                .filter(Exact::isWhole)
                .map(BigFraction::getNumerator)
                .filter(n -> n.bitLength() < Integer.SIZE)
                .map(n -> OptionalInt.of(n.intValue()))
                .orElseGet(OptionalInt::empty);
    }

    /** The amount in the base unit, if this is of the wanted dimension. */
    public Optional<BigFraction> as(Dimension wanted) {
        return dimension == wanted ? Optional.of(amount) : Optional.empty();
    }

    /** The sum; refused unless both are of one kind that can be added. */
    public Outcome<Quantity> plus(Quantity other) {
        return result(
                dimension.sum(other.dimension),
                () -> amount.add(other.amount),
                other.dimension.phrase() + " cannot be added to " + dimension.phrase());
    }

    /** The difference; refused unless both are of one kind that can be added. */
    public Outcome<Quantity> minus(Quantity other) {
        return result(
                dimension.sum(other.dimension),
                () -> amount.subtract(other.amount),
                other.dimension.phrase() + " cannot be taken from " + dimension.phrase());
    }

    /** The product; lengths make areas and volumes. */
    public Outcome<Quantity> times(Quantity other) {
        return result(
                dimension.product(other.dimension),
                () -> amount.multiply(other.amount),
                dimension.phrase() + " cannot be multiplied by " + other.dimension.phrase());
    }

    /** The quotient; like by like makes a number. Division by zero is refused. */
    public Outcome<Quantity> dividedBy(Quantity other) {
        if (other.amount.signum() == 0 && dimension.quotient(other.dimension).isPresent()) {
            return Refusal.divisionByZero().asOutcome();
        }
        return result(
                dimension.quotient(other.dimension),
                () -> amount.divide(other.amount),
                dimension.phrase() + " cannot be divided by " + other.dimension.phrase());
    }

    /**
     * The negative. Refused for a temperature, because minus five degrees is not the opposite of five: a reader of
     * literals gives the sign to {@link Unit#of(BigFraction)} together with the number.
     */
    public Outcome<Quantity> negate() {
        return dimension == Dimension.TEMPERATURE
                ? Refusal.mismatch("a temperature has no opposite; write the sign before the number").asOutcome()
                : Outcome.of(new Quantity(amount.negate(), dimension));
    }

    /** The amount without its sign; refused for a temperature, which has no zero to measure from. */
    public Outcome<Quantity> abs() {
        return amount.signum() < 0 ? negate() : Outcome.of(this);
    }

    /** Below zero, zero or above as this is less than, equal to or more than {@code other}; refused for another kind. */
    public Outcome<Integer> compareWith(Quantity other) {
        return dimension == other.dimension
                ? Outcome.of(Exact.compare(amount, other.amount))
                : Refusal.mismatch(dimension.phrase() + " cannot be compared with " + other.dimension.phrase())
                        .asOutcome();
    }

    /** The nearest multiple of {@code step}, ties away from zero. */
    public Outcome<Quantity> roundTo(Quantity step) {
        return stepped(step, Exact::nearest);
    }

    /** The least multiple of {@code step} that is not below this. */
    public Outcome<Quantity> roundUpTo(Quantity step) {
        return stepped(step, Exact::ceiling);
    }

    /** The greatest multiple of {@code step} that is not above this. */
    public Outcome<Quantity> roundDownTo(Quantity step) {
        return stepped(step, Exact::floor);
    }

    private Outcome<Quantity> stepped(Quantity step, Function<BigFraction, BigInteger> toWhole) {
        if (step.amount.signum() <= 0 && dimension.sum(step.dimension).isPresent()) {
            return Refusal.stepNotPositive().asOutcome();
        }
        return result(
                dimension.sum(step.dimension),
                () -> step.amount.multiply(toWhole.apply(amount.divide(step.amount))),
                dimension.phrase() + " cannot be rounded to " + step.dimension.phrase());
    }

    private static Outcome<Quantity> result(
            Optional<Dimension> dimension, Supplier<BigFraction> amount, String mismatch) {
        if (dimension.isEmpty()) {
            return Refusal.mismatch(mismatch).asOutcome();
        }
        BigFraction value = amount.get();
        return value.getNumerator().bitLength() > MAX_BITS || value.getDenominator().bitLength() > MAX_BITS
                ? Refusal.tooLarge().asOutcome()
                : Outcome.of(new Quantity(value, dimension.get()));
    }
}

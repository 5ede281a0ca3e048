package dev.treen.quantity;

import java.util.Optional;

/**
 * All the quantities from {@code low} to {@code high}, both ends included: what {@code a..b} means.
 *
 * @param low  the lower end
 * @param high the upper end, of the same dimension and never below {@code low}
 */
public record QuantityRange(Quantity low, Quantity high) {
    /**
     * Checks the ends. For ends that a user wrote, ask {@link #of} instead.
     *
     * @throws IllegalArgumentException if the ends are of two dimensions or the wrong way round
     */
    public QuantityRange {
        if (low.dimension() != high.dimension() || Exact.compare(low.amount(), high.amount()) > 0) {
            throw new IllegalArgumentException("the ends of a range must be of one kind and in order");
        }
    }

    /** The range a user wrote, or a refusal if its ends differ in kind or are the wrong way round. */
    public static Outcome<QuantityRange> of(Quantity low, Quantity high) {
        if (low.dimension() != high.dimension()) {
            return Refusal.mismatch("a range cannot run from " + low.dimension().phrase() + " to "
                    + high.dimension().phrase())
                    .asOutcome();
        }
        return Exact.compare(low.amount(), high.amount()) > 0
                ? Refusal.reversedRange().asOutcome()
                : Outcome.of(new QuantityRange(low, high));
    }

    /** What the range is a range of. */
    public Dimension dimension() {
        return low.dimension();
    }

    /** Whether {@code quantity} is of the same dimension and lies within, ends included. */
    public boolean contains(Quantity quantity) {
        return quantity.dimension() == dimension()
                && Exact.compare(low.amount(), quantity.amount()) <= 0
                && Exact.compare(quantity.amount(), high.amount()) <= 0;
    }

    /** This as a range of lengths, if it is one. */
    public Optional<LengthRange> asLengths() {
        return low.asLength().flatMap(from -> high.asLength().map(to -> new LengthRange(from, to)));
    }
}

package dev.treen.quantity;

/**
 * All the lengths from {@code low} to {@code high}, both ends included.
 *
 * @param low  the shorter end
 * @param high the longer end, never shorter than {@code low}
 */
public record LengthRange(Length low, Length high) {
    /**
     * Checks the order of the ends. For ends that a user wrote, ask {@link #of} instead.
     *
     * @throws IllegalArgumentException if {@code high} is shorter than {@code low}
     */
    public LengthRange {
        if (high.compareTo(low) < 0) {
            throw new IllegalArgumentException("the ends of a range are the wrong way round");
        }
    }

    /** The range a user wrote, or a refusal if its ends are the wrong way round. */
    public static Outcome<LengthRange> of(Length low, Length high) {
        return high.compareTo(low) < 0 ? Refusal.reversedRange().asOutcome() : Outcome.of(new LengthRange(low, high));
    }

    /** The range between two lengths, given in either order. */
    public static LengthRange between(Length one, Length other) {
        return new LengthRange(one.min(other), one.max(other));
    }

    /** The range that is this one length. */
    public static LengthRange only(Length length) {
        return new LengthRange(length, length);
    }

    /** Whether {@code length} lies within, ends included. */
    public boolean contains(Length length) {
        return low.compareTo(length) <= 0 && length.compareTo(high) <= 0;
    }

    /** Whether the two ranges have a length in common. */
    public boolean meets(LengthRange other) {
        return low.compareTo(other.high) <= 0 && other.low.compareTo(high) <= 0;
    }

    /** From end to end; zero for a single length. */
    public Length span() {
        return high.minus(low);
    }

    /** Half-way between the ends, exact. */
    public Length middle() {
        return low.plus(high).dividedBy(2);
    }

    /** The length within the range that is nearest to {@code length}. */
    public Length clamp(Length length) {
        return low.max(high.min(length));
    }

    /** Both ends moved by {@code distance}. */
    public LengthRange plus(Length distance) {
        return new LengthRange(low.plus(distance), high.plus(distance));
    }
}

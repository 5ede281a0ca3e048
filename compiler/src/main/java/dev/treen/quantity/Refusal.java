package dev.treen.quantity;

/**
 * Why something that a user wrote has no value.
 *
 * @param kind what sort of reason, for a caller that chooses a message of its own
 * @param text a sentence for the user, without a capital and without a full stop
 */
public record Refusal(Kind kind, String text) {
    /** The sorts of reason. */
    public enum Kind {
        /** The text is not written as a number or a length. */
        NOT_A_NUMBER,
        /** The number has more digits than Treen reads, see {@link NumberText#MAX_DIGITS}. */
        TOO_LONG,
        /** The unit is not one of Treen's. */
        UNKNOWN_UNIT,
        /** The two kinds of quantity do not go together. */
        MISMATCH,
        /** A division by zero. */
        DIVISION_BY_ZERO,
        /** The result has outgrown {@link Quantity#MAX_BITS}. */
        TOO_LARGE,
        /** A step to round to that is not above zero. */
        STEP_NOT_POSITIVE,
        /** A range whose first end is above its second. */
        REVERSED_RANGE
    }

    /** This reason as the outcome of looking for any kind of value. */
    public <T> Outcome<T> asOutcome() {
        return new Outcome.Refused<>(this);
    }

    static Refusal mismatch(String text) {
        return new Refusal(Kind.MISMATCH, text);
    }

    static Refusal divisionByZero() {
        return new Refusal(Kind.DIVISION_BY_ZERO, "this divides by zero");
    }

    static Refusal tooLarge() {
        return new Refusal(Kind.TOO_LARGE, "the result has more digits than any workshop can use");
    }

    static Refusal stepNotPositive() {
        return new Refusal(Kind.STEP_NOT_POSITIVE, "the step to round to must be above zero");
    }

    static Refusal reversedRange() {
        return new Refusal(Kind.REVERSED_RANGE, "the first end of a range must not be above the second");
    }
}

package dev.treen.quantity;

import java.util.Optional;
import java.util.function.Function;

/**
 * What came of something that a user wrote: a value, or the reason why there is none. Nothing a user writes throws.
 *
 * @param <T> the kind of value
 */
public sealed interface Outcome<T> {
    /**
     * There is a value.
     *
     * @param value the value
     * @param <T>   its kind
     */
    record Got<T>(T value) implements Outcome<T> {}

    /**
     * There is none.
     *
     * @param why the reason
     * @param <T> the kind of value that was wanted
     */
    record Refused<T>(Refusal why) implements Outcome<T> {}

    /** The outcome that is this value. */
    static <T> Outcome<T> of(T value) {
        return new Got<>(value);
    }

    /** The value made into another; a refusal stays as it is. */
    default <U> Outcome<U> map(Function<T, U> next) {
        return then(value -> of(next.apply(value)));
    }

    /** The value handed to a step that may itself refuse; a refusal stays as it is. */
    default <U> Outcome<U> then(Function<T, Outcome<U>> next) {
        return switch (this) {
            case Got<T>(T value) -> next.apply(value);
            case Refused<T>(Refusal why) -> new Refused<>(why);
        };
    }

    /** The value, for a caller who does not care why there might be none. */
    default Optional<T> found() {
        return switch (this) {
            case Got<T>(T value) -> Optional.of(value);
            case Refused<T> _ -> Optional.empty();
        };
    }

    /** The reason why there is no value, if there is none. */
    default Optional<Refusal> refusal() {
        return switch (this) {
            case Got<T> _ -> Optional.empty();
            case Refused<T>(Refusal why) -> Optional.of(why);
        };
    }
}

package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.quantity.Quantity;
import dev.treen.source.Span;

/**
 * A length of the project, with its place in the file and how it came about.
 *
 * @param value the exact length
 * @param at the text that gives it, or the nearest place where it could be written
 * @param how its derivation
 */
public record Measure(Length value, Span at, Derivation how) {

    /** The length as a value of the language. */
    public static Datum datum(Length length) {
        return new Datum.Exactly(Quantity.of(length));
    }

    /** A length written at {@code at}. */
    public static Measure written(String label, Length value, Span at) {
        return new Measure(value, at, Derivation.written(label, datum(value), at));
    }
}

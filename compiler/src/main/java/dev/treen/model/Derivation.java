package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * How a number came about: what it is called, its value as a {@link Datum}, the formula that gave it, and where it is
 * written or published. Leaves of the formula are derivations in their turn.
 *
 * @param label what the number is called at the bench: {@code opening}, {@code gap}, {@code front.length}
 * @param value the number
 * @param formula where it comes from
 * @param at its place in a file, where it has one
 */
public record Derivation(String label, Datum value, Formula formula, Optional<Span> at) {

    /** Where a number comes from. */
    public sealed interface Formula {
    }

    /** Written as it is in the file. */
    public record Written() implements Formula {}

    /** The default of Treen, with where that comes from. */
    public record Standard(String source) implements Formula {}

    /** Several numbers side by side: the measures of a size. */
    public record Listed(List<Derivation> each) implements Formula {
        /** Keeps its own copy. */
        public Listed {
            each = List.copyOf(each);
        }
    }

    /** Another number under a new name. */
    public record Same(Derivation of) implements Formula {}

    /** {@code left sign right}, each a number of its own; sign is {@code + - × ÷}. */
    public record Combined(String sign, Derivation left, Derivation right) implements Formula {}

    /**
     * A rule of the trade or of nature.
     *
     * @param text the rule in words, with its figures
     * @param source where it is published, or {@code common practice, no source}
     * @param inputs the numbers that went in
     */
    public record Rule(String text, String source, List<Derivation> inputs) implements Formula {}

    /** A number that stands in the file as it is. */
    public static Derivation written(String label, Datum value, Span at) {
        return new Derivation(label, value, new Written(), Optional.of(at));
    }

    /** {@code left sign right} under a name. */
    public static Derivation combined(String label, Datum value, String sign, Derivation left, Derivation right) {
        return new Derivation(label, value, new Combined(sign, left, right), Optional.empty());
    }

    /** The outcome of a rule under a name. */
    public static Derivation rule(String label, Datum value, String text, String source, List<Derivation> inputs) {
        return new Derivation(label, value, new Rule(text, source, List.copyOf(inputs)), Optional.empty());
    }

    /** The same number under another name. */
    public Derivation named(String other) {
        return new Derivation(other, value, formula, at);
    }
}

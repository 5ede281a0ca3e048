package dev.treen.syntax;

import dev.treen.source.Span;
import java.util.List;

/**
 * One value of a property, with the words that follow it: {@code 178 overall} is an expression with the tail
 * {@code overall}; {@code 3/8 from front} has the tail {@code from} with the argument {@code front}.
 */
public record Value(Span span, Expr expr, List<Tail> tails) implements Node {
    /** A word after a value, with an expression of its own or {@link Expr.Missing} with an empty span for none. */
    public record Tail(Name word, java.util.Optional<Expr> argument) {}
}

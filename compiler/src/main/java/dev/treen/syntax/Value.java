package dev.treen.syntax;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One value of a property, with the words that follow it: {@code 178 overall} is an expression with the tail
 * {@code overall}; {@code 3/8 from front} has the tail {@code from} with the argument {@code front}.
 */
public record Value(Span span, Expr expr, List<Tail> tails) implements Node {
    /** A word after a value, perhaps with an expression of its own. */
    public record Tail(Name word, Optional<Expr> argument) {}
}

package dev.treen.syntax;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * One statement: a head and perhaps a block. Spans run from the first word to the end of the block.
 *
 * <p>{@code doc} is the text of the {@code ///} comment before it, without the slashes; empty where there is none.
 */
public sealed interface Statement extends Node {

    /** The body, where the statement has one. */
    default Optional<Block> body() {
        return Optional.empty();
    }

    /** What stands before the block; all of a statement without one. */
    default Span head() {
        Span all = span();
        return body().map(Block::span)
                .map(block -> all
                        .first(all.first(Math.max(0, block.from() - all.from())).text().stripTrailing().length()))
                .orElse(all);
    }

    /** {@code project "Tea caddy" { … }}. */
    record Project(Span span, Optional<Expr.Text> title, Optional<Block> body) implements Statement {}

    /** {@code use "shop/rack" as rack}. */
    record Use(Span span, Optional<Expr.Text> path, Optional<Name> alias) implements Statement {}

    /** {@code let wall = 9}. */
    record Let(Span span, Name name, Expr value, String doc) implements Statement {}

    /** {@code board plank { … }}, or a {@code sheet}. */
    record Board(Span span, boolean sheet, Name name, Optional<Block> body, String doc) implements Statement {}

    /** {@code part shelf[i] like other { … }}. */
    record Part(Span span, Name name, Optional<Expr> index, Optional<Expr> like, Optional<Block> body, String doc)
            implements
            Statement {}

    /**
     * {@code joint groove base into front, back as base_groove { … }}. Without pairs, inside an instance, {@code kind} is
     * the name of a joint there, of which the block changes something.
     */
    record Joint(Span span, Name kind, List<Pair> pairs, Optional<Name> alias, Optional<Block> body)
            implements
            Statement {}

    /** Two parts that a joint brings together; {@code into}: the left one enters the right one. */
    record Pair(Span span, Expr left, boolean into, Expr right) implements Node {}

    /** {@code require shelf.sag <= 1mm because "it carries books"}. */
    record Require(Span span, Expr condition, Optional<Expr.Text> because) implements Statement {}

    /** {@code accept panel-tight on base because "the room is dry"}. */
    record Accept(Span span, Name code, List<Expr> on, Optional<Expr.Text> because) implements Statement {}

    /** {@code measured caddy.opening.width 79.4}. */
    record Measured(Span span, Expr what, Expr value) implements Statement {}

    /** {@code holds caddy { tin 150 x 70 x 60; count 1 }}. */
    record Holds(Span span, Expr what, Optional<Block> body) implements Statement {}

    /** {@code pattern frame { … }}. */
    record Pattern(Span span, Name name, Optional<Block> body, String doc) implements Statement {}

    /** {@code param stile : length = 57mm}. */
    record Param(Span span, Name name, ParamType type, Optional<Expr> standard, Optional<Block> body, String doc)
            implements
            Statement {}

    /** {@code length}, or {@code one of flat, raised}: then the choices are listed. */
    record ParamType(Span span, String name, List<Name> choices) implements Node {}

    /** {@code repeat i in 1..3 { … }}. */
    record Repeat(Span span, Name variable, Expr over, Optional<Block> body) implements Statement {}

    /** {@code when condition { … } else { … }}. */
    record When(Span span, Expr condition, Optional<Block> body, Optional<Block> otherwise) implements Statement {}

    /** {@code name value, value { … }}: a property, or an instance of a pattern where the name is a pattern's. */
    record Property(Span span, Name name, List<Value> values, Optional<Block> body, String doc) implements Statement {}

    /** A line that could not be read at all; reported by the parser already. */
    record Broken(Span span, Optional<Block> body) implements Statement {}
}

package dev.treen.syntax;

import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Something that has a value: {@code inside.length + 2 * wall}. */
public sealed interface Expr extends Node {

    /** A figure as written, exact: {@code 9}, {@code 2 3/8in}, {@code 35%}. No unit: the file's `units` says. */
    record Figure(Span span, BigFraction amount, Optional<Unit> unit) implements Expr {}

    /** A slope, {@code 1:8}. */
    record SlopeFigure(Span span, BigFraction rise, BigFraction run) implements Expr {}

    /** Text between quotes, its escapes resolved. */
    record Text(Span span, String value) implements Expr {}

    /** {@code true} or {@code false}. */
    record Truth(Span span, boolean value) implements Expr {}

    /** A name on its own. */
    record Word(Span span, String name) implements Expr {}

    /** {@code of.name}. */
    record Member(Span span, Expr of, Name name) implements Expr {}

    /** {@code of[index]}. */
    record Element(Span span, Expr of, Expr index) implements Expr {}

    /** {@code -operand} or {@code not operand}. */
    record Prefix(Span span, Operator operator, Expr operand) implements Expr {}

    /** {@code left operator right}. */
    record Infix(Span span, Operator operator, Expr left, Expr right) implements Expr {}

    /** {@code a x b} or {@code a x b x c}: two or three measures. */
    record Sizes(Span span, List<Expr> measures) implements Expr {}

    /** {@code low..high}. */
    record Between(Span span, Expr low, Expr high) implements Expr {}

    /** {@code when condition then yes else no}. */
    record Choice(Span span, Expr condition, Expr yes, Expr no) implements Expr {}

    /** {@code name(arguments)}. */
    record Call(Span span, Name function, List<Expr> arguments) implements Expr {}

    /** A place where an expression should stand but none could be read; reported by the parser already. */
    record Missing(Span span) implements Expr {}
}

package dev.treen.syntax;

import dev.treen.source.Span;

/** A piece of the tree. */
public sealed interface Node permits Expr, Statement, Name, Value, Block, Statement.Pair, Statement.ParamType {
    /** The text it covers. */
    Span span();
}

package dev.treen.syntax;

import dev.treen.source.Span;
import java.util.List;

/** What stands between braces; the span includes them. */
public record Block(Span span, List<Statement> statements) implements Node {}

package dev.treen.syntax;

import dev.treen.source.Span;

/** A name and where it stands. An empty text means that a name is missing here, and the parser has said so. */
public record Name(Span span, String text) implements Node {}

package dev.treen.finding;

import dev.treen.source.Span;

/** Put {@code text} in the place of {@code at}. */
public record Edit(Span at, String text) {}

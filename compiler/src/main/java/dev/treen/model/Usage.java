package dev.treen.model;

import dev.treen.source.Span;

/** A place where something is named or reckoned, with its value and the place that declares it. */
public record Usage(Span at, Span declaredAt, Derived value) {}

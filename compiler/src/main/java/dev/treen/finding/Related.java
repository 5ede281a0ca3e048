package dev.treen.finding;

import dev.treen.source.Span;

/** Another place that took part in a finding, with its own short label. */
public record Related(Span at, String label) {}

package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/** {@code accept CODE on THINGS because "…"}; no things means anywhere. {@code on} has their dotted names. */
public record Acceptance(String code, Span codeAt, List<String> on, Optional<String> because, Span at) {}

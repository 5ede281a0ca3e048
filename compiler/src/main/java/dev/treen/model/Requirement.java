package dev.treen.model;

import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import java.util.Optional;

/** Something that must hold, {@code require lid.gap >= 0.3mm because "…"}; judged when the joints are made. */
public record Requirement(Expr condition, Optional<String> because, Span at) {}

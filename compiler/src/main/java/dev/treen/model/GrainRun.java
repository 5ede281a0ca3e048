package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;

/** Parts whose grain runs from one to the next: they lie on the board in this order, end to end. */
public record GrainRun(List<String> parts, Span at) {
    /** Keeps its own copy. */
    public GrainRun {
        parts = List.copyOf(parts);
    }
}

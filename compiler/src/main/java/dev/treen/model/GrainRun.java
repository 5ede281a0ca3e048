package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;

/**
 * Parts whose grain runs from one to the next: they lie on the board in this order, end to end.
 *
 * @param parts their names, in this order
 * @param named where each is named
 * @param at the whole line
 */
public record GrainRun(List<String> parts, List<Span> named, Span at) {
    /** Keeps its own copies. */
    public GrainRun {
        parts = List.copyOf(parts);
        named = List.copyOf(named);
    }
}

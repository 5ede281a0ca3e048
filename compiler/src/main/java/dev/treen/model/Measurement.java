package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.List;

/**
 * What the maker measured on the wood, in the place of a planned value.
 *
 * @param path what was measured: {@code caddy.opening.width}
 * @param planned what the plan had
 * @param measured what it is
 * @param at the figure in the file
 * @param made the parts that must be made already, or there was nothing to measure
 */
public record Measurement(String path, Length planned, Length measured, Span at, List<String> made) {
    /** Keeps its own copy. */
    public Measurement {
        made = List.copyOf(made);
    }
}

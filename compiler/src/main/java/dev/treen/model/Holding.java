package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.List;

/**
 * What must fit inside something.
 *
 * @param what the thing that holds it
 * @param inside its room: along, across, high
 * @param insideAt where that is written
 * @param contents what goes in
 * @param room how much is to be free on every side
 * @param at the statement's head
 */
public record Holding(
        String what, List<Length> inside, Span insideAt, List<Content> contents, Length room, Span at) {
    /** Keeps its own copies. */
    public Holding {
        inside = List.copyOf(inside);
        contents = List.copyOf(contents);
    }

    /** Things of one kind; they may be turned round, but stand on the same side as written. */
    public record Content(String name, Length length, Length width, Length height, int count, Span at) {}
}

package dev.treen.order;

import dev.treen.quantity.Length;
import java.util.List;

/**
 * Where the maker is: what must be there already, since something has been measured on it, and what that changed.
 *
 * @param made parts that must be made
 * @param done what must be done, in the words of its steps
 * @param measured what was measured
 * @param changes sizes that became others
 */
public record SoFar(List<String> made, List<String> done, List<Figure> measured, List<Change> changes) {
    /** Nothing yet. */
    public static final SoFar NOTHING = new SoFar(List.of(), List.of(), List.of(), List.of());

    /** Keeps its own copies. */
    public SoFar {
        made = List.copyOf(made);
        done = List.copyOf(done);
        measured = List.copyOf(measured);
        changes = List.copyOf(changes);
    }

    /** What was planned and what was measured in its place. */
    public record Figure(String name, Length planned, Length measured) {}

    /** A size of a part between its shoulders: {@code base.width}. */
    public record Change(String name, Length planned, Length now) {}
}

package dev.treen.cutting;

import java.util.List;

/**
 * A piece of a board from which two parts or more are crosscut: what runs along its grain is done once, while it is
 * whole.
 *
 * @param number from 1 on its board
 * @param area where it lies
 * @param parts from its left end on
 */
public record Strip(int number, Rectangle area, List<String> parts) {
    /** Keeps its own copy. */
    public Strip {
        parts = List.copyOf(parts);
    }
}

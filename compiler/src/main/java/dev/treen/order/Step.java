package dev.treen.order;

import java.util.List;

/**
 * An operation in its place.
 *
 * @param number from 1
 * @param operation what is done
 * @param because why it comes here and not earlier; empty for the first
 * @param after numbers of the steps that must be done before it
 */
public record Step(int number, Operation operation, String because, List<Integer> after) {
    /** Keeps its own copy. */
    public Step {
        after = List.copyOf(after);
    }
}

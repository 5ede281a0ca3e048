package dev.treen.order;

import java.util.List;

/**
 * An operation in its place.
 *
 * @param number from 1
 * @param operation what is done
 * @param because why it comes here and not earlier; empty for the first
 * @param after numbers of the steps that must be done before it
 * @param needs the same steps, each with its reason
 */
public record Step(int number, Operation operation, String because, List<Integer> after, List<Need> needs) {
    /** Keeps its own copies. */
    public Step {
        after = List.copyOf(after);
        needs = List.copyOf(needs);
    }

    /** A step that must be done before, and why. */
    public record Need(int step, String because) {}
}

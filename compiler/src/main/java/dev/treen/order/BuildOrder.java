package dev.treen.order;

import java.util.List;

/**
 * The steps in their order.
 *
 * @param steps what to do
 * @param settings how often a gauge, fence or stop is set
 * @param cautions what holds for the whole work
 */
public record BuildOrder(List<Step> steps, int settings, List<String> cautions) {
    /** Keeps its own copies. */
    public BuildOrder {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }
}

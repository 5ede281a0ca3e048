package dev.treen.order;

import java.util.List;

/**
 * The steps in their order.
 *
 * @param steps what to do
 * @param settings how often a gauge, fence or stop is set
 * @param separately how often it would be, were every part made by itself
 * @param fewest whether no valid order needs fewer settings
 * @param cautions what holds for the whole work
 */
public record BuildOrder(List<Step> steps, int settings, int separately, boolean fewest, List<String> cautions) {
    /** Keeps its own copies. */
    public BuildOrder {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    /** The same with other cautions. */
    BuildOrder minding(List<String> others) {
        return new BuildOrder(steps, settings, separately, fewest, others);
    }

    /** Hands-on time of all steps for which a figure is known. */
    public Minutes minutes() {
        return steps.stream()
                .flatMap(step -> step.operation().minutes().stream())
                .reduce(Minutes.NONE, Minutes::plus);
    }

    /** Hours of waiting, one wait after the other: the least and the most. */
    public Wait waiting() {
        int least = 0;
        int most = 0;
        for (Step step : steps) {
            least += step.operation().pause().map(Wait::leastHours).orElse(0);
            most += step.operation().pause().map(Wait::mostHours).orElse(0);
        }
        return new Wait(least, most, "all waits, one after the other");
    }
}

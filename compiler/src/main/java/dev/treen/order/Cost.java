package dev.treen.order;

import java.util.Comparator;

/**
 * What an order costs: first how often something is set, then how many days it takes with its waits, then how often a tool
 * is put down for another, and last the minutes. An hour saved over a week of waiting is not worth running from bench to
 * bench.
 *
 * @param settings how often a gauge, fence or stop is set
 * @param minutes from the first step to the end of the last wait, working without a break
 * @param tools how often another tool is taken up
 */
record Cost(int settings, int minutes, int tools) implements Comparable<Cost> {
    private static final Comparator<Cost> ORDER = Comparator.comparingInt(Cost::settings)
            .thenComparingInt(Cost::days)
            .thenComparingInt(Cost::tools)
            .thenComparingInt(Cost::minutes);
    private static final int DAY = 24 * 60;

    private int days() {
        return (minutes + DAY - 1) / DAY;
    }

    @Override
    public int compareTo(Cost other) {
        return ORDER.compare(this, other);
    }
}

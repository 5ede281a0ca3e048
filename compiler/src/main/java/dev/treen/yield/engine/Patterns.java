package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The patterns that a {@link Master} knows, twice: one by one, and one after another in flat arrays for quick looks. */
final class Patterns {
    /**
     * What one pattern gives.
     *
     * @param rows the rows of which it gives any
     * @param counts how many of each of them
     */
    @SuppressWarnings("ArrayRecordComponent") // looked at in the innermost loops, never compared
    record Pattern(int[] rows, int[] counts, double cost) {
        /** A pattern from the counts of all rows. */
        static Pattern of(int[] all, double cost) {
            int[] rows = IntStream.range(0, all.length).filter(i -> all[i] > 0).toArray();
            return new Pattern(rows, Arrays.stream(rows).map(i -> all[i]).toArray(), cost);
        }

        /** What it costs beyond what its rows are worth. */
        double reduced(double[] price) {
            double left = cost;
            for (int k = 0; k < rows.length; k++) {
                left -= price[rows[k]] * counts[k];
            }
            return left;
        }
    }

    private final List<Pattern> all = new ArrayList<>();
    /** Where each starts in the flat arrays. */
    private int[] start = new int[65];

    private int[] flatRow = new int[256];
    private double[] flatCount = new double[256];
    private double[] flatCost = new double[64];

    Patterns copy() {
        var copy = new Patterns();
        copy.all.addAll(all);
        copy.start = start.clone();
        copy.flatRow = flatRow.clone();
        copy.flatCount = flatCount.clone();
        copy.flatCost = flatCost.clone();
        return copy;
    }

    int size() {
        return all.size();
    }

    Pattern get(int index) {
        return all.get(index);
    }

    void add(Pattern pattern) {
        int index = all.size();
        all.add(pattern);
        if (index + 1 == start.length) {
            start = Arrays.copyOf(start, 2 * index + 2);
            flatCost = Arrays.copyOf(flatCost, 2 * index + 2);
        }
        int at = start[index];
        int end = at + pattern.rows.length;
        if (end > flatRow.length) {
            flatRow = Arrays.copyOf(flatRow, 2 * end);
            flatCount = Arrays.copyOf(flatCount, 2 * end);
        }
        for (int k = 0; k < pattern.rows.length; k++) {
            flatRow[at + k] = pattern.rows[k];
            flatCount[at + k] = pattern.counts[k];
        }
        flatCost[index] = pattern.cost;
        start[index + 1] = end;
    }

    /** What a pattern costs beyond what its rows are worth. */
    double reduced(double[] price, int index) {
        double left = flatCost[index];
        for (int k = start[index]; k < start[index + 1]; k++) {
            left -= price[flatRow[k]] * flatCount[k];
        }
        return left;
    }

    /** What a pattern gives of every row, weighed by {@code row}. */
    double along(double[] row, int index) {
        double sum = 0;
        for (int k = start[index]; k < start[index + 1]; k++) {
            sum += row[flatRow[k]] * flatCount[k];
        }
        return sum;
    }
}

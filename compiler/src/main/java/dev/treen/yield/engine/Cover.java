package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.List;

/**
 * Least weight of whole boards whose capacities add up to a need: a knapsack turned round, solved by branch and bound over
 * the boards in order of weight per capacity. Where that takes too long, the bound with a fraction of one board stands.
 */
final class Cover {
    private static final int NODES = 30_000;

    private final long[] weight;
    private final double[] capacity;
    private final long[] count;
    private long best = Long.MAX_VALUE;
    private int nodes;

    private Cover(long[] weight, double[] capacity, long[] count) {
        this.weight = weight;
        this.capacity = capacity;
        this.count = count;
    }

    /** The least weight; {@link Long#MAX_VALUE} if all boards together are not enough. */
    static long least(long[] weight, double[] capacity, int[] count, double need) {
        if (need <= 0) {
            return 0;
        }
        List<Integer> order = new ArrayList<>();
        for (int b = 0; b < weight.length; b++) {
            if (count[b] > 0 && capacity[b] > 0) {
                order.add(b);
            }
        }
        order.sort((a, b) -> Double.compare(weight[a] / capacity[a], weight[b] / capacity[b]));
        int n = order.size();
        var w = new long[n];
        var c = new double[n];
        var m = new long[n];
        for (int i = 0; i < n; i++) {
            w[i] = weight[order.get(i)];
            c[i] = capacity[order.get(i)];
            m[i] = count[order.get(i)];
        }
        var cover = new Cover(w, c, m);
        // A hair less than the need, so that rounding in the sums never makes the bound too high.
        double hair = need * (1 - 1e-11);
        double loose = cover.loose(0, hair);
        if (loose == Double.POSITIVE_INFINITY) {
            return Long.MAX_VALUE;
        }
        cover.search(0, 0, hair);
        return cover.nodes >= NODES ? up(loose) : cover.best;
    }

    private static long up(double v) {
        return (long) Math.ceil(v * (1 - 1e-12) - 1e-6);
    }

    private double loose(int from, double need) {
        double sum = 0;
        double rest = need;
        for (int i = from; i < weight.length && rest > 0; i++) {
            double boards = Math.min((double) count[i], rest / capacity[i]);
            sum += boards * weight[i];
            rest -= boards * capacity[i];
        }
        return rest > need * 1e-12 ? Double.POSITIVE_INFINITY : sum;
    }

    private void search(int i, long sum, double need) {
        if (need <= 0) {
            best = Math.min(best, sum);
            return;
        }
        if (i == weight.length || nodes++ >= NODES) {
            return;
        }
        double least = sum + loose(i, need);
        if (least == Double.POSITIVE_INFINITY || up(least) >= best) {
            return;
        }
        long most = Math.min(count[i], (long) Math.ceil(need / capacity[i]));
        for (long k = most; k >= 0; k--) {
            search(i + 1, sum + k * weight[i], need - k * capacity[i]);
        }
    }
}

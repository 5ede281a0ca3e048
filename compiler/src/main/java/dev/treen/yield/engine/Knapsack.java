package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * The most a bar can give at some prices when each length may be taken so often only: a table over the lengths where that
 * is small, otherwise branch and bound in the order of price per length.
 */
final class Knapsack {
    private static final double QUICK_CELLS = 5e6;
    private static final double MOST_CELLS = 200e6;
    private static final int QUICK_NODES = 10_000;
    private static final int MOST_NODES = 300_000;

    private final int room;
    private final int[] size;
    private final int n;
    /** The copies of each in the best filling. */
    final int[] taken;
    /** What no filling can beat. */
    long bound;
    /** What the filling taken is worth. */
    long value;
    private long[] now = {};
    private int[] limit = {};
    private int[] order = {};
    private int[] path = {};
    private int nodes;
    private int mostNodes;
    private long[] bits = {};

    Knapsack(int room, int[] size) {
        this.room = room;
        this.size = size;
        n = size.length;
        taken = new int[n];
    }

    /** Operations that one filling takes, about. */
    static double work(int room, int items) {
        return Math.min((double) room * items * 1.5, QUICK_CELLS);
    }

    /** Whether a quick filling is as good as a thorough one. */
    boolean quick() {
        return (double) room * n * 1.5 < QUICK_CELLS;
    }

    /** Fills the bar; where that is much work, only a thorough filling is sure to be the best and gives a sharp bound. */
    void fill(long[] price, int[] limits, boolean thorough) {
        Arrays.fill(taken, 0);
        now = price;
        limit = limits;
        if (quick() || (thorough && (double) room * n * 1.5 < MOST_CELLS)) {
            table();
        } else {
            branch(thorough ? MOST_NODES : QUICK_NODES);
        }
    }

    // Copies are taken in bundles of 1, 2, 4, … so that every number of them up to the limit can be made.
    private void table() {
        var best = new long[room + 1];
        var bundleOf = new int[64];
        var bundleSize = new int[64];
        int count = 0;
        for (int i = 0; i < n; i++) {
            int left = Math.min(limit[i], room / size[i]);
            for (int k = 1; left > 0 && now[i] > 0; k *= 2) {
                if (count == bundleOf.length) {
                    bundleOf = Arrays.copyOf(bundleOf, 2 * count);
                    bundleSize = Arrays.copyOf(bundleSize, 2 * count);
                }
                bundleOf[count] = i;
                bundleSize[count++] = Math.min(k, left);
                left -= Math.min(k, left);
            }
        }
        int words = (room >> 6) + 1;
        if (bits.length < count * words) {
            bits = new long[count * words];
        } else {
            Arrays.fill(bits, 0, count * words, 0);
        }
        int reach = 0;
        for (int b = 0; b < count; b++) {
            int s = size[bundleOf[b]] * bundleSize[b];
            reach = Math.min(room, reach + s);
            bundle(best, s, now[bundleOf[b]] * bundleSize[b], reach, b * words);
            // Beyond what all parts so far come to, nothing changes.
            if (reach < room) {
                Arrays.fill(best, reach + 1, room + 1, best[reach]);
            }
        }
        int c = room;
        long mark = 0;
        for (int b = 0; b < count; b++) {
            mark += (long) size[bundleOf[b]] * bundleSize[b];
        }
        for (int b = count - 1; b >= 0; b--) {
            int at = (int) Math.min(c, mark);
            mark -= (long) size[bundleOf[b]] * bundleSize[b];
            if ((bits[b * words + (at >> 6)] & 1L << at) != 0) {
                taken[bundleOf[b]] += bundleSize[b];
                c = at - size[bundleOf[b]] * bundleSize[b];
            }
        }
        value = best[room];
        bound = value;
    }

    private void bundle(long[] best, int s, long p, int from, int word) {
        long[] set = bits;
        for (int c = from; c >= s; c--) {
            long with = best[c - s] + p;
            if (with > best[c]) {
                best[c] = with;
                set[word + (c >> 6)] |= 1L << c;
            }
        }
    }

    private void branch(int most) {
        mostNodes = most;
        order = java.util.stream.IntStream.range(0, n)
                .filter(i -> now[i] > 0 && limit[i] > 0)
                .boxed()
                .sorted((a, b) -> Double.compare((double) now[b] / size[b], (double) now[a] / size[a]))
                .mapToInt(Integer::intValue)
                .toArray();
        path = new int[order.length];
        nodes = 0;
        value = 0;
        long top = loose(0, room);
        down(0, room, 0);
        bound = nodes > mostNodes ? Math.max(value, top) : value;
    }

    private long loose(int at, long left) {
        double sum = 0;
        long rest = left;
        for (int k = at; k < order.length; k++) {
            int i = order[k];
            long many = Math.min(limit[i], rest / size[i]);
            sum += (double) many * now[i];
            rest -= many * size[i];
            if (many < limit[i]) {
                sum += (double) now[i] * rest / size[i];
                break;
            }
        }
        return (long) Math.floor(sum * (1 + 1e-12) + 1e-6);
    }

    private void down(int at, long left, long sum) {
        if (sum > value) {
            value = sum;
            Arrays.fill(taken, 0);
            for (int k = 0; k < at; k++) {
                taken[order[k]] = path[k];
            }
        }
        if (at == order.length || nodes++ > mostNodes || sum + loose(at, left) <= value) {
            return;
        }
        int i = order[at];
        for (int many = (int) Math.min(limit[i], left / size[i]); many >= 0; many--) {
            path[at] = many;
            down(at + 1, left - (long) many * size[i], sum + many * now[i]);
        }
        path[at] = 0;
    }
}

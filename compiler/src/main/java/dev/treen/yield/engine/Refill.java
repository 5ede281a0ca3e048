package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All parts in so many bars and no more, where bars filled one by one came close. What goes into no bar but the last two
 * waits. One to three of the others are emptied and filled anew from what was in them and what waits, each as full as can be
 * round a long part (minimum bin slack: Gupta and Ho 1999); a change stays where no more is left over than before, or hardly
 * more, and within a cycle ever less more (simulated annealing). It ends when what waits goes into the last two bars (the aim
 * of Buljubasic and Vasquez 2016).
 */
final class Refill {
    /** Looks that one bar may take. */
    private static final int LOOKS = 400;

    /** How much more may be left over than before, as a share of a bar, while a cycle begins; at its end nothing. */
    private static final double WORSE = 0.003;

    private static final int FIRST_CYCLE = 5000;
    private static final int LONGEST_CYCLE = 100_000;

    private static final int MOST_BARS = 3;

    /** How far chance changes the order of the parts, and how often any part is the first of a bar. */
    private static final double MIXED = 0.3;

    private static final int ANY = 3;

    private final int room;
    private final int[] size;
    /** By part: which of the lengths it is. */
    private final int[] type;
    private final Dice dice;
    private final int[][] bars;
    private int[] waiting;
    /** What the second of the last two bars would have to hold too much. */
    private long over;
    private int age;
    private int cycle = FIRST_CYCLE;

    // The parts to choose from, longest first but for chance, and what is chosen of them.
    private int[] pool = {};
    private int pooled;
    private long[] after = {};
    private boolean[] chosen = {};
    private boolean[] bestChosen = {};
    private long bestSum;
    private int looks;
    private long looked;

    private Refill(int room, int[] size, int[] type, Dice dice, int[][] bars, int[] waiting) {
        this.room = room;
        this.size = size;
        this.type = type;
        this.dice = dice;
        this.bars = bars;
        this.waiting = waiting;
        over = sum(waiting);
    }

    /**
     * Prepares to put what {@code cut} has into one bar less.
     *
     * @param cut bars by how many of each length they give
     */
    static @Nullable Refill of(int room, int[] length, List<int[]> cut, Dice dice) {
        int keep = cut.size() - 3;
        if (keep < 1) {
            return null;
        }
        List<int[]> fullest = new ArrayList<>(cut);
        fullest.sort((a, b) -> Long.compare(used(length, b), used(length, a)));
        List<Integer> sizes = new ArrayList<>();
        var bars = new int[keep][];
        var waiting = new int[0];
        for (int b = 0; b < fullest.size(); b++) {
            var items = new int[Arrays.stream(fullest.get(b)).sum()];
            int n = 0;
            for (int i = 0; i < length.length; i++) {
                for (int k = 0; k < fullest.get(b)[i]; k++) {
                    items[n++] = sizes.size();
                    sizes.add(i);
                }
            }
            if (b < keep) {
                bars[b] = items;
            } else {
                int from = waiting.length;
                waiting = Arrays.copyOf(waiting, from + n);
                System.arraycopy(items, 0, waiting, from, n);
            }
        }
        int[] type = sizes.stream().mapToInt(Integer::intValue).toArray();
        return new Refill(room, Arrays.stream(type).map(i -> length[i]).toArray(), type, dice, bars, waiting);
    }

    private static long used(int[] length, int[] bar) {
        long sum = 0;
        for (int i = 0; i < bar.length; i++) {
            sum += (long) length[i] * bar[i];
        }
        return sum;
    }

    private long sum(int[] items) {
        long sum = 0;
        for (int i : items) {
            sum += size[i];
        }
        return sum;
    }

    /** Searches; the bars by how many of each of {@code types} lengths they give, or none where the budget ran out. */
    List<int[]> run(int types, Budget budget) {
        while (!budget.over()) {
            if (over <= 0 && lastTwo()) {
                List<int[]> all = new ArrayList<>();
                for (int[] bar : bars) {
                    all.add(counts(bar, types));
                }
                all.add(counts(take(), types));
                all.add(counts(Arrays.copyOf(pool, pooled), types));
                return all;
            }
            change();
            if (looked >= Lengths.LOOKS_A_STEP) {
                budget.spend(looked / Lengths.LOOKS_A_STEP);
                looked %= Lengths.LOOKS_A_STEP;
            }
        }
        return List.of();
    }

    private int[] counts(int[] items, int types) {
        var counts = new int[types];
        for (int i : items) {
            counts[type[i]]++;
        }
        return counts;
    }

    // Whether what waits goes into two bars: the first as full as can be, the second has to hold the rest.
    private boolean lastTwo() {
        gather(new int[0][]);
        fill(-1);
        return sum(waiting) - bestSum <= room;
    }

    private void gather(int[][] from) {
        int n = waiting.length;
        for (int[] bar : from) {
            n += bar.length;
        }
        if (pool.length < n) {
            pool = new int[n];
            chosen = new boolean[n];
            bestChosen = new boolean[n];
            after = new long[n + 1];
        }
        System.arraycopy(waiting, 0, pool, 0, waiting.length);
        pooled = waiting.length;
        for (int[] bar : from) {
            System.arraycopy(bar, 0, pool, pooled, bar.length);
            pooled += bar.length;
        }
        order();
    }

    private void order() {
        var key = new double[pooled];
        for (int i = 0; i < pooled; i++) {
            int item = pool[i];
            double k = size[item] * (1 + MIXED * (dice.unit() - 0.5));
            int at = i;
            while (at > 0 && key[at - 1] < k) {
                key[at] = key[at - 1];
                pool[at] = pool[at - 1];
                at--;
            }
            key[at] = k;
            pool[at] = item;
        }
    }

    // Chooses from the pool what fills a bar best, with one part given, or none (-1).
    private void fill(int given) {
        after[pooled] = 0;
        for (int i = pooled - 1; i >= 0; i--) {
            after[i] = after[i + 1] + (i == given ? 0 : size[pool[i]]);
        }
        Arrays.fill(chosen, 0, pooled, false);
        bestSum = -1;
        looks = 0;
        long start = 0;
        if (given >= 0) {
            chosen[given] = true;
            start = size[pool[given]];
        }
        look(0, given, start);
        looked += 1 + looks;
    }

    private boolean look(int from, int given, long sum) {
        if (sum > bestSum) {
            bestSum = sum;
            System.arraycopy(chosen, 0, bestChosen, 0, pooled);
            if (sum == room) {
                return true;
            }
        }
        for (int i = from; i < pooled; i++) {
            if (sum + after[i] <= bestSum || ++looks > LOOKS) {
                return looks > LOOKS;
            }
            int s = size[pool[i]];
            if (i == given || sum + s > room) {
                continue;
            }
            chosen[i] = true;
            boolean done = look(i + 1, given, sum + s);
            chosen[i] = false;
            if (done) {
                return true;
            }
        }
        return false;
    }

    private void change() {
        int n = 1 + dice.below(Math.min(MOST_BARS, bars.length));
        var picked = new int[n];
        for (int k = 0; k < n; k++) {
            int b = dice.below(bars.length);
            for (int j = 0; j < k; j++) {
                if (picked[j] == b) {
                    b = (b + 1) % bars.length;
                    j = -1;
                }
            }
            picked[k] = b;
        }
        var old = new int[n][];
        for (int k = 0; k < n; k++) {
            old[k] = bars[picked[k]];
        }
        gather(old);
        long all = 0;
        for (int i = 0; i < pooled; i++) {
            all += size[pool[i]];
        }
        var fresh = new int[n][];
        for (int k = 0; k < n; k++) {
            if (pooled == 0) {
                fresh[k] = new int[0];
                continue;
            }
            fill(dice.below(ANY) == 0 ? dice.below(pooled) : 0);
            fresh[k] = take();
            all -= bestSum;
        }
        if (++age > cycle) {
            age = 0;
            cycle = Math.min(2 * cycle, LONGEST_CYCLE);
        }
        double cool = 1 - (double) age / cycle;
        double more = -Math.log(1 - dice.unit()) * WORSE * room * cool * cool;
        fill(-1);
        long now = all - bestSum - room;
        if (now <= over + more) {
            for (int k = 0; k < n; k++) {
                bars[picked[k]] = fresh[k];
            }
            waiting = Arrays.copyOf(pool, pooled);
            over = now;
        }
    }

    private int[] take() {
        var bar = new int[pooled];
        int n = 0;
        int rest = 0;
        for (int i = 0; i < pooled; i++) {
            if (bestChosen[i]) {
                bar[n++] = pool[i];
            } else {
                pool[rest++] = pool[i];
            }
        }
        pooled = rest;
        return Arrays.copyOf(bar, n);
    }
}

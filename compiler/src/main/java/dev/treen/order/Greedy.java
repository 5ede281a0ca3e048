package dev.treen.order;

import java.util.Arrays;

/** A first order, one step after the other: what can be next with the fewest new settings, then with the tool in hand. */
final class Greedy {
    /** What decides between steps that need as many new settings. */
    enum Taste {
        /** The tool in hand. */
        TOOL,
        /** What the longest waits follow from. */
        WAITS,
        /** A setting all of whose uses can be next, so that it is not lost. */
        WHOLE_SETTINGS
    }

    private final Network network;
    private final Taste taste;
    private final int[] missing;
    private final int[] now;
    private final int[][] left;
    private final int[][] ready;
    private final boolean[] done;
    private int hand = -1;

    private Greedy(Network network, Taste taste) {
        this.network = network;
        this.taste = taste;
        missing = Arrays.stream(network.before).mapToInt(b -> b.length).toArray();
        now = new int[network.gauges];
        Arrays.fill(now, -1);
        left = new int[network.gauges][];
        ready = new int[network.gauges][];
        for (int gauge = 0; gauge < network.gauges; gauge++) {
            left[gauge] = new int[network.values[gauge]];
            ready[gauge] = new int[network.values[gauge]];
        }
        done = new boolean[network.size()];
        for (int i = 0; i < network.size(); i++) {
            count(left, i, 1);
            if (missing[i] == 0) {
                count(ready, i, 1);
            }
        }
    }

    private void count(int[][] table, int i, int by) {
        for (int s = 0; s < network.sets[i].length; s += 2) {
            table[network.sets[i][s]][network.sets[i][s + 1]] += by;
        }
    }

    /** An order of {@code network}, which must be sound. */
    static int[] order(Network network, Taste taste) {
        return new Greedy(network, taste).run();
    }

    private int[] run() {
        int[] order = new int[network.size()];
        for (int k = 0; k < order.length; k++) {
            int best = -1;
            long least = Long.MAX_VALUE;
            for (int i = 0; i < network.size(); i++) {
                if (!done[i] && missing[i] == 0 && price(i) < least) {
                    best = i;
                    least = price(i);
                }
            }
            take(best);
            order[k] = best;
        }
        return order;
    }

    private void take(int i) {
        done[i] = true;
        count(left, i, -1);
        count(ready, i, -1);
        hand = network.tool[i];
        for (int s = 0; s < network.sets[i].length; s += 2) {
            now[network.sets[i][s]] = network.sets[i][s + 1];
        }
        for (int next : network.after[i]) {
            if (--missing[next] == 0) {
                count(ready, next, 1);
            }
        }
    }

    private long price(int i) {
        int fresh = 0;
        int lost = 0;
        for (int s = 0; s < network.sets[i].length; s += 2) {
            int gauge = network.sets[i][s];
            int value = network.sets[i][s + 1];
            fresh += now[gauge] == value ? 0 : 1;
            lost += left[gauge][value] > ready[gauge][value] && now[gauge] != value ? 1 : 0;
            lost += now[gauge] != value && now[gauge] >= 0 && left[gauge][now[gauge]] > 0 ? 1 : 0;
        }
        int changed = network.tool[i] == hand ? 0 : 1;
        // Waits are long: the longest tail first, in units that leave room for the rest.
        long late = Integer.MAX_VALUE - (long) network.tail[i];
        return switch (taste) {
            case TOOL -> (long) fresh * 10 + changed;
            case WAITS -> ((long) fresh << 34) + (late << 1) + changed;
            case WHOLE_SETTINGS -> (long) lost * 1000 + (long) fresh * 10 + changed;
        };
    }
}

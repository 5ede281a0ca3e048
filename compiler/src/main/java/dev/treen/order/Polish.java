package dev.treen.order;

import java.util.Arrays;

/** Makes an order cheaper by moving steps, alone or with those after them, until no move helps or a count is used up. */
final class Polish {
    private static final int LONGEST_RUN = 6;

    private final Network network;
    private int looks;

    private Polish(Network network, int looks) {
        this.network = network;
        this.looks = looks;
    }

    /** {@code order} or a cheaper one; {@code looks} bounds how many orders are looked at. */
    static int[] of(Network network, int[] order, int looks) {
        return new Polish(network, looks).run(order);
    }

    private int[] run(int[] given) {
        int[] best = given.clone();
        Cost cost = network.cost(best);
        boolean better = true;
        while (better && looks > 0) {
            better = false;
            for (int from = 0; from < best.length && looks > 0; from++) {
                for (int run = 1; run <= LONGEST_RUN && from + run <= best.length && looks > 0; run++) {
                    int[] moved = bestMove(best, from, run, cost);
                    if (moved.length > 0) {
                        best = moved;
                        cost = network.cost(best);
                        better = true;
                    }
                }
            }
        }
        return best;
    }

    /** The first order that costs less than {@code cost} with the steps from {@code from} elsewhere; empty where none does. */
    private int[] bestMove(int[] order, int from, int run, Cost cost) {
        int[] place = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        int earliest = 0;
        int latest = order.length - run;
        for (int i = from; i < from + run; i++) {
            for (int b : network.before[order[i]]) {
                earliest = place[b] < from ? Math.max(earliest, place[b] + 1) : earliest;
            }
            for (int a : network.after[order[i]]) {
                latest = place[a] >= from + run ? Math.min(latest, place[a] - run) : latest;
            }
        }
        for (int to = earliest; to <= latest && looks > 0; to++) {
            if (to != from) {
                looks--;
                int[] moved = moved(order, from, run, to);
                if (network.cost(moved).compareTo(cost) < 0) {
                    return moved;
                }
            }
        }
        return new int[0];
    }

    private static int[] moved(int[] order, int from, int run, int to) {
        int[] moved = order.clone();
        if (to < from) {
            System.arraycopy(order, to, moved, to + run, from - to);
        } else {
            System.arraycopy(order, from + run, moved, from, to - from);
        }
        System.arraycopy(order, from, moved, to, run);
        return Arrays.copyOf(moved, moved.length);
    }
}

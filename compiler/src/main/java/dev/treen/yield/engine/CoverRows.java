package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The least weight of whole boards that satisfies several rows at once, each saying that the boards taken must give a need
 * together. Branch and bound; at every node each row alone, with a fraction of one board, says what is still to come.
 */
final class CoverRows {
    private static final int NODES = 30_000;
    private static final int MOST_ROWS = 16;
    private static final int MOST_BOARDS = 200;

    private final Folded f;
    private final List<double[]> rooms = new ArrayList<>();
    private final List<Double> needs = new ArrayList<>();
    private int[] order = {};
    private int[][] orders = {};
    private int[] place = {};
    private long best;
    private int nodes;

    CoverRows(Folded f) {
        this.f = f;
    }

    /** One more row; beyond so many the oldest but the first goes. */
    void add(double[] room, double need) {
        if (need <= 0) {
            return;
        }
        if (rooms.size() == MOST_ROWS) {
            rooms.remove(1);
            needs.remove(1);
        }
        rooms.add(room.clone());
        // A hair less than the need, so that rounding in the sums never makes the bound too high.
        needs.add(need * (1 - 1e-10));
    }

    /** The least weight, at least {@code known}; {@link Long#MAX_VALUE} if all boards together are not enough. */
    long least(long known) {
        boolean single = Arrays.stream(f.count).allMatch(n -> n <= 1);
        if (rooms.size() < 2 || !single || f.stocks > MOST_BOARDS) {
            return eachAlone(known);
        }
        order = byWorth(0);
        orders = new int[rooms.size()][];
        for (int r = 0; r < orders.length; r++) {
            orders[r] = byWorth(r);
        }
        place = new int[f.stocks];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        best = Long.MAX_VALUE;
        nodes = 0;
        search(0, 0, needs.stream().mapToDouble(n -> n).toArray(), known);
        return nodes >= NODES ? eachAlone(known) : Math.max(known, best);
    }

    private long eachAlone(long known) {
        long most = known;
        for (int r = 0; r < rooms.size(); r++) {
            most = Math.max(most, Cover.least(f.weight, rooms.get(r), f.count, needs.get(r)));
        }
        return most;
    }

    private int[] byWorth(int r) {
        double[] room = rooms.get(r);
        return java.util.stream.IntStream.range(0, f.stocks)
                .filter(b -> f.count[b] > 0)
                .boxed()
                .sorted((a, b) -> Double.compare(f.weight[a] * room[b], f.weight[b] * room[a]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private void search(int i, long sum, double[] left, long floor) {
        if (nodes++ >= NODES || best <= floor) {
            return;
        }
        boolean done = true;
        for (int r = 0; r < left.length; r++) {
            if (left[r] > 0) {
                done = false;
                if (sum + loose(r, i, left[r]) >= best) {
                    return;
                }
            }
        }
        if (done) {
            best = Math.min(best, sum);
            return;
        }
        if (i == order.length) {
            return;
        }
        int b = order[i];
        var with = left.clone();
        for (int r = 0; r < with.length; r++) {
            with[r] -= rooms.get(r)[b];
        }
        search(i + 1, sum + f.weight[b], with, floor);
        search(i + 1, sum, left, floor);
    }

    private double loose(int r, int from, double need) {
        double sum = 0;
        double rest = need;
        for (int b : orders[r]) {
            double room = rooms.get(r)[b];
            if (place[b] >= from && room > 0) {
                if (room >= rest) {
                    return Math.floor(sum + f.weight[b] * rest / room * (1 - 1e-12));
                }
                sum += f.weight[b];
                rest -= room;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}

package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Bounds from sizes that are stretched: where a function never gives a sum less than its parts together, parts that fit a
 * board still fit the stretched board, and their stretched areas add up (dual feasible functions: Fekete and Schepers
 * 2004; Carlier, Clautiaux and Moukrim 2007). Two parts that do not fit side by side may so count for a whole board.
 */
final class Stretched {
    private static final int MOST_FUNCTIONS = 80;
    private static final int MOST_TYPES = 2000;
    private static final int TRIED = 8;

    private final Folded f;
    private final double[] room;

    private Stretched(Folded f) {
        this.f = f;
        room = new double[f.stocks];
    }

    /** A size stretched for boards up to some side. */
    private interface Stretch {
        long of(long size);
    }

    private record Pair(Stretch along, Stretch across, double loose) {}

    /** The better of a bound and the best by stretched sizes; the sharpest rows are kept. */
    static Bound better(Folded f, Bound known, CoverRows rows) {
        if (f.types > MOST_TYPES || f.items() == 0) {
            return known;
        }
        long least = new Stretched(f).least(known.value(), rows);
        return least > known.value() ? new Bound(least, "stretched sizes") : known;
    }

    private long least(long known, CoverRows rows) {
        long sideL = Arrays.stream(f.boardLength).max().orElse(1);
        long sideW = Arrays.stream(f.boardWidth).max().orElse(1);
        List<Stretch> along = functions(sideL, f.length);
        List<Stretch> across = functions(sideW, f.width);
        List<Pair> pairs = new ArrayList<>();
        for (Stretch g : along) {
            for (Stretch h : across) {
                pairs.add(new Pair(g, h, loose(g, h)));
            }
        }
        pairs.sort((a, b) -> Double.compare(b.loose, a.loose));
        long best = known;
        for (Pair pair : pairs.subList(0, Math.min(TRIED, pairs.size()))) {
            if (pair.loose == Double.POSITIVE_INFINITY || pair.loose > known * (1 - 1e-9) - 1) {
                double need = need(pair.along, pair.across);
                // Boards that differ are weighed up once, when all rows are known.
                if (f.stocks == 1) {
                    best = Math.max(best, Cover.least(f.weight, room, f.count, need));
                }
                rows.add(room, need);
            }
        }
        return best;
    }

    // Need over the best weight for room that any board gives: what so many parts of boards would weigh.
    private double loose(Stretch g, Stretch h) {
        double need = need(g, h);
        double cheapest = Double.POSITIVE_INFINITY;
        for (int b = 0; b < f.stocks; b++) {
            if (f.count[b] > 0 && room[b] > 0) {
                cheapest = Math.min(cheapest, f.weight[b] / room[b]);
            }
        }
        return need == 0 ? 0 : need * cheapest;
    }

    private double need(Stretch g, Stretch h) {
        double need = 0;
        for (int t = 0; t < f.spare; t++) {
            if (f.copies[t] > 0) {
                double one = (double) g.of(f.length[t]) * h.of(f.width[t]);
                if (f.turns[t]) {
                    one = Math.min(one, (double) g.of(f.width[t]) * h.of(f.length[t]));
                }
                need += one * f.copies[t];
            }
        }
        for (int b = 0; b < f.stocks; b++) {
            room[b] = (double) g.of(f.boardLength[b]) * h.of(f.boardWidth[b]);
        }
        return need;
    }

    private List<Stretch> functions(long side, long[] sizes) {
        List<Stretch> found = new ArrayList<>();
        found.add(x -> x);
        long[] marks = java.util.stream.IntStream.range(0, f.spare)
                .filter(t -> f.copies[t] > 0)
                .mapToLong(t -> sizes[t])
                .filter(s -> s > 0 && s <= side)
                .distinct()
                .sorted()
                .toArray();
        int step = 1 + marks.length / MOST_FUNCTIONS;
        for (int i = 0; i < marks.length; i += step) {
            long small = Math.min(marks[i], side - marks[i] + 1);
            if (2 * small <= side) {
                found.add(x -> x < small ? 0 : x > side - small ? side : x);
            }
            long unit = marks[i];
            if (2 * unit <= side) {
                found.add(x -> rounded(x, unit, side));
            }
        }
        for (int k = 2; k <= 6; k++) {
            long parts = k;
            found.add(x -> shares(x, parts, side));
        }
        return found;
    }

    // Small sizes are rounded down to whole units; large ones are what they leave over, rounded, taken off the side.
    private static long rounded(long x, long unit, long side) {
        if (2 * x == side) {
            return side / unit;
        }
        return 2 * x < side ? 2 * (x / unit) : 2 * (side / unit - (side - x) / unit);
    }

    // Whole shares of the side stay as they are; others are rounded down to shares that are one fewer and so larger.
    private static long shares(long x, long k, long side) {
        long whole = (k + 1) * x;
        return whole % side == 0 ? k * x : whole / side * side;
    }
}

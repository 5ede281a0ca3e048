package dev.treen.yield.engine;

/**
 * With the boards as good as they are, looks for what is worth keeping of them. First for the largest leftover: one of a
 * wished shape is laid in with the parts, and where that works out the wish grows. Then for few large leftovers and not
 * many small ones on all the other boards.
 */
final class Offcuts {
    /** The share of what there is for the largest leftover. */
    private static final double LARGEST = 0.8;

    /** A wish grows by this share at most, mostly far less. */
    private static final double GROWTH = 0.4;

    private static final double LITTLE = 0.004;

    private static final int SNUG_TRIES = 30;

    /** How much more the largest leftover counts than others while layouts are changed. */
    private static final double FIRST = 10;

    private final Folded f;
    private final Improver improver;
    private final Dice dice;
    private final long leastL;
    private final long leastW;
    /** The largest leftover last looked at: x, y, length, width, kerf folded in. */
    private long[] last = {0, 0, 0, 0};

    private record Wish(long l, long w) {}

    Offcuts(Folded f, Improver improver) {
        this.f = f;
        this.improver = improver;
        var settings = f.problem.settings();
        dice = new Dice(settings.seed() + 31);
        leastL = settings.minOffcutLength() + f.kerf;
        leastW = settings.minOffcutWidth() + f.kerf;
    }

    /** Both; each ends after so many steps without success. */
    void grow(Budget budget, long patience) {
        largest(budget.part(LARGEST), patience);
        gather(budget, patience / 2);
    }

    private void largest(Budget budget, long patience) {
        int spare = f.spare;
        long quiet = 0;
        int board = 0;
        while (quiet < patience && !budget.over() && improver.best.open > 0) {
            double most = Math.max(most(improver.best), (double) (leastL - f.kerf) * (leastW - f.kerf) - 1);
            board = board + 1 < improver.best.open ? board + 1 : 0;
            int b = improver.best.slot[board].stock;
            Wish wish = wish(b, most);
            quiet++;
            if (wish.l < leastL || wish.w < leastW || !Reasons.fitsAlone(f, b, wish.l, wish.w)) {
                continue;
            }
            f.length[spare] = wish.l;
            f.width[spare] = wish.w;
            f.area[spare] = wish.l * wish.w;
            for (int i = 0; i < f.stocks; i++) {
                f.ok[spare][i] = wish.l <= f.boardLength[i] && wish.w <= f.boardWidth[i];
            }
            State wished = improver.best.copy();
            wished.left[spare] = 1;
            wished.leftArea += f.area[spare];
            boolean[] found = {false};
            quiet += improver.walk(
                    wished, wished.weight, improver::measure, Double.POSITIVE_INFINITY,
                    state -> found[0] = state.complete(), budget, 60 + 4L * f.items());
            if (found[0]) {
                State made = improver.without(spare);
                if (most(made) > most) {
                    quiet = 0;
                    improver.prefer(made);
                }
            }
        }
    }

    // A little or much more than there is, in some shape.
    private Wish wish(int b, double most) {
        double grow = dice.below(3) == 0 ? LITTLE * dice.unit() : GROWTH * Math.pow(dice.unit(), 3);
        double area = (most + 1) * (1 + grow);
        return switch (dice.below(8)) {
            case 0 -> byLength(area, any(f.boardLength[b], leastL));
            case 1 -> byLength(area, Math.min(f.boardLength[b], near(last[2], leastL)));
            case 2 -> byLength(area, last[2]);
            case 3 -> byWidth(area, last[3]);
            case 4 -> byLength(area, left(b, 0));
            case 5 -> byWidth(area, left(b, 1));
            default -> snug(b, most);
        };
    }

    // Of what is left both ways, something larger than there is, and no larger than all that is free.
    private Wish snug(int b, double most) {
        double free = 0;
        for (int i = 0; i < improver.best.open; i++) {
            free += improver.best.slot[i].freeArea();
        }
        for (int tries = 0; tries < SNUG_TRIES; tries++) {
            Wish wish = new Wish(left(b, 0), left(b, 1));
            boolean larger = (double) (wish.l - f.kerf) * (wish.w - f.kerf) > most;
            if (wish.l >= leastL && wish.w >= leastW && larger && (double) wish.l * wish.w <= free) {
                return wish;
            }
        }
        return new Wish(0, 0);
    }

    private Wish byLength(double area, long l) {
        return new Wish(l, Math.max(leastW, (long) Math.ceil(area / Math.max(1, l - f.kerf)) + f.kerf));
    }

    private Wish byWidth(double area, long w) {
        return new Wish(Math.max(leastL, (long) Math.ceil(area / Math.max(1, w - f.kerf)) + f.kerf), w);
    }

    private long any(long side, long least) {
        return Math.min(side, (long) (least * Math.pow((double) side / least, dice.unit())));
    }

    private long near(long size, long least) {
        return Math.max(least, (long) (size * (0.7 + 0.6 * dice.unit())));
    }

    // What is left of a board, or of it between two defects, beside up to three parts: a leftover as long (0) or wide (1)
    // as it can be has such a size.
    private long left(int b, int axis) {
        long side = axis == 0 ? f.boardLength[b] : f.boardWidth[b];
        long[] flaws = f.flaws[b];
        long from = 0;
        long to = side;
        if (flaws.length > 0 && dice.below(2) == 0) {
            from = Math.max(0, flaws[4 * dice.below(flaws.length / 4) + axis + 2]);
        }
        if (flaws.length > 0 && dice.below(2) == 0) {
            to = Math.min(side, flaws[4 * dice.below(flaws.length / 4) + axis]);
        }
        long room = to - from;
        for (int parts = dice.below(4); parts > 0; parts--) {
            int t = dice.below(f.spare);
            room -= axis == 0 ? f.length[t] : f.width[t];
        }
        return room;
    }

    // Late acceptance on the squares of all leftovers; the largest may only grow.
    private void gather(Budget budget, long patience) {
        boolean going = patience > 0 && improver.best.open > 0;
        while (going && !budget.over()) {
            State now = improver.best;
            double most = most(now);
            double squares = squares(now);
            boolean[] found = {false};
            improver.walk(
                    now.copy(), now.weight, this::scattered, scattered(now),
                    state -> found[0] = state.complete() && better(state, most, squares), budget, patience);
            going = found[0];
            if (found[0]) {
                improver.prefer(improver.without(f.spare));
            }
        }
    }

    private boolean better(State state, double most, double squares) {
        double now = most(state);
        return now > most || (now == most && squares(state) > squares * (1 + 1e-9));
    }

    private double scattered(State state) {
        if (!state.complete()) {
            return Double.POSITIVE_INFINITY;
        }
        double most = most(state);
        return -FIRST * most * most - squares(state);
    }

    private double squares(State state) {
        double sum = 0;
        for (int i = 0; i < state.open; i++) {
            BoardTree tree = state.slot[i];
            for (int n = 0; n < tree.nodes(); n++) {
                long[] clear = tree.free(n) ? clear(tree, n) : NONE;
                double area = area(clear);
                sum += area * area;
            }
        }
        return sum;
    }

    private double most(State state) {
        double most = 0;
        for (int i = 0; i < state.open; i++) {
            BoardTree tree = state.slot[i];
            for (int n = 0; n < tree.nodes(); n++) {
                if (tree.free(n) && (double) tree.length(n) * tree.width(n) > most) {
                    long[] clear = clear(tree, n);
                    if (area(clear) > most) {
                        most = area(clear);
                        last = clear;
                    }
                }
            }
        }
        return most;
    }

    private static final long[] NONE = {};

    private long[] clear(BoardTree tree, int n) {
        long[] clear = Leftovers.largest(
                f, tree.stock, tree.x(n), tree.y(n), tree.length(n), tree.width(n), leastL, leastW);
        return clear == null ? NONE : clear;
    }

    private double area(long[] clear) {
        return clear.length == 0 ? 0 : (double) (clear[2] - f.kerf) * (clear[3] - f.kerf);
    }
}

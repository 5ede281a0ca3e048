package dev.treen.yield.engine;

/**
 * With the boards as good as they are, looks for what is worth keeping of them. First for the largest leftover: one of a
 * wished shape is laid in with the parts, and where that works out the wish grows. Then, with that leftover as large or
 * nearly, for the least work at the saw, against which few large leftovers and not many small ones count on all the other
 * boards.
 */
final class Offcuts {
    /** The share of what there is for the largest leftover. */
    private static final double LARGEST = 0.8;

    /** A wish grows by this share at most, mostly far less. */
    private static final double GROWTH = 0.4;

    private static final double LITTLE = 0.004;

    private static final int SNUG_TRIES = 30;

    /** What the largest leftover counts while layouts are changed, in cuts, if it were all that is left over. */
    private static final double FIRST = 1000;

    /** What all leftovers count, in cuts: one of a quarter of what is left over is worth one; the figure is our own. */
    private static final double OTHERS = 16;

    private final Folded f;
    private final Improver improver;
    private final Dice dice;
    private final long leastL;
    private final long leastW;
    private final double plain;
    /** The largest leftover last looked at: x, y, length, width, kerf folded in. */
    private long[] last = {0, 0, 0, 0};

    private record Wish(long l, long w) {}

    Offcuts(Folded f, Improver improver, long seed) {
        this.f = f;
        this.improver = improver;
        var settings = f.problem.settings();
        dice = new Dice(seed + 31);
        leastL = settings.minOffcutLength() + f.kerf;
        leastW = settings.minOffcutWidth() + f.kerf;
        plain = settings.plain();
    }

    /** Both; each ends after so many steps without success. */
    void grow(Budget budget, long patience) {
        largest(budget.part(LARGEST), patience);
        tidy(budget, 2 * patience);
    }

    /** Whether one layout is worth more than another on the same boards. */
    boolean prefers(State one, State other) {
        double most = Math.max(most(one), most(other));
        return better(worth(one, most), worth(other, most));
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

    /** What a layout is worth: first what it keeps, as far as that counts, then the work less what else it keeps. */
    private record Worth(double counts, double work) {}

    private Worth worth(State state, double largest) {
        double free = 1;
        for (int i = 0; i < state.open; i++) {
            free += state.slot[i].freeArea();
        }
        double counts = counts(most(state), largest);
        return new Worth(counts / free, Effort.of(state).inCuts() - OTHERS * squares(state) / free / free);
    }

    // Beyond what may be given for fewer cuts, a larger one is worth no more.
    private double counts(double most, double largest) {
        return plain == 0 ? most : Math.min(most, (1 - plain) * largest);
    }

    private static boolean better(Worth a, Worth b) {
        return a.counts != b.counts ? a.counts > b.counts : a.work < b.work - 1e-9;
    }

    // Late acceptance on both together; what comes out must be better in the order in which they count.
    private void tidy(Budget budget, long patience) {
        boolean going = patience > 0 && improver.best.open > 0;
        double largest = most(improver.best);
        while (going && !budget.over()) {
            State now = improver.best;
            Worth worth = worth(now, largest);
            boolean[] found = {false};
            improver.walk(
                    now.copy(), now.weight, state -> measure(state, largest), measure(now, largest),
                    state -> found[0] = state.complete() && better(worth(state, largest), worth), budget, patience);
            going = found[0];
            if (found[0]) {
                improver.prefer(improver.without(f.spare));
            }
        }
    }

    private double measure(State state, double largest) {
        if (!state.complete()) {
            return Double.POSITIVE_INFINITY;
        }
        Worth worth = worth(state, largest);
        return worth.work - FIRST * worth.counts * worth.counts;
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

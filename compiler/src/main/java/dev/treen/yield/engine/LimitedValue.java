package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import org.jspecify.annotations.Nullable;

/**
 * Most value where copies are limited: a bound by {@link Prices}, layouts from what those prices suggest, and where there
 * is one clear board the exact {@link BlockSearch}.
 */
final class LimitedValue {
    /** Sketches in a row that bring nothing before it is the turn of ruin and recreate. */
    private static final int QUIET = 3;

    /** After so many changes for each of several boards, all of them are laid out anew. */
    private static final int ANEW = 8;

    /** The share of what is left that such a turn takes, and where it brings something. */
    private static final double TURN = 0.06;

    private static final double LONG_TURN = 0.5;

    /** The share for layouts looked for from the bound downwards. */
    private static final double FROM_ABOVE = 0.3;

    /** The share for prices over few marks, and how often a table of all sums must be affordable to do without them. */
    private static final double ROUGH = 0.15;

    private static final int ROUGH_ROUNDS = 16;

    private static final double AFFORDED = 5;

    private final Folded f;
    private final Improver improver;
    private final Budget budget;
    private final int boards;
    private Bound bound;
    private long stamp = 1L << 40;
    private double[] charge;
    private boolean rough;
    private @Nullable Prices learned;

    LimitedValue(Folded f, Improver improver, Bound bound, Budget budget) {
        this.f = f;
        this.improver = improver;
        this.bound = bound;
        this.budget = budget;
        boards = Math.min(f.stocks == 1 ? f.count[0] : 0, f.items());
        charge = new double[f.types];
    }

    /** Searches with all its means; gives the best bound. */
    Bound solve() {
        improver.first(budget.part(0.05), bound.value());
        State found = boards == 1 && !done() ? Puzzle.of(f, 0, ++stamp, budget, this::close) : null;
        if (found != null) {
            improver.take(found, ++stamp);
        }
        Limited board = boards == 0 ? null : Limited.of(f, 0);
        rough = board == null || !budget.affords(AFFORDED * board.table.work());
        if (board != null && !rough) {
            priced(board);
        } else if (board != null && budget.affords((double) board.table.work())) {
            sketch(budget.part(0.5));
            pricedOnce(board);
        }
        sketch(budget);
        improver.improve(budget, bound.value());
        return bound;
    }

    private void close(State made) {
        improver.take(made, ++stamp);
    }

    // Where the table of all sums is too large, prices from one over few marks: no bound, but what copies are worth.
    private void roughlyPriced(Sketches sketches) {
        int marks = (int) Math.cbrt(2 * ROUGH * budget.room() / ROUGH_ROUNDS);
        Limited few = sketches.rough(improver.best, marks);
        if (few != null) {
            var prices = new Prices(few, boards);
            prices.search(budget.part(ROUGH), round -> {
                suggest(few, prices);
                return improver.best.value;
            });
            charge = prices.shares();
            learned = prices;
        }
    }

    // The table of all sums a few times: without prices, for where no limit binds that is all, then at those learned.
    private void pricedOnce(Limited board) {
        if (done()) {
            return;
        }
        Budget part = budget.part(0.9);
        var prices = new Prices(board, boards);
        Prices.Round round = n -> {
            suggest(board, prices);
            return improver.best.value;
        };
        prices.search(part, 1, round);
        lower(prices.wholeBound(), "every cut tried");
        if (learned != null && !done()) {
            prices.from(learned);
            prices.search(part, round);
            lower(prices.wholeBound(), "prices on copies");
        }
    }

    private void priced(Limited board) {
        var prices = new Prices(board, boards);
        prices.search(budget.part(0.2), round -> {
            suggest(board, prices);
            return improver.best.value;
        });
        lower(prices.wholeBound(), "prices on copies");
        charge = prices.shares();
        if (done()) {
            return;
        }
        Endless table = boards > 1 || f.flaws[0].length > 0 ? null : prices.settled(budget);
        long[][] around = table == null ? null : new Surround(table).values();
        if (around != null) {
            fromAbove(board, around, prices, budget.part(FROM_ABOVE));
        }
        if (!done()) {
            improver.improve(budget.part(0.1), bound.value());
        }
        if (done() || boards > 1 || f.flaws[0].length > 0) {
            return;
        }
        sketch(budget.part(0.25));
        if (!done() && around != null) {
            blocks(board, around, prices, improver.best.value, budget.part(0.6));
        }
    }

    // Supposes a value little below the bound: so little is wasted that few blocks are left, and either the layout is there
    // or the bound comes down.
    private void fromAbove(Limited board, long[][] around, Prices prices, Budget part) {
        long step = 1;
        while (!done() && !part.over()) {
            long known = Math.max(improver.best.value, bound.value() - step);
            if (!blocks(board, around, prices, known, part.part(0.5))) {
                return;
            }
            step *= 4;
        }
    }

    // Sketches while they bring something, then ruin and recreate for a while, in turns.
    private void sketch(Budget part) {
        if (boards == 0 || f.flaws[0].length > 0 || done()) {
            return;
        }
        var sketches = new Sketches(f, 0, new Dice(f.problem.settings().seed() + 7 * part.done()), part);
        if (rough && learned == null && sketches.any()) {
            roughlyPriced(sketches);
        }
        sketches.charge(charge);
        int round = 0;
        double turn = TURN;
        while (sketches.any() && !part.over() && !done()) {
            for (int quiet = 0; quiet < QUIET * boards && !part.over() && !done(); quiet++) {
                long before = improver.best.value;
                State made = boards > 1 && round % (ANEW * boards) != 0
                        ? sketches.again(improver.best, 1 + round % Math.min(3, boards), ++stamp, part)
                        : sketches.round(improver.best, boards, round, ++stamp, part);
                round++;
                if (made != null) {
                    improver.take(made, ++stamp);
                }
                quiet = improver.best.value > before ? -1 : quiet;
            }
            long second = improver.best.value;
            improver.improve(part.part(turn), bound.value());
            // Long turns for as long as they bring something.
            turn = improver.best.value > second ? LONG_TURN : TURN;
        }
    }

    private boolean blocks(Limited board, long[][] around, Prices prices, long known, Budget part) {
        var search = new BlockSearch(board, around, prices, known, part);
        boolean finished = search.run();
        if (search.winner >= 0) {
            var state = new State(f);
            int slot = state.open(0, ++stamp);
            search.lay(state, slot, 0, search.winner, stamp);
            improver.take(state, stamp);
        }
        lower(finished ? search.best : search.bound(), finished ? "every block tried" : "blocks of parts");
        return finished;
    }

    private void lower(long value, String how) {
        if (value < bound.value()) {
            bound = new Bound(value, how);
        }
    }

    private boolean done() {
        return improver.best.value >= bound.value() || budget.over();
    }

    // The layout of a round may take some parts too often: those go, and what else fits comes in.
    private void suggest(Limited board, Prices prices) {
        long[] profit = prices.asked();
        var state = new State(f);
        var scratch = new int[f.types];
        for (int i = 0; i < boards; i++) {
            int slot = state.open(0, ++stamp);
            board.table.lay(state, slot, 0, profit, stamp);
        }
        for (int slot = 0; slot < state.open; slot++) {
            BoardTree tree = state.slot[slot];
            for (int n = 0; n < tree.nodes(); n++) {
                if (tree.kind(n) == BoardTree.ITEM && f.endless[tree.type(n)] < 0 && state.left[tree.type(n)] < 0) {
                    state.clear(slot, n, tree.stamp, scratch);
                }
            }
        }
        improver.take(state, ++stamp);
    }
}

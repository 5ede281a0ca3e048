package dev.treen.yield.engine;

import org.jspecify.annotations.Nullable;

/**
 * Whether all parts together fit one clear board, by {@link BlockSearch} for the whole of their area: so little may be
 * wasted that few blocks are left, and where none of them is the board, the parts do not fit.
 */
final class Whole {
    private static final int PRICE_ROUNDS = 20;

    /** The layout where one was found. */
    final @Nullable State layout;
    /** Whether it is certain that there is none. */
    final boolean never;

    private Whole(@Nullable State layout, boolean never) {
        this.layout = layout;
        this.never = never;
    }

    /** Looks for a layout of all parts on one board of a stock, or a proof that there is none. */
    static Whole of(Folded f, int stock, long stamp, Budget budget) {
        double marks = (double) f.types * (f.boardLength[stock] + f.boardWidth[stock]);
        if (f.flaws[stock].length > 0 || f.blemishes.anyTaken() || !budget.affords(marks)) {
            return new Whole(null, false);
        }
        State found = Puzzle.of(f, stock, stamp, budget);
        if (found != null) {
            return new Whole(found, false);
        }
        Limited limited = Limited.of(f, stock);
        if (limited == null) {
            return new Whole(null, false);
        }
        long need = 0;
        for (int t = 0; t < f.spare; t++) {
            need += f.area[t] * f.copies[t];
            if (limited.limit[t] < f.copies[t]) {
                return new Whole(null, true);
            }
        }
        Limited board = limited.worth(f.area);
        var prices = new Prices(board, 1);
        long known = need - 1;
        prices.search(budget.part(0.2), PRICE_ROUNDS, round -> known);
        if (prices.wholeBound() < need) {
            return new Whole(null, true);
        }
        Endless table = prices.settled(budget);
        if (table == null) {
            return new Whole(null, false);
        }
        var search = new BlockSearch(board, new Surround(table).values(), prices, known, budget);
        search.enough = need;
        boolean finished = search.run();
        if (search.winner < 0) {
            return new Whole(null, finished);
        }
        var state = new State(f);
        int slot = state.open(stock, stamp);
        search.lay(state, slot, 0, search.winner, stamp);
        return new Whole(state, false);
    }
}

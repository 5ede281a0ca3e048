package dev.treen.yield.engine;

/**
 * How much area of parts each board can hold at most, by exact search over blocks of parts on the clear board: a row for
 * {@link CoverRows}. Worth the work where parts are few, for there the area bound promises far too much.
 */
final class FillBound {
    private static final int MOST_ITEMS = 60;

    private FillBound() {
    }

    /** Adds the row; boards whose search does not end count with the bound it came to. */
    static void add(Folded f, CoverRows rows, Budget budget) {
        double marks = 0;
        for (int b = 0; b < f.stocks; b++) {
            marks += (double) f.types * (f.boardLength[b] + f.boardWidth[b]);
        }
        if (f.items() > MOST_ITEMS || !budget.affords(marks)) {
            return;
        }
        var room = new double[f.stocks];
        double need = 0;
        for (int t = 0; t < f.spare; t++) {
            need += (double) f.area[t] * f.copies[t];
        }
        for (int b = 0; b < f.stocks; b++) {
            if (f.count[b] > 0) {
                double area = (double) f.boardLength[b] * f.boardWidth[b] - LostArea.of(f, b);
                room[b] = Math.min(area, most(f, b, budget.part(1.0 / (f.stocks - b))));
            }
        }
        rows.add(room, need);
    }

    private static double most(Folded f, int b, Budget budget) {
        Limited board = Limited.of(f, b);
        if (board == null) {
            return Double.MAX_VALUE;
        }
        Limited filled = board.worth(f.area);
        var prices = new Prices(filled, 1);
        var known = new long[1];
        prices.search(budget, round -> known[0]);
        Endless table = budget.over() ? null : prices.settled(budget);
        if (table == null) {
            return prices.bound == Long.MAX_VALUE ? Double.MAX_VALUE : prices.wholeBound();
        }
        var search = new BlockSearch(filled, new Surround(table).values(), prices, 0, budget);
        return search.run() ? search.best : Math.min(search.bound(), prices.wholeBound());
    }
}

package dev.treen.yield.engine;

import org.jspecify.annotations.Nullable;

/**
 * The parts that one clear board may give when copies are limited: sizes, limits and the marks that cuts can lie at. Each
 * way a type may lie is a kind of its own.
 */
final class Limited {
    /** Cells times cuts of a table at most. */
    private static final long MOST_WORK = 20_000_000_000L;

    final Folded f;
    final int stock;
    final int kinds;
    final long[] l;
    final long[] w;
    final int[] type;
    /** What a copy of each type is worth. */
    final long[] value;
    /** By type: how many copies one board can take at most. */
    final int[] limit;
    final long[] xs;
    final long[] ys;
    final Endless table;

    private Limited(
            Folded f, int stock, long[] l, long[] w, int[] type, long[] value, int[] limit, long[] xs, long[] ys,
            Endless table) {
        this.f = f;
        this.value = value;
        this.stock = stock;
        this.kinds = l.length;
        this.l = l;
        this.w = w;
        this.type = type;
        this.limit = limit;
        this.xs = xs;
        this.ys = ys;
        this.table = table;
    }

    /** Prepares a board; null where marks are too many. */
    static @Nullable Limited of(Folded f, int stock) {
        Kinds kinds = Kinds.of(f, stock);
        long[] xs = Raster.limitedSums(f.boardLength[stock], kinds.l, kinds.limits());
        long[] ys = Raster.limitedSums(f.boardWidth[stock], kinds.w, kinds.limits());
        return over(f, stock, xs, ys);
    }

    /** The same with given marks; its table is a bound only where these are all sums of sizes. */
    static @Nullable Limited over(Folded f, int stock, long[] xs, long[] ys) {
        Kinds kinds = Kinds.of(f, stock);
        Endless table = Endless.over(xs, ys, kinds.l, kinds.w, kinds.type, MOST_WORK);
        return table == null
                ? null
                : new Limited(f, stock, kinds.l, kinds.w, kinds.type, f.value, kinds.limit, xs, ys, table);
    }

    /** The same with other values. */
    Limited worth(long[] values) {
        return new Limited(f, stock, l, w, type, values, limit, xs, ys, table);
    }
}

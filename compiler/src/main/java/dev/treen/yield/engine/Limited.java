package dev.treen.yield.engine;

import java.util.Arrays;
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
        int n = 0;
        var l = new long[2 * f.types];
        var w = new long[2 * f.types];
        var type = new int[2 * f.types];
        var limit = new int[f.types];
        long sideL = f.boardLength[stock];
        long sideW = f.boardWidth[stock];
        for (int t = 0; t < f.spare; t++) {
            for (int turn = 0; turn < (f.turns[t] ? 2 : 1); turn++) {
                l[n] = turn == 0 ? f.length[t] : f.width[t];
                w[n] = turn == 0 ? f.width[t] : f.length[t];
                type[n] = t;
                if (f.ok[t][stock] && f.copies[t] > 0 && l[n] <= sideL && w[n] <= sideW) {
                    // Straight and turned parts may mix, so area is what limits them.
                    long room = f.turns[t] ? sideL * sideW / f.area[t] : (sideL / l[n]) * (sideW / w[n]);
                    limit[t] = (int) Math.min(f.copies[t], room);
                    n++;
                }
            }
        }
        l = Arrays.copyOf(l, n);
        w = Arrays.copyOf(w, n);
        type = Arrays.copyOf(type, n);
        var limits = new int[n];
        for (int k = 0; k < n; k++) {
            limits[k] = limit[type[k]];
        }
        long[] xs = Raster.limitedSums(sideL, l, limits);
        long[] ys = Raster.limitedSums(sideW, w, limits);
        Endless table = Endless.over(xs, ys, l, w, type, MOST_WORK);
        return table == null ? null : new Limited(f, stock, l, w, type, f.value, limit, xs, ys, table);
    }

    /** The same with other values. */
    Limited worth(long[] values) {
        return new Limited(f, stock, l, w, type, values, limit, xs, ys, table);
    }
}

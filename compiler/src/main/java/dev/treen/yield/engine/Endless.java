package dev.treen.yield.engine;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The best a clear board can give when every part may be cut as often as wished: the exact programme over raster points
 * (Gilmore and Gomory 1966; Scheithauer and Terno 1996). Its value is the optimum there and a bound where copies are
 * limited or the board has defects.
 */
final class Endless {
    /** So many cells of the table count as one step of a search. */
    static final long WORK_A_STEP = 20_000;

    final long[] xs;
    final long[] ys;
    private final long[] partL;
    private final long[] partW;
    private final int[] partType;
    private final long[][] best;
    private final int[] itemAtX;
    private final int[] itemAtY;

    private Endless(long[] xs, long[] ys, long[] partL, long[] partW, int[] partType) {
        this.xs = xs;
        this.ys = ys;
        this.partL = partL;
        this.partW = partW;
        this.partType = partType;
        best = new long[xs.length][ys.length];
        itemAtX = new int[partL.length];
        itemAtY = new int[partL.length];
        for (int i = 0; i < partL.length; i++) {
            itemAtX[i] = ceiling(xs, partL[i]);
            itemAtY[i] = ceiling(ys, partW[i]);
        }
    }

    private static int ceiling(long[] marks, long v) {
        int at = Arrays.binarySearch(marks, v);
        return at >= 0 ? at : -at - 1;
    }

    /**
     * The table for a board and the types it accepts, both ways where a type may turn; null if it would be too large.
     * With {@code all} sums of sizes as marks the values of smaller rectangles are exact too; raster points are fewer but
     * keep only the value of the whole board.
     */
    static @Nullable Endless of(Folded f, int stock, long most, boolean all) {
        Kinds kinds = Kinds.of(f, stock);
        long[] l = kinds.l;
        long[] w = kinds.w;
        long sideL = f.boardLength[stock];
        long sideW = f.boardWidth[stock];
        long[] xs = all ? Raster.sums(sideL, l) : Raster.points(sideL, l);
        long[] ys = all ? Raster.sums(sideW, w) : Raster.points(sideW, w);
        double work = (double) xs.length * ys.length * (xs.length + ys.length) / 4;
        if (xs.length == 0 || ys.length == 0 || (double) xs.length * ys.length > 40e6 || work > most) {
            return null;
        }
        return new Endless(xs, ys, l, w, kinds.type);
    }

    /** The table over given marks, for parts in both lists, each of a type; null if it would be too large. */
    static @Nullable Endless over(long[] xs, long[] ys, long[] l, long[] w, int[] type, long most) {
        double work = (double) xs.length * ys.length * (xs.length + ys.length) / 4;
        boolean fits = xs.length > 0 && ys.length > 0 && (double) xs.length * ys.length <= 20e6 && work <= most;
        return fits ? new Endless(xs, ys, l, w, type) : null;
    }

    /** Steps the table takes, about. */
    long work() {
        return (long) ((double) xs.length * ys.length * (xs.length + ys.length) / 4);
    }

    /** Fills the table for profits by type; false if the budget ran out. */
    boolean fill(long[] profit, Budget budget) {
        for (long[] row : best) {
            Arrays.fill(row, 0);
        }
        for (int i = 0; i < partL.length; i++) {
            long p = profit[partType[i]];
            if (p > best[itemAtX[i]][itemAtY[i]]) {
                best[itemAtX[i]][itemAtY[i]] = p;
            }
        }
        var restY = new int[ys.length][];
        for (int j = 0; j < ys.length; j++) {
            restY[j] = rests(ys, j);
        }
        var whole = new int[xs.length][];
        var cut = new long[ys.length];
        for (int i = 0; i < xs.length; i++) {
            row(i, restY, whole, cut);
            if ((i & 15) == 0 && budget.looked()) {
                return false;
            }
        }
        return true;
    }

    // For each cut up to the middle of mark j, the mark that the rest comes down to.
    static int[] rests(long[] marks, int j) {
        int n = 0;
        while (n + 1 < marks.length && 2 * marks[n + 1] <= marks[j]) {
            n++;
        }
        var rest = new int[n + 1];
        for (int c = 1; c <= n; c++) {
            rest[c] = Raster.floor(marks, marks[j] - marks[c]);
        }
        return rest;
    }

    // Of the slabs that a rectangle falls into along one direction, the smallest may be taken to be one that is not cut
    // in that direction again: only such slabs are tried, up to the middle.
    private void row(int i, int[][] restY, int[][] whole, long[] cut) {
        long[] now = best[i];
        if (i > 0) {
            System.arraycopy(best[i - 1], 0, cut, 0, cut.length);
        } else {
            Arrays.fill(cut, 0);
        }
        int[] rest = rests(xs, i);
        for (int c = 1; c < rest.length; c++) {
            long[] a = best[c];
            long[] b = best[rest[c]];
            int[] slabs = whole[c];
            if (slabs.length * 4 > cut.length) {
                for (int j = 0; j < cut.length; j++) {
                    cut[j] = Math.max(cut[j], a[j] + b[j]);
                }
            } else {
                for (int j : slabs) {
                    cut[j] = Math.max(cut[j], a[j] + b[j]);
                }
            }
        }
        var strips = new int[ys.length];
        var slabs = new int[ys.length];
        int stripCount = 0;
        int slabCount = 0;
        for (int j = 0; j < now.length; j++) {
            long stacked = j == 0 ? 0 : now[j - 1];
            int[] r = restY[j];
            for (int k = 0; k < stripCount && strips[k] < r.length; k++) {
                stacked = Math.max(stacked, now[strips[k]] + now[r[strips[k]]]);
            }
            long across = Math.max(now[j], cut[j]);
            long top = Math.max(across, stacked);
            if (j > 0 && across > stacked) {
                strips[stripCount++] = j;
            }
            if (Math.max(now[j], stacked) > cut[j]) {
                slabs[slabCount++] = j;
            }
            now[j] = top;
        }
        whole[i] = Arrays.copyOf(slabs, slabCount);
    }

    /** The values of all rectangles as long as a mark, by their width. */
    long[] column(int i) {
        return best[i];
    }

    /** The table itself: by mark along, then across. */
    long[][] table() {
        return best;
    }

    /** The sizes along of all parts. */
    long[] lengths() {
        return partL.clone();
    }

    /** The sizes across of all parts. */
    long[] widths() {
        return partW.clone();
    }

    /** The value of the whole board. */
    long value() {
        return best[xs.length - 1][ys.length - 1];
    }

    /** The value of a smaller rectangle. */
    long value(long l, long w) {
        return l < 0 || w < 0 ? 0 : best[Raster.floor(xs, l)][Raster.floor(ys, w)];
    }

    /** The same by index of the raster points. */
    long at(int i, int j) {
        return best[i][j];
    }

    /** Counts the parts of a best layout by type. */
    void count(int[] counts, long[] profit) {
        trace(xs.length - 1, ys.length - 1, profit, (t, l, w) -> counts[t]++, null, -1, 0);
    }

    /** Lays a best layout of a rectangle into a free leaf of a tree. */
    void lay(State state, int slot, int leaf, long[] profit, long stamp) {
        BoardTree tree = state.own(slot, stamp);
        int i = Raster.floor(xs, tree.length(leaf));
        int j = Raster.floor(ys, tree.width(leaf));
        trace(i, j, profit, (t, l, w) -> {
        }, state, leaf, slot);
    }

    private interface Found {
        void part(int type, long l, long w);
    }

    private void trace(
            int i, int j, long[] profit, Found found, @Nullable State state, int leaf, int slot) {
        long v = best[i][j];
        if (v == 0) {
            return;
        }
        for (int p = 0; p < partL.length; p++) {
            if (itemAtX[p] <= i && itemAtY[p] <= j && profit[partType[p]] == v) {
                found.part(partType[p], partL[p], partW[p]);
                if (state != null) {
                    BoardTree tree = state.slot[slot];
                    state.place(
                            slot, leaf, partType[p], tree.x(leaf), tree.y(leaf), partL[p], partW[p], true, tree.stamp);
                }
                return;
            }
        }
        int[] rest = rests(xs, i);
        for (int c = 1; c < rest.length; c++) {
            if (best[c][j] + best[rest[c]][j] == v) {
                int second = state == null ? -1 : state.slot[slot].cut(leaf, BoardTree.ROW, xs[c]);
                int first = state == null ? -1 : state.slot[slot].before(second);
                trace(c, j, profit, found, state, first, slot);
                trace(rest[c], j, profit, found, state, second, slot);
                return;
            }
        }
        rest = rests(ys, j);
        for (int c = 1; c < rest.length; c++) {
            if (best[i][c] + best[i][rest[c]] == v) {
                int second = state == null ? -1 : state.slot[slot].cut(leaf, BoardTree.STACK, ys[c]);
                int first = state == null ? -1 : state.slot[slot].before(second);
                trace(i, c, profit, found, state, first, slot);
                trace(i, rest[c], profit, found, state, second, slot);
                return;
            }
        }
        if (i > 0 && best[i - 1][j] == v) {
            trace(i - 1, j, profit, found, state, leaf, slot);
        } else {
            trace(i, j - 1, profit, found, state, leaf, slot);
        }
    }
}

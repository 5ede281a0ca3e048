package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.stream.LongStream;
import org.jspecify.annotations.Nullable;

/**
 * The best a board with defects can give when every part may be cut as often as wished. Cuts at sums of part sizes that
 * start from the board's end or from the far side of a defect lose nothing (places as in Afsharian, Niknejad and Waescher
 * 2014, whose programme over them is a heuristic); rectangles without defect come from the table of the clear board. The
 * table over all rectangles is filled row by row, so that the inner loops run over neighbours in memory.
 */
final class Flawed {
    /** Numbers in the table at most; each takes four bytes. */
    private static final double MOST_CELLS = 300e6;

    private final Folded f;
    private final int stock;
    private final Endless clear;
    private final Budget budget;
    private final long[] xs;
    private final long[] ys;
    private final int[][] spanX;
    private final int[][] spanY;
    /** From each mark, the marks that sums from there or from a defect behind it reach; others cut nothing useful. */
    private final int[][] cutX;

    private final int[][] cutY;
    /** From each mark to each later one, the last useful mark between: what lies behind is waste. */
    private final int[][] endX;

    /** By first and last mark along, the values of all spans across: row by row, from the lower mark to the upper. */
    private final int[][][] table;

    private final int[] rowAt;

    private Flawed(Folded f, int stock, Endless clear, long[] xs, long[] ys, Budget budget) {
        this.f = f;
        this.stock = stock;
        this.clear = clear;
        this.budget = budget;
        this.xs = xs;
        this.ys = ys;
        spanX = spans(xs, clear.xs);
        spanY = spans(ys, clear.ys);
        cutX = cuts(xs, starts(f.flaws[stock], 2), clear.lengths());
        cutY = cuts(ys, starts(f.flaws[stock], 3), clear.widths());
        endX = ends(cutX);
        table = new int[xs.length][][];
        rowAt = new int[ys.length + 1];
        for (int c = 0; c < ys.length; c++) {
            // Row c holds the upper marks from c on, and is found as if it held all of them.
            rowAt[c + 1] = rowAt[c] + ys.length - c;
        }
    }

    /** Prepares a board; null if it has too many places. The table of the clear board must hold all sums. */
    static @Nullable Flawed of(Folded f, int stock, Endless clear, Budget budget) {
        long[] startX = starts(f.flaws[stock], 2);
        long[] startY = starts(f.flaws[stock], 3);
        long[] xs = marks(startX, f.boardLength[stock], clear.lengths());
        long[] ys = marks(startY, f.boardWidth[stock], clear.widths());
        double spansY = 0.5 * ys.length * (ys.length + 1);
        boolean fits = xs.length > 0 && ys.length > 0 && 0.5 * xs.length * xs.length * spansY < MOST_CELLS;
        return fits && clear.value() < Integer.MAX_VALUE / 2 ? new Flawed(f, stock, clear, xs, ys, budget) : null;
    }

    private static long[] starts(long[] flaw, int side) {
        var starts = new long[flaw.length / 4 + 1];
        for (int d = 0; d < flaw.length / 4; d++) {
            starts[d + 1] = flaw[4 * d + side];
        }
        return starts;
    }

    private static int[][] cuts(long[] marks, long[] starts, long[] sizes) {
        var cuts = new int[marks.length][];
        for (int a = 0; a < marks.length; a++) {
            long from = marks[a];
            long[] begin = LongStream.concat(LongStream.of(from), Arrays.stream(starts).filter(s -> s > from))
                    .toArray();
            long[] reached = Raster.sumsFrom(begin, marks[marks.length - 1], sizes, Integer.MAX_VALUE);
            cuts[a] = Arrays.stream(reached)
                    .filter(p -> p > from)
                    .mapToInt(p -> Arrays.binarySearch(marks, p))
                    .toArray();
        }
        return cuts;
    }

    private static int[][] ends(int[][] cuts) {
        var ends = new int[cuts.length][cuts.length];
        for (int a = 0; a < cuts.length; a++) {
            int end = a;
            int next = 0;
            for (int b = a; b < cuts.length; b++) {
                if (next < cuts[a].length && cuts[a][next] == b) {
                    end = b;
                    next++;
                }
                ends[a][b] = end;
            }
        }
        return ends;
    }

    private static long[] marks(long[] starts, long side, long[] sizes) {
        long[] sums = Raster.sumsFrom(starts, side, sizes, 2000);
        if (sums.length == 0 || sums[sums.length - 1] == side) {
            return sums;
        }
        return LongStream.concat(Arrays.stream(sums), LongStream.of(side)).toArray();
    }

    private static int[][] spans(long[] marks, long[] raster) {
        var span = new int[marks.length][marks.length];
        for (int a = 0; a < marks.length; a++) {
            for (int b = a; b < marks.length; b++) {
                span[a][b] = Raster.floor(raster, marks[b] - marks[a]);
            }
        }
        return span;
    }

    /** The best value, or -1 if the budget ran out. */
    long value() {
        int nx = xs.length;
        for (int a = nx - 1; a >= 0; a--) {
            table[a] = new int[nx][];
            for (int b = a; b < nx; b++) {
                if (endX[a][b] != b) {
                    table[a][b] = table[a][endX[a][b]];
                    continue;
                }
                table[a][b] = new int[rowAt[ys.length]];
                block(a, b);
                if (!budget.spend(1)) {
                    return -1;
                }
            }
        }
        return at(0, nx - 1, 0, ys.length - 1);
    }

    private void block(int a, int b) {
        int[] now = table[a][b];
        for (int c = ys.length - 1; c >= 0; c--) {
            int row = rowAt[c] - c;
            long ceiling = ceiling(a, b, c);
            int from = c;
            while (from < ys.length && ys[from] <= ceiling) {
                now[row + from] = (int) clear.at(spanX[a][b], spanY[c][from]);
                from++;
            }
            if (from == ys.length) {
                continue;
            }
            for (int m : cutX[a]) {
                if (m >= b) {
                    break;
                }
                int[] left = table[a][m];
                int[] right = table[m][b];
                for (int i = row + from, end = row + ys.length; i < end; i++) {
                    now[i] = Math.max(now[i], left[i] + right[i]);
                }
            }
            for (int m : cutY[c]) {
                int lower = now[row + m];
                int upper = rowAt[m] - m;
                for (int d = Math.max(m + 1, from); d < ys.length; d++) {
                    now[row + d] = Math.max(now[row + d], lower + now[upper + d]);
                }
            }
        }
    }

    // How far up a strip from a lower mark stays clear.
    private long ceiling(int a, int b, int c) {
        long top = Long.MAX_VALUE;
        long[] d = f.flaws[stock];
        for (int i = 0; i < d.length; i += 4) {
            if (xs[a] < d[i + 2] && xs[b] > d[i] && ys[c] < d[i + 3]) {
                top = Math.min(top, Math.max(d[i + 1], ys[c]));
            }
        }
        return top;
    }

    private long at(int a, int b, int c, int d) {
        return table[a][b][rowAt[c] - c + d];
    }

    /** Lays the best layout on a fresh board. */
    void lay(State state, int slot, long[] profit, long stamp) {
        lay(state, slot, 0, 0, xs.length - 1, 0, ys.length - 1, profit, stamp);
    }

    private void lay(State state, int slot, int leaf, int a, int b, int c, int d, long[] profit, long stamp) {
        long v = at(a, b, c, d);
        if (v == 0) {
            return;
        }
        if (!f.blocked(stock, xs[a], ys[c], xs[b] - xs[a], ys[d] - ys[c])) {
            clear.lay(state, slot, leaf, profit, stamp);
            return;
        }
        for (int m : cutX[a]) {
            if (m < b && at(a, m, c, d) + at(m, b, c, d) == v) {
                int second = state.own(slot, stamp).cut(leaf, BoardTree.ROW, xs[m] - xs[a]);
                int first = state.slot[slot].before(second);
                lay(state, slot, first, a, m, c, d, profit, stamp);
                lay(state, slot, second, m, b, c, d, profit, stamp);
                return;
            }
        }
        for (int m : cutY[c]) {
            if (m < d && at(a, b, c, m) + at(a, b, m, d) == v) {
                int second = state.own(slot, stamp).cut(leaf, BoardTree.STACK, ys[m] - ys[c]);
                int first = state.slot[slot].before(second);
                lay(state, slot, first, a, b, c, m, profit, stamp);
                lay(state, slot, second, a, b, m, d, profit, stamp);
                return;
            }
        }
        throw new IllegalStateException("a value without a cut");
    }
}

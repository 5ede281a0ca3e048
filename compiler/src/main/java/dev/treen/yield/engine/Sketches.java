package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Layouts of clear boards by tables over few marks: every cell keeps one block that holds to the limits on copies, and two
 * blocks are joined only where both together do (a table of such kind: Morabito and Pureza 2010). Each round draws other
 * marks and shifts the values a little; the marks of the best layout so far always take part, so that what is good in it
 * can be put together anew. A table over all marks would be exact without limits, but takes minutes on large boards.
 */
final class Sketches {
    /** A round may cost this share of what there is for all. */
    private static final double SHARE = 0.04;

    private static final int MOST_MARKS = 2000;
    private static final int LEAST_MARKS = 24;
    /** Cells times counts kept at most. */
    private static final double MOST_COUNTS = 60e6;

    /** Of so many of the most valuable types all multiples are marks. */
    private static final int REPEATED = 3;

    private static final double SHIFT = 0.12;

    private static final int ITEM = 1;
    private static final int BESIDE = 2;
    private static final int ABOVE = 3;
    private static final int SHORTER = 4;
    private static final int NARROWER = 5;

    private final Folded f;
    private final int stock;
    private final Kinds kinds;
    private final Dice dice;
    private final int marks;
    private final int[] byWorth;
    private long[] allX = {};
    private long[] allY = {};
    private long[] xs = {};
    private long[] ys = {};
    /** Types whose limit is less than what the board has room for; only these are counted. */
    private int[] counted = {};

    private int[] most = {};
    /** By type: the share of its value that a copy is charged where other boards want it too. */
    private double[] charge;
    private long[][] value = {};
    private int[][] how = {};
    private short[][][] counts = {};

    Sketches(Folded f, int stock, Dice dice, Budget budget) {
        this.f = f;
        this.stock = stock;
        this.dice = dice;
        kinds = Kinds.of(f, stock);
        charge = new double[f.types];
        boolean endless = Arrays.stream(kinds.type).allMatch(t -> f.endless[t] >= 0);
        double cells = endless ? MOST_COUNTS : MOST_COUNTS / Math.max(1, f.types);
        double fit = Math.min(Math.sqrt(cells), Math.cbrt(2 * SHARE * budget.room()));
        marks = (int) Math.max(LEAST_MARKS, Math.min(MOST_MARKS, fit));
        byWorth = java.util.stream.IntStream.range(0, kinds.l.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -(double) f.value[kinds.type[k]] / f.area[kinds.type[k]]))
                .mapToInt(Integer::intValue)
                .toArray();
        allX = everything(f.boardLength[stock], kinds.l);
        allY = everything(f.boardWidth[stock], kinds.w);
    }

    private long[] everything(long side, long[] sizes) {
        long[] all = Raster.limitedSums(side, sizes, kinds.limits());
        return all.length > marks ? new long[0] : all;
    }

    /**
     * Whether sketches are worth while: where nearly every part is there only once, the two halves of a board want the same
     * parts, and a cell keeps no second choice.
     */
    boolean any() {
        return kinds.l.length > 0 && kinds.repeat();
    }

    /** Charges copies a share of their value, by type, in all boards of a layout but the last. */
    void charge(double[] shares) {
        charge = shares.clone();
    }

    /** The layout with some of its boards sawn up anew; null if the budget ran out. */
    @Nullable
    State again(State from, int boards, long stamp, Budget budget) {
        var state = from.copy();
        var scratch = new int[f.types];
        for (int i = 0; i < boards && state.open > 0; i++) {
            state.close(dice.below(state.open), stamp, scratch);
        }
        return add(state, from, boards, 1, stamp, budget);
    }

    /** One layout of so many boards, near one that is good already; null if the budget ran out. */
    @Nullable
    State round(State near, int boards, int number, long stamp, Budget budget) {
        return add(new State(f), near, boards, number, stamp, budget);
    }

    private @Nullable State add(State state, State near, int boards, int number, long stamp, Budget budget) {
        xs = allX.length > 0 ? allX : draw(f.boardLength[stock], kinds.l, near, true);
        ys = allY.length > 0 ? allY : draw(f.boardWidth[stock], kinds.w, near, false);
        double charged = number == 0 ? 1 : dice.unit();
        for (int i = 0; i < boards; i++) {
            if (!fill(state, shifted(number, i + 1 < boards ? charged : 0), budget)) {
                return null;
            }
            int slot = state.open(stock, stamp);
            lay(state, slot, 0, xs.length - 1, ys.length - 1, stamp);
        }
        return state;
    }

    private double[] shifted(int number, double charged) {
        double by = number == 0 ? 0 : SHIFT * dice.unit() * dice.unit();
        var shifted = new double[f.types];
        for (int t = 0; t < f.types; t++) {
            shifted[t] = 1 + by * (dice.unit() - 0.5) - charged * charge[t];
        }
        return shifted;
    }

    // Marks of the best layout, single sizes, multiples of the best, then sums at random, all also from the other end.
    private long[] draw(long side, long[] sizes, State near, boolean along) {
        var drawn = new TreeSet<Long>();
        drawn.add(0L);
        drawn.add(side);
        for (int slot = 0; slot < near.open; slot++) {
            near(near.slot[slot], along, drawn);
        }
        for (int i = 0; i < Math.min(REPEATED, byWorth.length); i++) {
            long size = sizes[byWorth[i]];
            long fits = Math.min(side / size, Math.min(marks / 8, kinds.limit[kinds.type[byWorth[i]]]));
            for (int times = 1; times <= fits; times++) {
                drawn.add(size * times);
                drawn.add(side - size * times);
            }
        }
        for (int times = 1; times < 3; times++) {
            for (int k : byWorth) {
                long size = sizes[k];
                if (drawn.size() < marks && size * times <= side) {
                    drawn.add(size * times);
                    drawn.add(side - size * times);
                }
            }
        }
        for (int tries = 0; drawn.size() < marks && tries < 4 * marks; tries++) {
            long size = sizes[picked()];
            long step = size;
            boolean same = dice.below(3) == 0;
            while (size <= side && drawn.size() < marks) {
                drawn.add(size);
                if (dice.below(2) == 0) {
                    drawn.add(side - size);
                }
                step = same ? step : sizes[picked()];
                size += step;
            }
        }
        return drawn.stream().mapToLong(Long::longValue).toArray();
    }

    // What is worth the most for its area more often.
    private int picked() {
        return byWorth[(int) (dice.unit() * dice.unit() * byWorth.length)];
    }

    private void near(BoardTree tree, boolean along, Set<Long> drawn) {
        for (int n = 0; n < tree.nodes() && drawn.size() < marks / 2; n++) {
            if (tree.gone(n) || tree.free(n)) {
                continue;
            }
            drawn.add(along ? tree.length(n) : tree.width(n));
            if (tree.kind(n) == (along ? BoardTree.ROW : BoardTree.STACK)) {
                long whole = along ? tree.length(n) : tree.width(n);
                long sum = 0;
                for (int c = tree.first(n); c >= 0; c = tree.next(c)) {
                    if (!tree.free(c)) {
                        sum += along ? tree.length(c) : tree.width(c);
                        drawn.add(sum);
                        drawn.add(whole - sum);
                    }
                }
            }
        }
    }

    private void count(State state) {
        int n = 0;
        counted = new int[f.types];
        most = new int[f.types];
        for (int t = 0; t < f.spare; t++) {
            if (f.endless[t] < 0 && state.left[t] < kinds.room[t]) {
                counted[n] = t;
                most[n++] = state.left[t];
            }
        }
        counted = Arrays.copyOf(counted, n);
    }

    private boolean fill(State state, double[] shifted, Budget budget) {
        count(state);
        value = new long[xs.length][ys.length];
        how = new int[xs.length][ys.length];
        counts = new short[xs.length][ys.length][];
        var none = new short[counted.length];
        for (int i = 0; i < kinds.l.length; i++) {
            single(i, state, shifted, none);
        }
        int[][] restX = rests(xs);
        int[][] restY = rests(ys);
        long work = (long) xs.length * ys.length * (xs.length + ys.length) / 4;
        if (!budget.spend(1 + work / Endless.WORK_A_STEP)) {
            return false;
        }
        for (int i = 0; i < xs.length; i++) {
            for (int j = 0; j < ys.length; j++) {
                cell(i, j, restX[i], restY[j], none);
            }
            if ((i & 7) == 0 && budget.looked()) {
                return false;
            }
        }
        return true;
    }

    private void single(int kind, State state, double[] shifted, short[] none) {
        int t = kinds.type[kind];
        if (f.endless[t] < 0 && state.left[t] < 1) {
            return;
        }
        int i = Raster.floor(xs, kinds.l[kind]);
        int j = Raster.floor(ys, kinds.w[kind]);
        i += xs[i] < kinds.l[kind] ? 1 : 0;
        j += ys[j] < kinds.w[kind] ? 1 : 0;
        long worth = (long) (f.value[t] * shifted[t] * 64);
        if (worth > value[i][j]) {
            value[i][j] = worth;
            how[i][j] = ITEM | kind << 3;
            short[] one = none.clone();
            int at = Arrays.binarySearch(counted, t);
            if (at >= 0) {
                one[at] = 1;
            }
            counts[i][j] = one;
        }
    }

    private static int[][] rests(long[] marks) {
        var rests = new int[marks.length][];
        for (int i = 0; i < marks.length; i++) {
            rests[i] = Endless.rests(marks, i);
        }
        return rests;
    }

    private void cell(int i, int j, int[] restX, int[] restY, short[] none) {
        long top = value[i][j];
        int way = how[i][j];
        short[] first = counts[i][j] == null ? none : counts[i][j];
        short[] second = null;
        if (i > 0 && value[i - 1][j] > top) {
            top = value[i - 1][j];
            way = SHORTER;
            first = counts[i - 1][j];
        }
        if (j > 0 && value[i][j - 1] > top) {
            top = value[i][j - 1];
            way = NARROWER;
            first = counts[i][j - 1];
        }
        for (int c = 1; c < restX.length; c++) {
            int r = restX[c];
            if (value[c][j] + value[r][j] > top && within(counts[c][j], counts[r][j])) {
                top = value[c][j] + value[r][j];
                way = BESIDE | c << 3;
                first = counts[c][j];
                second = counts[r][j];
            }
        }
        long[] column = value[i];
        for (int c = 1; c < restY.length; c++) {
            int r = restY[c];
            if (column[c] + column[r] > top && within(counts[i][c], counts[i][r])) {
                top = column[c] + column[r];
                way = ABOVE | c << 3;
                first = counts[i][c];
                second = counts[i][r];
            }
        }
        value[i][j] = top;
        how[i][j] = way;
        counts[i][j] = second == null ? first : sum(first, second);
    }

    private boolean within(short[] a, short[] b) {
        for (int t = 0; t < a.length; t++) {
            if (a[t] + b[t] > most[t]) {
                return false;
            }
        }
        return true;
    }

    private static short[] sum(short[] a, short[] b) {
        short[] sum = a.clone();
        for (int t = 0; t < sum.length; t++) {
            sum[t] += b[t];
        }
        return sum;
    }

    private void lay(State state, int slot, int leaf, int i, int j, long stamp) {
        int c = how[i][j] >> 3;
        BoardTree tree = state.own(slot, stamp);
        switch (how[i][j] & 7) {
            case SHORTER -> lay(state, slot, leaf, i - 1, j, stamp);
            case NARROWER -> lay(state, slot, leaf, i, j - 1, stamp);
            case ITEM -> state.place(
                    slot, leaf, kinds.type[c], tree.x(leaf), tree.y(leaf), kinds.l[c], kinds.w[c], true, stamp);
            case BESIDE -> {
                int second = tree.cut(leaf, BoardTree.ROW, xs[c]);
                int first = tree.before(second);
                lay(state, slot, first, c, j, stamp);
                lay(state, slot, second, Endless.rests(xs, i)[c], j, stamp);
            }
            case ABOVE -> {
                int second = tree.cut(leaf, BoardTree.STACK, ys[c]);
                int first = tree.before(second);
                lay(state, slot, first, i, c, stamp);
                lay(state, slot, second, i, Endless.rests(ys, j)[c], stamp);
            }
            default -> {
            }
        }
    }
}

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
    /** Words of memory for the cells at most. */
    private static final double MOST_WORDS = 30e6;

    private static final long WORK_AT_ONCE = 1_000_000;

    /** Without limits, all multiples of so many of the most valuable types are marks. */
    private static final int REPEATED = 3;

    /** Of all marks, the share that may be raster points of chosen types. */
    private static final double MOST_CHOSEN = 0.8;

    /** So many types that would make too many marks end the choice. */
    private static final int REFUSED = 6;

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
    /** Whether no type has a limit; then parts are many and small, and no few of them give all marks that matter. */
    private final boolean endless;

    private final int usual;
    private int marks;
    private final int[] byWorth;
    private long[] allX = {};
    private long[] allY = {};
    private long[] xs = {};
    private long[] ys = {};
    /** By type: the copies left, where that is less than what the board has room for; only these are counted. */
    private int[] most = {};

    private Tally tally = new Tally(new int[0]);
    /** By type: the share of its value that a copy is charged where other boards want it too. */
    private double[] charge;
    private long[][] value = {};
    private int[][] how = {};
    /** The tallies of a row of cells, one behind the other. */
    private long[][] counts = {};
    /**
     * By mark along: the cells that are not cut along again, the only ones to be the smallest slab of a larger one where
     * marks are whole sets of raster points.
     */
    private int[][] uncut = {};

    Sketches(Folded f, int stock, Dice dice, Budget budget) {
        this.f = f;
        this.stock = stock;
        this.dice = dice;
        kinds = Kinds.of(f, stock);
        charge = new double[f.types];
        endless = Arrays.stream(kinds.type).allMatch(t -> f.endless[t] >= 0);
        double cells = MOST_WORDS / (endless ? 3 : 2 + new Tally(kinds.limit).words);
        double fit = Math.min(Math.sqrt(cells), Math.cbrt(2 * SHARE * budget.room()));
        usual = (int) Math.max(LEAST_MARKS, Math.min(MOST_MARKS, fit));
        marks = usual;
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

    /** The board with so many marks: enough to learn what copies are worth, not for bounds. */
    @Nullable
    Limited rough(State near, int most) {
        marks = most;
        int[] chosen = choose(near, 0);
        long[] alongX = allX.length > 0 ? allX : draw(f.boardLength[stock], kinds.l, near, chosen, true);
        long[] alongY = allY.length > 0 ? allY : draw(f.boardWidth[stock], kinds.w, near, chosen, false);
        marks = usual;
        return Limited.over(f, stock, alongX, alongY);
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
        int[] chosen = choose(near, number);
        xs = allX.length > 0 ? allX : draw(f.boardLength[stock], kinds.l, near, chosen, true);
        ys = allY.length > 0 ? allY : draw(f.boardWidth[stock], kinds.w, near, chosen, false);
        double charged = number == 0 ? 1 : dice.unit();
        for (int i = 0; i < boards; i++) {
            // The last board may take what it likes; where it is the only one, prices help what is there twice to be shared.
            boolean last = i + 1 == boards;
            if (!fill(state, shifted(number, !last ? charged : boards == 1 && number % 3 > 0 ? charged : 0), budget)) {
                return null;
            }
            int slot = state.open(stock, stamp);
            lay(state, slot, 0, xs.length - 1, ys.length - 1, stamp);
        }
        return state;
    }

    // A few ways of types to lie whose raster points are few enough to be marks, all of them: what can be put together of
    // these is found exactly, but for the limits. Most of what lies in the best layout is tried first, then what is worth
    // the most for its area.
    private int[] choose(State near, int number) {
        var chosen = new int[0];
        if (endless || (allX.length > 0 && allY.length > 0)) {
            return chosen;
        }
        int refused = 0;
        for (int k : order(near, number)) {
            int[] more = Arrays.copyOf(chosen, chosen.length + 1);
            more[chosen.length] = k;
            if (few(f.boardLength[stock], kinds.l, more) && few(f.boardWidth[stock], kinds.w, more)) {
                chosen = more;
            } else if (++refused > REFUSED) {
                break;
            }
        }
        return chosen;
    }

    private boolean few(long side, long[] sizes, int[] chosen) {
        long[] points = points(side, sizes, chosen);
        return points.length > 0 && points.length <= marks * MOST_CHOSEN;
    }

    private long[] points(long side, long[] sizes, int[] chosen) {
        long[] of = Arrays.stream(chosen).mapToLong(k -> sizes[k]).toArray();
        int[] limits = Arrays.stream(chosen).map(k -> kinds.limit[kinds.type[k]]).toArray();
        return Raster.thinned(side, Raster.limitedSums(side, of, limits));
    }

    private int[] order(State near, int number) {
        var place = new double[byWorth.length];
        for (int i = 0; i < place.length; i++) {
            int t = kinds.type[byWorth[i]];
            boolean there = near.left[t] < f.copies[t] && number > 0 && dice.below(4) > 0;
            place[i] = there ? dice.unit() - 1 : number == 0 ? i : i * dice.unit();
        }
        return java.util.stream.IntStream.range(0, place.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> place[i]))
                .mapToInt(i -> byWorth[i])
                .toArray();
    }

    private double[] shifted(int number, double charged) {
        double by = number == 0 ? 0 : SHIFT * dice.unit() * dice.unit();
        var shifted = new double[f.types];
        for (int t = 0; t < f.types; t++) {
            shifted[t] = 1 + by * (dice.unit() - 0.5) - charged * charge[t];
        }
        return shifted;
    }

    // Marks of the best layout and of what was chosen, single sizes, then sums at random, all also from the other end.
    private long[] draw(long side, long[] sizes, State near, int[] chosen, boolean along) {
        var drawn = new TreeSet<Long>();
        drawn.add(0L);
        drawn.add(side);
        for (int slot = 0; slot < near.open; slot++) {
            near(near.slot[slot], along, drawn);
        }
        for (int i = 0; endless && i < Math.min(REPEATED, byWorth.length); i++) {
            long size = sizes[byWorth[i]];
            long fits = Math.min(side / size, Math.min(marks / 8, kinds.limit[kinds.type[byWorth[i]]]));
            for (int times = 1; times <= fits; times++) {
                drawn.add(size * times);
                drawn.add(side - size * times);
            }
        }
        for (long point : chosen.length > 0 ? points(side, sizes, chosen) : new long[0]) {
            drawn.add(point);
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

    private boolean fill(State state, double[] shifted, Budget budget) {
        most = new int[f.types];
        for (int t = 0; t < f.spare; t++) {
            most[t] = f.endless[t] < 0 && state.left[t] < kinds.room[t] ? state.left[t] : 0;
        }
        tally = new Tally(most);
        value = new long[xs.length][ys.length];
        how = new int[xs.length][ys.length];
        counts = new long[xs.length][ys.length * tally.words];
        uncut = new int[xs.length][];
        for (int i = 0; i < kinds.l.length; i++) {
            single(i, state, shifted);
        }
        int[][] restX = rests(xs);
        int[][] restY = rests(ys);
        long work = 0;
        for (int i = 0; i < xs.length; i++) {
            work += row(i, restX[i], restY);
            if ((i & 7) == 0 || work > WORK_AT_ONCE) {
                if (!budget.spend(work / Endless.WORK_A_STEP)) {
                    return false;
                }
                work %= Endless.WORK_A_STEP;
            }
        }
        // A whole table is worth having even if it took the last of the budget.
        budget.step();
        return true;
    }

    private void single(int kind, State state, double[] shifted) {
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
            Arrays.fill(counts[i], j * tally.words, (j + 1) * tally.words, 0);
            tally.one(t, counts[i], j * tally.words);
        }
    }

    private static int[][] rests(long[] marks) {
        var rests = new int[marks.length][];
        for (int i = 0; i < marks.length; i++) {
            rests[i] = Endless.rests(marks, i);
        }
        return rests;
    }

    // A row of cells at a time, cut by cut, so that what is read lies side by side; gives the work done.
    private long row(int i, int[] restX, int[][] restY) {
        long[] now = value[i];
        int[] way = how[i];
        int words = tally.words;
        if (i > 0) {
            long[] shorter = value[i - 1];
            for (int j = 0; j < now.length; j++) {
                if (shorter[j] > now[j]) {
                    now[j] = shorter[j];
                    way[j] = SHORTER;
                }
            }
        }
        long work = 2L * now.length;
        for (int c = 1; c < restX.length; c++) {
            int r = restX[c];
            long[] a = value[c];
            long[] b = value[r];
            int[] slabs = uncut[c];
            work += slabs.length;
            for (int j : slabs) {
                if (a[j] + b[j] > now[j] && tally.within(counts[c], j * words, counts[r], j * words)) {
                    now[j] = a[j] + b[j];
                    way[j] = BESIDE | c << 3;
                }
            }
        }
        var strips = new int[now.length];
        var slabs = new int[now.length];
        int stripCount = 0;
        int slabCount = 0;
        for (int j = 0; j < now.length; j++) {
            if (j > 0 && now[j - 1] > now[j]) {
                now[j] = now[j - 1];
                way[j] = NARROWER;
            }
            int[] rest = restY[j];
            for (int k = 0; k < stripCount && strips[k] < rest.length; k++) {
                int c = strips[k];
                int r = rest[c];
                if (now[c] + now[r] > now[j] && tally.within(counts[i], c * words, counts[i], r * words)) {
                    now[j] = now[c] + now[r];
                    way[j] = ABOVE | c << 3;
                }
                work++;
            }
            tally(i, j, restX, rest);
            int made = way[j] & 7;
            if (j > 0 && (endless || (made != ABOVE && made != NARROWER && now[j] > 0))) {
                strips[stripCount++] = j;
            }
            if (endless || (made != BESIDE && made != SHORTER && now[j] > 0)) {
                slabs[slabCount++] = j;
            }
        }
        uncut[i] = Arrays.copyOf(slabs, slabCount);
        return work;
    }

    private void tally(int i, int j, int[] restX, int[] restY) {
        int words = tally.words;
        int c = how[i][j] >> 3;
        switch (how[i][j] & 7) {
            case SHORTER -> System.arraycopy(counts[i - 1], j * words, counts[i], j * words, words);
            case NARROWER -> System.arraycopy(counts[i], (j - 1) * words, counts[i], j * words, words);
            case BESIDE -> tally.add(counts[c], j * words, counts[restX[c]], j * words, counts[i], j * words);
            case ABOVE -> tally.add(counts[i], c * words, counts[i], restY[c] * words, counts[i], j * words);
            default -> {
            }
        }
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

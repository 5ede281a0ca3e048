package dev.treen.yield.engine;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All parts on one clear board without any waste: then two blocks are joined only along sides of one size, and few are.
 * Blocks of large parts go first, for what is small fits in many places and is better kept; how much that counts is drawn
 * anew for each of many short searches, since one that begins wrongly never ends. A layout is found this way, or nothing is
 * said.
 */
final class Puzzle {
    /** Blocks of the first searches, and after how many searches they are twice as many. */
    private static final int FIRST_BLOCKS = 8_000;

    private static final int SEARCHES = 6;
    private static final int MOST_BLOCKS = 1_000_000;
    private static final int MOST_SIDE = 1_000_000;
    private static final int TRIES_A_STEP = 2000;
    private static final double NOISE = 0.3;

    /** The share of a budget. */
    private static final double PART = 0.3;

    private final Folded f;
    private final Kinds kinds;
    private final Dice dice;
    private final Budget budget;
    private final int sideX;
    private final int sideY;
    private final Blocks blocks;
    /** By side: the blocks with that side that have had their turn. */
    private final int[][] byX;
    private final int[][] byY;
    private final int[] sizeX;
    private final int[] sizeY;
    private final double[] lean;
    private final Heap waiting = new Heap();
    private double[] lead = new double[1024];
    private int most;
    private long tries;

    private Puzzle(Folded f, int stock, Kinds kinds, Budget budget) {
        this.f = f;
        this.kinds = kinds;
        this.budget = budget;
        dice = new Dice(f.problem.settings().seed());
        sideX = (int) f.boardLength[stock];
        sideY = (int) f.boardWidth[stock];
        blocks = new Blocks(kinds.limit, kinds.type, kinds.l, kinds.w);
        byX = new int[sideX + 1][];
        byY = new int[sideY + 1][];
        sizeX = new int[sideX + 1];
        sizeY = new int[sideY + 1];
        lean = new double[f.types];
    }

    /** A layout of all parts without waste, where there may be one and it is found within a share of the budget; else null. */
    static @Nullable State of(Folded f, int stock, long stamp, Budget budget) {
        return is(f, stock) ? solve(f, stock, stamp, budget.part(PART)) : null;
    }

    /** Whether all parts together are just as large as the board. */
    private static boolean is(Folded f, int stock) {
        long area = 0;
        for (int t = 0; t < f.spare; t++) {
            if (f.endless[t] >= 0 || (f.copies[t] > 0 && !f.ok[t][stock])) {
                return false;
            }
            area += f.area[t] * f.copies[t];
        }
        return area == f.boardLength[stock] * f.boardWidth[stock] && f.flaws[stock].length == 0
                && f.boardLength[stock] <= MOST_SIDE && f.boardWidth[stock] <= MOST_SIDE && !f.blemishes.anyTaken();
    }

    private static @Nullable State solve(Folded f, int stock, long stamp, Budget budget) {
        Kinds kinds = Kinds.of(f, stock);
        for (int t = 0; t < f.spare; t++) {
            if (kinds.limit[t] < f.copies[t]) {
                return null;
            }
        }
        var puzzle = new Puzzle(f, stock, kinds, budget);
        puzzle.most = FIRST_BLOCKS;
        for (int n = 1; !budget.over(); n++) {
            int found = puzzle.search(n > 1);
            if (found >= 0) {
                var state = new State(f);
                int slot = state.open(stock, stamp);
                puzzle.blocks.lay(state, slot, 0, found, stamp, x -> x, y -> y);
                return state;
            }
            puzzle.most = n % SEARCHES == 0 ? Math.min(MOST_BLOCKS, 2 * puzzle.most) : puzzle.most;
            budget.step();
        }
        return null;
    }

    // One search; gives the block that is the board, or -1.
    private int search(boolean drawn) {
        blocks.clear();
        waiting.clear();
        Arrays.fill(sizeX, 0);
        Arrays.fill(sizeY, 0);
        double mean = (double) sideX * sideY / f.items();
        double apiece = drawn ? 1.5 * dice.unit() * mean : 0.5 * mean;
        double noise = drawn ? NOISE * dice.unit() : 0;
        for (int t = 0; t < f.spare; t++) {
            lean[t] = f.area[t] * (1 + noise * (dice.unit() - 0.5)) - apiece;
        }
        for (int k = 0; k < kinds.l.length; k++) {
            int t = kinds.type[k];
            add(blocks.single(t, k, (int) kinds.l[k], (int) kinds.w[k], f.area[t], 0), lean[t]);
        }
        while (waiting.size() > 0 && blocks.size < most && !budget.over()) {
            int n = waiting.pop();
            int x = blocks.x[n];
            int y = blocks.y[n];
            if (x == sideX && y == sideY) {
                return n;
            }
            byX[x] = put(byX[x], sizeX[x]++, n);
            byY[y] = put(byY[y], sizeY[y]++, n);
            join(n, byY[y], sizeY[y], true);
            join(n, byX[x], sizeX[x], false);
            if (tries >= TRIES_A_STEP) {
                budget.spend(tries / TRIES_A_STEP);
                tries %= TRIES_A_STEP;
            }
        }
        return -1;
    }

    private static int[] put(int @Nullable [] list, int at, int n) {
        int[] room = list == null ? new int[4] : at == list.length ? Arrays.copyOf(list, 2 * at) : list;
        room[at] = n;
        return room;
    }

    private void join(int n, int[] others, int size, boolean beside) {
        tries += size;
        for (int i = 0; i < size; i++) {
            int other = others[i];
            int x = beside ? blocks.x[n] + blocks.x[other] : blocks.x[n];
            int y = beside ? blocks.y[n] : blocks.y[n] + blocks.y[other];
            if (x <= sideX && y <= sideY && blocks.within(n, other)) {
                int both = blocks.join(n, other, x, y, beside);
                if (both >= 0) {
                    add(both, lead[n] + lead[other]);
                }
            }
        }
    }

    private void add(int n, double promise) {
        if (n >= lead.length) {
            lead = Arrays.copyOf(lead, 2 * lead.length);
        }
        lead[n] = promise;
        boolean whole = blocks.x[n] == sideX && blocks.y[n] == sideY;
        waiting.push(n, Heap.key(whole ? Double.MAX_VALUE : promise));
    }
}

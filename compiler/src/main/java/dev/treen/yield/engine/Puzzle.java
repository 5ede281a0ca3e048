package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * All parts on one clear board without any waste: then two blocks are joined only along sides of one size, and few are.
 * Blocks of large parts go first, for what is small fits in many places and is better kept; how much that counts is drawn
 * anew for each of many short searches, since one that begins wrongly never ends. Every second time the board is taken
 * apart by {@link Strips} instead. A layout is found this way, or nothing is said.
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
    final Dice dice;
    final Budget budget;
    private final int stock;
    private int sideX;
    private int sideY;
    Blocks blocks;
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
    /** Of the last search: the blocks that reach from side to side, in the order in which they had their turn. */
    int[] across = new int[64];
    int acrossCount;
    /** Of the last search: the block with the most area, or -1. */
    int largest;

    private Puzzle(Folded f, int stock, Kinds kinds, Budget budget) {
        this.f = f;
        this.kinds = kinds;
        this.budget = budget;
        this.stock = stock;
        dice = new Dice(f.problem.settings().seed());
        int sideX = (int) f.boardLength[stock];
        int sideY = (int) f.boardWidth[stock];
        blocks = new Blocks(kinds.limit, kinds.type, kinds.l, kinds.w);
        byX = new int[sideX + 1][];
        byY = new int[sideY + 1][];
        sizeX = new int[sideX + 1];
        sizeY = new int[sideY + 1];
        lean = new double[f.types];
    }

    /** A layout of all parts without waste, where there may be one and it is found within a share of the budget; else null. */
    static @Nullable State of(Folded f, int stock, long stamp, Budget budget) {
        return of(f, stock, stamp, budget, state -> {
        });
    }

    /** The same; layouts that come close are handed out, to be filled up with what is left. */
    static @Nullable State of(Folded f, int stock, long stamp, Budget budget, Consumer<State> close) {
        return is(f, stock) ? solve(f, stock, stamp, budget.part(PART), close) : null;
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

    private static @Nullable State solve(Folded f, int stock, long stamp, Budget budget, Consumer<State> close) {
        Kinds kinds = Kinds.of(f, stock);
        for (int t = 0; t < f.spare; t++) {
            if (kinds.limit[t] < f.copies[t]) {
                return null;
            }
        }
        var puzzle = new Puzzle(f, stock, kinds, budget);
        int[] limit = kinds.limit;
        var state = new State(f);
        state.open(stock, stamp);
        int longest = FIRST_BLOCKS;
        for (int n = 1; !budget.over(); n++) {
            int found = puzzle.search(puzzle.wholeX(), puzzle.wholeY(), limit, longest, Integer.MAX_VALUE, n > 1);
            if (found >= 0) {
                puzzle.lay(state, 0, found, stamp);
                return state;
            }
            if (puzzle.exhausted() && !budget.over()) {
                // Every block that can be without waste was looked at.
                return null;
            }
            State made = new Strips(puzzle, longest / 2, close).take(state, limit);
            if (made != null) {
                return made;
            }
            longest = n % SEARCHES == 0 ? Math.min(MOST_BLOCKS, 2 * longest) : longest;
            budget.step();
        }
        return null;
    }

    /** Whether the last search came to its end, with no block left to be looked at. */
    boolean exhausted() {
        return waiting.size() == 0;
    }

    int wholeX() {
        return (int) f.boardLength[stock];
    }

    int wholeY() {
        return (int) f.boardWidth[stock];
    }

    /** Lays a block of the last search into a free leaf of the one board. */
    void lay(State state, int leaf, int n, long stamp) {
        blocks.lay(state, 0, leaf, n, stamp, x -> x, y -> y);
    }

    /**
     * One search for a block as large as a place, from parts within limits by type, among so many blocks at most; it also
     * ends when so many blocks reach from side to side. Gives the block, or -1.
     */
    int search(int placeX, int placeY, int[] limit, int mostBlocks, int enough, boolean drawn) {
        sideX = placeX;
        sideY = placeY;
        most = mostBlocks;
        acrossCount = 0;
        largest = -1;
        blocks = new Blocks(limit, kinds.type, kinds.l, kinds.w);
        waiting.clear();
        Arrays.fill(sizeX, 0, sideX + 1, 0);
        Arrays.fill(sizeY, 0, sideY + 1, 0);
        int items = Math.max(1, Arrays.stream(limit).sum());
        double mean = (double) sideX * sideY / items;
        double apiece = drawn ? 1.5 * dice.unit() * mean : 0.5 * mean;
        double noise = drawn ? NOISE * dice.unit() : 0;
        for (int t = 0; t < f.spare; t++) {
            lean[t] = f.area[t] * (1 + noise * (dice.unit() - 0.5)) - apiece;
        }
        for (int k = 0; k < kinds.l.length; k++) {
            int t = kinds.type[k];
            if (limit[t] > 0 && kinds.l[k] <= sideX && kinds.w[k] <= sideY) {
                add(blocks.single(t, k, (int) kinds.l[k], (int) kinds.w[k], f.area[t], 0), lean[t]);
            }
        }
        while (waiting.size() > 0 && blocks.size < most && !budget.over() && acrossCount < enough) {
            int n = waiting.pop();
            int x = blocks.x[n];
            int y = blocks.y[n];
            if (x == sideX && y == sideY) {
                return n;
            }
            if (x == sideX || y == sideY) {
                across = put(across, acrossCount++, n);
            }
            if (largest < 0 || blocks.value[n] > blocks.value[largest]) {
                largest = n;
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

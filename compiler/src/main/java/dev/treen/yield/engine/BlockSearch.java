package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The most value from one clear board with limited copies, exactly: blocks of parts are joined side by side or one on
 * another, the most promising first, and dropped when even the best that could surround them is not enough. (Joining
 * blocks: Wang 1983; with a bound for what lies around them: Viswanathan and Bagchi 1993, Hifi 1997. The bounds here are
 * those of {@link Prices}, so they know of the limits.)
 */
final class BlockSearch {
    /** Blocks kept at most, and cells of memory for their counts. */
    private static final int MOST_BLOCKS = 2_000_000;

    private static final long MOST_COUNTS = 16_000_000;

    /** So many tries of joining count as one step. */
    private static final int TRIES_A_STEP = 2000;

    /** What may yet come around a block counts by this much beside what is in it, for the order of work alone. */
    private static final double EAGER = 0.97;

    /** The blocks of one size that have had their turn, the best first. */
    private static final class Cell {
        final int x;
        final int y;
        int[] blocks = new int[4];
        int size;

        Cell(int x, int y) {
            this.x = x;
            this.y = y;
        }

        void add(int n, long[] net) {
            if (size == blocks.length) {
                blocks = Arrays.copyOf(blocks, 2 * size);
            }
            int at = size++;
            while (at > 0 && net[blocks[at - 1]] < net[n]) {
                blocks[at] = blocks[at - 1];
                at--;
            }
            blocks[at] = n;
        }
    }

    private final Limited board;
    private final Prices prices;
    private final Budget budget;
    private final long[][] around;
    private final long refund;
    private final Blocks blocks;
    private final int[][] sumX;
    private final int[][] sumY;
    private final List<Cell> cells = new ArrayList<>();
    private final Cell[][] cellAt;
    /** All values are multiples of this. */
    final long gcd;
    private final Heap waiting = new Heap();
    private long tries;
    /** The most value so far, from outside or from a block. */
    long best;
    /** A value that is good enough to stop. */
    long enough = Long.MAX_VALUE;
    /** The block of that value, or -1. */
    int winner = -1;

    /**
     * A search for more than is known, between given bounds on what may surround a block ({@link Surround}). What is known
     * may also be supposed: where nothing is found beyond it, it is a bound.
     */
    BlockSearch(Limited board, long[][] around, Prices prices, long known, Budget budget) {
        this.board = board;
        this.prices = prices;
        this.budget = budget;
        refund = prices.refund(prices.price);
        blocks = new Blocks(board.limit, board.type, board.l, board.w);
        this.around = around;
        sumX = sums(board.xs);
        sumY = sums(board.ys);
        cellAt = new Cell[board.xs.length][board.ys.length];
        long common = 0;
        for (int kind = 0; kind < board.kinds; kind++) {
            common = gcd(common, board.value[board.type[kind]]);
        }
        gcd = Math.max(1, common);
        best = Math.floorDiv(known, gcd) * gcd;
    }

    private static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }

    // The index of the sum of two marks, or -1 where it is beyond the side or no sum within the limits.
    private static int[][] sums(long[] marks) {
        var sums = new int[marks.length][];
        for (int i = 0; i < marks.length; i++) {
            sums[i] = new int[i + 1];
            int at = i;
            for (int j = 0; j <= i; j++) {
                long sum = marks[i] + marks[j];
                while (at < marks.length && marks[at] < sum) {
                    at++;
                }
                sums[i][j] = at < marks.length && marks[at] == sum ? at : -1;
            }
        }
        return sums;
    }

    private static int sum(int[][] sums, int i, int j) {
        return i >= j ? sums[i][j] : sums[j][i];
    }

    /** Whether the search came to its end, so that {@link #best} is the optimum. */
    boolean run() {
        for (int kind = 0; kind < board.kinds; kind++) {
            int t = board.type[kind];
            long net = board.value[t] * prices.scale - prices.price[t];
            int x = Raster.floor(board.xs, board.l[kind]);
            int y = Raster.floor(board.ys, board.w[kind]);
            if (net + around[x][y] >= wanted()) {
                add(blocks.single(t, kind, x, y, board.value[t], net));
            }
        }
        while (waiting.size() > 0) {
            int next = waiting.pop();
            if (promise(next) < wanted()) {
                continue;
            }
            close(next);
            joinAll(next);
            boolean full = blocks.size > MOST_BLOCKS || (long) blocks.size * blocks.tally.words > MOST_COUNTS;
            if (full || budget.over() || best >= enough) {
                return false;
            }
        }
        return true;
    }

    /** The copies that the best block takes of each type; none if there is no such block. */
    int[] counts() {
        var counts = new int[blocks.types];
        for (int t = 0; winner >= 0 && t < counts.length; t++) {
            counts[t] = blocks.count(winner, t);
        }
        return counts;
    }

    /** What no layout can beat, as far as the search came. */
    long bound() {
        long most = best;
        for (int i = 0; i < waiting.size(); i++) {
            most = Math.max(most, Math.floorDiv(promise(waiting.waiting(i)) + refund, prices.scale));
        }
        return most;
    }

    private long promise(int n) {
        return blocks.net[n] + around[blocks.x[n]][blocks.y[n]];
    }

    // A block with what surrounds it must come to at least this, less the refund.
    private long wanted() {
        return (best + gcd) * prices.scale - refund;
    }

    private void close(int n) {
        int x = blocks.x[n];
        int y = blocks.y[n];
        Cell cell = cellAt[x][y];
        if (cell == null) {
            cell = new Cell(x, y);
            cellAt[x][y] = cell;
            cells.add(cell);
        }
        cell.add(n, blocks.net);
    }

    private void joinAll(int n) {
        int x = blocks.x[n];
        int y = blocks.y[n];
        for (Cell cell : cells) {
            int sumOfX = sum(sumX, x, cell.x);
            if (sumOfX >= 0) {
                joinCell(n, cell, sumOfX, Math.max(y, cell.y), true);
            }
            int sumOfY = sum(sumY, y, cell.y);
            if (sumOfY >= 0) {
                joinCell(n, cell, Math.max(x, cell.x), sumOfY, false);
            }
        }
        tries += cells.size();
        if (tries >= TRIES_A_STEP) {
            budget.spend(tries / TRIES_A_STEP);
            tries %= TRIES_A_STEP;
        }
    }

    private void joinCell(int n, Cell cell, int x, int y, boolean beside) {
        long rest = blocks.net[n] + around[x][y];
        int[] list = cell.blocks;
        for (int i = 0; i < cell.size; i++) {
            int other = list[i];
            if (rest + blocks.net[other] < wanted()) {
                return;
            }
            tries++;
            if (blocks.within(n, other)) {
                int both = blocks.join(n, other, x, y, beside);
                if (both >= 0) {
                    add(both);
                }
            }
        }
    }

    private void add(int n) {
        if (blocks.value[n] > best) {
            best = blocks.value[n];
            winner = n;
        }
        // What is certain counts more than what is hoped for: good layouts come sooner, and every block has its turn.
        waiting.push(n, blocks.net[n] + (long) (EAGER * around[blocks.x[n]][blocks.y[n]]));
    }

    /** Lays a block into a free leaf of a board. */
    void lay(State state, int slot, int leaf, int n, long stamp) {
        blocks.lay(state, slot, leaf, n, stamp, x -> board.xs[x], y -> board.ys[y]);
    }
}

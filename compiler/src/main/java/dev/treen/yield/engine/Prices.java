package dev.treen.yield.engine;

import java.util.function.LongUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A bound on the most value where copies are limited: each copy taken is charged a price, each copy allowed is given that
 * price back, and then the limits are forgotten (Lagrangian relaxation; prices by subgradients with steps after Polyak
 * 1969). What the best layout at those prices takes too often becomes dearer in the next round.
 */
final class Prices {
    private static final int ROUNDS = 120;
    private static final int QUIET = 6;

    private final Limited board;
    private final int boards;
    /** Values and prices are counted in this fraction of a unit. */
    final long scale;
    /** Prices by type, scaled. */
    long[] price;
    private long[] asked = {};
    /** The bound at those prices, scaled. */
    long bound = Long.MAX_VALUE;

    /** Told of the layout of every round; gives the best value known. */
    interface Round extends LongUnaryOperator {
    }

    Prices(Limited board, int boards) {
        this.board = board;
        this.boards = boards;
        price = new long[board.f.types];
        double most = 1;
        for (int t = 0; t < board.f.types; t++) {
            most += (double) board.value[t] * Math.max(1, total(t));
        }
        long fine = 1;
        while (fine < 1024 && most * fine * 4 < 1L << 60) {
            fine *= 2;
        }
        scale = fine;
    }

    private long total(int t) {
        return Math.min(board.f.copies[t], (long) board.limit[t] * boards);
    }

    /** Goes on from the prices of another search for the same parts. */
    void from(Prices other) {
        for (int t = 0; t < price.length; t++) {
            price[t] = Math.round((double) other.price[t] / other.scale * scale);
        }
    }

    /** The values left of all types at some prices. */
    long[] profit(long[] prices) {
        var profit = new long[board.f.types];
        for (int t = 0; t < profit.length; t++) {
            profit[t] = Math.max(0, board.value[t] * scale - prices[t]);
        }
        return profit;
    }

    /** The prices found, as shares of the values. */
    double[] shares() {
        var shares = new double[price.length];
        for (int t = 0; t < shares.length; t++) {
            shares[t] = board.value[t] == 0 ? 0 : Math.min(1, (double) price[t] / scale / board.value[t]);
        }
        return shares;
    }

    /** The values that the table was last filled with. */
    long[] asked() {
        return asked;
    }

    /** What all limits give back. */
    long refund(long[] prices) {
        long sum = 0;
        for (int t = 0; t < prices.length; t++) {
            sum += prices[t] * total(t);
        }
        return sum;
    }

    /** The bound in whole units. */
    long wholeBound() {
        return Math.floorDiv(bound, scale);
    }

    /**
     * Looks for good prices. After each round {@code known} is asked for the best value found so far; it may look at the
     * table, which holds that round's layout.
     */
    void search(Budget budget, Round known) {
        search(budget, ROUNDS, known);
    }

    /** The same in so many rounds at most. */
    void search(Budget budget, int rounds, Round known) {
        long[] now = price.clone();
        double reach = 1;
        int quiet = 0;
        var counts = new int[board.f.types];
        for (int round = 0; round < rounds && !budget.over() && budget.affords((double) board.table.work()); round++) {
            long[] profit = profit(now);
            asked = profit;
            if (!board.table.fill(profit, budget)) {
                return;
            }
            budget.spend(1 + board.table.work() / Endless.WORK_A_STEP);
            long top = boards * board.table.value() + refund(now);
            if (top < bound) {
                quiet = top < bound - (bound >> 14) ? 0 : quiet + 1;
                bound = top;
                price = now.clone();
            } else {
                quiet++;
            }
            long best = known.applyAsLong(round);
            if (wholeBound() <= best) {
                return;
            }
            if (quiet >= QUIET) {
                quiet = 0;
                reach /= 2;
                now = price.clone();
                if (reach < 0.02) {
                    return;
                }
                continue;
            }
            java.util.Arrays.fill(counts, 0);
            board.table.count(counts, profit);
            if (!move(now, counts, reach * ((double) top - (double) best * scale))) {
                return;
            }
        }
    }

    private boolean move(long[] now, int[] counts, double far) {
        double steep = 0;
        for (int t = 0; t < now.length; t++) {
            double g = total(t) - (double) boards * counts[t];
            steep += g < 0 || now[t] > 0 ? g * g : 0;
        }
        if (steep == 0) {
            return false;
        }
        for (int t = 0; t < now.length; t++) {
            double g = total(t) - (double) boards * counts[t];
            if (g < 0 || now[t] > 0) {
                now[t] = Math.max(0, Math.min(now[t] - Math.round(far / steep * g), board.value[t] * scale));
            }
        }
        return true;
    }

    /** The table filled for the prices found, or null if the budget does not reach for it and for what surrounds blocks. */
    @Nullable
    Endless settled(Budget budget) {
        double work = 4.0 * board.table.work();
        if (budget.over() || !budget.affords(work) || !budget.spend((long) (work / Endless.WORK_A_STEP))) {
            return null;
        }
        return board.table.fill(profit(price), budget) ? board.table : null;
    }
}

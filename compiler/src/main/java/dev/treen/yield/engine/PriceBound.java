package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A bound from prices: at any prices of the parts, the boards taken must together be able to give what all parts are
 * worth, and what one board can give at most is known exactly. Good prices come from patterns generated one by one (Gilmore
 * and Gomory 1965). Limits on copies are forgotten within a board, so the bound may be low, never high.
 */
final class PriceBound {
    private static final double SCALE = 1e7;
    private static final int MOST_TYPES = 300;
    private static final int MOST_ROUNDS = 600;
    private static final long MOST_WORK = 2_000_000_000L;
    private static final int SETTLE = 2000;
    private static final int CHARGE_ROUNDS = 20;

    private final Folded f;
    private final CoverRows rows;
    private final Budget budget;
    private final int[] types;
    private final int[] demand;
    private final List<Endless> tables = new ArrayList<>();
    private final List<Integer> stocks = new ArrayList<>();
    private final WholeBoards whole;
    private final double[] room;
    private double need;
    private double exact;
    /** Weights are counted in this, so that prices are of the order of one. */
    private final double unit;

    private PriceBound(Folded f, CoverRows rows, Budget budget) {
        this.rows = rows;
        this.f = f;
        this.budget = budget;
        types = java.util.stream.IntStream.range(0, f.spare).filter(t -> f.copies[t] > 0).toArray();
        demand = Arrays.stream(types).map(t -> f.copies[t]).toArray();
        whole = new WholeBoards(f);
        room = new double[f.stocks];
        unit = Math.max(1, (double) Arrays.stream(f.weight).max().orElse(1));
    }

    /**
     * The better of a bound and the one by prices; stops when the best layout is reached or the budget is spent. The patterns
     * behind the prices are offered as layouts.
     */
    static Bound better(Folded f, Bound known, Improver improver, CoverRows rows, Budget budget) {
        State best = improver.best;
        long goal = best.complete() ? best.weight : Long.MAX_VALUE;
        if (known.value() >= goal) {
            return known;
        }
        var bound = new PriceBound(f, rows, budget);
        if (bound.types.length == 0 || bound.types.length > MOST_TYPES || !bound.prepare()) {
            return known;
        }
        long least = Math.max(known.value(), bound.search(goal, best, improver));
        goal = best.complete() ? best.weight : Long.MAX_VALUE;
        if (least < goal) {
            least = Math.max(least, bound.proper(goal, best));
        }
        return least > known.value() ? new Bound(least, "prices of parts") : known;
    }

    // One table for each kind of board that differs in size or in what it accepts.
    private boolean prepare() {
        double work = 0;
        for (int b = 0; b < f.stocks; b++) {
            work += (double) f.types * (f.boardLength[b] + f.boardWidth[b]) / 10;
        }
        if (!budget.affords(10 * work)) {
            return false;
        }
        for (int b = 0; b < f.stocks; b++) {
            if (f.count[b] == 0) {
                continue;
            }
            Endless table = Endless.of(f, b, MOST_WORK, false);
            if (table == null) {
                return false;
            }
            tables.add(table);
            stocks.add(b);
            work += table.work();
        }
        return budget.affords(10 * work);
    }

    private long search(long goal, State best, Improver improver) {
        var cost = new double[types.length];
        if (!singles(cost)) {
            return 0;
        }
        var master = new Master(demand, ones(), cost);
        addBoards(master, best);
        long least = generate(master, goal);
        whole.offer(master, improver);
        return least;
    }

    private long generate(Master master, long goal) {
        long least = 0;
        long[] steady = {};
        double keep = 0;
        for (int round = 0; round < MOST_ROUNDS && !budget.over(); round++) {
            boolean settled = master.solve(40);
            long[] prices = master.rounded(SCALE);
            for (int i = 0; i < steady.length; i++) {
                prices[i] = (long) (keep * steady[i] + (1 - keep) * prices[i]);
            }
            int added = price(master, prices);
            if (added < 0) {
                break;
            }
            double now = ratio();
            if (now > exact) {
                exact = now;
                steady = prices;
                if (f.stocks == 1) {
                    least = Math.max(least, Cover.least(f.weight, room, f.count, need));
                }
                rows.add(room, need);
                if (least >= goal) {
                    return least;
                }
            }
            boolean flat = exact > master.value() * (1 - 1e-6);
            if (settled && (flat || (added == 0 && keep == 0))) {
                break;
            }
            keep = added == 0 ? 0 : 0.6;
        }
        return least;
    }

    // The same with limits on copies kept within a board: dearer by far, so for one kind of board only. A pattern that is
    // good enough is taken at once; only where none is left is the best one needed for the bound.
    private long proper(long goal, State best) {
        Limited board = tables.size() == 1 && f.flaws[stocks.getFirst()].length == 0
                ? Limited.of(f, stocks.getFirst())
                : null;
        var cost = new double[types.length];
        if (board == null || !singles(cost)) {
            return 0;
        }
        int b = stocks.getFirst();
        long least = 0;
        long threshold = (long) (SCALE * f.weight[b] / unit);
        var master = new Master(demand, ones(), cost);
        addBoards(master, best);
        for (int round = 0; round < MOST_ROUNDS && !budget.over(); round++) {
            boolean settled = master.solve(SETTLE);
            var values = new long[f.types];
            long[] prices = master.rounded(SCALE);
            need = 0;
            for (int i = 0; i < types.length; i++) {
                values[types[i]] = prices[i];
                need += (double) prices[i] * demand[i];
            }
            Limited priced = board.worth(values);
            var charges = new Prices(priced, 1);
            charges.search(budget, CHARGE_ROUNDS, r -> threshold);
            Endless table = charges.settled(budget);
            if (table == null) {
                return least;
            }
            long most = threshold;
            var search = new BlockSearch(priced, new Surround(table).values(), charges, threshold, budget);
            search.enough = threshold + threshold / 16;
            if (charges.wholeBound() > threshold) {
                most = search.run() ? search.best : Math.min(charges.wholeBound(), search.bound());
            }
            room[b] = most;
            least = Math.max(least, Cover.least(f.weight, room, f.count, need));
            if (least >= goal || search.winner < 0 || !settled) {
                return least;
            }
            int[] counts = search.counts();
            master.add(column(counts, b));
        }
        return least;
    }

    private int[] ones() {
        var ones = new int[types.length];
        Arrays.fill(ones, 1);
        return ones;
    }

    private Patterns.Pattern column(int[] counts, int b) {
        int[] rows = Arrays.stream(types).map(t -> counts[t]).toArray();
        return Patterns.Pattern.of(rows, f.weight[b] / unit);
    }

    // The boards of a layout are patterns too, and a good start.
    private void addBoards(Master master, State best) {
        for (int slot = 0; slot < best.open; slot++) {
            var counts = new int[f.types];
            BoardTree tree = best.slot[slot];
            for (int n = 0; n < tree.nodes(); n++) {
                if (tree.kind(n) == BoardTree.ITEM) {
                    counts[tree.type(n)]++;
                }
            }
            master.add(column(counts, tree.stock));
        }
    }

    private boolean singles(double[] cost) {
        for (int i = 0; i < types.length; i++) {
            int t = types[i];
            cost[i] = Double.POSITIVE_INFINITY;
            for (int b : stocks) {
                if (f.ok[t][b]) {
                    cost[i] = Math.min(cost[i], f.weight[b] / unit);
                }
            }
            if (cost[i] == Double.POSITIVE_INFINITY) {
                return false;
            }
        }
        return true;
    }

    // Fills all tables at these prices, adds what is worth adding; gives how many, or -1 when the budget is spent.
    private int price(Master master, long[] prices) {
        var profit = new long[f.types];
        need = 0;
        for (int i = 0; i < types.length; i++) {
            profit[types[i]] = prices[i];
            need += (double) prices[i] * demand[i];
        }
        int added = 0;
        for (int k = 0; k < tables.size(); k++) {
            Endless table = tables.get(k);
            if (!table.fill(profit, budget) || !budget.spend(1 + table.work() / Endless.WORK_A_STEP)) {
                return -1;
            }
            room[stocks.get(k)] = table.value();
            var counts = new int[f.types];
            table.count(counts, profit);
            Patterns.Pattern column = column(counts, stocks.get(k));
            if (master.reduced(column) < -1e-7) {
                master.add(column);
                whole.keep(master, stocks.get(k), table, profit);
                added++;
            }
        }
        return added;
    }

    // What the parts are worth over the most worth that a unit of weight can give.
    private double ratio() {
        double most = 0;
        for (int b : stocks) {
            most = Math.max(most, room[b] * unit / Math.max(1, f.weight[b]));
        }
        return most == 0 ? 0 : need / most;
    }
}

package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Boards alike on which no two parts lie side by side: only lengths count. Patterns are generated against prices (Gilmore
 * and Gomory 1961), whose sum is a bound; then patterns are taken for good one after another, the fullest use first, with
 * new prices in between (diving), until the layout meets the bound or the budget is spent.
 */
final class Lengths {
    private static final double SCALE = 1e7;
    private static final int MOST_TYPES = 700;
    private static final int ROUNDS = 3000;
    private static final int SETTLE = 1000;

    private final Folded f;
    private final int[] types;
    private final int[] demand;
    private final int[] limit;
    private final Knapsack knapsack;
    private final Dice dice;
    private long bars;
    /** Boards of the best layout. */
    private long best;
    private double exact;

    private Lengths(Folded f, int[] types, int[] size) {
        this.f = f;
        this.types = types;
        int room = (int) f.boardLength[0];
        demand = new int[types.length];
        limit = new int[types.length];
        for (int i = 0; i < types.length; i++) {
            demand[i] = f.copies[types[i]];
            limit[i] = Math.min(demand[i], room / size[i]);
        }
        knapsack = new Knapsack(room, size);
        dice = new Dice(f.problem.settings().seed());
    }

    /** Prepares a problem of lengths alone; null if it is none, or too large. */
    static @Nullable Lengths of(Folded f) {
        if (f.stocks != 1 || f.flaws[0].length > 0 || f.boardLength[0] > Integer.MAX_VALUE / 4) {
            return null;
        }
        int n = 0;
        var types = new int[f.types];
        long thin = Long.MAX_VALUE;
        for (int t = 0; t < f.spare; t++) {
            if (f.copies[t] > 0) {
                // Two parts of one type, or of two types, must not fit side by side; nor may one be turned.
                if (f.turns[t] || (thin != Long.MAX_VALUE && thin + f.width[t] <= f.boardWidth[0])
                        || (f.copies[t] > 1 && 2 * f.width[t] <= f.boardWidth[0])) {
                    return null;
                }
                thin = Math.min(thin, f.width[t]);
                types[n++] = t;
            }
        }
        if (n == 0 || n > MOST_TYPES) {
            return null;
        }
        types = Arrays.copyOf(types, n);
        return new Lengths(f, types, Arrays.stream(types).map(t -> (int) f.length[t]).toArray());
    }

    /** Searches until bound and layout meet; offers layouts to the improver and gives the bound. */
    Bound solve(Improver improver, Bound area, Budget budget) {
        bars = area.value() / f.weight[0];
        best = improver.best.complete() ? improver.best.open : Long.MAX_VALUE;
        var alone = limit.clone();
        var cost = new double[types.length];
        Arrays.fill(cost, 1);
        var master = new Master(demand, alone, cost);
        addBars(master, improver.best);
        generate(master, limit, ROUNDS, budget, true);
        Bound bound = bars * f.weight[0] > area.value() ? new Bound(bars * f.weight[0], "patterns of lengths") : area;
        for (int dive = 0; !budget.over() && !reached(improver); dive++) {
            dive(master.copy(), dive == 0 ? 0 : 0.1 + 0.1 * (dive % 5), improver, budget);
        }
        return bound;
    }

    private boolean reached(Improver improver) {
        return improver.best.complete() && improver.best.weight <= bars * f.weight[0];
    }

    private void addBars(Master master, State state) {
        var row = new int[f.types];
        Arrays.fill(row, -1);
        for (int i = 0; i < types.length; i++) {
            row[types[i]] = i;
        }
        for (int slot = 0; slot < state.open; slot++) {
            var counts = new int[types.length];
            BoardTree tree = state.slot[slot];
            for (int n = 0; n < tree.nodes(); n++) {
                if (tree.kind(n) == BoardTree.ITEM) {
                    counts[row[tree.type(n)]]++;
                }
            }
            master.add(Master.Column.of(counts, 1));
        }
    }

    // Until the prices prove that rounding up the value of the programme gives the bound, or nothing new is worth it.
    // Patterns are sought at prices between the best so far and the newest, which swing less.
    private void generate(Master master, int[] limits, int rounds, Budget budget, boolean root) {
        long steps = 1 + (long) (Knapsack.work((int) f.boardLength[0], types.length) / Endless.WORK_A_STEP);
        long[] steady = {};
        double keep = 0;
        boolean reached = false;
        boolean thorough = false;
        for (int round = 0; round < rounds; round++) {
            boolean settled = master.solve(12);
            long[] prices = master.rounded(SCALE);
            long[] asked = prices.clone();
            for (int i = 0; i < steady.length; i++) {
                asked[i] = (long) (keep * steady[i] + (1 - keep) * prices[i]);
            }
            knapsack.fill(asked, limits, thorough);
            if (root && better(asked)) {
                steady = asked;
                reached = best <= bars;
            }
            if (root && (reached || (settled && exact > master.value() * (1 - 1e-5)))) {
                return;
            }
            if (!budget.spend(thorough ? 10 * steps : steps)) {
                return;
            }
            Master.Column found = Master.Column.of(knapsack.taken, 1);
            if (master.reduced(found) < -1e-6) {
                master.add(found);
                keep = steady.length > 0 ? 0.7 : 0;
                thorough = false;
            } else if (keep == 0 && settled && (thorough || !root || knapsack.quick())) {
                return;
            } else {
                thorough = keep == 0 && settled;
                keep = 0;
            }
        }
    }

    private boolean better(long[] prices) {
        double sum = 0;
        for (int i = 0; i < prices.length; i++) {
            sum += (double) prices[i] * demand[i];
        }
        double found = sum / Math.max(1, knapsack.bound);
        bars = Math.max(bars, (long) Math.ceil(found - 1e-9));
        boolean better = found > exact;
        exact = Math.max(exact, found);
        return better;
    }

    // Where rounding errors have spoilt a programme, one is built anew for what is left.
    private Master afresh(Master master, int[] left) {
        var cost = new double[types.length];
        Arrays.fill(cost, 1);
        var fresh = new Master(left, limit.clone(), cost);
        for (int c = types.length; c < master.columns.size(); c++) {
            Master.Column old = master.columns.get(c);
            var counts = new int[types.length];
            for (int k = 0; k < old.rows().length; k++) {
                counts[old.rows()[k]] = Math.min(left[old.rows()[k]], old.counts()[k]);
            }
            Master.Column trimmed = Master.Column.of(counts, 1);
            if (trimmed.rows().length > 0) {
                fresh.add(trimmed);
            }
        }
        return fresh;
    }

    private void dive(Master master, double noise, Improver improver, Budget budget) {
        Master now = master;
        int[] left = demand.clone();
        List<int[]> cut = new ArrayList<>();
        long most = improver.best.complete() ? improver.best.weight / f.weight[0] - 1 : Long.MAX_VALUE;
        while (Arrays.stream(left).anyMatch(n -> n > 0)) {
            if (cut.size() + Math.ceil(now.value() - 0.02) > most) {
                return;
            }
            if (budget.over()) {
                break;
            }
            int before = cut.size();
            if (!take(now, left, cut, noise)) {
                if (cut.size() == before) {
                    break;
                }
                now = afresh(now, left);
            }
            var limits = new int[left.length];
            for (int i = 0; i < left.length; i++) {
                limits[i] = Math.min(limit[i], left[i]);
            }
            generate(now, limits, 30, budget, false);
        }
        offer(cut, improver);
    }

    // Whole uses are taken as they are; where there are none, the largest part of one is taken as a whole.
    private boolean take(Master master, int[] left, List<int[]> cut, double noise) {
        // Fixing rests on prices that are settled.
        master.solve(SETTLE);
        double[] uses = master.uses();
        boolean any = false;
        int pick = -1;
        double most = 0;
        for (int c = 0; c < uses.length; c++) {
            if (uses[c] < 1e-4) {
                continue;
            }
            int whole = (int) Math.floor(uses[c] + 1e-4);
            if (whole > 0) {
                any = true;
                for (int k = 0; k < whole; k++) {
                    cut(master.columns.get(c), left, cut);
                }
                if (!master.fix(c, whole)) {
                    return false;
                }
            } else if (uses[c] * (1 - noise * dice.unit()) > most) {
                most = uses[c] * (1 - noise * dice.unit());
                pick = c;
            }
        }
        if (any || pick < 0) {
            return any;
        }
        cut(master.columns.get(pick), left, cut);
        return master.fix(pick, 1);
    }

    private void cut(Master.Column column, int[] left, List<int[]> cut) {
        var bar = new int[types.length];
        int sum = 0;
        for (int k = 0; k < column.rows().length; k++) {
            int i = column.rows()[k];
            bar[i] = Math.min(left[i], column.counts()[k]);
            left[i] -= bar[i];
            sum += bar[i];
        }
        if (sum > 0) {
            cut.add(bar);
        }
    }

    private void offer(List<int[]> cut, Improver improver) {
        if (cut.size() > f.count[0]) {
            return;
        }
        var state = new State(f);
        for (int[] bar : cut) {
            int slot = state.open(0, 1);
            int leaf = 0;
            for (int i = 0; i < bar.length; i++) {
                for (int k = 0; k < bar[i]; k++) {
                    leaf = place(state, slot, leaf, types[i]);
                }
            }
        }
        improver.take(state, 1);
    }

    private int place(State state, int slot, int leaf, int t) {
        BoardTree tree = state.slot[slot];
        int rest = -1;
        int here = leaf;
        if (tree.length(leaf) > f.length[t]) {
            rest = tree.cut(leaf, BoardTree.ROW, f.length[t]);
            here = tree.before(rest);
        }
        state.place(slot, here, t, tree.x(here), tree.y(here), f.length[t], f.width[t], true, 1);
        return rest;
    }
}

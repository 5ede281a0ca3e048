package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
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
    /** Bars given back where a dive has failed, and how often the rest is tried again. */
    private static final int MEND = 10;

    private static final int MENDS = 12;
    /** The share of what is left for filling bars anew, each time. */
    private static final double REFILL = 0.12;

    private static final double SPARE = 0.25;
    private static final int PIVOTS = 12;
    /** So many looks for what fills a bar take about as long as a step. */
    static final int LOOKS_A_STEP = 5000;
    /** Where lengths times parts are more than this, bars are filled by the longest parts first. */
    private static final long MOST_REACH = 1_000_000;

    private final Folded f;
    private final int[] types;
    /** By part: where it stands among those of the problem that this is what is left of. */
    private final int[] place;
    private final int[] demand;
    private final int[] limit;
    private final Knapsack knapsack;
    private final Dice dice;
    private long bars;
    /** Boards of the best layout. */
    private long best;
    private double exact;
    private @Nullable Refill refill;
    /** The bars that it tries to do without one of. */
    private int refilled;

    private Lengths(Folded f, int[] types, int[] size) {
        this.f = f;
        this.types = types;
        place = IntStream.range(0, types.length).toArray();
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

    // The same bars for what is left of the parts.
    private Lengths(Lengths whole, int[] left) {
        f = whole.f;
        place = IntStream.range(0, left.length).filter(i -> left[i] > 0).toArray();
        types = Arrays.stream(place).map(i -> whole.types[i]).toArray();
        demand = Arrays.stream(place).map(i -> left[i]).toArray();
        limit = Arrays.stream(place).map(i -> Math.min(left[i], whole.limit[i])).toArray();
        knapsack = new Knapsack((int) f.boardLength[0], lengths(f, types));
        dice = whole.dice;
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
        var whole = new Bars(f, types);
        if (!reached(improver) && !budget.over()) {
            whole.offer(fullest(budget), improver);
        }
        if (reached(improver)) {
            return area;
        }
        refill(whole, improver, budget.part(REFILL));
        if (reached(improver)) {
            return area;
        }
        best = improver.best.complete() ? improver.best.open : Long.MAX_VALUE;
        var alone = limit.clone();
        var cost = new double[types.length];
        Arrays.fill(cost, 1);
        var master = new Master(demand, alone, cost);
        whole.patterns(improver.best).forEach(master::add);
        generate(master, demand, ROUNDS, budget, true);
        Bound bound = bars * f.weight[0] > area.value() ? new Bound(bars * f.weight[0], "patterns of lengths") : area;
        for (int dive = 0; !budget.over() && !reached(improver); dive++) {
            long most = improver.best.complete() ? improver.best.weight / f.weight[0] - 1 : Long.MAX_VALUE;
            double noise = dive == 0 ? 0 : 0.1 + 0.1 * (dive % 5);
            List<int[]> cut = new ArrayList<>();
            if (dive(master.copy(), noise, most, cut, budget) || mend(cut, most, master, budget)) {
                whole.offer(cut, improver);
            }
            refill(whole, improver, budget.part(REFILL));
        }
        return bound;
    }

    // One bar less, and once more, for as long as that is found soon.
    private void refill(Bars whole, Improver improver, Budget part) {
        while (improver.best.complete() && !reached(improver) && !part.over()) {
            if (refill == null || refilled != improver.best.open) {
                refilled = improver.best.open;
                refill = Refill.of((int) f.boardLength[0], lengths(f, types), whole.counted(improver.best), dice);
            }
            List<int[]> cut = refill == null ? List.of() : refill.run(types.length, part);
            if (cut.isEmpty()) {
                return;
            }
            whole.offer(cut, improver);
        }
    }

    private static int[] lengths(Folded f, int[] types) {
        return Arrays.stream(types).map(t -> (int) f.length[t]).toArray();
    }

    // Bar by bar as full as can be round the longest part left (minimum bin slack: Gupta and Ho 1999). Hardly any time goes
    // by, and where parts are many and short no bar wastes anything.
    private List<int[]> fullest(Budget budget) {
        int[] left = demand.clone();
        int longest = 0;
        var order = IntStream.range(0, types.length)
                .boxed()
                .sorted((a, b) -> Long.compare(f.length[types[b]], f.length[types[a]]))
                .mapToInt(Integer::intValue)
                .toArray();
        List<int[]> cut = new ArrayList<>();
        boolean small = f.boardLength[0] * types.length <= MOST_REACH;
        var reach = new int[small ? (int) f.boardLength[0] + 1 : 0];
        while (longest < order.length) {
            int i = order[longest];
            if (left[i] == 0) {
                longest++;
                continue;
            }
            var bar = new int[types.length];
            bar[i]++;
            left[i]--;
            fill(bar, left, (int) (f.boardLength[0] - f.length[types[i]]), order, reach);
            cut.add(bar);
            budget.spend(1 + (long) reach.length * types.length / Endless.WORK_A_STEP);
        }
        return cut;
    }

    // The longest parts first that lead to the fullest bar; what a length is reached by last is remembered.
    private void fill(int[] bar, int[] left, int room, int[] order, int[] reach) {
        if (room >= reach.length) {
            long rest = room;
            for (int i : order) {
                int more = (int) Math.min(left[i], rest / f.length[types[i]]);
                bar[i] += more;
                left[i] -= more;
                rest -= more * f.length[types[i]];
            }
            return;
        }
        Arrays.fill(reach, 0, room + 1, -1);
        reach[0] = 0;
        var used = new int[room + 1];
        for (int at = 0; at < order.length && reach[room] < 0; at++) {
            int i = order[at];
            int size = (int) f.length[types[i]];
            if (left[i] > 0 && size <= room) {
                Arrays.fill(used, 0);
                for (int p = size; p <= room; p++) {
                    if (reach[p] < 0 && reach[p - size] >= 0 && used[p - size] < left[i]) {
                        reach[p] = i;
                        used[p] = used[p - size] + 1;
                    }
                }
            }
        }
        int p = room;
        while (reach[p] < 0) {
            p--;
        }
        while (p > 0) {
            int i = reach[p];
            bar[i]++;
            left[i]--;
            p -= (int) f.length[types[i]];
        }
    }

    private boolean reached(Improver improver) {
        return improver.best.complete() && improver.best.weight <= bars * f.weight[0];
    }

    // Until the prices prove that rounding up the value of the programme gives the bound, or nothing new is worth it.
    // Patterns are sought at prices between the best so far and the newest, which swing less.
    private void generate(Master master, int[] left, int rounds, Budget budget, boolean root) {
        var limits = new int[left.length];
        for (int i = 0; i < left.length; i++) {
            limits[i] = Math.min(limit[i], left[i]);
        }
        long[] steady = {};
        double keep = 0;
        boolean reached = false;
        boolean thorough = false;
        for (int round = 0; round < rounds; round++) {
            boolean settled = master.solve(PIVOTS);
            long[] prices = master.rounded(SCALE);
            long[] asked = prices.clone();
            for (int i = 0; i < steady.length; i++) {
                asked[i] = (long) (keep * steady[i] + (1 - keep) * prices[i]);
            }
            knapsack.fill(asked, limits, (long) SCALE, thorough);
            if (root && better(asked)) {
                steady = asked;
                reached = best <= bars;
            }
            if (root && (reached || (settled && enough(master.value())))) {
                return;
            }
            // Where there is room to spare, nothing is gained by sharper prices; where there is none, everything.
            double rest = master.value();
            if (!root && Math.ceil(rest) - rest > SPARE && least(asked, left) > Math.floor(rest) + 1e-6) {
                return;
            }
            if (!budget.spend(1 + knapsack.looked / LOOKS_A_STEP)) {
                return;
            }
            Patterns.Pattern found = Patterns.Pattern.of(knapsack.taken, 1);
            if (master.reduced(found) < -1e-6) {
                master.add(found);
                keep = steady.length > 0 ? 0.7 : 0;
                thorough = false;
            } else if (keep == 0 && settled && (thorough || !root || knapsack.bound <= SCALE)) {
                return;
            } else {
                thorough = keep == 0 && settled;
                keep = 0;
            }
        }
    }

    // Whole boards alone count: what lies between the bound and the programme must hold one more for looking on.
    private boolean enough(double value) {
        return exact > value * (1 - 1e-5) || bars >= Math.ceil(value - 1e-6);
    }

    // What the filling just made says of the bars needed (Farley 1990).
    private double least(long[] prices, int[] need) {
        double sum = 0;
        for (int i = 0; i < prices.length; i++) {
            sum += (double) prices[i] * need[i];
        }
        return sum / Math.max(1, knapsack.bound);
    }

    private boolean better(long[] prices) {
        double found = least(prices, demand);
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
            Patterns.Pattern old = master.columns.get(c);
            var counts = new int[types.length];
            for (int k = 0; k < old.rows().length; k++) {
                counts[old.rows()[k]] = Math.min(left[old.rows()[k]], old.counts()[k]);
            }
            Patterns.Pattern trimmed = Patterns.Pattern.of(counts, 1);
            if (trimmed.rows().length > 0) {
                fresh.add(trimmed);
            }
        }
        return fresh;
    }

    // Fills the list with bars; false if it stopped because they would be more than so many.
    private boolean dive(Master master, double noise, long most, List<int[]> cut, Budget budget) {
        Master now = master;
        int[] left = demand.clone();
        while (Arrays.stream(left).anyMatch(n -> n > 0)) {
            if (cut.size() + Math.ceil(now.value() - 0.02) > most) {
                return false;
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
            generate(now, left, 30, budget, false);
        }
        return true;
    }

    // A dive that has failed has gone wrong late: the bars taken last are given back and what is left, a small problem, is
    // dived for again a few times.
    private boolean mend(List<int[]> cut, long most, Master master, Budget budget) {
        for (int back = MEND; back <= 2 * MEND && back < cut.size(); back += MEND / 2) {
            List<int[]> kept = new ArrayList<>(cut.subList(0, cut.size() - back));
            int[] left = demand.clone();
            for (int[] bar : kept) {
                for (int i = 0; i < bar.length; i++) {
                    left[i] -= bar[i];
                }
            }
            Lengths rest = new Lengths(this, left);
            Master small = rest.narrowed(this, master);
            rest.generate(small, rest.demand, 200, budget, false);
            for (int dive = 0; dive < MENDS && !budget.over(); dive++) {
                List<int[]> more = new ArrayList<>();
                if (small.value() > most - kept.size() + 0.02) {
                    break;
                }
                if (rest.dive(small.copy(), 0.1 * dive, most - kept.size(), more, budget) && !budget.over()) {
                    for (int[] bar : more) {
                        kept.add(rest.widened(bar, this));
                    }
                    cut.clear();
                    cut.addAll(kept);
                    return true;
                }
            }
        }
        return false;
    }

    private Master narrowed(Lengths whole, Master master) {
        var cost = new double[types.length];
        Arrays.fill(cost, 1);
        var small = new Master(demand, limit.clone(), cost);
        var row = new int[whole.types.length];
        Arrays.fill(row, -1);
        for (int i = 0; i < types.length; i++) {
            row[place[i]] = i;
        }
        for (int c = 0; c < master.columns.size(); c++) {
            Patterns.Pattern old = master.columns.get(c);
            var counts = new int[types.length];
            int sum = 0;
            for (int k = 0; k < old.rows().length; k++) {
                int i = row[old.rows()[k]];
                if (i >= 0) {
                    counts[i] = Math.min(demand[i], old.counts()[k]);
                    sum += counts[i];
                }
            }
            if (sum > 1) {
                small.add(Patterns.Pattern.of(counts, 1));
            }
        }
        return small;
    }

    private int[] widened(int[] bar, Lengths whole) {
        var wide = new int[whole.types.length];
        for (int i = 0; i < bar.length; i++) {
            wide[place[i]] = bar[i];
        }
        return wide;
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

    private void cut(Patterns.Pattern column, int[] left, List<int[]> cut) {
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
}

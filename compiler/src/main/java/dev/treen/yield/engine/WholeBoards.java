package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Layouts out of what a {@link Master} says of patterns: each board as often as it is used there, rounded, as far as its
 * parts are wanted (Gilmore and Gomory 1965). What is left then is little, and goes in as parts always do. Where parts come
 * in many copies hardly anything else comes near.
 */
final class WholeBoards {
    /** From which fraction on a use is rounded up, one layout each. */
    private static final double[] ROUND_UP = {1, 0.75, 0.5, 0.25};

    /** A board that is taken for a fraction must still give so much of its parts. */
    private static final double WANTED = 0.9;

    private static final int SETTLE = 1000;
    private static final double HAIR = 1e-6;

    private final Folded f;
    private final Map<Integer, BoardTree> trees = new HashMap<>();
    private long stamp = 1L << 41;

    WholeBoards(Folded f) {
        this.f = f;
    }

    /** Keeps how the pattern added last is sawn from an empty board; boards with flaws are not sawn so. */
    void keep(Master master, int stock, Endless table, long[] profit) {
        if (f.flaws[stock].length == 0) {
            var scratch = new State(f);
            int slot = scratch.open(stock, ++stamp);
            table.lay(scratch, slot, 0, profit, stamp);
            trees.put(master.columns.size() - 1, scratch.slot[slot]);
        }
    }

    /** Offers a few layouts. */
    void offer(Master master, Improver improver) {
        if (trees.isEmpty()) {
            return;
        }
        double[] uses = master.uses();
        for (double up : ROUND_UP) {
            improver.take(layout(uses, up), ++stamp);
        }
        improver.take(dive(master.copy()), ++stamp);
    }

    // Boards are taken for good one after another, those used most first, and the others weighed up anew in between.
    private State dive(Master master) {
        var state = new State(f);
        while (state.leftArea > 0) {
            master.solve(SETTLE);
            double[] uses = master.uses();
            int pick = -1;
            for (int c = 0; c < uses.length; c++) {
                pick = trees.containsKey(c) && uses[c] > HAIR && (pick < 0 || uses[c] > uses[pick]) ? c : pick;
            }
            int times = pick < 0 ? 0 : Math.max(1, (int) Math.floor(uses[pick] + HAIR));
            int before = state.open;
            for (int n = 0; n < times; n++) {
                add(state, pick, WANTED);
            }
            if (state.open == before || !master.fix(pick, times)) {
                return state;
            }
        }
        return state;
    }

    private State layout(double[] uses, double up) {
        var state = new State(f);
        int[] order = IntStream.range(0, uses.length)
                .filter(c -> uses[c] > HAIR && trees.containsKey(c))
                .boxed()
                .sorted((a, b) -> Double.compare(uses[b], uses[a]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int c : order) {
            for (int n = (int) Math.floor(uses[c] + HAIR); n > 0; n--) {
                add(state, c, 0);
            }
        }
        Arrays.stream(order)
                .boxed()
                .sorted((a, b) -> Double.compare(uses[b] - Math.floor(uses[b]), uses[a] - Math.floor(uses[a])))
                .filter(c -> uses[c] - Math.floor(uses[c] + HAIR) >= up)
                .forEach(c -> add(state, c, WANTED));
        return state;
    }

    // One more board sawn so, without what is there often enough.
    private void add(State state, int column, double wanted) {
        BoardTree pattern = trees.get(column);
        if (pattern == null || state.openOf[pattern.stock] >= f.count[pattern.stock]) {
            return;
        }
        var rest = state.left.clone();
        double all = 0;
        double good = 0;
        for (int n = 0; n < pattern.nodes(); n++) {
            if (pattern.kind(n) == BoardTree.ITEM) {
                int t = pattern.type(n);
                all += f.area[t];
                good += rest[t]-- > 0 ? f.area[t] : 0;
            }
        }
        if (good <= 0 || good < wanted * all) {
            return;
        }
        int slot = state.open(pattern.stock, ++stamp);
        BoardTree tree = pattern.copy();
        tree.stamp = stamp;
        state.slot[slot] = tree;
        for (int n = 0; n < tree.nodes(); n++) {
            if (tree.kind(n) == BoardTree.ITEM) {
                int t = tree.type(n);
                state.left[t]--;
                state.leftArea -= f.area[t];
                state.value += f.value[t];
            }
        }
        var scratch = new int[f.types];
        for (int n = 0; n < tree.nodes(); n++) {
            if (tree.kind(n) == BoardTree.ITEM && state.left[tree.type(n)] < 0) {
                state.clear(slot, n, stamp, scratch);
            }
        }
    }
}

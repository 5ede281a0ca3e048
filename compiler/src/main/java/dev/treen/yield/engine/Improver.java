package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * Looks for better layouts by ruin and recreate towards a goal: the boards may weigh at most one unit less than the best
 * layout so far, and what has no place then is made smaller until nothing is left over; then the goal moves (the goal idea
 * after Gardeyn and Wauters 2022; acceptance by a list of late values, Burke and Bykov 2017).
 */
final class Improver {
    private static final int LATE = 60;
    private static final int FIRST_TRIES = 12;

    /** Up to so many items a single board is sawn up anew now and then, as one of several boards always is. */
    private static final int FEW = 30;

    /** The share for the exact search of the shortest reach. */
    private static final double WHOLE = 0.3;

    private final Folded f;
    private final Dice dice;
    private final Inserter inserter;
    private final Ruiner ruiner;
    private final boolean value;
    private final Watch watch;
    private final State state;
    private final State before;
    private final double[] late = new double[LATE];
    private final int[] scratch;
    /** The best layout so far; before the first, one with nothing on it. */
    State best;
    private boolean any;
    private long stamp = 1;

    /** Told of every better layout. */
    interface Watch {
        void better(State best, boolean complete);
    }

    Improver(Folded f, long seed, boolean value, Watch watch) {
        this.f = f;
        this.value = value;
        this.watch = watch;
        dice = new Dice(seed);
        inserter = new Inserter(f, dice, value);
        ruiner = new Ruiner(f, dice);
        state = new State(f);
        before = new State(f);
        best = new State(f);
        scratch = new int[f.types];
    }

    /** Builds a few layouts from nothing and keeps the best. */
    void first(Budget budget, long goal) {
        boolean crowd = f.items() > 400;
        for (int i = 0; i < FIRST_TRIES && (i == 0 || budget.step()); i++) {
            var fresh = new State(f);
            inserter.blink = 0;
            inserter.bySquares = i % 3 == 0 ? 1 : 1e-3;
            inserter.byArea = i % 3 == 1 ? 1 : 0;
            inserter.bySide = i % 3 == 2 ? 1 : 0;
            inserter.openBy = i % 4;
            inserter.reach = crowd ? 8 : Integer.MAX_VALUE;
            inserter.insertAll(fresh, i % 5, i < 5 ? 0 : 0.3, Long.MAX_VALUE, ++stamp);
            charge(budget);
            offer(fresh);
            if (reached(goal) || (crowd && i == 3)) {
                break;
            }
        }
        inserter.reach = Integer.MAX_VALUE;
    }

    /** Takes a layout made elsewhere: what is left is put in where there is room. */
    void take(State made, long change) {
        inserter.blink = 0;
        inserter.flip = 0;
        inserter.bySquares = 1;
        inserter.byArea = 0;
        inserter.bySide = 0;
        inserter.openBy = 0;
        inserter.insertAll(made, 0, 0, Long.MAX_VALUE, change);
        offer(made);
    }

    private boolean offer(State now) {
        if (!any || better(now, best)) {
            any = true;
            best.become(now);
            watch.better(best, now.complete());
            return true;
        }
        return false;
    }

    private boolean better(State a, State b) {
        if (value) {
            return a.value > b.value;
        }
        return a.leftArea != b.leftArea ? a.leftArea < b.leftArea : a.weight < b.weight;
    }

    /** Improves until the goal is reached or the budget is spent. */
    void improve(Budget budget, long goal) {
        while (!budget.over() && !reached(goal)) {
            long limit = !value && best.complete() ? best.weight - 1 : Long.MAX_VALUE;
            search(budget, goal, limit);
        }
    }

    private boolean reached(long goal) {
        return value ? best.value >= goal : best.complete() && best.weight <= goal;
    }

    private void search(Budget budget, long goal, long limit) {
        state.become(best);
        ruiner.handBack = !value;
        ruiner.shrink(state, limit, ++stamp);
        Arrays.fill(late, Double.POSITIVE_INFINITY);
        double now = measure(state);
        for (long turn = 0; budget.step(); turn++) {
            change(limit, budget);
            now = accept(now, measure(state), turn);
            if (value || state.complete()) {
                if (offer(state) && (!value || reached(goal))) {
                    return;
                }
            } else if (limit == Long.MAX_VALUE) {
                offer(state);
            }
        }
    }

    // With many defects on a board a change takes so long that it counts as several.
    private void charge(Budget budget) {
        long steps = inserter.steps();
        if (steps > 0) {
            budget.spend(steps);
        }
    }

    private void change(long limit, Budget budget) {
        before.become(state);
        stamp++;
        int most = Math.max(2, Math.min(f.items() / 2, 16));
        boolean anew = !value && (state.open > 1 || (state.open == 1 && f.items() <= FEW)) && dice.below(12) == 0;
        if (anew) {
            ruiner.board(state, dice.below(state.open), stamp);
        }
        ruiner.some(state, 1 + dice.below(most), 1 + dice.below(3), stamp);
        int m = dice.below(3);
        inserter.blink = 0.02;
        inserter.flip = dice.below(3) == 0 ? 0.15 : 0;
        inserter.bySquares = m == 0 ? 1 : 1e-3;
        inserter.byArea = m == 1 ? 1 : 0;
        inserter.bySide = m == 2 ? 1 : 0;
        inserter.openBy = dice.below(6);
        int order = anew && dice.below(2) == 0 ? Inserter.AT_RANDOM : dice.below(7);
        inserter.insertAll(state, order, 0.6, limit, stamp);
        charge(budget);
    }

    private double accept(double now, double then, long turn) {
        int at = (int) (turn % LATE);
        double kept = now;
        if (then <= now || then <= late[at]) {
            kept = then;
        } else {
            state.become(before);
        }
        late[at] = kept;
        return kept;
    }

    // What is left out, and a little for scattered free area so that one place grows.
    double measure(State s) {
        if (value) {
            return -s.value;
        }
        double spread = 0;
        for (int i = 0; i < s.open; i++) {
            BoardTree tree = s.slot[i];
            double whole = (double) f.boardLength[tree.stock] * f.boardWidth[tree.stock];
            double share = tree.freeArea() / whole;
            spread -= share * share * whole;
        }
        return s.leftArea + 0.05 * spread / Math.max(1, s.open);
    }

    /**
     * Changes a layout turn by turn, as long as {@code seen} wants no more; gives how many turns that took. Boards may
     * weigh so much at most; a change that {@code measure} likes less than now and than {@code late} is undone.
     */
    long walk(
            State from, long limit, ToDoubleFunction<State> measure, double first, Predicate<State> seen, Budget budget,
            long turns) {
        state.become(from);
        Arrays.fill(late, first);
        double now = measure.applyAsDouble(state);
        long turn = 0;
        while (turn < turns && !seen.test(state) && budget.step()) {
            change(limit, budget);
            now = accept(now, measure.applyAsDouble(state), turn++);
        }
        return turn;
    }

    /** The layout that the last walk ended with, without the items of a type; boards that have nothing else go too. */
    State without(int type) {
        stamp++;
        for (int i = state.open - 1; i >= 0; i--) {
            BoardTree tree = state.slot[i];
            for (int n = 0; n < tree.nodes(); n++) {
                if (tree.kind(n) == BoardTree.ITEM && tree.type(n) == type) {
                    state.clear(i, n, stamp, scratch);
                    state.leftArea -= f.area[type];
                    state.left[type]--;
                    tree = state.slot[i];
                }
            }
            if (state.slot[i].items() == 0) {
                ruiner.board(state, i, stamp);
            }
        }
        return state;
    }

    /** Takes a layout that is better in what this class does not compare. */
    void prefer(State better) {
        best.become(better);
        watch.better(best, true);
    }

    /**
     * Makes the reach of all parts along the one board shorter: the board itself is cut back a little, what lay there is
     * put in again, and the step halves where that fails for long. Gives the least reach that is possible.
     */
    long shortestReach(Budget budget, long known) {
        if (!best.complete() || best.open == 0) {
            return known;
        }
        long full = f.boardLength[0];
        long least = leastReach(budget.part(WHOLE), known);
        long reach = settledReach(best);
        long step = Math.max(1, (reach - least) / 4);
        while (!budget.over() && reach > least) {
            long target = Math.max(least, reach - step);
            state.become(best);
            cutBack(target, ++stamp);
            f.boardLength[0] = target;
            long patience = step == 1 ? Long.MAX_VALUE : 200L + 20L * f.items();
            walk(state, Long.MAX_VALUE, this::measure, Double.POSITIVE_INFINITY, State::complete, budget, patience);
            if (state.complete()) {
                best.become(state);
                reach = settledReach(best);
                watch.better(best, true);
            } else {
                step = Math.max(1, step / 2);
            }
        }
        f.boardLength[0] = full;
        return least;
    }

    // As long as it is quickly seen that all parts do not fit, the board may be longer.
    private long leastReach(Budget part, long known) {
        long full = f.boardLength[0];
        long least = known;
        while (!part.over() && least < settledReach(best)) {
            f.boardLength[0] = least;
            Whole whole = Whole.of(f, 0, ++stamp, part);
            if (whole.layout != null) {
                best.become(whole.layout);
                watch.better(best, true);
            }
            if (!whole.never) {
                break;
            }
            least++;
        }
        f.boardLength[0] = full;
        return least;
    }

    /** How far the parts of the one board reach along it. */
    static long settledReach(State s) {
        if (!s.slot[0].clear) {
            return s.slot[0].reach();
        }
        s.slot[0] = s.slot[0].copy();
        s.slot[0].settle();
        return s.slot[0].reach();
    }

    private void cutBack(long target, long change) {
        BoardTree tree = state.own(0, change);
        tree.settle();
        for (int n = 0; n < tree.nodes(); n++) {
            if (tree.kind(n) == BoardTree.ITEM && tree.x(n) + tree.length(n) > target) {
                state.clear(0, n, change, scratch);
            }
        }
        tree.shorten(0, tree.length(0) - target);
    }
}

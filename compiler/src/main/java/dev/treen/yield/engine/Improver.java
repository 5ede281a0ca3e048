package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * Looks for better layouts by ruin and recreate towards a goal: the boards may weigh at most one unit less than the best
 * layout so far, and what has no place then is made smaller until nothing is left over; then the goal moves (the goal idea
 * after Gardeyn and Wauters 2022; acceptance by a list of late values, Burke and Bykov 2017).
 */
final class Improver {
    private static final int LATE = 60;
    private static final int FIRST_TRIES = 12;

    private final Folded f;
    private final Dice dice;
    private final Inserter inserter;
    private final Ruiner ruiner;
    private final boolean value;
    private final Watch watch;
    private final State state;
    private final State before;
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
            offer(fresh);
            if (reached(goal) || (crowd && i == 3)) {
                break;
            }
        }
        inserter.reach = Integer.MAX_VALUE;
        state.become(best);
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
        var late = new double[LATE];
        Arrays.fill(late, Double.POSITIVE_INFINITY);
        double now = measure(state);
        int at = 0;
        int items = f.items();
        while (budget.step()) {
            before.become(state);
            stamp++;
            shake(items);
            inserter.blink = 0.02;
            mix();
            inserter.insertAll(state, dice.below(7), 0.6, limit, stamp);
            double then = measure(state);
            if (then <= now || then <= late[at]) {
                now = then;
            } else {
                state.become(before);
            }
            late[at] = now;
            at = at + 1 == LATE ? 0 : at + 1;
            if (value || state.complete()) {
                if (offer(state) && (!value || reached(goal))) {
                    return;
                }
            } else if (limit == Long.MAX_VALUE) {
                offer(state);
            }
        }
    }

    private void shake(int items) {
        int most = Math.max(2, Math.min(items / 2, 16));
        if (!value && state.open > 1 && dice.below(12) == 0) {
            ruiner.board(state, dice.below(state.open), stamp);
        }
        ruiner.some(state, 1 + dice.below(most), 1 + dice.below(3), stamp);
    }

    private void mix() {
        int m = dice.below(3);
        inserter.bySquares = m == 0 ? 1 : 1e-3;
        inserter.byArea = m == 1 ? 1 : 0;
        inserter.bySide = m == 2 ? 1 : 0;
        inserter.openBy = dice.below(6);
    }

    // What is left out, and a little for scattered free area so that one place grows.
    private double measure(State s) {
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
}

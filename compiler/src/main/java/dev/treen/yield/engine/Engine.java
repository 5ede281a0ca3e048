package dev.treen.yield.engine;

import dev.treen.yield.AtOnce;
import dev.treen.yield.Bound;
import dev.treen.yield.Cancel;
import dev.treen.yield.CutTree;
import dev.treen.yield.Layout;
import dev.treen.yield.Objective;
import dev.treen.yield.Progress;
import dev.treen.yield.Rect;
import dev.treen.yield.Unplaced;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The way from a sound problem to a layout: fold the kerf in, bound, build, improve, write. */
public final class Engine {
    /** Steps without a larger leftover after which the search for one ends. */
    private static final long PATIENCE = 1_000_000;

    /** Fewer steps than this are not divided between two searches; the figure is our own. */
    private static final long FEW = 1_000;

    private final YieldProblem problem;
    private final Folded f;
    private final Progress progress;
    private final Budget budget;
    private final Cancel cancel;
    private final boolean most;
    private final boolean shortest;
    private Bound bound;

    private Engine(YieldProblem problem, Progress progress, Cancel cancel) {
        this.problem = problem;
        this.progress = progress;
        this.cancel = cancel;
        f = new Folded(problem);
        budget = new Budget(
                Math.max(1, problem.settings().steps()), problem.settings().timeLimit(), cancel);
        most = problem.settings().objective() == Objective.MOST_VALUE;
        shortest = problem.settings().objective() == Objective.SHORTEST_BOARD;
        bound = new Bound(0, "nothing is less than nothing");
    }

    /** Solves a problem whose numbers are in order. */
    public static Layout solve(YieldProblem problem, Progress progress, Cancel cancel) {
        return new Engine(problem, progress, cancel).run();
    }

    /** How a free place of a board is sawn so that the largest clear piece of it is kept, where that is worth keeping. */
    public static CutTree leftover(YieldProblem problem, String stockId, Rect place) {
        return new TreeWriter(new Folded(problem)).leftover(stockId, place);
    }

    private Layout run() {
        if (shortest) {
            onlyFirstBoard();
        }
        var unplaced = new ArrayList<Unplaced>(Reasons.neverPlaced(f));
        bound = most ? AreaBound.value(f) : shortest ? reachBound() : AreaBound.weight(f);
        State exact = most ? EndlessBoards.solve(f, budget) : null;
        if (exact != null) {
            bound = new Bound(exact.value, "every cut tried");
            report(exact, true);
            return layout(exact, unplaced);
        }
        var improver = new Improver(f, problem.settings().seed(), most, this::report);
        if (shortest) {
            improver.first(budget, 0);
            if (f.flaws[0].length == 0) {
                long area = AreaBound.reach(f);
                long least = improver.shortestReach(budget, area);
                bound = least > area ? new Bound(trueLength(least), "every block tried") : bound;
            }
        } else if (most) {
            bound = new LimitedValue(f, improver, bound, budget).solve();
        } else {
            improver.first(budget, bound.value());
            Lengths lengths = Lengths.of(f);
            if (lengths != null && !budget.over()) {
                bound = lengths.solve(improver, bound, budget.part(0.95));
            } else {
                raise(improver);
            }
            improver.improve(costBudget(), bound.value());
            if (wantsOffcut() && improver.best.complete() && !budget.over()) {
                leftovers(improver);
            }
        }
        return layout(improver.best, unplaced);
    }

    /**
     * Two searches at once, of which the first is taken where they come to the same; each has half of the steps for itself. A
     * time limit is one thread's, so with one there is one search, and so there is where half the steps would lead nowhere.
     */
    private void leftovers(Improver improver) {
        long patience = Math.min(PATIENCE, budget.steps() / 4);
        long seed = problem.settings().seed();
        if (problem.settings().timeLimit().isPresent() || budget.steps() < FEW) {
            new Offcuts(f, improver, seed).grow(budget, patience);
            return;
        }
        long steps = Math.max(1, (budget.steps() - budget.done()) / 2);
        List<Supplier<State>> searches = new ArrayList<>();
        List<Budget> spent = new ArrayList<>();
        for (long next = seed; next < seed + 2; next++) {
            // What is shared is only read: each has sizes and trees of its own to write to.
            var own = new Folded(problem);
            long start = next;
            var alone = new Improver(own, start, false, this::report);
            alone.best.become(improver.best.apart());
            var part = new Budget(steps, Optional.empty(), cancel);
            spent.add(part);
            searches.add(() -> {
                new Offcuts(own, alone, start).grow(part, patience / 2);
                return alone.best;
            });
        }
        List<State> found = AtOnce.all(searches);
        spent.forEach(part -> budget.spend(part.done()));
        State first = found.getFirst();
        State second = found.getLast();
        improver.prefer(new Offcuts(f, improver, seed).prefers(second, first) ? second : first);
    }

    // What a bound takes is no loss for the layout: each has steps of its own.
    private void raise(Improver improver) {
        long goal = improver.best.complete() ? improver.best.weight : Long.MAX_VALUE;
        if (bound.value() >= goal || budget.over()) {
            return;
        }
        var rows = new CoverRows(f);
        rows.add(AreaBound.clear(f), AreaBound.need(f));
        bound = Stretched.better(f, bound, rows);
        if (bound.value() < goal) {
            bound = PriceBound.better(f, bound, improver, rows, budget.part(0.3));
            goal = improver.best.complete() ? improver.best.weight : goal;
        }
        if (bound.value() < goal && oneBoard()) {
            goal = whole(improver, goal);
        }
        if (bound.value() < goal) {
            FillBound.add(f, rows, budget.part(0.1));
            long least = rows.least(bound.value());
            bound = least > bound.value() ? new Bound(least, "area, sizes and prices together") : bound;
        }
    }

    // Whether the question is if all parts fit one board.
    private boolean oneBoard() {
        return f.stocks == 1 && bound.value() == f.weight[0];
    }

    private long whole(Improver improver, long goal) {
        Whole whole = Whole.of(f, 0, Long.MAX_VALUE, budget.part(0.5));
        if (whole.layout != null) {
            improver.take(whole.layout, Long.MAX_VALUE);
            return improver.best.weight;
        }
        if (whole.never) {
            bound = new Bound(f.count[0] == 1 ? Long.MAX_VALUE : 2 * f.weight[0], "every block tried");
        }
        return goal;
    }

    private Layout layout(State best, List<Unplaced> unplaced) {
        unplaced.addAll(Reasons.left(f, best, most, bound));
        var boards = new TreeWriter(f).write(best);
        boolean proved = score(best) == bound.value() && (most || best.complete());
        return new Layout(
                boards, List.copyOf(unplaced), problem.settings().objective(), score(best), bound, proved,
                budget.done());
    }

    // A quarter of what may be spent stays for the leftovers.
    private Budget costBudget() {
        return wantsOffcut() ? budget.part(0.75) : budget;
    }

    private boolean wantsOffcut() {
        var settings = problem.settings();
        return !most && (settings.minOffcutLength() > 1 || settings.minOffcutWidth() > 1);
    }

    private void onlyFirstBoard() {
        for (boolean[] row : f.ok) {
            for (int b = 1; b < f.stocks; b++) {
                row[b] = false;
            }
        }
        f.count[0] = Math.min(f.count[0], 1);
    }

    private Bound reachBound() {
        return new Bound(trueLength(AreaBound.reach(f)), "area and longest part");
    }

    private long trueLength(long reach) {
        return reach == 0 ? 0 : reach - f.kerf + 2 * problem.settings().endWaste();
    }

    private long score(State best) {
        if (shortest) {
            return best.open == 0 ? 0 : trueLength(Improver.settledReach(best));
        }
        return most ? best.value : best.weight;
    }

    private synchronized void report(State best, boolean complete) {
        long left = 0;
        for (int t = 0; t < f.types; t++) {
            left += f.endless[t] >= 0 ? 0 : best.left[t];
        }
        progress.report(new Progress.Report(
                budget.done(), budget.steps(), score(best), bound.value(), (int) left, true));
    }
}

package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import dev.treen.yield.Cancel;
import dev.treen.yield.Layout;
import dev.treen.yield.Objective;
import dev.treen.yield.Progress;
import dev.treen.yield.Unplaced;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.List;

/** The way from a sound problem to a layout: fold the kerf in, bound, build, improve, write. */
public final class Engine {
    private final YieldProblem problem;
    private final Folded f;
    private final Progress progress;
    private final Budget budget;
    private final boolean most;
    private Bound bound;

    private Engine(YieldProblem problem, Progress progress, Cancel cancel) {
        this.problem = problem;
        this.progress = progress;
        f = new Folded(problem);
        budget = new Budget(
                Math.max(1, problem.settings().steps()), problem.settings().timeLimit(), cancel);
        most = problem.settings().objective() == Objective.MOST_VALUE;
        bound = new Bound(0, "nothing is less than nothing");
    }

    /** Solves a problem whose numbers are in order. */
    public static Layout solve(YieldProblem problem, Progress progress, Cancel cancel) {
        return new Engine(problem, progress, cancel).run();
    }

    private Layout run() {
        var unplaced = new ArrayList<Unplaced>(Reasons.neverPlaced(f));
        bound = most ? AreaBound.value(f) : AreaBound.weight(f);
        var improver = new Improver(f, problem.settings().seed(), most, this::report);
        improver.first(budget, bound.value());
        improver.improve(budget, bound.value());
        State best = improver.best;
        unplaced.addAll(Reasons.left(f, best, most, bound));
        var boards = new TreeWriter(f).write(best);
        boolean proved = score(best) == bound.value() && (most || best.complete());
        return new Layout(
                boards, List.copyOf(unplaced), problem.settings().objective(), score(best), bound, proved,
                budget.done());
    }

    private long score(State best) {
        return most ? best.value : best.weight;
    }

    private void report(State best, boolean complete) {
        long left = 0;
        for (int t = 0; t < f.types; t++) {
            left += f.endless[t] >= 0 ? 0 : best.left[t];
        }
        progress.report(new Progress.Report(
                budget.done(), budget.steps(), score(best), bound.value(), (int) left, true));
    }
}

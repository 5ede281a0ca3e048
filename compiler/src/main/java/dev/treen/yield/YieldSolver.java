package dev.treen.yield;

import java.util.List;

/** Finds where every part comes from. Pure: the same problem gives the same outcome, unless a time limit was asked for. */
public final class YieldSolver {
    private YieldSolver() {
    }

    /** Solves without reporting and without a way to stop. */
    public static Outcome solve(YieldProblem problem) {
        return solve(problem, Progress.none(), Cancel.never());
    }

    /**
     * Solves a problem.
     *
     * @param problem boards, parts, settings
     * @param progress told of every better layout
     * @param cancel asked now and then; a first layout comes all the same
     * @return a layout that passed the checker, or why the problem makes no sense
     */
    public static Outcome solve(YieldProblem problem, Progress progress, Cancel cancel) {
        List<Outcome.Fault> faults = Faults.of(problem);
        if (!faults.isEmpty()) {
            return new Outcome.Refusal(faults);
        }
        Layout layout = Apart.solve(problem, progress, cancel);
        List<LayoutChecker.Breach> breaches = LayoutChecker.check(problem, layout);
        if (!breaches.isEmpty()) {
            return new Outcome.Refusal(breaches.stream()
                    .map(breach -> new Outcome.Fault(Outcome.Kind.FAILED_CHECK, breach.rule() + " " + breach.where()))
                    .toList());
        }
        return layout;
    }
}

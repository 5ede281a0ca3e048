package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

/** Problems solved for tests: a layout that the checker has nothing against. */
final class Solved {
    private Solved() {
    }

    static Layout of(YieldProblem problem) {
        Outcome outcome = YieldSolver.solve(problem);
        assertThat(outcome).isInstanceOf(Layout.class);
        Layout layout = (Layout) outcome;
        assertThat(LayoutChecker.check(problem, layout)).isEmpty();
        return layout;
    }
}

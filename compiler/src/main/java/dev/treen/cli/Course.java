package dev.treen.cli;

import dev.treen.cutting.Cutting;
import dev.treen.yield.Progress;

/** How a build goes, told to whoever waits for its end; they may have had enough of it before. */
public interface Course {

    /** A step of the work begins, said as what is being done: {@code drawing the parts}. */
    void begins(String step);

    /** Where the search for a layout stands, within its step. */
    void stands(Progress.Report report);

    /** Whether the build is to stop before its next step. */
    boolean isStopped();

    /** The work is over, and what came of it is said next. */
    void ends();

    /** What a report says to people. */
    static String said(Progress.Report report) {
        return report.unplaced() > 0
                ? report.unplaced() + (report.unplaced() == 1 ? " part has" : " parts have") + " no place yet"
                : Cutting.within(report.gap());
    }

    /** How much of the search a report has behind it, in whole percent. */
    static int percent(Progress.Report report) {
        return report.ofSteps() == 0 ? 0 : (int) Math.min(100, 100 * report.steps() / report.ofSteps());
    }

    /** Tells nobody, and is never stopped. */
    static Course silent() {
        return new Course() {
            @Override
            public void begins(String step) {
            }

            @Override
            public void stands(Progress.Report report) {
            }

            @Override
            public boolean isStopped() {
                return false;
            }

            @Override
            public void ends() {
            }
        };
    }
}

package dev.treen.cli;

import dev.treen.yield.Progress;
import java.io.PrintStream;
import java.util.function.LongSupplier;

/** One line on a terminal that says how a build goes, written over itself and gone at the end. */
final class TerminalCourse implements Course {
    private static final long BETWEEN_NANOS = 100_000_000;
    private static final int CELLS = 20;
    private static final int PERCENT = 100;
    private static final String WIPE = "\r\033[K";

    private final PrintStream to;
    private final LongSupplier clock;
    private long last;
    private boolean shown;

    /** Writes to {@code to}, which is a terminal, by the nanoseconds of {@code clock}. */
    TerminalCourse(PrintStream to, LongSupplier clock) {
        this.to = to;
        this.clock = clock;
        this.last = clock.getAsLong();
    }

    @Override
    public void begins(String step) {
        show(step);
    }

    @Override
    public void stands(Progress.Report report) {
        long now = clock.getAsLong();
        if (now - last < BETWEEN_NANOS) {
            return;
        }
        last = now;
        int full = CELLS * Course.percent(report) / PERCENT;
        show("laying out boards [" + "#".repeat(full) + ".".repeat(CELLS - full) + "] " + Course.said(report));
    }

    private void show(String line) {
        shown = true;
        to.print(WIPE + line);
        to.flush();
    }

    /** Takes the line away, so that what is printed next begins where it stood. */
    @Override
    public void ends() {
        if (shown) {
            shown = false;
            to.print(WIPE);
            to.flush();
        }
    }

    @Override
    public boolean isStopped() {
        return false;
    }
}

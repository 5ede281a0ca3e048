package dev.treen.yield.engine;

import dev.treen.yield.Cancel;
import java.time.Duration;
import java.util.Optional;

/** What a search may spend: steps always, time and patience where somebody watches. */
final class Budget {
    private final long steps;
    private final long deadline;
    private final boolean timed;
    private final Cancel cancel;
    private long done;
    private boolean over;

    Budget(long steps, Optional<Duration> limit, Cancel cancel) {
        this.steps = steps;
        this.cancel = cancel;
        timed = limit.isPresent();
        deadline = System.nanoTime() + limit.map(Duration::toNanos).orElse(0L);
    }

    /** Counts one step; false when nothing is left. The clock is looked at only now and then. */
    boolean step() {
        done++;
        if (done >= steps) {
            over = true;
        } else if ((done & 15) == 0) {
            look();
        }
        return !over;
    }

    /** Counts many small steps at once. */
    boolean spend(long count) {
        done += count;
        if (done >= steps) {
            over = true;
        } else {
            look();
        }
        return !over;
    }

    private void look() {
        if (cancel.asked() || (timed && System.nanoTime() - deadline >= 0)) {
            over = true;
        }
    }

    boolean over() {
        return over;
    }

    long done() {
        return done;
    }

    long steps() {
        return steps;
    }

    /** Share of the budget that is gone, by whichever runs out first. */
    double share(long startNanos) {
        double bySteps = (double) done / steps;
        if (!timed) {
            return bySteps;
        }
        double whole = Math.max(1, deadline - startNanos);
        return Math.max(bySteps, (System.nanoTime() - startNanos) / whole);
    }
}

package dev.treen.yield.engine;

import dev.treen.yield.Cancel;
import dev.treen.yield.TimeLimit;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a search may spend: steps always, time and patience where somebody watches. */
final class Budget {
    /** A cautious guess, used only where a time limit is asked for. */
    private static final double OPERATIONS_A_NANOSECOND = 1.0;

    private @Nullable Budget whole;
    private final long steps;
    private final long deadline;
    private final boolean timed;
    private final TimeLimit.Clock clock;
    private final Cancel cancel;
    private long done;
    private boolean over;

    private Budget(long steps, boolean timed, TimeLimit.Clock clock, long deadline, Cancel cancel) {
        this.steps = steps;
        this.timed = timed;
        this.clock = clock;
        this.deadline = deadline;
        this.cancel = cancel;
    }

    Budget(long steps, Optional<TimeLimit> limit, Cancel cancel) {
        this.steps = steps;
        this.cancel = cancel;
        timed = limit.isPresent();
        clock = limit.map(TimeLimit::clock).orElse(TimeLimit.Clock.WALL);
        deadline = clock.nanos() + limit.map(l -> l.length().toNanos()).orElse(0L);
    }

    /** The same budget under a lower limit: this share of what is still left. */
    Budget part(double share) {
        var part = new Budget(
                Math.max(1, (long) ((steps - done) * share)), timed, clock,
                clock.nanos() + (long) ((deadline - clock.nanos()) * share), cancel);
        part.whole = this;
        return part;
    }

    /** Counts one step; false when nothing is left. The clock is looked at only now and then. */
    boolean step() {
        done++;
        if (whole != null) {
            whole.step();
        }
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
        if (whole != null) {
            whole.spend(count);
        }
        if (done >= steps) {
            over = true;
        } else {
            look();
        }
        return !over;
    }

    private void look() {
        if (cancel.asked() || (timed && clock.nanos() - deadline >= 0)) {
            over = true;
        }
    }

    /** Looks at the clock now; for long work that counts its steps beforehand. */
    boolean looked() {
        look();
        return over;
    }

    /** Whether about so many operations of a table still fit into what is left. */
    boolean affords(double operations) {
        boolean steps = done + operations / Endless.WORK_A_STEP < this.steps;
        return steps && (!timed || operations / OPERATIONS_A_NANOSECOND < deadline - clock.nanos());
    }

    /** About how many operations of a table still fit into what is left. */
    double room() {
        double bySteps = (double) (steps - done) * Endless.WORK_A_STEP;
        return timed ? Math.min(bySteps, (deadline - clock.nanos()) * OPERATIONS_A_NANOSECOND) : bySteps;
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
}

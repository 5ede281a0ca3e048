package dev.treen.cli.bench;

import dev.treen.yield.Cancel;
import dev.treen.yield.Layout;
import dev.treen.yield.Objective;
import dev.treen.yield.Outcome;
import dev.treen.yield.Progress;
import dev.treen.yield.Rect;
import dev.treen.yield.Settings;
import dev.treen.yield.TimeLimit;
import dev.treen.yield.YieldProblem;
import dev.treen.yield.YieldSolver;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;

/**
 * Solves every instance of the files given and prints one JSON line for each: name, value, bound, proved, seconds to the
 * best value, seconds. Each layout has passed the checker, or the line says it did not.
 */
public final class YieldBench {
    private final PrintStream out;
    private final Options how;
    private boolean sound = true;

    /**
     * How to measure.
     *
     * @param seconds time for each instance
     * @param clock what counts as time, for the limit and in all that is printed
     * @param steps steps for each instance
     * @param seed start of the random choices
     * @param every takes every so many-th instance only
     * @param only takes instances with this in their name only
     */
    public record Options(double seconds, TimeLimit.Clock clock, long steps, long seed, int every, String only) {}

    private YieldBench(PrintStream out, Options how) {
        this.out = out;
        this.how = how;
    }

    /** Solves all instances of the files; false if a layout failed its check or came out better than its own bound. */
    public static boolean run(List<Path> files, Options how, PrintStream out) throws IOException {
        var bench = new YieldBench(out, how);
        for (Path file : files) {
            int n = 0;
            for (var instance : Instances.read(file)) {
                if (n++ % how.every() == 0 && instance.name().contains(how.only())) {
                    bench.solve(instance);
                }
            }
        }
        return bench.sound;
    }

    private void solve(Instances.Instance instance) {
        YieldProblem given = instance.problem();
        Settings settings = given.settings()
                .steps(how.steps())
                .within(new TimeLimit(Duration.ofNanos((long) (how.seconds() * 1e9)), how.clock()))
                .seed(how.seed());
        var problem = new YieldProblem(given.stocks(), given.pieces(), given.runs(), settings);
        long start = how.clock().nanos();
        double[] found = {0, -1};
        Progress watch = report -> {
            if (report.better()) {
                found[0] = (how.clock().nanos() - start) / 1e9;
                if (found[1] < 0 && report.unplaced() == 0) {
                    found[1] = found[0];
                }
            }
        };
        Outcome outcome = YieldSolver.solve(problem, watch, Cancel.never());
        double spent = (how.clock().nanos() - start) / 1e9;
        switch (outcome) {
            case Layout layout -> print(instance, layout, found, spent);
            case Outcome.Refusal refusal -> {
                sound &= refusal.faults().stream().noneMatch(fault -> fault.kind() == Outcome.Kind.FAILED_CHECK);
                out.println(
                        "{\"name\":\"" + instance.name() + "\",\"refused\":\"" + refusal.faults().getFirst() + "\"}");
            }
        }
    }

    // A layout better than what was proved to be the best possible: then one of the two is wrong.
    private static boolean beyond(Layout layout) {
        long value = layout.score();
        long bound = layout.bound().value();
        return layout.objective() == Objective.MOST_VALUE ? value > bound
                : layout.unplaced().isEmpty() && value < bound;
    }

    // What so many whole boards hold beyond the parts; with one board fewer than cannot be done without, what is wasted at
    // the least.
    private static long waste(YieldProblem problem, long boards) {
        long parts = problem.pieces().stream().mapToLong(piece -> piece.length() * piece.width()).sum();
        return boards * problem.stocks().getFirst().length() * problem.stocks().getFirst().width() - parts;
    }

    private void print(Instances.Instance instance, Layout layout, double[] found, double spent) {
        if (beyond(layout)) {
            sound = false;
            out.println("{\"name\":\"" + instance.name() + "\",\"wrong\":\"better than its own bound\"}");
        }
        long offcut = layout.boards().stream()
                .flatMap(board -> board.offcuts().stream())
                .mapToLong(Rect::area)
                .max()
                .orElse(0);
        out.printf(
                Locale.ROOT,
                "{\"name\":\"%s\",\"value\":%d,\"bound\":%d,\"proved\":%b,\"secondsToBest\":%.3f,\"seconds\":%.3f,"
                        + "\"known\":%d,\"left\":%d,\"first\":%.4f,\"offcut\":%d,\"steps\":%d,\"how\":\"%s\"%s}%n",
                instance.name(),
                instance.waste() ? waste(instance.problem(), layout.score()) - offcut : layout.score(),
                instance.waste() ? Math.max(0, waste(instance.problem(), layout.bound().value() - 1))
                        : layout.bound().value(),
                !instance.waste() && layout.proved(),
                found[0],
                spent,
                instance.known(),
                layout.unplaced().stream().mapToInt(left -> left.copies()).sum(),
                found[1],
                offcut,
                layout.steps(),
                layout.bound().how(),
                instance.waste() ? ",\"rules\":\"sheets and parts in any order, cuts anywhere\"" : "");
    }
}

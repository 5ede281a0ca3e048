package dev.treen.yield;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * What several searches at once tell of themselves, told on as what they come to together. One thread at a time is heard, so
 * who is told needs to know nothing of threads.
 */
public final class Reports {
    private static final Comparator<Progress.Report> BETTER = Comparator.comparingInt(Progress.Report::unplaced)
            .thenComparingLong(Progress.Report::score);

    private final Progress to;
    private final long ofSteps;
    private final List<Progress.Report> last;
    private final Function<List<Progress.Report>, Progress.Report> together;

    private Reports(
            Progress to, long ofSteps, List<Progress.Report> first,
            Function<List<Progress.Report>, Progress.Report> together) {
        this.to = to;
        this.ofSteps = ofSteps;
        this.last = new ArrayList<>(first);
        this.together = together;
    }

    /** For searches of which each lays out a part of all: so many parts each, and {@code ofSteps} for all. */
    public static List<Progress> ofAll(Progress to, long ofSteps, List<Integer> parts) {
        List<Progress.Report> none = parts.stream().map(count -> new Progress.Report(0, 0, 0, 0, count, false))
                .toList();
        return new Reports(to, ofSteps, none, Reports::sum).each();
    }

    /** For so many searches of which the best will be taken. */
    public static List<Progress> ofTheBest(Progress to, long ofSteps, int searches) {
        var none = new Progress.Report(0, 0, Long.MAX_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE, false);
        return new Reports(to, ofSteps, Collections.nCopies(searches, none), Reports::best).each();
    }

    private List<Progress> each() {
        List<Progress> each = new ArrayList<>();
        for (int i = 0; i < last.size(); i++) {
            int search = i;
            each.add(report -> hear(search, report));
        }
        return List.copyOf(each);
    }

    private synchronized void hear(int search, Progress.Report report) {
        last.set(search, report);
        Progress.Report all = together.apply(last);
        to.report(new Progress.Report(
                all.steps(), ofSteps, all.score(), all.bound(), all.unplaced(), report.better()));
    }

    private static Progress.Report sum(List<Progress.Report> reports) {
        long steps = 0;
        long score = 0;
        long bound = 0;
        long unplaced = 0;
        for (Progress.Report each : reports) {
            steps += each.steps();
            score += each.score();
            bound = Apart.plus(bound, each.bound());
            unplaced += each.unplaced();
        }
        return new Progress.Report(
                steps, 0, score, bound, (int) Math.min(unplaced, Integer.MAX_VALUE), false);
    }

    private static Progress.Report best(List<Progress.Report> reports) {
        Progress.Report best = Collections.min(reports, BETTER);
        long steps = reports.stream().mapToLong(Progress.Report::steps).sum();
        long bound = reports.stream().mapToLong(Progress.Report::bound).min().orElse(0);
        return new Progress.Report(steps, 0, best.score(), bound, best.unplaced(), false);
    }
}

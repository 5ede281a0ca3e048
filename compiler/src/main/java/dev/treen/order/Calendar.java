package dev.treen.order;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * When what is done, if the steps follow each other and waits run beside other work. Told twice: by somebody who knows the
 * tools with the shortest waits, and by a learner with the longest.
 *
 * @param rows the large parts of the work, in the order in which they begin
 * @param handsOn time at the bench, all together
 * @param idle hours in which nothing can be done but wait
 * @param days from the first step to the end of the last wait
 * @param hoursADay how long a day at the bench is taken to be
 */
public record Calendar(List<Row> rows, Minutes handsOn, Wait idle, Days days, int hoursADay) {
    private static final int MINUTES_IN_HOUR = 60;
    private static final int DAY = 24 * MINUTES_IN_HOUR;
    private static final int HOURS_A_DAY = 6;

    /** Keeps its own copy. */
    public Calendar {
        rows = List.copyOf(rows);
    }

    /** Days, counted from 1: the least and the most. */
    public record Days(int least, int most) {}

    /**
     * One part of the work.
     *
     * @param begins the day on which its first step is begun
     * @param ends the day on which its last wait is over
     */
    public record Row(Stage stage, Minutes handsOn, Days begins, Days ends) {}

    /** The calendar of {@code steps}, which must stand in a valid order. */
    static Calendar of(List<Step> steps) {
        Run quick = new Run(steps, true);
        Run slow = new Run(steps, false);
        Map<Stage, Minutes> work = new EnumMap<>(Stage.class);
        steps.forEach(step -> step.operation().minutes()
                .ifPresent(m -> work.merge(step.operation().phase().stage(), m, Minutes::plus)));
        List<Row> rows = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            int[] early = quick.spans.get(stage);
            int[] late = slow.spans.get(stage);
            if (early != null && late != null) {
                rows.add(new Row(
                        stage,
                        work.getOrDefault(stage, Minutes.NONE),
                        new Days(day(early[0]), day(late[0])),
                        new Days(dayBefore(early[1]), dayBefore(late[1]))));
            }
        }
        return new Calendar(
                rows,
                work.values().stream().reduce(Minutes.NONE, Minutes::plus),
                new Wait(quick.idle / MINUTES_IN_HOUR, slow.idle / MINUTES_IN_HOUR, "with nothing else to do", "", ""),
                new Days(dayBefore(quick.end), dayBefore(slow.end)),
                HOURS_A_DAY);
    }

    private static int day(int minute) {
        return minute / DAY + 1;
    }

    /** The day in which the time before {@code minute} lies. */
    private static int dayBefore(int minute) {
        return Math.max(0, minute - 1) / DAY + 1;
    }

    /** The steps gone through by the clock; work stops when the day at the bench is over, waits do not. */
    private static final class Run {
        final Map<Stage, int[]> spans = new EnumMap<>(Stage.class);
        private int clock;
        int idle;
        int end;

        Run(List<Step> steps, boolean quick) {
            Map<Integer, Integer> ends = new HashMap<>();
            for (Step step : steps) {
                int ready = 0;
                for (int before : step.after()) {
                    ready = Math.max(ready, ends.getOrDefault(before, 0));
                }
                int waited = Math.max(0, ready - clock);
                idle += waited;
                clock = atBench(Math.max(clock, ready));
                int begun = clock;
                work(step.operation().minutes().map(m -> quick ? m.least() : m.most()).orElse(0));
                int wait = step.operation().pause().map(w -> quick ? w.leastHours() : w.mostHours()).orElse(0);
                int over = clock + wait * MINUTES_IN_HOUR;
                ends.put(step.number(), over);
                end = Math.max(end, over);
                int[] span = spans.computeIfAbsent(step.operation().phase().stage(), s -> new int[]{begun, over});
                span[0] = Math.min(span[0], begun);
                span[1] = Math.max(span[1], over);
            }
            idle += Math.max(0, end - clock);
        }

        /** The next minute from {@code minute} on that is one at the bench. */
        private static int atBench(int minute) {
            return minute % DAY < HOURS_A_DAY * MINUTES_IN_HOUR ? minute : (minute / DAY + 1) * DAY;
        }

        private void work(int minutes) {
            int left = minutes;
            while (left > 0) {
                clock = atBench(clock);
                int today = Math.min(left, HOURS_A_DAY * MINUTES_IN_HOUR - clock % DAY);
                clock += today;
                left -= today;
            }
        }
    }
}

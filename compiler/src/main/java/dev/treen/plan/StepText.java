package dev.treen.plan;

import dev.treen.joinery.Work;
import dev.treen.order.BuildOrder;
import dev.treen.order.Calendar;
import dev.treen.order.Minutes;
import dev.treen.order.Names;
import dev.treen.order.Operation;
import dev.treen.order.SoFar;
import dev.treen.order.Wait;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Pieces of a step in words, the same in every output. */
public final class StepText {
    private static final int MINUTES_IN_HOUR = 60;
    private static final int HOURS_IN_DAY = 24;

    private StepText() {
    }

    /** {@code front, back} or {@code base; from front, back}. */
    public static String parts(Operation operation) {
        String with = operation.with().isEmpty()
                ? ""
                : "; with " + String.join(", ", Names.shortened(operation.with())) + " at hand";
        return String.join(", ", Names.shortened(operation.parts())) + with;
    }

    public static String settings(Operation operation, LengthFormat format) {
        List<String> all = new ArrayList<>();
        for (Work.GaugeSetting each : operation.settings()) {
            all.add(each.name() + " " + format.text(each.value()));
        }
        return String.join(", ", all);
    }

    public static String time(Operation operation) {
        return operation.minutes().map(StepText::minutes).orElse("");
    }

    private static String minutes(Minutes minutes) {
        if (minutes.most() < 2 * MINUTES_IN_HOUR) {
            return minutes.least() + " to " + minutes.most() + " min";
        }
        return hours(minutes.least()) + " to " + hours(minutes.most()) + " h";
    }

    /** To the half hour, and never less than one. */
    private static String hours(int minutes) {
        long halves = Math.max(1, Math.round(minutes * 2.0 / MINUTES_IN_HOUR));
        return halves / 2 + (halves % 2 == 0 ? "" : ".5");
    }

    public static String pause(Operation operation) {
        return operation.pause().map(wait -> span(wait) + " " + wait.words()).orElse("");
    }

    /** {@code 1 to 24 h}, {@code 8 to 17 days}: in days from where hours no longer say much. */
    public static String span(Wait wait) {
        return span(wait.leastHours(), wait.mostHours());
    }

    static String span(int leastHours, int mostHours) {
        if (mostHours < 4 * HOURS_IN_DAY) {
            return leastHours + " to " + mostHours + " h";
        }
        int least = days(leastHours);
        int most = days(mostHours);
        return (least == most ? "" : least + " to ") + most + " days";
    }

    private static int days(int hours) {
        return (hours + HOURS_IN_DAY - 1) / HOURS_IN_DAY;
    }

    /** Hands-on time of the whole work; empty where there is none. */
    public static String hours(BuildOrder order) {
        return order.minutes().most() > 0 ? "about " + minutes(order.minutes()) : "";
    }

    /** How long the work rests, one wait after the other; empty where it never does. */
    public static String waits(BuildOrder order) {
        return order.waiting().mostHours() > 0 ? span(order.waiting()) : "";
    }

    /** What the order costs in time and settings, in a few sentences. */
    public static List<String> summary(BuildOrder order) {
        List<String> lines = new ArrayList<>();
        if (order.minutes().most() > 0) {
            lines.add("At the bench about " + minutes(order.minutes())
                    + ", from one who knows the tools to a learner (common practice, no source). From the first step to"
                    + " the last wait " + days(order.calendar().days()) + ", with no more than "
                    + order.calendar().hoursADay() + " hours at the bench on any.");
            Waits.sentence(order).ifPresent(lines::add);
        }
        if (order.settings() > 0) {
            lines.add("Gauges, fences and stops are set " + times(order.settings())
                    + (order.separately() > order.settings()
                            ? "; part by part it would be " + times(order.separately())
                            : "")
                    + ". " + judged(order));
        }
        return lines;
    }

    private static String judged(BuildOrder order) {
        if (order.best()) {
            return "No order that keeps the rules needs fewer settings, and of those with as few none takes"
                    + " fewer days (proved).";
        }
        return order.fewest()
                ? "No order that keeps the rules needs fewer (proved); one with as few may take fewer days, or"
                        + " change tools less often."
                : "The best order found; none can do with fewer than " + order.settingsAtLeast() + ".";
    }

    private static String times(int count) {
        return count + (count == 1 ? " time" : " times");
    }

    /** {@code 3 days}, {@code 10 to 30 days}. */
    static String days(Calendar.Days days) {
        return (days.least() == days.most() ? "" : days.least() + " to ") + days.most()
                + (days.most() == 1 ? " day" : " days");
    }

    /** {@code day 3}, {@code day 3 to 10}: what is sooner by one who knows the tools, later by a learner. */
    public static String day(Calendar.Days days) {
        return "day " + days.least() + (days.least() == days.most() ? "" : " to " + days.most());
    }

    /** Hands-on time of one part of the work. */
    public static String handsOn(Minutes minutes) {
        return minutes.most() == 0 ? "" : minutes(minutes);
    }

    /** Where the maker is, in lines; none where nothing has been measured. */
    public static List<String> soFar(SoFar soFar, LengthFormat format) {
        List<String> lines = new ArrayList<>();
        if (soFar.made().isEmpty() && soFar.measured().isEmpty()) {
            return lines;
        }
        for (SoFar.Figure each : soFar.measured()) {
            lines.add("`" + each.name() + "` was measured: " + format.text(each.measured())
                    + (each.planned().equals(each.measured())
                            ? ", as planned"
                            : " instead of " + format.text(each.planned())));
        }
        for (SoFar.Change each : soFar.changes()) {
            lines.add("`" + each.name() + "` becomes " + format.text(each.now()) + " instead of "
                    + format.text(each.planned()) + " between its shoulders");
        }
        lines.add("taken as made, since it has been measured: " + String.join(", ",
                Names.shortened(soFar.made()).stream()
                        .map(name -> "`" + name + "`")
                        .toList()));
        return lines;
    }
}

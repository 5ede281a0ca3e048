package dev.treen.plan;

import dev.treen.joinery.Work;
import dev.treen.order.BuildOrder;
import dev.treen.order.Minutes;
import dev.treen.order.Operation;
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
        String with = operation.with().isEmpty() ? "" : "; with " + String.join(", ", operation.with()) + " at hand";
        return String.join(", ", operation.parts()) + with;
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

    /** {@code 1 to 24 h}, {@code 8 to 17 days}. */
    public static String span(Wait wait) {
        if (wait.leastHours() < 2 * HOURS_IN_DAY) {
            return wait.leastHours() + " to " + wait.mostHours() + " h";
        }
        return days(wait.leastHours()) + " to " + days(wait.mostHours()) + " days";
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

    /** What the order costs in time and settings, in two sentences. */
    public static List<String> summary(BuildOrder order) {
        List<String> lines = new ArrayList<>();
        if (order.minutes().most() > 0) {
            lines.add("Work by hand or at the machine: about " + minutes(order.minutes())
                    + ", from one who knows the tools to a learner (common practice, no source)"
                    + (order.waiting().mostHours() > 0
                            ? "; waiting, one after the other: " + span(order.waiting()) + "."
                            : "."));
        }
        if (order.settings() > 0) {
            lines.add("Gauges, fences and stops are set " + order.settings()
                    + (order.settings() == 1 ? " time" : " times")
                    + (order.separately() > order.settings()
                            ? ", where part by part it would be " + order.separately() + " times"
                            : "")
                    + (order.fewest() ? "; no order that keeps the rules needs fewer." : "."));
        }
        return lines;
    }
}

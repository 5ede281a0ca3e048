package dev.treen.plan;

import dev.treen.order.BuildOrder;
import dev.treen.order.Wait;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why the days are many more than the hours: what waits, how often and how long, and who says so. */
final class Waits {
    private Waits() {
    }

    /** One kind of wait of an order: from the shortest to the longest of them, and at how many steps. */
    private record Kind(int leastHours, int mostHours, int steps, String source) {
        Kind and(Kind other) {
            return new Kind(Math.min(leastHours, other.leastHours), Math.max(mostHours, other.mostHours),
                    steps + other.steps, source);
        }
    }

    /** What waits, in a sentence; none where nothing does. */
    static Optional<String> sentence(BuildOrder order) {
        Map<String, Kind> kinds = new LinkedHashMap<>();
        order.steps().stream().flatMap(step -> step.operation().pause().stream()).forEach(
                wait -> kinds.merge(wait.what(), kind(wait), Kind::and));
        if (kinds.isEmpty()) {
            return Optional.empty();
        }
        List<String> each = kinds.entrySet().stream().map(entry -> told(entry.getKey(), entry.getValue())).toList();
        return Optional.of("Most of that is waiting, not work: " + String.join("; ", each)
                + ". Other work goes on beside a wait where it may.");
    }

    private static Kind kind(Wait wait) {
        return new Kind(wait.leastHours(), wait.mostHours(), 1, wait.source());
    }

    private static String told(String what, Kind kind) {
        return what + " for " + StepText.span(kind.leastHours(), kind.mostHours())
                + (kind.steps() > 1 ? " at each of " + kind.steps() + " steps" : "") + " (" + kind.source() + ")";
    }
}

package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which gauge holds a setting, from the table beside this class: lines of several steps may be made with one gauge. Some
 * figures of a step are only to be known, not set.
 */
final class Gauges {
    private static final String NOTHING = "-";
    private static final Map<String, List<String>> ROWS = Figures.of("gauges.tsv");

    private Gauges() {
    }

    /** What is really set before {@code operation}. */
    static List<GaugeSetting> set(Operation operation) {
        return operation.settings().stream()
                .filter(setting -> row(setting).map(row -> !row.get(1).equals(NOTHING)).orElse(true))
                .toList();
    }

    /** The gauge that holds a setting: the same name on another tool is another gauge, unless the table knows better. */
    static String gauge(Operation operation, GaugeSetting setting) {
        return row(setting).map(row -> row.get(1)).orElseGet(() -> operation.tool() + "/" + setting.name());
    }

    private static Optional<List<String>> row(GaugeSetting setting) {
        return Optional.ofNullable(ROWS.get(setting.name()))
                .or(() -> Optional.ofNullable(ROWS.get(setting.name().split(" ", 2)[0] + " *")));
    }
}

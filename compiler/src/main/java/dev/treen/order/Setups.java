package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Counts how often gauges, fences and stops are set (rules of the trade O-05). */
final class Setups {
    private Setups() {
    }

    /** The gauge that holds a setting: the same name on another tool is another gauge. */
    static String gauge(Operation operation, GaugeSetting setting) {
        return operation.tool() + "/" + setting.name();
    }

    /** How often something is set when operations follow each other so; a gauge keeps its setting until it gets another. */
    static int count(List<Operation> order) {
        int count = 0;
        Map<String, GaugeSetting> now = new HashMap<>();
        for (Operation each : order) {
            for (GaugeSetting setting : each.settings()) {
                if (!setting.equals(now.put(gauge(each, setting), setting))) {
                    count++;
                }
            }
        }
        return count;
    }

    /** How often something is set when every part is made by itself. */
    static int separately(List<Operation> operations) {
        return operations.stream()
                .mapToInt(each -> each.settings().size() * each.parts().size())
                .sum();
    }
}

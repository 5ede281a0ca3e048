package dev.treen.order;

import dev.treen.joinery.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts operations in an order that keeps every precedence; among those that can be next it takes one that needs no new
 * setting, then the earliest phase, then the order in which they were thought of. The same input gives the same order.
 */
final class Sequence {
    private Sequence() {
    }

    static List<Operation> of(List<Operation> operations, List<Precedence> precedences) {
        Map<Integer, Integer> waiting = new HashMap<>();
        Map<Integer, List<Integer>> followers = new HashMap<>();
        for (Precedence each : new LinkedHashSet<>(precedences)) {
            waiting.merge(each.after(), 1, Integer::sum);
            followers.computeIfAbsent(each.before(), b -> new ArrayList<>()).add(each.after());
        }
        List<Operation> left = new ArrayList<>(operations);
        List<Operation> done = new ArrayList<>();
        Set<Work.GaugeSetting> set = new LinkedHashSet<>();
        while (!left.isEmpty()) {
            Operation next = left.stream()
                    .filter(o -> waiting.getOrDefault(o.id(), 0) <= 0)
                    .min(Comparator.comparingInt((Operation o) -> newSettings(o, set))
                            .thenComparingInt(Operation::phase)
                            .thenComparingInt(Operation::id))
                    // A circle among precedences cannot come from stages; should one, the earliest phase goes on.
                    .orElse(left.getFirst());
            left.remove(next);
            done.add(next);
            if (!next.settings().isEmpty()) {
                set.clear();
                set.addAll(next.settings());
            }
            followers.getOrDefault(next.id(), List.of()).forEach(f -> waiting.merge(f, -1, Integer::sum));
        }
        return done;
    }

    /** Settings that change; an operation without any waits for no gauge, and keeps its phase. */
    private static int newSettings(Operation operation, Set<Work.GaugeSetting> set) {
        return operation.settings().isEmpty() || set.containsAll(operation.settings()) ? 0 : 1;
    }

    /** How often something is set in this order. */
    static int settings(List<Operation> order) {
        int count = 0;
        Map<String, Work.GaugeSetting> now = new HashMap<>();
        for (Operation each : order) {
            for (Work.GaugeSetting setting : each.settings()) {
                String gauge = each.tool() + "/" + setting.name();
                if (!setting.equals(now.put(gauge, setting))) {
                    count++;
                }
            }
        }
        return count;
    }
}

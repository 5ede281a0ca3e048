package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Takes, of what can be next, an operation that needs the fewest new settings, then the one of lowest id. */
final class GreedySequencer implements Sequencer {
    @Override
    public Optional<List<Operation>> sequence(OperationGraph graph) {
        int[] waiting = new int[graph.operations().size()];
        graph.precedences().forEach(each -> waiting[each.after()]++);
        List<Operation> left = new ArrayList<>(graph.operations());
        List<Operation> done = new ArrayList<>();
        Map<String, GaugeSetting> now = new HashMap<>();
        while (!left.isEmpty()) {
            Optional<Operation> next = left.stream()
                    .filter(each -> waiting[each.id()] == 0)
                    .min(Comparator.comparingInt((Operation each) -> fresh(each, now))
                            .thenComparingInt(Operation::id));
            if (next.isEmpty()) {
                return Optional.empty();
            }
            Operation operation = next.get();
            left.remove(operation);
            done.add(operation);
            operation.settings().forEach(s -> now.put(Setups.gauge(operation, s), s));
            graph.precedences().stream()
                    .filter(each -> each.before() == operation.id())
                    .forEach(each -> waiting[each.after()]--);
        }
        return Optional.of(done);
    }

    private static int fresh(Operation operation, Map<String, GaugeSetting> now) {
        return (int) operation.settings().stream()
                .filter(s -> !s.equals(now.get(Setups.gauge(operation, s))))
                .count();
    }
}

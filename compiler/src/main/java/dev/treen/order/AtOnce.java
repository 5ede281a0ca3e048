package dev.treen.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Glue, and square while it is wet, are one thing to whoever looks for an order: nothing may come between them. */
final class AtOnce {
    private final OperationGraph graph;
    private final Map<Integer, Integer> squareOf = new HashMap<>();
    private final List<Integer> heads = new ArrayList<>();

    private AtOnce(OperationGraph graph) {
        this.graph = graph;
        for (Precedence each : graph.precedences()) {
            if (phase(each.before()) == Phase.GLUE && phase(each.after()) == Phase.SQUARE) {
                squareOf.putIfAbsent(each.before(), each.after());
            }
        }
    }

    private Phase phase(int id) {
        return graph.operations().get(id).phase();
    }

    /** The best order found of {@code graph}. */
    static Sequencer.Found order(OperationGraph graph) {
        return new AtOnce(graph).found();
    }

    private Sequencer.Found found() {
        Map<Integer, Integer> ids = new HashMap<>();
        List<Operation> fused = new ArrayList<>();
        for (Operation each : graph.operations()) {
            if (!squareOf.containsValue(each.id())) {
                ids.put(each.id(), fused.size());
                heads.add(each.id());
                fused.add(fused(each).numbered(fused.size()));
            }
        }
        squareOf.forEach((glue, square) -> ids.put(square, ids.getOrDefault(glue, 0)));
        List<Precedence> precedences = graph.precedences().stream()
                .map(p -> new Precedence(
                        ids.getOrDefault(p.before(), 0), ids.getOrDefault(p.after(), 0), p.because()))
                .filter(p -> p.before() != p.after())
                .toList();
        Sequencer.Found found = Sequencer.of(new OperationGraph(fused, precedences));
        List<Operation> order = new ArrayList<>();
        for (Operation each : found.order()) {
            int head = heads.get(each.id());
            order.add(graph.operations().get(head));
            Integer square = squareOf.get(head);
            if (square != null) {
                order.add(graph.operations().get(square));
            }
        }
        return new Sequencer.Found(order, found.cost(), found.floor());
    }

    private Operation fused(Operation glue) {
        Integer square = squareOf.get(glue.id());
        if (square == null) {
            return glue;
        }
        Operation after = graph.operations().get(square);
        Operation both = glue.taking(glue.minutes().orElse(Minutes.NONE).plus(after.minutes().orElse(Minutes.NONE)));
        return after.pause().map(both::waiting).orElse(both);
    }
}

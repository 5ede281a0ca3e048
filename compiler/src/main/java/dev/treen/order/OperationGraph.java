package dev.treen.order;

import java.util.List;

/**
 * All operations of a project and what must come before what. Ids count from 0 in the order of the list, which is the
 * order of their phases.
 */
public record OperationGraph(List<Operation> operations, List<Precedence> precedences) {
    /** Keeps its own copies. */
    public OperationGraph {
        operations = List.copyOf(operations);
        precedences = List.copyOf(precedences);
    }
}

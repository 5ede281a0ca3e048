package dev.treen.order;

import java.util.List;
import java.util.Optional;

/** A way to put operations in an order that keeps every precedence. Pure: the same graph gives the same order. */
interface Sequencer {
    /** The order, or nothing where this way cannot give one. */
    Optional<List<Operation>> sequence(OperationGraph graph);
}

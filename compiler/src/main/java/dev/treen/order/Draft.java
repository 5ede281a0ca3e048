package dev.treen.order;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Operations as they are gathered, with those precedences that only their maker knows. */
final class Draft {
    private final List<Operation> operations = new ArrayList<>();
    private final List<Precedence> precedences = new ArrayList<>();
    private final Set<List<Integer>> known = new HashSet<>();

    /** Adds {@code operation}; its place in the draft. */
    int add(Operation operation) {
        operations.add(operation);
        return operations.size() - 1;
    }

    /** Puts another in the place of an operation. */
    void replace(int place, Operation operation) {
        operations.set(place, operation);
    }

    /** That {@code after} comes after {@code before}, places both. */
    void follows(int before, int after, String because) {
        if (before != after && known.add(List.of(before, after))) {
            precedences.add(new Precedence(before, after, because));
        }
    }

    List<Operation> operations() {
        return operations;
    }

    Operation at(int place) {
        return operations.get(place);
    }

    List<Precedence> precedences() {
        return precedences;
    }
}

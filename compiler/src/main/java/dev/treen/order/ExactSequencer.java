package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The order with the fewest settings, and among those the fewest changes of tool, by dynamic programming over what is
 * done and what each gauge is set to. Precedences leave few such states in a real project; where there are too many, or
 * more operations than bits, it gives up. Of equal orders it takes the one that is first by ids.
 */
final class ExactSequencer implements Sequencer {
    private static final int MOST_OPERATIONS = 62;
    private static final int MOST_STATES = 100_000;
    /** A setting costs more than all changes of tool together. */
    private static final int SETTING = 1 << 10;

    private static final int UNSET = -1;

    @Override
    public Optional<List<Operation>> sequence(OperationGraph graph) {
        if (graph.operations().size() > MOST_OPERATIONS) {
            return Optional.empty();
        }
        Search search = new Search(graph);
        State begin = new State(0, -1, Collections.nCopies(search.gauges.size(), UNSET));
        return search.best(begin) == Search.GIVEN_UP ? Optional.empty() : search.order(begin);
    }

    /** What is done, the tool in hand, and the number of the setting of each gauge, unset where it no longer matters. */
    private record State(long done, int tool, List<Integer> gauges) {}

    private static final class Search {
        static final int GIVEN_UP = -1;

        final List<Operation> operations;
        final Map<String, Integer> gauges = new HashMap<>();
        private final Map<GaugeSetting, Integer> values = new HashMap<>();
        private final Map<String, Integer> tools = new HashMap<>();
        private final long[] needs;
        private final Map<State, Integer> costs = new HashMap<>();
        private boolean full;

        Search(OperationGraph graph) {
            operations = graph.operations();
            needs = new long[operations.size()];
            graph.precedences().forEach(each -> needs[each.after()] |= 1L << each.before());
            for (Operation each : operations) {
                tools.putIfAbsent(each.tool(), tools.size());
                for (GaugeSetting setting : each.settings()) {
                    gauges.putIfAbsent(Setups.gauge(each, setting), gauges.size());
                    values.putIfAbsent(setting, values.size());
                }
            }
        }

        /** The cost of the rest of the work from {@code state} on. */
        int best(State state) {
            if (state.done() == (1L << operations.size()) - 1) {
                return 0;
            }
            Integer known = costs.get(state);
            if (known != null) {
                return known;
            }
            int least = GIVEN_UP;
            for (int i = 0; i < operations.size() && !full; i++) {
                if (open(i, state.done())) {
                    int rest = best(after(state, i));
                    int cost = rest == GIVEN_UP ? GIVEN_UP : rest + cost(state, i);
                    least = cost != GIVEN_UP && (least == GIVEN_UP || cost < least) ? cost : least;
                }
            }
            full |= costs.size() >= MOST_STATES;
            if (full) {
                return GIVEN_UP;
            }
            costs.put(state, least);
            return least;
        }

        private boolean open(int i, long done) {
            return (done & 1L << i) == 0 && (needs[i] & ~done) == 0;
        }

        private static int tool(Map<String, Integer> tools, Operation operation) {
            return tools.getOrDefault(operation.tool(), 0);
        }

        private int cost(State state, int i) {
            Operation operation = operations.get(i);
            int cost = tool(tools, operation) == state.tool() ? 0 : 1;
            for (GaugeSetting setting : operation.settings()) {
                int gauge = gauges.getOrDefault(Setups.gauge(operation, setting), 0);
                cost += state.gauges().get(gauge) == (int) values.getOrDefault(setting, 0) ? 0 : SETTING;
            }
            return cost;
        }

        private State after(State state, int i) {
            Operation operation = operations.get(i);
            long done = state.done() | 1L << i;
            List<Integer> set = new ArrayList<>(state.gauges());
            for (GaugeSetting setting : operation.settings()) {
                set.set(gauges.getOrDefault(Setups.gauge(operation, setting), 0), values.getOrDefault(setting, 0));
            }
            Set<Integer> wanted = new HashSet<>();
            for (int j = 0; j < operations.size(); j++) {
                if ((done & 1L << j) == 0) {
                    Operation later = operations.get(j);
                    later.settings().forEach(s -> wanted.add(gauges.getOrDefault(Setups.gauge(later, s), 0)));
                }
            }
            for (int gauge = 0; gauge < set.size(); gauge++) {
                if (!wanted.contains(gauge)) {
                    set.set(gauge, UNSET);
                }
            }
            return new State(done, tool(tools, operation), List.copyOf(set));
        }

        /** Walks along the least costs. */
        Optional<List<Operation>> order(State begin) {
            List<Operation> order = new ArrayList<>();
            State state = begin;
            while (order.size() < operations.size()) {
                int left = best(state);
                boolean moved = false;
                for (int i = 0; i < operations.size() && !moved; i++) {
                    if (open(i, state.done())) {
                        State next = after(state, i);
                        int rest = best(next);
                        if (rest != GIVEN_UP && rest + cost(state, i) == left) {
                            order.add(operations.get(i));
                            state = next;
                            moved = true;
                        }
                    }
                }
                if (!moved) {
                    return Optional.empty();
                }
            }
            return Optional.of(order);
        }
    }
}

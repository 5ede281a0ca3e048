package dev.treen.order;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts operations in an order that keeps every precedence and costs as little as can be found: a few quick orders, made
 * cheaper by moving steps, then a search for anything cheaper, which proves the best for projects of ordinary size.
 */
final class Sequencer {
    private static final int STATES = 60_000;
    /** Steps and precedences that may be gone through in polishing, all orders together. */
    private static final long POLISH = 30_000_000;

    private Sequencer() {
    }

    /**
     * @param order all operations
     * @param cost what it costs
     * @param floor what no order costs less than, compared in the same way
     */
    record Found(List<Operation> order, Cost cost, Cost floor) {
        /** Whether no order is better. */
        boolean best() {
            return cost.equals(floor);
        }
    }

    /** The best order found of {@code graph}; as given where its precedences go round in a circle. */
    static Found of(OperationGraph graph) {
        Network network = new Network(graph);
        if (!network.sound) {
            int[] given = IntStream.range(0, network.size()).toArray();
            return new Found(graph.operations(), network.cost(given), network.floor());
        }
        int looks = (int) (POLISH / (1 + network.size() + graph.precedences().size()));
        int[] best = new int[0];
        for (Greedy.Taste taste : Greedy.Taste.values()) {
            int[] order = Polish.of(network, Greedy.order(network, taste), looks);
            best = best.length == 0 || network.cost(order).compareTo(network.cost(best)) < 0 ? order : best;
        }
        Search.Result searched = Search.below(network.cost(best), network, STATES);
        int[] order = searched.order().orElse(best);
        return new Found(network.told(order), network.cost(order), searched.floor());
    }

    /** The order of a bench without a plan: each step as soon as the one before it in the list allows, whatever is set. */
    static int[] plain(Network network) {
        int[] missing = Arrays.stream(network.before).mapToInt(b -> b.length).toArray();
        boolean[] done = new boolean[network.size()];
        int[] order = new int[network.size()];
        for (int k = 0; k < order.length; k++) {
            int next = 0;
            while (done[next] || missing[next] > 0) {
                next++;
            }
            done[next] = true;
            order[k] = next;
            for (int after : network.after[next]) {
                missing[after]--;
            }
        }
        return order;
    }
}

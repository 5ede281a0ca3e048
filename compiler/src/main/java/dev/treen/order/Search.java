package dev.treen.order;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The order of least cost: best first over what is done, what each gauge is set to, the tool in hand and when waits end.
 * Of two ways to the same state only that with fewer settings is followed, and of those with as many only such as are
 * earlier in time, or have changed tools less often. What is still to be set, the longest way through the waits and the
 * tools still to be taken up bound the rest from below; so the first finished order is the best, and when the search is
 * broken off, the first in the queue says what no order can beat. Pure: the same graph gives the same order.
 */
final class Search {
    private static final int MOST_OPERATIONS = 63;
    private static final int NOTHING = -1;

    private final Network network;
    private final Cost known;
    private final int budget;
    private final Map<Key, List<Label>> seen = new HashMap<>();
    private final PriorityQueue<Label> open = new PriorityQueue<>();
    private int made;

    private Search(Network network, Cost known, int budget) {
        this.network = network;
        this.known = known;
        this.budget = budget;
    }

    /**
     * @param order the best order, or nothing where none was found that costs less than what was known
     * @param floor what no order costs less than
     */
    record Result(Optional<int[]> order, Cost floor) {}

    /**
     * Looks for an order that costs less than {@code known}.
     *
     * @param budget how many states may be looked at
     */
    static Result below(Cost known, Network network, int budget) {
        if (network.size() > MOST_OPERATIONS || network.size() == 0) {
            return new Result(Optional.empty(), network.floor());
        }
        return new Search(network, known, budget).run();
    }

    /** What is done, what is in hand and how each gauge stands that is still wanted. */
    private record Key(long done, int tool, List<Integer> gauges) {}

    /** A beginning of an order. */
    private static final class Label implements Comparable<Label> {
        final long done;
        final int operation;
        final int tool;
        final int[] gauges;
        /** When the last wait before each operation that is not yet done ends. */
        final int[] ready;
        final Optional<Label> from;
        final Cost spent;
        final int clock;
        final int depth;
        final int number;
        Cost least;
        boolean beaten;

        Label(long done, int operation, int tool, int[] gauges, int[] ready, Optional<Label> from, Cost spent,
                int clock, int number) {
            this.done = done;
            this.operation = operation;
            this.tool = tool;
            this.gauges = gauges;
            this.ready = ready;
            this.from = from;
            this.spent = spent;
            this.clock = clock;
            this.number = number;
            depth = from.map(f -> f.depth + 1).orElse(0);
            least = spent;
        }

        @Override
        public int compareTo(Label other) {
            int better = least.compareTo(other.least);
            int deeper = better != 0 ? better : Integer.compare(other.depth, depth);
            return deeper != 0 ? deeper : Integer.compare(number, other.number);
        }

        boolean noLaterThan(Label other) {
            if (spent.settings() != other.spent.settings()) {
                return spent.settings() < other.spent.settings();
            }
            if (clock > other.clock || spent.minutes() > other.spent.minutes() || spent.tools() > other.spent.tools()) {
                return false;
            }
            for (int i = 0; i < ready.length; i++) {
                if (ready[i] > Math.max(other.ready[i], other.clock)) {
                    return false;
                }
            }
            return true;
        }
    }

    private Result run() {
        int[] unset = new int[network.gauges];
        java.util.Arrays.fill(unset, NOTHING);
        Label begin = new Label(0, NOTHING, NOTHING, unset, new int[network.size()], Optional.empty(),
                new Cost(0, 0, 0), 0, made++);
        begin.least = least(begin);
        open.add(begin);
        long all = network.size() == Long.SIZE ? NOTHING : (1L << network.size()) - 1;
        int looked = 0;
        while (!open.isEmpty()) {
            Label next = open.peek();
            if (next.least.compareTo(known) >= 0) {
                return new Result(Optional.empty(), known);
            }
            if (next.done == all) {
                return new Result(Optional.of(order(next)), next.spent);
            }
            if (looked++ >= budget) {
                return new Result(Optional.empty(), next.least);
            }
            open.remove();
            if (!next.beaten) {
                expand(next);
            }
        }
        return new Result(Optional.empty(), known);
    }

    private void expand(Label label) {
        for (int i = 0; i < network.size(); i++) {
            boolean free = (label.done & 1L << i) == 0;
            for (int b = 0; free && b < network.before[i].length; b++) {
                free = (label.done & 1L << network.before[i][b]) != 0;
            }
            if (free) {
                keep(after(label, i));
            }
        }
    }

    private Label after(Label label, int i) {
        long done = label.done | 1L << i;
        int[] gauges = label.gauges.clone();
        int settings = label.spent.settings();
        for (int s = 0; s < network.sets[i].length; s += 2) {
            int gauge = network.sets[i][s];
            settings += gauges[gauge] == network.sets[i][s + 1] ? 0 : 1;
            gauges[gauge] = network.sets[i][s + 1];
        }
        boolean[] wanted = new boolean[network.gauges];
        for (int j = 0; j < network.size(); j++) {
            for (int s = 0; (done & 1L << j) == 0 && s < network.sets[j].length; s += 2) {
                wanted[network.sets[j][s]] = true;
            }
        }
        for (int gauge = 0; gauge < gauges.length; gauge++) {
            gauges[gauge] = wanted[gauge] ? gauges[gauge] : NOTHING;
        }
        int clock = Math.max(label.clock, label.ready[i]) + network.minutes[i];
        int[] ready = label.ready.clone();
        ready[i] = 0;
        for (int next : network.after[i]) {
            ready[next] = Math.max(ready[next], clock + network.wait[i]);
        }
        Cost spent = new Cost(
                settings,
                Math.max(label.spent.minutes(), clock + network.wait[i]),
                label.spent.tools() + (network.tool[i] == label.tool ? 0 : 1));
        Label after = new Label(done, i, network.tool[i], gauges, ready, Optional.of(label), spent, clock, made++);
        after.least = least(after);
        return after;
    }

    private void keep(Label label) {
        if (label.least.compareTo(known) >= 0) {
            return;
        }
        List<Label> others = seen.computeIfAbsent(
                new Key(label.done, label.tool, java.util.Arrays.stream(label.gauges).boxed().toList()),
                k -> new ArrayList<>());
        for (Label other : others) {
            if (other.noLaterThan(label)) {
                return;
            }
        }
        others.removeIf(other -> {
            other.beaten = label.noLaterThan(other);
            return other.beaten;
        });
        others.add(label);
        open.add(label);
    }

    /** What {@code label} costs at least when all is done. */
    private Cost least(Label label) {
        boolean[][] values = new boolean[network.gauges][];
        for (int gauge = 0; gauge < network.gauges; gauge++) {
            values[gauge] = new boolean[network.values[gauge]];
        }
        boolean[] tools = new boolean[network.tools];
        int work = 0;
        int end = label.spent.minutes();
        int settings = label.spent.settings();
        int changes = label.spent.tools();
        for (int i = 0; i < network.size(); i++) {
            if ((label.done & 1L << i) != 0) {
                continue;
            }
            for (int s = 0; s < network.sets[i].length; s += 2) {
                int gauge = network.sets[i][s];
                int value = network.sets[i][s + 1];
                settings += values[gauge][value] || label.gauges[gauge] == value ? 0 : 1;
                values[gauge][value] = true;
            }
            changes += tools[network.tool[i]] || label.tool == network.tool[i] ? 0 : 1;
            tools[network.tool[i]] = true;
            work += network.minutes[i];
            end = Math.max(end, Math.max(label.clock, label.ready[i]) + network.tail[i]);
        }
        return new Cost(settings, Math.max(end, label.clock + work), changes);
    }

    private int[] order(Label last) {
        int[] order = new int[last.depth];
        Label label = last;
        for (int i = order.length - 1; i >= 0; i--) {
            order[i] = label.operation;
            label = label.from.orElseThrow();
        }
        return order;
    }
}

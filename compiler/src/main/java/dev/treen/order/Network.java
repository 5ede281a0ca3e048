package dev.treen.order;

import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A graph of operations in numbers, for those who search for an order. */
final class Network {
    private static final int MINUTES_IN_HOUR = 60;

    final List<Operation> operations;
    /** What must be done before each. */
    final int[][] before;
    /** What waits for each. */
    final int[][] after;
    final int[] minutes;
    final int[] wait;
    /** From the beginning of an operation to the end of all that follows from it, if nothing else had to be done. */
    final int[] tail;
    final int[] tool;
    /** For each operation the gauges that it sets, each followed by the number of its value. */
    final int[][] sets;
    final int gauges;
    final int tools;
    final int[] values;
    /** Whether nothing has to come before itself. */
    final boolean sound;

    Network(OperationGraph graph) {
        operations = graph.operations();
        int count = operations.size();
        before = links(graph, count, true);
        after = links(graph, count, false);
        minutes = new int[count];
        wait = new int[count];
        tool = new int[count];
        sets = new int[count][];
        Map<String, Integer> gaugeNumbers = new HashMap<>();
        Map<String, Integer> toolNumbers = new HashMap<>();
        List<Map<Length, Integer>> valueNumbers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Operation each = operations.get(i);
            minutes[i] = each.minutes().map(m -> (m.least() + m.most()) / 2).orElse(0);
            wait[i] = each.pause().map(w -> w.leastHours() * MINUTES_IN_HOUR).orElse(0);
            tool[i] = toolNumbers.computeIfAbsent(each.tool(), t -> toolNumbers.size());
            List<GaugeSetting> set = Gauges.set(each);
            sets[i] = new int[2 * set.size()];
            for (int s = 0; s < set.size(); s++) {
                int gauge = gaugeNumbers.computeIfAbsent(Gauges.gauge(each, set.get(s)), g -> gaugeNumbers.size());
                if (gauge == valueNumbers.size()) {
                    valueNumbers.add(new HashMap<>());
                }
                Map<Length, Integer> known = valueNumbers.get(gauge);
                sets[i][2 * s] = gauge;
                sets[i][2 * s + 1] = known.computeIfAbsent(set.get(s).value(), v -> known.size());
            }
        }
        gauges = gaugeNumbers.size();
        tools = toolNumbers.size();
        values = valueNumbers.stream().mapToInt(Map::size).toArray();
        Optional<int[]> sorted = sorted();
        sound = sorted.isPresent();
        tail = new int[count];
        int[] order = sorted.orElseGet(() -> new int[0]);
        for (int k = order.length - 1; k >= 0; k--) {
            int longest = 0;
            for (int next : after[order[k]]) {
                longest = Math.max(longest, tail[next]);
            }
            tail[order[k]] = minutes[order[k]] + wait[order[k]] + longest;
        }
    }

    private static int[][] links(OperationGraph graph, int count, boolean backwards) {
        List<List<Integer>> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(new ArrayList<>());
        }
        graph.precedences().forEach(p -> all.get(backwards ? p.after() : p.before())
                .add(backwards ? p.before() : p.after()));
        return all.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).distinct().toArray())
                .toArray(int[][]::new);
    }

    /** An order that keeps all precedences, or nothing where there is none. */
    private Optional<int[]> sorted() {
        int[] open = new int[before.length];
        int[] order = new int[before.length];
        int ready = 0;
        for (int i = 0; i < open.length; i++) {
            open[i] = before[i].length;
            if (open[i] == 0) {
                order[ready++] = i;
            }
        }
        for (int done = 0; done < ready; done++) {
            for (int next : after[order[done]]) {
                if (--open[next] == 0) {
                    order[ready++] = next;
                }
            }
        }
        return ready == order.length ? Optional.of(order) : Optional.empty();
    }

    int size() {
        return operations.size();
    }

    /** What {@code order} costs; it must keep the precedences. */
    Cost cost(int[] order) {
        int[] now = new int[gauges];
        java.util.Arrays.fill(now, -1);
        int[] ready = new int[size()];
        int settings = 0;
        int changes = 0;
        int hand = -1;
        int clock = 0;
        int end = 0;
        for (int i : order) {
            for (int s = 0; s < sets[i].length; s += 2) {
                settings += now[sets[i][s]] == sets[i][s + 1] ? 0 : 1;
                now[sets[i][s]] = sets[i][s + 1];
            }
            changes += tool[i] == hand ? 0 : 1;
            hand = tool[i];
            clock = Math.max(clock, ready[i]) + minutes[i];
            end = Math.max(end, clock + wait[i]);
            for (int next : after[i]) {
                ready[next] = Math.max(ready[next], clock + wait[i]);
            }
        }
        return new Cost(settings, end, changes);
    }

    /** What no order can cost less than, before anything is searched. */
    Cost floor() {
        int settings = java.util.Arrays.stream(values).sum();
        int work = java.util.Arrays.stream(minutes).sum();
        int longest = java.util.Arrays.stream(tail).max().orElse(0);
        return new Cost(settings, Math.max(work, longest), tools);
    }

    /** The operations of {@code order}. */
    List<Operation> told(int[] order) {
        return java.util.Arrays.stream(order).mapToObj(operations::get).toList();
    }
}

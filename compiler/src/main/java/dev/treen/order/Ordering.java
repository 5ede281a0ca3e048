package dev.treen.order;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Cutting;
import dev.treen.joinery.Joined;
import dev.treen.joinery.ProjectCautions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** From a project with its layout to the order in which it is built. */
public final class Ordering {
    private Ordering() {
    }

    /** The order in which {@code joined} is built from {@code cutting}. */
    public static BuildOrder order(Joined joined, Cutting cutting) {
        BuildOrder order = order(graph(joined, cutting));
        return order.minding(cautions(joined));
    }

    /** All operations and what must come before what. */
    public static OperationGraph graph(Joined joined, Cutting cutting) {
        Workshop shop = Workshop.of(joined, cutting);
        JointWork.Result joints = JointWork.of(shop);
        List<Operation> all = new ArrayList<>(joints.operations());
        all.addAll(0, StockWork.of(shop));
        int firstJoint = all.size() - joints.operations().size();
        all.addAll(ClosingWork.of(shop, joints.operations()));
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            places.add(i);
        }
        places.sort(Comparator.comparing(i -> all.get(i).phase()));
        List<Operation> numbered = new ArrayList<>();
        Map<Integer, Integer> ids = new HashMap<>();
        for (int place : places) {
            ids.put(place, numbered.size());
            numbered.add(all.get(place).numbered(numbered.size()));
        }
        List<int[]> scribed = joints.scribed().stream()
                .map(pair -> new int[]{id(ids, firstJoint + pair[0]), id(ids, firstJoint + pair[1])})
                .toList();
        return new OperationGraph(numbered, Rules.among(numbered, partsOf(cutting), scribed));
    }

    private static int id(Map<Integer, Integer> ids, int place) {
        return ids.getOrDefault(place, 0);
    }

    private static Map<String, Set<String>> partsOf(Cutting cutting) {
        Map<String, Set<String>> parts = new LinkedHashMap<>();
        for (BoardCut cut : cutting.boards()) {
            Set<String> of = parts.computeIfAbsent(cut.board().name(), b -> new LinkedHashSet<>());
            cut.parts().forEach(p -> of.add(p.part()));
        }
        return parts;
    }

    /** Puts {@code graph} in order: with the fewest settings where that can be searched, else by the best next step. */
    static BuildOrder order(OperationGraph graph) {
        Optional<List<Operation>> fewest = new ExactSequencer().sequence(graph);
        List<Operation> order = fewest.or(() -> new GreedySequencer().sequence(graph)).orElse(graph.operations());
        return new BuildOrder(
                steps(order, graph.precedences()),
                Setups.count(order),
                Setups.separately(order),
                fewest.isPresent(),
                cautions());
    }

    private static List<Step> steps(List<Operation> order, List<Precedence> precedences) {
        Map<Integer, Integer> numbers = new HashMap<>();
        order.forEach(each -> numbers.put(each.id(), numbers.size() + 1));
        List<Step> steps = new ArrayList<>();
        for (Operation each : order) {
            List<Precedence> before = precedences.stream()
                    .filter(p -> p.after() == each.id())
                    .sorted(Comparator.comparing(p -> numbers.getOrDefault(p.before(), 0)))
                    .toList();
            String because = before.isEmpty() ? "" : before.getLast().because();
            List<Integer> after = before.stream().map(p -> numbers.getOrDefault(p.before(), 0)).toList();
            steps.add(new Step(steps.size() + 1, each, because, after));
        }
        return steps;
    }

    /** The usual cautions, then those that this project calls for. */
    private static List<String> cautions(Joined joined) {
        List<String> all = new ArrayList<>(cautions());
        ProjectCautions.defers(joined).ifPresent(all::add);
        ProjectCautions.of(joined).forEach(called -> all.add(called.text()));
        return all;
    }

    private static List<String> cautions() {
        return Figures.of("cautions.tsv").values().stream().map(row -> row.get(1)).toList();
    }
}

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
import java.util.Set;

/** From a project with its layout to the order in which it is built. */
public final class Ordering {
    private Ordering() {
    }

    /** The order in which {@code joined} is built from {@code cutting}, from where its maker is. */
    public static BuildOrder order(Joined joined, Cutting cutting) {
        Progress progress = Progress.of(joined, cutting, graph(joined, cutting));
        return order(progress.left()).minding(cautions(joined)).after(progress.soFar());
    }

    /** All operations and what must come before what, from the boards on. */
    public static OperationGraph graph(Joined joined, Cutting cutting) {
        Workshop shop = Workshop.of(joined, cutting);
        Draft draft = new Draft();
        BoardWork.add(shop, draft);
        StaveWork.add(shop, draft);
        StockWork.add(shop, draft);
        JointWork.add(shop, draft);
        shop.assemblies().forEach(assembly -> GlueWork.add(shop, draft, assembly));
        ClosingWork.add(shop, draft);
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < draft.operations().size(); i++) {
            places.add(i);
        }
        // Glue-ups keep their own order among each other: stage, square, stage, square.
        places.sort(Comparator.comparing(i -> draft.at(i).phase().band()));
        List<Operation> numbered = new ArrayList<>();
        Map<Integer, Integer> ids = new HashMap<>();
        for (int place : places) {
            ids.put(place, numbered.size());
            numbered.add(draft.at(place).numbered(numbered.size()));
        }
        List<Precedence> known = draft.precedences().stream()
                .map(p -> new Precedence(id(ids, p.before()), id(ids, p.after()), p.because()))
                .toList();
        return new OperationGraph(numbered, Rules.among(numbered, partsOf(cutting), known));
    }

    private static int id(Map<Integer, Integer> ids, int place) {
        return ids.getOrDefault(place, 0);
    }

    private static Map<String, Set<String>> partsOf(Cutting cutting) {
        Map<String, Set<String>> parts = new LinkedHashMap<>();
        for (BoardCut cut : cutting.boards()) {
            for (String board : List.of(cut.source().name(), cut.board().name())) {
                Set<String> of = parts.computeIfAbsent(board, b -> new LinkedHashSet<>());
                cut.parts().forEach(p -> of.addAll(p.blank().parts()));
            }
        }
        return parts;
    }

    /** Puts {@code graph} in the best order that can be found. */
    static BuildOrder order(OperationGraph graph) {
        Sequencer.Found found = AtOnce.order(graph);
        List<Step> steps = steps(found.order(), graph.precedences());
        return new BuildOrder(
                steps,
                Setups.count(found.order()),
                Setups.partByPart(graph.operations()),
                found.floor().settings(),
                found.cost().settings() == found.floor().settings(),
                found.best(),
                cautions(),
                Calendar.of(steps),
                SoFar.NOTHING);
    }

    private static List<Step> steps(List<Operation> order, List<Precedence> precedences) {
        Map<Integer, Integer> numbers = new HashMap<>();
        order.forEach(each -> numbers.put(each.id(), numbers.size() + 1));
        Map<Integer, List<Precedence>> needs = new HashMap<>();
        precedences.forEach(p -> needs.computeIfAbsent(p.after(), a -> new ArrayList<>()).add(p));
        List<Step> steps = new ArrayList<>();
        for (Operation each : order) {
            List<Step.Need> before = needs.getOrDefault(each.id(), List.of()).stream()
                    .map(p -> new Step.Need(numbers.getOrDefault(p.before(), 0), p.because()))
                    .sorted(Comparator.comparingInt(Step.Need::step))
                    .toList();
            String because = before.isEmpty() ? "" : before.getLast().because();
            steps.add(new Step(
                    steps.size() + 1, each, because, before.stream().map(Step.Need::step).toList(), before));
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

package dev.treen.order;

import dev.treen.cutting.Cutting;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Measurement;
import dev.treen.model.Part;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is left to do of a graph of operations. What was measured must be there: the parts round an opening are made and
 * tried, a part of which a size was taken is made. What was done for them is left out; of steps that are about other
 * parts too, those others are left (rules of the trade O-07).
 */
record Progress(OperationGraph left, SoFar soFar) {
    /** The progress that the measurements of {@code joined} show, with its parts laid out as {@code cutting} has them. */
    static Progress of(Joined joined, Cutting cutting, OperationGraph graph) {
        List<Measurement> measurements = joined.project().measurements();
        if (measurements.isEmpty()) {
            return new Progress(graph, SoFar.NOTHING);
        }
        Set<String> made = new LinkedHashSet<>();
        measurements.forEach(measurement -> made.addAll(measurement.made()));
        Set<String> tried = new LinkedHashSet<>();
        measurements.stream()
                .filter(measurement -> measurement.made().size() > 1)
                .forEach(measurement -> tried.addAll(measurement.made()));
        Set<String> sized = new LinkedHashSet<>();
        joined.parts().stream()
                .filter(part -> part.part().planned().isPresent() && !made.contains(Workshop.name(part)))
                .forEach(part -> sized.add(Workshop.name(part)));
        Map<Integer, Integer> ids = new HashMap<>();
        List<Operation> left = new ArrayList<>();
        List<String> done = new ArrayList<>();
        Map<String, Set<String>> boards = boards(joined, cutting);
        for (Operation each : graph.operations()) {
            List<String> parts = stillOn(each, made, tried, sized, boards);
            if (parts.isEmpty()) {
                done.add(each.action());
            } else {
                ids.put(each.id(), left.size());
                left.add((parts.size() == each.parts().size() ? each : narrowed(each, parts)).numbered(left.size()));
            }
        }
        return new Progress(
                new OperationGraph(left, kept(graph, ids)),
                new SoFar(
                        List.copyOf(made),
                        done,
                        measurements.stream()
                                .map(m -> new SoFar.Figure(m.path(), m.planned(), m.measured()))
                                .toList(),
                        changes(joined)));
    }

    /** The parts or boards for which {@code operation} is still to be done. */
    private static List<String> stillOn(
            Operation operation, Set<String> made, Set<String> tried, Set<String> sized,
            Map<String, Set<String>> boards) {
        return switch (operation.phase()) {
            case REST, RIP, FLATTEN, RESAW -> operation.parts().stream()
                    .filter(board -> boards.getOrDefault(board, Set.of()).stream().noneMatch(made::contains))
                    .toList();
            case MARK, SAW, LEAVES, STAVES, TRUE, SIZE, ALONG, APART, LENGTH, JOINTS,
                    FITTED ->
                operation.parts().stream()
                        .filter(part -> !made.contains(part))
                        .toList();
            case TRY -> tried.containsAll(operation.parts()) ? List.of() : operation.parts();
            case MEASURE -> operation.parts().stream().filter(part -> !sized.contains(part)).toList();
            case INSIDE, REHEARSE, GLUE, SQUARE, KEYED, CLEAN, FREED, OPENING, FIT, FINISH, MOUNT, CURE ->
                operation.parts();
        };
    }

    private static Operation narrowed(Operation operation, List<String> parts) {
        String action = operation.action().replace(Names.quoted(operation.parts()), Names.quoted(parts));
        List<String> how = operation.phase() == Phase.SAW || operation.phase() == Phase.APART
                ? operation.how()
                : List.of();
        return operation.saying(action).inSteps(how).on(parts);
    }

    /** The precedences among what is left; one that led to a step that is done leads on to what follows that. */
    private static List<Precedence> kept(OperationGraph graph, Map<Integer, Integer> ids) {
        Map<Integer, List<Precedence>> after = new HashMap<>();
        graph.precedences().forEach(p -> after.computeIfAbsent(p.before(), b -> new ArrayList<>()).add(p));
        List<Precedence> kept = new ArrayList<>();
        for (int from = 0; from < graph.operations().size(); from++) {
            Integer before = ids.get(from);
            if (before == null) {
                continue;
            }
            Deque<Precedence> open = new ArrayDeque<>(after.getOrDefault(from, List.of()));
            Set<Integer> seen = new LinkedHashSet<>();
            while (!open.isEmpty()) {
                Precedence each = open.pop();
                Integer to = ids.get(each.after());
                if (!seen.add(each.after())) {
                    continue;
                }
                if (to != null) {
                    kept.add(new Precedence(before, to, each.because()));
                } else {
                    open.addAll(after.getOrDefault(each.after(), List.of()));
                }
            }
        }
        return kept;
    }

    private static Map<String, Set<String>> boards(Joined joined, Cutting cutting) {
        Map<String, Set<String>> boards = new HashMap<>();
        for (FinishedPart part : joined.parts()) {
            cutting.sourcesOf(part.part()).forEach(board -> boards
                    .computeIfAbsent(board.name(), b -> new LinkedHashSet<>())
                    .add(Workshop.name(part)));
        }
        return boards;
    }

    private static List<SoFar.Change> changes(Joined joined) {
        List<SoFar.Change> changes = new ArrayList<>();
        for (FinishedPart each : joined.parts()) {
            Part part = each.part();
            part.planned().ifPresent(planned -> {
                for (int which = 0; which < Size.NAMES.size(); which++) {
                    Length was = measure(planned, which);
                    Length now = part.measure(which).value();
                    if (!was.equals(now)) {
                        changes.add(new SoFar.Change(part.name() + "." + Size.NAMES.get(which), was, now));
                    }
                }
            });
        }
        return changes;
    }

    private static Length measure(Size size, int which) {
        return switch (which) {
            case 0 -> size.length();
            case 1 -> size.width();
            default -> size.thickness();
        };
    }
}

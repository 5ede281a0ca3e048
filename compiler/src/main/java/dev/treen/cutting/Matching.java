package dev.treen.cutting;

import dev.treen.yield.AtOnce;
import dev.treen.yield.Bound;
import dev.treen.yield.Cancel;
import dev.treen.yield.Layout;
import dev.treen.yield.Outcome;
import dev.treen.yield.Piece;
import dev.treen.yield.Progress;
import dev.treen.yield.Rect;
import dev.treen.yield.Reports;
import dev.treen.yield.YieldProblem;
import dev.treen.yield.YieldSolver;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Parts that come from one board, whichever it is: every board that could give them is tried, and the best layout kept. */
final class Matching {
    /** More ways to choose the boards than this are not all tried. */
    private static final int MOST_WAYS = 24;

    private static final long LEAST_STEPS = 200;

    private final Rack rack;
    private final List<List<String>> without = new ArrayList<>();

    Matching(Rack rack) {
        this.rack = rack;
    }

    /** The groups that no single board can give; their wish is left out. */
    List<List<String>> without() {
        return without;
    }

    /** Solves a problem with the wishes kept. */
    Outcome solve(YieldProblem problem, Progress progress, Cancel cancel) {
        List<Map<String, Set<String>>> ways = ways(problem);
        if (ways.isEmpty()) {
            return YieldSolver.solve(problem, progress, cancel);
        }
        List<Map<String, Set<String>>> tried = ways.subList(0, Math.min(MOST_WAYS, ways.size()));
        long steps = Math.max(LEAST_STEPS, problem.settings().steps() / tried.size());
        Optional<Layout> best = Optional.empty();
        long bound = Long.MAX_VALUE;
        String how = "";
        List<Progress> told = Reports.ofTheBest(progress, steps * tried.size(), tried.size());
        List<Supplier<Outcome>> tasks = new ArrayList<>();
        for (int i = 0; i < tried.size(); i++) {
            YieldProblem way = restricted(problem, tried.get(i), steps);
            Progress tells = told.get(i);
            tasks.add(() -> YieldSolver.solve(way, tells, cancel));
        }
        for (Outcome outcome : AtOnce.all(tasks)) {
            switch (outcome) {
                case Layout layout -> {
                    if (layout.bound().value() < bound) {
                        bound = layout.bound().value();
                        how = layout.bound().how();
                    }
                    best = best.filter(b -> !better(layout, b)).or(() -> Optional.of(layout));
                }
                case Outcome.Refusal refusal -> {
                    return refusal;
                }
            }
        }
        if (tried.size() < ways.size()
                && YieldSolver.solve(stepped(problem, 1)) instanceof Layout free) {
            bound = Math.min(bound, free.bound().value());
        }
        if (best.filter(b -> !b.complete()).isPresent()
                && YieldSolver.solve(problem, progress, cancel) instanceof Layout free
                && free.unplaced().size() < best.get().unplaced().size()) {
            // A wish is not worth a part: what has no room beside its fellows is laid out where there is room.
            Set<String> left = new HashSet<>();
            best.get().unplaced().forEach(each -> left.add(each.pieceId()));
            rack.matched().stream()
                    .filter(group -> group.stream().anyMatch(left::contains) && !without.contains(group))
                    .forEach(without::add);
            return free;
        }
        Bound over = new Bound(bound, how);
        return best.<Outcome>map(b -> new Layout(
                b.boards(), b.unplaced(), b.objective(), b.score(), over,
                b.complete() && b.score() == over.value(), b.steps()))
                .orElseGet(() -> YieldSolver.solve(problem, progress, cancel));
    }

    static boolean better(Layout a, Layout b) {
        int left = a.unplaced().stream().mapToInt(u -> u.copies()).sum();
        int leftOfB = b.unplaced().stream().mapToInt(u -> u.copies()).sum();
        if (left != leftOfB) {
            return left < leftOfB;
        }
        return a.score() != b.score() ? a.score() < b.score() : offcut(a) > offcut(b);
    }

    static long offcut(Layout layout) {
        return layout.boards().stream()
                .flatMap(board -> board.offcuts().stream())
                .mapToLong(Rect::area)
                .max()
                .orElse(0);
    }

    // Each way gives, for every part of a group, the leaves of the board chosen for its group.
    private List<Map<String, Set<String>>> ways(YieldProblem problem) {
        Map<String, Piece> pieces = new HashMap<>();
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        List<Map<String, Set<String>>> ways = new ArrayList<>();
        for (List<String> group : rack.matched()) {
            List<Set<String>> boards = boards(group, pieces);
            if (boards.isEmpty()) {
                without.add(group);
                continue;
            }
            List<Map<String, Set<String>>> more = new ArrayList<>();
            for (Map<String, Set<String>> way : ways.isEmpty() ? List.of(Map.<String, Set<String>>of()) : ways) {
                for (Set<String> leaves : boards) {
                    Map<String, Set<String>> next = new HashMap<>(way);
                    group.forEach(part -> next.put(part, leaves));
                    more.add(next);
                    if (more.size() > MOST_WAYS) {
                        break;
                    }
                }
            }
            ways = more;
        }
        return ways;
    }

    private List<Set<String>> boards(List<String> group, Map<String, Piece> pieces) {
        Map<String, Set<String>> leaves = new java.util.LinkedHashMap<>();
        rack.leaves().forEach((id, leaf) -> leaves
                .computeIfAbsent(leaf.of().source().name(), name -> new LinkedHashSet<>())
                .add(id));
        return leaves.values().stream()
                .filter(ids -> group.stream()
                        .flatMap(part -> Optional.ofNullable(pieces.get(part)).stream())
                        .allMatch(piece -> accepts(piece, ids)))
                .toList();
    }

    private static boolean accepts(Piece piece, Set<String> leaves) {
        return piece.onlyFrom().map(from -> leaves.stream().anyMatch(from::contains)).orElse(true);
    }

    private static YieldProblem restricted(YieldProblem problem, Map<String, Set<String>> way, long steps) {
        List<Piece> pieces = problem.pieces().stream()
                .map(piece -> {
                    Set<String> leaves = way.get(piece.id());
                    if (leaves == null) {
                        return piece;
                    }
                    Set<String> both = new HashSet<>(leaves);
                    piece.onlyFrom().ifPresent(both::retainAll);
                    return piece.from(both);
                })
                .toList();
        return stepped(new YieldProblem(problem.stocks(), pieces, problem.runs(), problem.settings()), steps);
    }

    private static YieldProblem stepped(YieldProblem problem, long steps) {
        return new YieldProblem(
                problem.stocks(), problem.pieces(), problem.runs(), problem.settings().steps(steps));
    }
}

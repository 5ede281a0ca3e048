package dev.treen.yield;

import dev.treen.yield.engine.Engine;
import java.time.Duration;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;

/**
 * Parts that share no board are laid out apart: the best of each group is the best of all, and so are the bounds, which add
 * up, while a bound over all boards would let the room on one serve for parts that cannot come from it.
 */
final class Apart {
    private final YieldProblem problem;
    private final Progress progress;
    private final Cancel cancel;
    private final List<Layout> done = new ArrayList<>();

    private Apart(YieldProblem problem, Progress progress, Cancel cancel) {
        this.problem = problem;
        this.progress = progress;
        this.cancel = cancel;
    }

    static Layout solve(YieldProblem problem, Progress progress, Cancel cancel) {
        List<YieldProblem> groups = groups(problem);
        return groups.size() < 2
                ? Engine.solve(problem, progress, cancel)
                : new Apart(problem, progress, cancel).each(groups);
    }

    /** The problem in groups that have neither a board nor a run in common; one where there is nothing to take apart. */
    static List<YieldProblem> groups(YieldProblem problem) {
        if (problem.settings().objective() != Objective.ALL_PARTS_LEAST_COST) {
            return List.of(problem);
        }
        Map<String, BitSet> giving = new HashMap<>();
        problem.pieces().forEach(piece -> giving.put(piece.id(), boards(problem, piece)));
        if (giving.values().stream().anyMatch(BitSet::isEmpty)) {
            // Why a part has no place is answered by all boards.
            return List.of(problem);
        }
        Set<BitSet> together = new LinkedHashSet<>();
        problem.pieces().forEach(piece -> together.add(of(giving, piece.id())));
        problem.runs().forEach(run -> together.add(of(giving, run)));
        return joined(together).stream().map(boards -> group(problem, boards, giving)).toList();
    }

    private static BitSet boards(YieldProblem problem, Piece piece) {
        var boards = new BitSet();
        for (int b = 0; b < problem.stocks().size(); b++) {
            Stock stock = problem.stocks().get(b);
            long length = stock.length() - 2 * problem.settings().endWaste();
            long width = stock.width() - 2 * problem.settings().edgeWaste();
            boolean along = piece.length() <= length && piece.width() <= width;
            boolean across = piece.mayTurn() && piece.width() <= length && piece.length() <= width;
            boards.set(b, piece.accepts(stock) && (along || across));
        }
        return boards;
    }

    private static BitSet of(Map<String, BitSet> giving, String piece) {
        return giving.getOrDefault(piece, new BitSet());
    }

    private static BitSet of(Map<String, BitSet> giving, Run run) {
        var boards = new BitSet();
        run.pieceIds().forEach(id -> boards.or(of(giving, id)));
        return boards;
    }

    /** Sets that have a board in common become one, until no two have. */
    private static List<BitSet> joined(Set<BitSet> sets) {
        List<BitSet> groups = new ArrayList<>();
        for (BitSet set : sets) {
            var group = new BitSet();
            group.or(set);
            groups.stream().filter(set::intersects).forEach(group::or);
            groups.removeIf(set::intersects);
            groups.add(group);
        }
        return groups;
    }

    private static YieldProblem group(YieldProblem problem, BitSet boards, Map<String, BitSet> giving) {
        return new YieldProblem(
                boards.stream().mapToObj(problem.stocks()::get).toList(),
                problem.pieces().stream().filter(piece -> boards.intersects(of(giving, piece.id()))).toList(),
                problem.runs().stream().filter(run -> boards.intersects(of(giving, run))).toList(),
                problem.settings());
    }

    /**
     * Each group has its share of the steps for itself, so that none waits for another. Where a time limit was asked for they
     * go one by one, the small ones first, and what these do not use is left for the larger ones.
     */
    private Layout each(List<YieldProblem> groups) {
        List<YieldProblem> sorted = groups.stream().sorted(Comparator.comparingLong(Apart::items)).toList();
        List<Progress> told = Reports.ofAll(progress, problem.settings().steps(),
                sorted.stream().map(group -> (int) Math.min(items(group), Integer.MAX_VALUE)).toList());
        if (problem.settings().timeLimit().isPresent()) {
            inTime(sorted, told);
        } else {
            done.addAll(AtOnce.all(tasks(sorted, told)));
        }
        return together();
    }

    private List<Supplier<Layout>> tasks(List<YieldProblem> groups, List<Progress> told) {
        long items = items(problem);
        List<Supplier<Layout>> tasks = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            YieldProblem group = groups.get(i);
            Progress tells = told.get(i);
            double share = items == 0 ? 1 : (double) items(group) / items;
            long steps = Math.max(1, (long) (problem.settings().steps() * share));
            tasks.add(() -> Engine.solve(with(group, problem.settings().steps(steps)), tells, cancel));
        }
        return tasks;
    }

    private void inTime(List<YieldProblem> groups, List<Progress> told) {
        long items = items(problem);
        Optional<Long> deadline = problem.settings().timeLimit()
                .map(limit -> limit.clock().nanos() + limit.length().toNanos());
        for (int i = 0; i < groups.size(); i++) {
            long own = items(groups.get(i));
            double share = items == 0 ? 1 : (double) own / items;
            items -= own;
            done.add(Engine.solve(with(groups.get(i), shared(share, deadline)), told.get(i), cancel));
        }
    }

    private static YieldProblem with(YieldProblem group, Settings settings) {
        return new YieldProblem(group.stocks(), group.pieces(), group.runs(), settings);
    }

    private Settings shared(double share, Optional<Long> deadline) {
        Settings settings = problem.settings();
        long steps = Math.max(1, (long) ((settings.steps() - sum(Layout::steps)) * share));
        return settings.timeLimit()
                .flatMap(limit -> deadline.map(end -> settings.within(new TimeLimit(
                        Duration.ofNanos((long) (Math.max(0, end - limit.clock().nanos()) * share)), limit.clock()))))
                .orElse(settings)
                .steps(steps);
    }

    private Layout together() {
        Map<String, Integer> order = new HashMap<>();
        problem.stocks().forEach(stock -> order.put(stock.id(), order.size()));
        problem.pieces().forEach(piece -> order.put(piece.id(), order.size()));
        return new Layout(
                done.stream().flatMap(layout -> layout.boards().stream())
                        .sorted(Comparator.comparingInt(board -> order.getOrDefault(board.stockId(), 0)))
                        .toList(),
                done.stream().flatMap(layout -> layout.unplaced().stream())
                        .sorted(Comparator.comparingInt(each -> order.getOrDefault(each.pieceId(), 0)))
                        .toList(),
                problem.settings().objective(),
                sum(Layout::score),
                new Bound(sum(layout -> layout.bound().value()), hardest().bound().how()),
                done.stream().allMatch(Layout::proved),
                sum(Layout::steps));
    }

    /** The group with the most between its layout and its bound; of those that are proved the one that weighs most. */
    private Layout hardest() {
        return done.stream()
                .max(Comparator.<Layout>comparingLong(layout -> layout.score() - layout.bound().value())
                        .thenComparingLong(Layout::score))
                .orElseThrow();
    }

    private long sum(ToLongFunction<Layout> of) {
        return done.stream().mapToLong(of).reduce(0, Apart::plus);
    }

    // A bound is the greatest number there is where not everything has room.
    static long plus(long a, long b) {
        return b > Long.MAX_VALUE - a ? Long.MAX_VALUE : a + b;
    }

    private static long items(YieldProblem problem) {
        return problem.pieces().stream().mapToLong(Piece::copies).sum();
    }
}

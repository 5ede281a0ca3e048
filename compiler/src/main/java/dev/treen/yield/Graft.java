package dev.treen.yield;

import dev.treen.yield.CutTree.Cut;
import dev.treen.yield.engine.Engine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A layout with some parts left where they are. Their boards keep the cuts that lead to them; what else is free on such
 * boards is put to the solver as boards of its own that cost next to nothing, and what comes of them is set back in.
 */
final class Graft {
    /** Places and whole boards cannot be added for nothing. */
    private static final long NEXT_TO_NOTHING = 1;

    /** A free place of a board that keeps parts. */
    private record Place(String stockId, Rect area) {}

    private final YieldProblem problem;
    private final Set<String> kept;
    private final Map<String, String> together;
    private final Map<String, Pruned> boards = new LinkedHashMap<>();
    private final Map<String, Place> places = new LinkedHashMap<>();

    /**
     * Prepares to solve {@code problem}.
     *
     * @param earlier boards as they were sawn before
     * @param kept the parts that stay
     * @param together by part, the board that it has to come from because others of its set do
     */
    Graft(YieldProblem problem, List<Earlier.Board> earlier, Set<String> kept, Map<String, String> together) {
        this.problem = problem;
        this.kept = kept;
        this.together = together;
        long length = free().mapToLong(Piece::length).min().orElse(Long.MAX_VALUE);
        long width = free().mapToLong(Piece::width).min().orElse(Long.MAX_VALUE);
        for (Earlier.Board board : earlier) {
            if (board.placements().stream().noneMatch(part -> kept.contains(part.pieceId()))) {
                continue;
            }
            var pruned = new Pruned(board.tree(), usable(stock(board.stockId())), kept::contains);
            boards.put(board.stockId(), pruned);
            for (Rect area : pruned.places()) {
                if (area.length() >= length && area.width() >= width) {
                    places.put(board.stockId() + " place " + places.size(), new Place(board.stockId(), area));
                }
            }
        }
    }

    private java.util.stream.Stream<Piece> free() {
        return problem.pieces().stream().filter(piece -> !kept.contains(piece.id()));
    }

    /** The layout that leaves the kept parts alone, not yet checked; empty where it makes no sense to the solver. */
    Optional<Layout> solve(long steps, Cancel cancel) {
        List<Piece> rest = free().map(this::withoutKeptBoards).toList();
        if (rest.isEmpty()) {
            return Optional.of(layout(Optional.empty()));
        }
        List<Run> runs = problem.runs().stream()
                .filter(run -> run.pieceIds().stream().noneMatch(kept::contains))
                .toList();
        List<Stock> stocks = new ArrayList<>();
        places.forEach((id, place) -> stocks.add(asStock(id, place)));
        problem.stocks().stream().filter(stock -> !boards.containsKey(stock.id())).forEach(stocks::add);
        if (stocks.isEmpty()) {
            return Optional.empty();
        }
        var left = new YieldProblem(stocks, rest, runs, problem.settings().steps(steps));
        return YieldSolver.solve(left, Progress.none(), cancel) instanceof Layout solved
                ? Optional.of(layout(Optional.of(solved)))
                : Optional.empty();
    }

    private Piece withoutKeptBoards(Piece piece) {
        Set<String> from = new HashSet<>();
        String only = together.getOrDefault(piece.id(), "");
        for (Stock stock : problem.stocks()) {
            if (piece.accepts(stock) && (only.isEmpty() || only.equals(stock.id()))) {
                from.add(stock.id());
            }
        }
        places.forEach((id, place) -> {
            if (from.contains(place.stockId())) {
                from.add(id);
            }
        });
        from.removeAll(boards.keySet());
        return piece.from(from);
    }

    private Layout layout(Optional<Layout> solved) {
        List<BoardLayout> all = new ArrayList<>();
        long fixed = 0;
        for (Stock stock : problem.stocks()) {
            Pruned pruned = boards.get(stock.id());
            if (pruned != null) {
                fixed += stock.weight();
                all.add(new BoardLayout(stock.id(), 0, pruned.filled(
                        sawn(stock.id(), solved), area -> Engine.leftover(problem, stock.id(), area))));
            } else {
                solved.ifPresent(s -> s.boards().stream()
                        .filter(board -> board.stockId().equals(stock.id()))
                        .forEach(all::add));
            }
        }
        long score = all.stream().mapToLong(board -> stock(board.stockId()).weight()).sum();
        long least = fixed
                + solved.map(s -> Math.max(0, s.bound().value() - places.size() * NEXT_TO_NOTHING)).orElse(0L);
        List<Unplaced> unplaced = solved.map(Layout::unplaced).orElse(List.of());
        Bound bound = new Bound(Math.min(least, score), "what is cut already, and "
                + solved.map(s -> s.bound().how()).orElse("nothing besides"));
        return new Layout(all, unplaced, problem.settings().objective(), score, bound,
                unplaced.isEmpty() && score == bound.value(), solved.map(Layout::steps).orElse(0L));
    }

    private Map<Rect, CutTree> sawn(String stockId, Optional<Layout> solved) {
        Map<Rect, CutTree> sawn = new HashMap<>();
        solved.ifPresent(s -> s.boards().forEach(board -> {
            Place place = places.get(board.stockId());
            if (place != null && place.stockId().equals(stockId)) {
                sawn.put(place.area(), onBoard(board.tree(), place.area()));
            }
        }));
        return sawn;
    }

    // A place stands before the solver as a board that is longer by the ends which every board loses.
    private Stock asStock(String id, Place place) {
        Stock of = stock(place.stockId());
        Rect area = place.area();
        long ends = problem.settings().endWaste();
        long edges = problem.settings().edgeWaste();
        long dx = ends - area.x();
        long dy = edges - area.y();
        List<Defect> defects = of.defects().stream()
                .filter(defect -> Touching.inside(defect, of, area))
                .map(defect -> Moved.by(defect, of, dx, dy))
                .toList();
        List<Blemish> blemishes = of.blemishes().stream()
                .filter(each -> Touching.inside(each.shape(), of, area) || Touching.inside(each.reach(), of, area))
                .map(each -> new Blemish(
                        each.kind(), Moved.by(each.shape(), of, dx, dy), Moved.by(each.reach(), of, dx, dy)))
                .toList();
        return new Stock(id, area.length() + 2 * ends, area.width() + 2 * edges, defects, NEXT_TO_NOTHING, 1, false,
                of.klass(), blemishes);
    }

    private CutTree onBoard(CutTree tree, Rect area) {
        var inner = new Rect(
                problem.settings().endWaste(), problem.settings().edgeWaste(), area.length(), area.width());
        CutTree node = tree;
        while (!node.area().equals(inner)) {
            if (!(node instanceof Cut cut)) {
                throw new IllegalStateException("a place was not trimmed to its size");
            }
            node = cut.first().area().holds(inner) ? cut.first() : cut.second();
        }
        return Moved.by(node, area.x() - inner.x(), area.y() - inner.y());
    }

    private Stock stock(String id) {
        return problem.stocks().stream().filter(stock -> stock.id().equals(id)).findFirst().orElseThrow();
    }

    private Rect usable(Stock stock) {
        return usable(problem.settings(), stock);
    }

    /** A board without what is lost at its ends and edges. */
    static Rect usable(Settings settings, Stock stock) {
        long ends = settings.endWaste();
        long edges = settings.edgeWaste();
        return new Rect(ends, edges, Math.max(0, stock.length() - 2 * ends), Math.max(0, stock.width() - 2 * edges));
    }
}

package dev.treen.yield;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Solves a problem so that little moves against an earlier layout. Parts that are cut stay where they are. Of the others,
 * first only what has changed looks for a place; then what lies beside it, cut by cut outwards; then all that lies on one
 * board. The first of these layouts is taken that takes no more boards than one made anew, costs at most a given share
 * more, and has a largest offcut that is smaller by at most five times that share of the boards; where there is none, or where a
 * layout made anew moves no more, that one.
 */
public final class Steady {
    private static final double OF_OFFCUT = 5;

    /**
     * What is asked for.
     *
     * @param cut parts that are cut already
     * @param matched parts that come from one board, as sets
     * @param share what staying may cost, as a share of what a layout made anew costs; five times that share of the area of
     *     the boards taken is what it may take from the largest offcut, which is wood kept and not wood bought
     */
    public record Wish(Set<String> cut, List<Set<String>> matched, double share) {
        /** Keeps its own copies. */
        public Wish {
            cut = Set.copyOf(cut);
            matched = matched.stream().map(Set::copyOf).toList();
        }
    }

    /**
     * What comes of it.
     *
     * @param outcome as from the solver
     * @param problem what was solved: with parts that are cut at the size at which they were
     * @param stays whether the layout is the earlier one with changes, and not one made anew
     * @param more what it costs more than one made anew, as a share of that
     */
    public record Result(Outcome outcome, YieldProblem problem, boolean stays, double more) {}

    private record Spot(String stockId, Rect area) {}

    /** Steps up in the tree of cuts after which so many parts around a change are free to move. */
    private static final int[] OUTWARDS = {1, 2, 4, 8, 16};

    /** Boards that are tried to be sawn anew alone. */
    private static final int MOST_BOARDS = 8;

    private static final long LEAST_STEPS = 200;

    private final Wish wish;
    private final Cancel cancel;
    private final YieldProblem given;
    private final Map<String, Stock> stocks = new HashMap<>();
    private final List<Earlier.Board> boards;
    private final Map<String, Spot> spots = new HashMap<>();
    private final Set<String> cut = new HashSet<>();
    private final YieldProblem problem;

    private Steady(YieldProblem given, Earlier earlier, Wish wish, Cancel cancel) {
        this.given = given;
        this.wish = wish;
        this.cancel = cancel;
        given.stocks().forEach(stock -> stocks.put(stock.id(), stock));
        Set<String> seen = new HashSet<>();
        boards = earlier.boards().stream().filter(board -> seen.add(board.stockId()) && sound(board)).toList();
        for (Earlier.Board board : boards) {
            board.placements().forEach(part -> spots.putIfAbsent(
                    part.pieceId(), new Spot(board.stockId(), part.area())));
        }
        problem = withCut();
    }

    /**
     * Solves {@code problem}.
     *
     * @param anew how it is solved where nothing has to stay
     */
    public static Result solve(YieldProblem problem, Earlier earlier, Wish wish,
            Function<YieldProblem, Outcome> anew, Cancel cancel) {
        boolean plain = Faults.of(problem).isEmpty()
                && problem.settings().objective() == Objective.ALL_PARTS_LEAST_COST
                && problem.pieces().stream().allMatch(piece -> piece.copies() == 1)
                && problem.stocks().stream().allMatch(stock -> stock.count() == 1);
        if (!plain) {
            return new Result(anew.apply(problem), problem, false, 0);
        }
        return new Steady(problem, earlier, wish, cancel).solve(anew);
    }

    private Result solve(Function<YieldProblem, Outcome> anew) {
        Optional<Layout> pinned = cut.isEmpty() ? Optional.empty() : grafted(cut, problem.settings().steps());
        Outcome fresh = pinned.<Outcome>map(layout -> layout).orElseGet(() -> anew.apply(given));
        // Where nothing can be laid out around what is cut, nothing stays for certain.
        YieldProblem solved = pinned.isPresent() ? problem : given;
        if (!(fresh instanceof Layout layout) || cut.isEmpty() != pinned.isEmpty()) {
            return new Result(fresh, solved, false, 0);
        }
        Layout best = back(layout);
        Optional<Layout> steady = steady(best).map(this::back);
        return steady.filter(it -> moves(it) < moves(best))
                .map(it -> new Result(it, solved, true,
                        it.score() <= best.score() ? 0 : (double) (it.score() - best.score()) / best.score()))
                .orElseGet(() -> new Result(best, solved, steady.isPresent() || moves(best) == 0, 0));
    }

    /** The layout with parts that are alike in their old places, checked once more. */
    private Layout back(Layout layout) {
        Map<String, Alike.Place> places = new HashMap<>();
        spots.forEach((id, spot) -> places.put(id, Alike.Place.of(spot.stockId(), spot.area())));
        Layout changed = Alike.back(problem, layout, places, wish.matched());
        return LayoutChecker.check(problem, changed).isEmpty() ? changed : layout;
    }

    // A board of another size is another board; a tree that is not one of saw cuts comes from elsewhere.
    private boolean sound(Earlier.Board board) {
        Stock stock = stocks.get(board.stockId());
        if (stock == null) {
            return false;
        }
        var whole = new Rect(0, 0, stock.length(), stock.width());
        var layout = new BoardLayout(board.stockId(), 0, board.tree());
        long kerf = given.settings().kerf();
        return board.tree().area().equals(whole)
                && SawnPieces.matches(board.tree(), kerf)
                && SawnPieces.after(whole, layout.steps(), kerf)
                        .filter(loose -> layout.placements().stream().allMatch(part -> loose.contains(part.area())))
                        .isPresent();
    }

    /** The problem with parts that are cut at the size at which they were, whatever their size is now. */
    private YieldProblem withCut() {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : given.pieces()) {
            Spot spot = spots.get(piece.id());
            Piece as = spot == null ? piece
                    : new Piece(piece.id(), spot.area().length(), spot.area().width(), 1, piece.mayTurn(),
                            piece.klasses(), piece.onlyFrom(), piece.value(), piece.ways());
            boolean stays = spot != null && wish.cut().contains(piece.id()) && fits(as, spot);
            if (stays) {
                cut.add(piece.id());
            }
            pieces.add(stays ? as : piece);
        }
        List<Run> runs = new ArrayList<>();
        for (Run run : given.runs()) {
            if (run.pieceIds().stream().noneMatch(cut::contains) || inOrder(run)) {
                runs.add(run);
            } else {
                // What is cut of a run cannot follow the rest any more.
                List<String> rest = run.pieceIds().stream().filter(id -> !cut.contains(id)).toList();
                if (rest.size() > 1) {
                    runs.add(new Run(rest));
                }
            }
        }
        return new YieldProblem(given.stocks(), pieces, runs, given.settings());
    }

    private boolean inOrder(Run run) {
        List<Piece> all = run.pieceIds().stream().flatMap(id -> given.pieces().stream().filter(p -> p.id().equals(id)))
                .toList();
        return all.stream().allMatch(piece -> {
            Spot spot = spots.get(piece.id());
            return spot != null && (wish.cut().contains(piece.id()) || fits(piece, spot));
        }) && unbroken(run);
    }

    private boolean unbroken(Run run) {
        for (int i = 1; i < run.pieceIds().size(); i++) {
            Spot a = spots.get(run.pieceIds().get(i - 1));
            Spot b = spots.get(run.pieceIds().get(i));
            if (a == null || b == null || !a.stockId().equals(b.stockId()) || a.area().y() != b.area().y()
                    || b.area().x() != a.area().right() + given.settings().kerf()) {
                return false;
            }
        }
        return true;
    }

    private boolean fits(Piece piece, Spot spot) {
        Stock stock = stocks.get(spot.stockId());
        return stock != null
                && spot.area().length() == piece.length()
                && spot.area().width() == piece.width()
                && piece.accepts(stock)
                && Graft.usable(given.settings(), stock).holds(spot.area())
                && stock.defects().stream().noneMatch(defect -> Touching.inside(defect, stock, spot.area()))
                && (Lying.under(stock, spot.area()).isEmpty()
                        || !Lying.ways(stock, piece, spot.area()).isEmpty());
    }

    private Optional<Layout> steady(Layout fresh) {
        Set<String> same = new LinkedHashSet<>();
        Set<String> changed = new LinkedHashSet<>();
        for (Piece piece : problem.pieces()) {
            Spot spot = spots.get(piece.id());
            if (spot != null) {
                (fits(piece, spot) ? same : changed).add(piece.id());
            }
        }
        Set<Set<String>> tried = new LinkedHashSet<>();
        tried.add(closed(same));
        for (int up : OUTWARDS) {
            Set<String> stay = new LinkedHashSet<>(same);
            changed.forEach(id -> stay.removeAll(around(id, up)));
            tried.add(closed(stay));
        }
        boards.stream()
                .sorted(Comparator.comparing((Earlier.Board board) -> board.placements().stream()
                        .noneMatch(part -> changed.contains(part.pieceId())))
                        .thenComparingInt(board -> board.placements().size()))
                .limit(MOST_BOARDS)
                .forEach(board -> {
                    Set<String> stay = new LinkedHashSet<>(same);
                    board.placements().forEach(part -> stay.remove(part.pieceId()));
                    tried.add(closed(stay));
                });
        long steps = Math.max(LEAST_STEPS, problem.settings().steps() / 8);
        for (Set<String> stay : tried) {
            Optional<Layout> layout = stay.isEmpty() ? Optional.empty() : grafted(stay, steps);
            if (layout.filter(it -> good(it, fresh)).isPresent()) {
                return layout.map(it -> bounded(it, fresh));
            }
            if (cancel.asked()) {
                break;
            }
        }
        return Optional.empty();
    }

    /** Without those of a run or a set that would not stay together; what is cut stays. */
    private Set<String> closed(Set<String> stay) {
        Set<String> closed = new LinkedHashSet<>(stay);
        for (Run run : problem.runs()) {
            if (!closed.containsAll(run.pieceIds()) || !unbroken(run)) {
                run.pieceIds().forEach(closed::remove);
            }
        }
        for (Set<String> set : wish.matched()) {
            if (boardsOf(set, closed).size() > 1) {
                closed.removeAll(set);
            }
        }
        closed.addAll(cut);
        return closed;
    }

    private Set<String> boardsOf(Set<String> set, Set<String> stay) {
        Set<String> ids = new HashSet<>();
        set.stream().filter(stay::contains).forEach(id -> Optional.ofNullable(spots.get(id))
                .ifPresent(spot -> ids.add(spot.stockId())));
        return ids;
    }

    /** The parts that lie in what the cut so many steps before the last one to {@code id} went through. */
    private Set<String> around(String id, int up) {
        Spot spot = spots.get(id);
        Set<String> around = new HashSet<>();
        for (Earlier.Board board : boards) {
            if (spot == null || !board.stockId().equals(spot.stockId())) {
                continue;
            }
            List<Rect> through = new BoardLayout(board.stockId(), 0, board.tree()).steps().stream()
                    .map(BoardLayout.Step::from)
                    .filter(area -> area.holds(spot.area()))
                    .sorted(Comparator.comparingLong(Rect::area))
                    .toList();
            Rect area = through.isEmpty() ? spot.area() : through.get(Math.min(up, through.size()) - 1);
            board.placements().stream()
                    .filter(part -> area.holds(part.area()))
                    .forEach(part -> around.add(part.pieceId()));
        }
        return around;
    }

    /** A checked layout in which {@code stay} stay. */
    private Optional<Layout> grafted(Set<String> stay, long steps) {
        Map<String, String> together = new HashMap<>();
        for (Set<String> set : wish.matched()) {
            Set<String> from = boardsOf(set, stay.stream().anyMatch(set::contains) ? stay : spots.keySet());
            if (from.size() == 1) {
                set.forEach(id -> together.put(id, from.iterator().next()));
            }
        }
        return new Graft(problem, boards, stay, together)
                .solve(steps, cancel)
                .filter(layout -> LayoutChecker.check(problem, layout).isEmpty());
    }

    private boolean good(Layout layout, Layout fresh) {
        return layout.unplaced().size() <= fresh.unplaced().size()
                && layout.boards().size() <= fresh.boards().size()
                && layout.score() <= fresh.score() * (1 + wish.share())
                && largest(fresh) - largest(layout) <= OF_OFFCUT * wish.share() * taken(fresh);
    }

    private static long largest(Layout layout) {
        return layout.boards().stream().flatMap(board -> board.offcuts().stream()).mapToLong(Rect::area).max()
                .orElse(0);
    }

    private static long taken(Layout layout) {
        return layout.boards().stream().mapToLong(board -> board.tree().area().area()).sum();
    }

    // What no layout can beat is the same for both.
    private static Layout bounded(Layout layout, Layout fresh) {
        long least = Math.min(fresh.bound().value(), layout.score());
        return new Layout(layout.boards(), layout.unplaced(), layout.objective(), layout.score(),
                new Bound(least, fresh.bound().how()), layout.complete() && layout.score() == least, layout.steps());
    }

    /** Parts that lie elsewhere; one that grew or shrank where it lay has not moved. */
    private long moves(Layout layout) {
        Map<String, Alike.Place> now = new HashMap<>();
        layout.boards().forEach(board -> board.placements().forEach(
                part -> now.put(part.pieceId(), Alike.Place.of(board.stockId(), part.area()))));
        return problem.pieces().stream().filter(piece -> {
            Spot spot = spots.get(piece.id());
            return spot != null && !Alike.Place.of(spot.stockId(), spot.area()).equals(now.get(piece.id()));
        }).count();
    }
}

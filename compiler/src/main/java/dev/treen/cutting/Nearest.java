package dev.treen.cutting;

import static dev.treen.cutting.Units.up;

import dev.treen.joinery.FinishedPart;
import dev.treen.quantity.Length;
import dev.treen.yield.Layout;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Run;
import dev.treen.yield.Stock;
import dev.treen.yield.Unplaced;
import dev.treen.yield.YieldProblem;
import dev.treen.yield.YieldSolver;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongPredicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What would let a part in for which there is no room. Every change is tried: the parts are laid out anew with it, and it
 * counts only if then the part has its place and no other loses its own.
 */
final class Nearest {
    private static final long STEPS = 300;
    private static final int MOST_PARTS = 100;
    private static final int MOST_BOARDS = 8;
    private static final int MOST_FLAWS = 24;

    /** A part made smaller by more than this share is another part. */
    private static final double MOST_TAKEN = 0.6;

    private final YieldProblem problem;
    private final Rack rack;
    private final Length step;
    private final Set<String> left;

    /**
     * How far one more board of a kind goes.
     *
     * @param takes how many of the parts left over find their place on it
     * @param of how many are left over
     * @param boards how many such boards take them all; 0 where eight are not enough
     */
    record More(int takes, int of, int boards) {}

    /** @param step to which changes are rounded up */
    Nearest(YieldProblem problem, Rack rack, List<Unplaced> unplaced, Length step) {
        this.problem = problem;
        this.rack = rack;
        this.step = step;
        this.left = unplaced.stream().map(Unplaced::pieceId).collect(Collectors.toSet());
    }

    /** Whether there are few enough parts to try, and this is more than a glance at whether all fits. */
    boolean worthTrying() {
        return problem.settings().steps() > 1 && problem.pieces().size() <= MOST_PARTS;
    }

    /** By how much shorter the part would have its place, on a mark of the rule. */
    Optional<Length> shorter(FinishedPart part) {
        return smaller(part, part.length().value(), true);
    }

    /** By how much narrower. */
    Optional<Length> narrower(FinishedPart part) {
        return smaller(part, part.width().value(), false);
    }

    private Optional<Length> smaller(FinishedPart part, Length size, boolean along) {
        String name = part.part().name();
        long most = (long) (size.toDoubleMm() * MOST_TAKEN / step.toDoubleMm());
        return least(most, steps -> {
            long less = up(step.times(steps));
            return fits(name, with(name, piece -> cut(piece, less, along)));
        }).map(step::times);
    }

    /** The least count that will do, where what will do once will do from there on; the one given has been tried. */
    private static Optional<Long> least(long most, LongPredicate does) {
        if (most < 1 || !does.test(most)) {
            return Optional.empty();
        }
        long low = 1;
        long high = most;
        while (low < high) {
            long middle = (low + high) >>> 1;
            if (does.test(middle)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return Optional.of(high);
    }

    /** A piece with something off its far end or edge; places beyond its middle come nearer with that. */
    static Piece cut(Piece piece, long less, boolean along) {
        List<Piece.Way> ways = piece.ways().stream()
                .map(way -> new Piece.Way(way.name(), way.keepClear().entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, entry -> entry.getValue().stream()
                                .map(place -> nearer(place, piece, less, along))
                                .toList()))))
                .toList();
        return new Piece(
                piece.id(), along ? piece.length() - less : piece.length(),
                along ? piece.width() : piece.width() - less, piece.copies(), piece.mayTurn(), piece.klasses(),
                piece.onlyFrom(), piece.value(), ways);
    }

    private static Rect nearer(Rect place, Piece piece, long less, boolean along) {
        long half = (along ? piece.length() : piece.width()) / 2;
        long from = along ? place.x() : place.y();
        long to = along ? place.right() : place.top();
        long start = from > half ? Math.max(0, from - less) : from;
        long end = to > half ? Math.max(start, to - less) : to;
        return along ? new Rect(start, place.y(), end - start, place.width())
                : new Rect(place.x(), start, place.length(), end - start);
    }

    /** Another board that would give the part, by name. */
    Optional<String> otherBoard(FinishedPart part) {
        String name = part.part().name();
        if (part.part().sources().isEmpty()) {
            return Optional.empty();
        }
        Set<String> boards = new LinkedHashSet<>();
        rack.leaves().values().stream()
                .filter(leaf -> leaf.of().gives(part))
                .map(leaf -> leaf.of().source())
                .filter(board -> !part.part().mayComeFrom(board))
                .map(board -> board.name())
                .forEach(boards::add);
        return boards.stream()
                .limit(MOST_BOARDS)
                .filter(board -> fits(name, with(name, piece -> piece.from(leavesOf(board)))))
                .findFirst();
    }

    private Set<String> leavesOf(String board) {
        return rack.leaves().entrySet().stream()
                .filter(entry -> entry.getValue().of().source().name().equals(board))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    /** Whether the part would have its place with its grain across the board, or the sheet. */
    boolean fitsAcross(FinishedPart part) {
        String name = part.part().name();
        return problem.runs().stream().noneMatch(run -> run.pieceIds().contains(name))
                && fits(name, with(name, Piece::turning));
    }

    /** What one more board like the one of a name would take, and how many would take all. */
    More more(String board) {
        Set<String> leaves = leavesOf(board);
        int takes = 0;
        for (int boards = 1; boards <= MOST_BOARDS; boards++) {
            int count = boards;
            Set<String> still = leftOver(new YieldProblem(
                    problem.stocks().stream()
                            .map(stock -> leaves.contains(stock.id()) ? stock.times(stock.count() + count) : stock)
                            .toList(),
                    problem.pieces(), problem.runs(), problem.settings().steps(STEPS)));
            int taken = (int) left.stream().filter(part -> !still.contains(part)).count();
            if (boards == 1) {
                takes = left.containsAll(still) ? taken : 0;
            }
            if (still.isEmpty()) {
                return new More(takes, left.size(), boards);
            }
        }
        return new More(takes, left.size(), 0);
    }

    /**
     * The flaws of a board without any one of which the part, or its run, would have its place there alone; empty where no
     * single one stands in the way.
     */
    List<dev.treen.yield.Defect> inTheWay(String part, String stockId) {
        List<Run> runs = problem.runs().stream().filter(run -> run.pieceIds().contains(part)).toList();
        Set<String> alone = new LinkedHashSet<>(runs.stream().flatMap(run -> run.pieceIds().stream()).toList());
        alone.add(part);
        List<Piece> pieces = problem.pieces().stream().filter(piece -> alone.contains(piece.id())).toList();
        Stock stock = problem.stocks().stream().filter(each -> each.id().equals(stockId)).findFirst().orElseThrow();
        List<Stock> fewer = new ArrayList<>();
        List<dev.treen.yield.Defect> flaws = new ArrayList<>();
        for (int i = 0; i < stock.defects().size(); i++) {
            flaws.add(stock.defects().get(i));
            fewer.add(stock.with(without(stock.defects(), i)));
        }
        for (int i = 0; i < stock.blemishes().size(); i++) {
            flaws.add(stock.blemishes().get(i).shape());
            fewer.add(stock.blemished(without(stock.blemishes(), i)));
        }
        List<dev.treen.yield.Defect> found = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST_FLAWS, flaws.size()); i++) {
            // A piece names all its boards, so each stays in the problem, and all but this one are used up.
            Stock clearer = fewer.get(i);
            List<Stock> stocks = problem.stocks().stream()
                    .map(each -> each.id().equals(stockId) ? clearer : each.times(0))
                    .toList();
            if (leftOver(new YieldProblem(stocks, pieces, runs, problem.settings().steps(1))).isEmpty()) {
                found.add(flaws.get(i));
            }
        }
        return found;
    }

    private static <T> List<T> without(List<T> all, int index) {
        List<T> fewer = new ArrayList<>(all);
        fewer.remove(index);
        return fewer;
    }

    private YieldProblem with(String part, UnaryOperator<Piece> change) {
        List<Piece> pieces = problem.pieces().stream()
                .map(piece -> piece.id().equals(part) ? change.apply(piece) : piece)
                .toList();
        return new YieldProblem(problem.stocks(), pieces, problem.runs(), problem.settings().steps(STEPS));
    }

    /** Whether a part, or all that it is made of, would have its place on boards that are changed for it. */
    boolean fits(String part, Rack changed) {
        Set<String> still = leftOver(changed.problem(STEPS));
        Set<String> own = changed.blanks().values().stream()
                .filter(blank -> blank.parts().contains(part))
                .map(Blank::name)
                .collect(Collectors.toSet());
        return still.stream().noneMatch(own::contains) && left.containsAll(still);
    }

    private boolean fits(String part, YieldProblem changed) {
        Set<String> still = leftOver(changed);
        return !still.contains(part) && left.containsAll(still);
    }

    /** The parts without a place; all of them where the problem makes no sense. */
    private static Set<String> leftOver(YieldProblem changed) {
        return YieldSolver.solve(changed) instanceof Layout layout
                ? layout.unplaced().stream().map(Unplaced::pieceId).collect(Collectors.toSet())
                : changed.pieces().stream().map(Piece::id).collect(Collectors.toSet());
    }
}

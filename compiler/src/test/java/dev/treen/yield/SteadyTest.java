package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** That a small change moves little, on generated racks of invented boards. */
class SteadyTest {
    private static final double SHARE = 0.02;

    private record Spot(String board, Rect area) {}

    private static YieldProblem kitchen(Random random, int parts) {
        List<Stock> stocks = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            Stock board = Stock.clear("board " + i, 1500 + random.nextInt(1000), 150 + random.nextInt(100));
            stocks.add(board.with(List.of(
                    Defect.Knot.round(random.nextInt(1500), random.nextInt(150), 15),
                    new Defect.Strip(Defect.Side.LEFT_END, 40),
                    new Defect.Split(1400, 20, 1490, 30, 4))));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            pieces.add(Piece.of("part " + i, 200 + random.nextInt(600), 40 + random.nextInt(90), 1));
        }
        return new YieldProblem(stocks, pieces, List.of(new Run(List.of("part 0", "part 1"))),
                Settings.kerf(2).wasting(15, 0).keeping(150, 40).steps(2000));
    }

    private static YieldProblem with(YieldProblem problem, int which, Piece piece) {
        List<Piece> pieces = new ArrayList<>(problem.pieces());
        pieces.set(which, piece);
        return new YieldProblem(problem.stocks(), pieces, problem.runs(), problem.settings());
    }

    private static Layout solved(YieldProblem problem) {
        return (Layout) YieldSolver.solve(problem);
    }

    private static Earlier earlier(Layout layout) {
        return new Earlier(layout.boards().stream()
                .map(board -> new Earlier.Board(board.stockId(), board.tree()))
                .toList());
    }

    private static Map<String, Spot> spots(Layout layout) {
        Map<String, Spot> spots = new HashMap<>();
        layout.boards().forEach(board -> board.placements().forEach(
                part -> spots.put(part.pieceId(), new Spot(board.stockId(), part.area()))));
        return spots;
    }

    private static long moves(Layout before, Layout after) {
        Map<String, Spot> now = spots(after);
        return spots(before).entrySet().stream().filter(e -> {
            Spot is = now.get(e.getKey());
            return is == null || !e.getValue().board().equals(is.board()) || e.getValue().area().x() != is.area().x()
                    || e.getValue().area().y() != is.area().y();
        }).count();
    }

    private static Steady.Result steady(YieldProblem problem, Layout before, Set<String> cut) {
        return Steady.solve(problem, earlier(before), new Steady.Wish(cut, List.of(), SHARE), YieldSolver::solve,
                Cancel.never());
    }

    @Test
    void nothingMovesWhereNothingChanges() {
        for (int seed = 0; seed < 10; seed++) {
            YieldProblem problem = kitchen(new Random(seed), 12);
            Layout before = solved(problem);
            Layout after = (Layout) steady(problem, before, Set.of()).outcome();
            assertThat(after.boards()).isEqualTo(before.boards());
            assertThat(after.bound()).isEqualTo(before.bound());
        }
    }

    @Test
    void aLongerPartMovesFewAndCostsLittle() {
        long moved = 0;
        long movedAnew = 0;
        for (int seed = 0; seed < 12; seed++) {
            var random = new Random(seed);
            YieldProblem problem = kitchen(random, 14);
            Layout before = solved(problem);
            int which = 2 + random.nextInt(12);
            Piece old = problem.pieces().get(which);
            YieldProblem changed = with(problem, which, Piece.of(old.id(), old.length() + 6, old.width(), 1));
            Layout anew = solved(changed);
            Steady.Result result = steady(changed, before, Set.of());
            Layout after = (Layout) result.outcome();
            assertThat(LayoutChecker.check(changed, after)).isEmpty();
            assertThat(after.unplaced()).hasSameSizeAs(anew.unplaced());
            assertThat(after.boards().size()).isLessThanOrEqualTo(anew.boards().size());
            assertThat((double) after.score()).isLessThanOrEqualTo(anew.score() * (1 + SHARE));
            assertThat(result.more()).isBetween(0.0, SHARE);
            assertThat(moves(before, after)).isLessThanOrEqualTo(moves(before, anew));
            moved += moves(before, after);
            movedAnew += moves(before, anew);
        }
        assertThat(moved).isLessThan(movedAnew * 2 / 3);
    }

    @Test
    void aKnotThatIsFoundMovesOnlyWhatLiesOnIt() {
        for (int seed = 0; seed < 10; seed++) {
            YieldProblem problem = kitchen(new Random(seed), 12);
            Layout before = solved(problem);
            var board = before.boards().getFirst();
            BoardLayout.Placement on = board.placements().getLast();
            List<Stock> stocks = problem.stocks().stream().map(stock -> {
                List<Defect> defects = new ArrayList<>(stock.defects());
                if (stock.id().equals(board.stockId())) {
                    defects.add(Defect.Knot.round(on.area().x() + 20, on.area().y() + 20, 4));
                }
                return stock.with(defects);
            }).toList();
            var found = new YieldProblem(stocks, problem.pieces(), problem.runs(), problem.settings());
            Layout after = (Layout) steady(found, before, Set.of()).outcome();
            assertThat(LayoutChecker.check(found, after)).isEmpty();
            assertThat(moves(before, after)).isLessThanOrEqualTo(moves(before, solved(found)));
        }
    }

    @Test
    void whatIsCutStaysWhateverItCostsAndAtTheSizeAtWhichItWasCut() {
        YieldProblem problem = kitchen(new Random(3), 12);
        Layout before = solved(problem);
        Set<String> cut = Set.of("part 4", "part 7");
        YieldProblem changed = problem;
        for (int i = 0; i < 12; i++) {
            Piece old = problem.pieces().get(i);
            changed = with(changed, i, Piece.of(old.id(), old.length() + 3, old.width() + 2, 1));
        }
        Steady.Result result = steady(changed, before, cut);
        Layout after = (Layout) result.outcome();
        assertThat(LayoutChecker.check(result.problem(), after)).isEmpty();
        for (String id : cut) {
            assertThat(spots(after).get(id)).isEqualTo(spots(before).get(id));
        }
        Piece pinned = result.problem().pieces().get(4);
        assertThat(pinned.length()).isEqualTo(problem.pieces().get(4).length());
    }

    @Test
    void partsThatAreAlikeDoNotChangePlaces() {
        var problem = new YieldProblem(
                List.of(Stock.clear("one", 1000, 100), Stock.clear("two", 1000, 100)),
                List.of(Piece.of("left", 400, 100, 1), Piece.of("right", 400, 100, 1), Piece.of("top", 500, 100, 1),
                        Piece.of("bottom", 500, 100, 1)),
                List.of(), Settings.kerf(2));
        Layout before = solved(problem);
        YieldProblem changed = with(with(problem, 0, Piece.of("left", 406, 100, 1)), 1, Piece.of("right", 406, 100, 1));
        Map<String, Spot> was = spots(before);
        Map<String, Spot> is = spots((Layout) steady(changed, before, Set.of()).outcome());
        for (String part : List.of("left", "right", "top", "bottom")) {
            assertThat(is.get(part).board()).isEqualTo(was.get(part).board());
        }
        Map<String, Alike.Place> places = new HashMap<>();
        was.forEach((part, spot) -> places.put(part, Alike.Place.of(spot.board(), spot.area())));
        places.put("left", Alike.Place.of(was.get("right").board(), was.get("right").area()));
        places.put("right", Alike.Place.of(was.get("left").board(), was.get("left").area()));
        Map<String, Spot> back = spots(Alike.back(problem, before, places, List.of()));
        assertThat(back.get("left")).isEqualTo(was.get("right"));
        assertThat(back.get("right")).isEqualTo(was.get("left"));
        assertThat(back.get("top")).isEqualTo(was.get("top"));
        // In a set of its own a part is like no other.
        assertThat(spots(Alike.back(problem, before, places, List.of(Set.of("left"))))).isEqualTo(was);
    }

    @Test
    void setsStayOnOneBoard() {
        YieldProblem problem = new YieldProblem(
                List.of(Stock.clear("one", 1000, 100), Stock.clear("two", 1500, 100)),
                List.of(Piece.of("left", 400, 100, 1), Piece.of("right", 400, 100, 1), Piece.of("rail", 500, 100, 1)),
                List.of(), Settings.kerf(2));
        Layout before = solved(problem);
        YieldProblem changed = with(problem, 0, Piece.of("left", 420, 100, 1));
        Steady.Result result = Steady.solve(changed, earlier(before),
                new Steady.Wish(Set.of(), List.of(Set.of("left", "right")), 1), YieldSolver::solve, Cancel.never());
        Map<String, Spot> after = spots((Layout) result.outcome());
        assertThat(result.stays()).isTrue();
        assertThat(after.get("left").board()).isEqualTo(after.get("right").board());
    }

    @Test
    void anEarlierLayoutOfOtherBoardsOrOtherCutsIsLeftAlone() {
        YieldProblem problem = kitchen(new Random(1), 8);
        Layout before = solved(problem);
        var shorter = new YieldProblem(
                problem.stocks().stream().map(s -> new Stock(s.id(), s.length() - 1, s.width(), s.defects(), s.cost(),
                        1, false, "")).toList(),
                problem.pieces(), problem.runs(), problem.settings());
        assertThat(steady(shorter, before, Set.of("part 2")).outcome()).isEqualTo(YieldSolver.solve(shorter));
        Rect whole = before.boards().getFirst().tree().area();
        var nonsense = new Earlier(List.of(new Earlier.Board(before.boards().getFirst().stockId(), new CutTree.Cut(
                whole, CutTree.Direction.ACROSS, 100, new CutTree.PieceLeaf(whole, "part 2", 0, false),
                new CutTree.WasteLeaf(whole)))));
        assertThat(Steady.solve(problem, nonsense, new Steady.Wish(Set.of("part 2"), List.of(), SHARE),
                YieldSolver::solve, Cancel.never()).outcome()).isEqualTo(before);
    }

    // One part in the middle of its board: what stays there leaves two short ends instead of one long one.
    @Test
    void stayingDoesNotCostTheLargestOffcut() {
        var problem = new YieldProblem(
                List.of(Stock.clear("board", 1000, 100)),
                List.of(Piece.of("shelf", 300, 100, 1), Piece.of("peg", 20, 20, 1)),
                List.of(), Settings.kerf(0).keeping(50, 50));
        Rect whole = new Rect(0, 0, 1000, 100);
        var rest = new CutTree.Cut(new Rect(350, 0, 650, 100), CutTree.Direction.ACROSS, 650,
                new CutTree.PieceLeaf(new Rect(350, 0, 300, 100), "shelf", 0, false),
                new CutTree.OffcutLeaf(new Rect(650, 0, 350, 100)));
        var before = new Earlier(List.of(new Earlier.Board("board", new CutTree.Cut(
                whole, CutTree.Direction.ACROSS, 350, new CutTree.OffcutLeaf(new Rect(0, 0, 350, 100)), rest))));
        long kept = offcut(problem, before, SHARE);
        assertThat(kept).isGreaterThan(60_000);
        assertThat(offcut(problem, before, 1)).isLessThan(kept);
    }

    private static long offcut(YieldProblem problem, Earlier before, double share) {
        Layout after = (Layout) Steady.solve(problem, before, new Steady.Wish(Set.of(), List.of(), share),
                YieldSolver::solve, Cancel.never()).outcome();
        return after.boards().stream().flatMap(board -> board.offcuts().stream()).mapToLong(Rect::area).max().orElse(0);
    }
}

package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The solver on small kitchens' worth of parts, all figures invented. */
class YieldSolverTest {

    @Test
    void aTeaCaddyComesFromOneBoardWithTwoKnotsAndASplit() {
        var board = Stock.clear("plank", 12_000, 1_600)
                .with(List.of(
                        Defect.Knot.round(3_000, 600, 150),
                        Defect.Knot.round(8_200, 1_300, 120),
                        new Defect.Split(0, 300, 700, 420, 20)));
        var pieces = List.of(
                Piece.of("front", 1_780, 1_100, 1),
                Piece.of("right", 980, 1_100, 1),
                Piece.of("back", 1_780, 1_100, 1),
                Piece.of("left", 980, 1_100, 1),
                Piece.of("lid", 1_900, 1_120, 1));
        var runs = List.of(new Run(List.of("front", "right", "back")));
        var layout = Solved.of(new YieldProblem(List.of(board), pieces, runs, Settings.kerf(12).keeping(1500, 400)));
        assertThat(layout.complete()).isTrue();
        assertThat(layout.boards()).hasSize(1);
        assertThat(layout.proved()).isTrue();
        assertThat(layout.boards().getFirst().offcuts()).isNotEmpty();
    }

    @Test
    void theSameProblemGivesTheSameLayout() {
        var problem = random(7, 30, true);
        assertThat(Solved.of(problem)).isEqualTo(Solved.of(problem));
    }

    @Test
    void everyRandomProblemGivesALayoutThatTheCheckerPasses() {
        for (int seed = 0; seed < 60; seed++) {
            Solved.of(random(seed, 5 + seed % 30, seed % 2 == 0));
        }
    }

    @Test
    void endsAndEdgesAreLostOnEveryBoard() {
        var settings = Settings.kerf(3).wasting(20, 10).steps(500);
        var fits = new YieldProblem(
                List.of(Stock.clear("shelf", 1040, 220)), List.of(Piece.of("a", 1000, 200, 1)), List.of(), settings);
        assertThat(Solved.of(fits).complete()).isTrue();
        var not = new YieldProblem(
                List.of(Stock.clear("shelf", 1039, 220)), List.of(Piece.of("a", 1000, 200, 1)), List.of(), settings);
        assertThat(Solved.of(not).unplaced())
                .containsExactly(
                        new Unplaced("a", 1, new Unplaced.Reason.TooLarge("shelf", 1, 0, java.util.Optional.empty())));
    }

    @Test
    void aKnotInTheMiddleSaysHowMuchShorterThePartWouldHaveToBe() {
        var board = Stock.clear("b", 1000, 100).with(List.of(new Defect.Box(new Rect(600, 0, 50, 100))));
        var layout = Solved.of(new YieldProblem(
                List.of(board), List.of(Piece.of("rail", 604, 100, 2)), List.of(), Settings.kerf(4).steps(100)));
        assertThat(layout.boards()).isEmpty();
        assertThat(layout.unplaced()).hasSize(1);
        var reason = (Unplaced.Reason.DefectInTheWay) layout.unplaced().getFirst().reason();
        assertThat(reason.shorterBy()).isEqualTo(4);
    }

    @Test
    void aThousandthTooLongIsTooLong() {
        var exact = new YieldProblem(
                List.of(Stock.clear("b", 2003, 100)), List.of(Piece.of("p", 1000, 100, 2)), List.of(),
                Settings.kerf(3));
        assertThat(Solved.of(exact).complete()).isTrue();
        var over = new YieldProblem(
                List.of(Stock.clear("b", 2002, 100)), List.of(Piece.of("p", 1000, 100, 2)), List.of(),
                Settings.kerf(3).steps(200));
        assertThat(Solved.of(over).unplaced().getFirst().copies()).isEqualTo(1);
    }

    @Test
    void senselessProblemsAreRefusedWithTheirFaults() {
        var pieces = List.of(Piece.of("a", 10, 10, 1));
        assertThat(YieldSolver.solve(new YieldProblem(List.of(), pieces, List.of(), Settings.kerf(1))))
                .isEqualTo(new Outcome.Refusal(List.of(new Outcome.Fault(Outcome.Kind.NO_STOCK, ""))));
        var bad = new YieldProblem(
                List.of(Stock.clear("b", 100, 0)),
                List.of(Piece.of("a", -5, 10, 1), Piece.of("a", 5, 10, -1)),
                List.of(new Run(List.of("ghost"))),
                Settings.kerf(-1));
        assertThat(YieldSolver.solve(bad)).isInstanceOfSatisfying(Outcome.Refusal.class, refusal -> assertThat(
                refusal.faults().stream().map(Outcome.Fault::kind))
                .contains(
                        Outcome.Kind.NEGATIVE,
                        Outcome.Kind.SIZE_NOT_POSITIVE,
                        Outcome.Kind.TWICE,
                        Outcome.Kind.UNKNOWN_NAME));
    }

    // The largest offcut lies on the first board whatever is done; what is left of the second should be in one piece too.
    @Test
    void boardsBesideTheOneWithTheLargestOffcutKeepOneLargeOneToo() {
        var from = java.util.Set.of("small");
        var layout = Solved.of(new YieldProblem(
                List.of(Stock.clear("large", 3000, 400), Stock.clear("small", 1000, 300)),
                List.of(
                        Piece.of("only", 300, 400, 1), Piece.of("a", 300, 90, 1).from(from),
                        Piece.of("b", 310, 95, 1).from(from), Piece.of("c", 305, 100, 1).from(from)),
                List.of(), Settings.kerf(3).keeping(100, 50)));
        assertThat(layout.boards()).filteredOn(board -> board.stockId().equals("small")).singleElement().satisfies(
                board -> assertThat(board.offcuts().stream().mapToLong(Rect::area).max().orElse(0))
                        .isGreaterThan(205_000));
    }

    @Test
    void tenThousandPartsComeInBoundedTime() {
        var random = new Random(3);
        var pieces = new ArrayList<Piece>();
        for (int i = 0; i < 1000; i++) {
            pieces.add(Piece.of("p" + i, 100 + random.nextInt(900), 40 + random.nextInt(160), 10));
        }
        var stock = Stock.clear("board", 3000, 250).times(Stock.UNLIMITED);
        var layout = Solved.of(new YieldProblem(List.of(stock), pieces, List.of(), Settings.kerf(3).steps(200)));
        assertThat(layout.complete()).isTrue();
        assertThat(layout.gap()).isLessThan(0.2);
    }

    /** Boards, defects and parts from a seed. */
    static YieldProblem random(long seed, int parts, boolean defects) {
        var random = new Random(seed);
        var stocks = new ArrayList<Stock>();
        for (int b = 0; b < 3 + parts / 6; b++) {
            long length = 1000L + random.nextInt(2000);
            long width = 90L + random.nextInt(200);
            var flaws = new ArrayList<Defect>();
            for (int d = random.nextInt(4); defects && d > 0; d--) {
                long x = random.nextInt((int) length);
                long y = random.nextInt((int) width);
                switch (random.nextInt(4)) {
                    case 0 -> flaws.add(Defect.Knot.round(x, y, 5 + random.nextInt(20)));
                    case 1 ->
                        flaws.add(new Defect.Box(new Rect(x, y, 1 + random.nextInt(100), 1 + random.nextInt(40))));
                    case 2 ->
                        flaws.add(new Defect.Split(x, y, x + 80 - random.nextInt(160), y + 10, random.nextInt(4)));
                    default -> flaws.add(new Defect.Strip(
                            List.of(Defect.Side.values()).get(random.nextInt(4)), random.nextInt(12)));
                }
            }
            stocks.add(Stock.clear("b" + b, length, width).with(flaws));
        }
        var pieces = new ArrayList<Piece>();
        for (int p = 0; p < parts; p++) {
            Piece piece = Piece.of("p" + p, 50 + random.nextInt(700), 20 + random.nextInt(120), 1 + random.nextInt(2));
            piece = random.nextInt(4) == 0 ? piece.turning() : piece;
            pieces.add(random.nextInt(9) == 0 ? piece.from(Set.of("b0", "b1")) : piece);
        }
        var runs = List.of(new Run(List.of("p0", "p1", "p2")));
        var settings = Settings.kerf(random.nextInt(5))
                .wasting(random.nextInt(12), random.nextInt(3))
                .keeping(200, 40)
                .steps(400)
                .seed(seed);
        return new YieldProblem(stocks, pieces, runs, settings);
    }
}

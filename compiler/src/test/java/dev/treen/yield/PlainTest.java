package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Of layouts that keep as much, the one with less work at the saw; boards and parts invented, cuts counted by hand. */
class PlainTest {
    private static Layout sawn(Settings settings, Stock board, Piece... pieces) {
        return Solved.of(new YieldProblem(List.of(board), List.of(pieces), List.of(), settings));
    }

    private static int cuts(Layout layout) {
        return layout.boards().stream().mapToInt(board -> board.steps().size()).sum();
    }

    /** Six rails side by side in two rows: one rip and two crosscuts a row, and two cuts that free the rows from the rest. */
    @Test
    void rowsOfOneWidthTakeTheFewestCuts() {
        Settings settings = Settings.kerf(0).keeping(500, 40).plain(0, 100_000).steps(4000);
        Layout layout = sawn(settings, Stock.clear("plank", 1000, 100), Piece.of("rail", 150, 50, 6));
        // The largest leftover is 550 x 100 behind three columns of two: 3 cuts off the board, one rip in each column; or 1 and
        // a rip, and two cuts in each row.
        assertThat(layout.boards().getFirst().offcuts()).containsExactly(new Rect(450, 0, 550, 100));
        assertThat(cuts(layout)).isEqualTo(6);
    }

    /** Whoever gives a fifth of the largest leftover has no more cuts over some racks, and takes no more boards in any. */
    @Test
    void givingOfTheLargestLeftoverSavesCuts() {
        int giving = 0;
        int keeping = 0;
        for (int seed = 1; seed < 12; seed++) {
            YieldProblem problem = YieldSolverTest.random(seed, 8, false);
            Settings exact = problem.settings().steps(2000).plain(0, 1200);
            Layout keeps = Solved.of(with(problem, exact));
            Layout gives = Solved.of(with(problem, exact.plain(0.2, 1200)));
            assertThat(gives.score()).isEqualTo(keeps.score());
            keeping += cuts(keeps);
            giving += cuts(gives);
        }
        assertThat(giving).isLessThan(keeping);
    }

    private static YieldProblem with(YieldProblem problem, Settings settings) {
        return new YieldProblem(problem.stocks(), problem.pieces(), problem.runs(), settings);
    }
}

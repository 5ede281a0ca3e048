package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Few kinds of parts in many copies, from boards of three sizes; all generated. */
class ManyCopiesTest {

    @Test
    void manyCopiesTakeHardlyMoreThanTheBound() {
        double over = 0;
        for (int seed = 0; seed < 4; seed++) {
            var random = new Random(seed);
            List<Stock> stocks = new ArrayList<>();
            for (long side : new long[]{1000, 800, 600}) {
                stocks.add(Stock.clear("b" + side, side, side).costing(side * side).times(Stock.UNLIMITED));
            }
            List<Piece> pieces = new ArrayList<>();
            for (int p = 0; p < 8; p++) {
                pieces.add(Piece.of(
                        "p" + p, 200L + random.nextInt(350), 200L + random.nextInt(350), 20 + random.nextInt(40)));
            }
            var problem = new YieldProblem(stocks, pieces, List.of(), Settings.kerf(0).steps(20_000));
            // The solver's own check has passed a layout before it is given out.
            var layout = (Layout) YieldSolver.solve(problem);
            assertThat(layout.complete()).isTrue();
            assertThat(layout.score()).isGreaterThanOrEqualTo(layout.bound().value());
            over += (double) layout.score() / layout.bound().value() - 1;
        }
        assertThat(over / 4).isLessThan(0.06);
    }
}

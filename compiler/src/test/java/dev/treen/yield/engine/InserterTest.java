package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.yield.Defect;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Settings;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An empty board is opened for a part just where it has a clear place, against looking at every unit; boards invented. */
class InserterTest {

    @Test
    void aBoardIsOpenedWhereLookingAtEveryUnitFindsAPlace() {
        int placed = 0;
        for (int seed = 0; seed < 400; seed++) {
            var random = new Random(seed);
            List<Defect> flaws = new ArrayList<>();
            // Few and many: there are two ways to look at a board.
            for (int i = 1 + random.nextInt(seed % 2 == 0 ? 8 : 60); i > 0; i--) {
                flaws.add(new Defect.Box(new Rect(
                        random.nextInt(50), random.nextInt(40), 1L + random.nextInt(4), 1L + random.nextInt(4))));
            }
            var board = new Stock("b", 50, 40, flaws, 1, 1, false, "");
            long l = 12L + random.nextInt(30);
            long w = 8L + random.nextInt(20);
            boolean turns = random.nextInt(3) == 0;
            var piece = new Piece("p", l, w, 1, turns, Set.of(), Optional.empty(), 1);
            var f = new Folded(new YieldProblem(List.of(board), List.of(piece), List.of(), Settings.kerf(1)));
            var inserter = new Inserter(f, new Dice(seed), false);
            boolean any = any(flaws, l, w) || (turns && any(flaws, w, l));
            boolean sizes = f.ok[0][0];
            var state = new State(f);
            assertThat(sizes && inserter.insert(state, 0, Long.MAX_VALUE, 1)).as("seed %d", seed).isEqualTo(any);
            assertThat(state.left[0]).isEqualTo(any ? 0 : 1);
            placed += any ? 1 : 0;
        }
        assertThat(placed).isBetween(100, 300);
    }

    private static boolean any(List<Defect> flaws, long l, long w) {
        for (long x = 0; x + l <= 50; x++) {
            for (long y = 0; y + w <= 40; y++) {
                var place = new Rect(x, y, l, w);
                if (flaws.stream().noneMatch(each -> ((Defect.Box) each).area().overlaps(place))) {
                    return true;
                }
            }
        }
        return false;
    }
}

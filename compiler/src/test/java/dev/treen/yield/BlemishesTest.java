package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts that lie on flaws and keep only some of their places clear; all figures invented. */
class BlemishesTest {
    private static final Piece.Way STRAIGHT = new Piece.Way("as drawn",
            Map.of("knot", List.of(new Rect(0, 0, 20, 100))));
    private static final Piece.Way TURNED = new Piece.Way("end for end", Map.of("knot",
            List.of(new Rect(280, 0, 20, 100))));

    private static Blemish knot(long x, long y, long radius) {
        return new Blemish("knot", Defect.Knot.round(x, y, radius), Defect.Knot.round(x, y, 2 * radius));
    }

    private static YieldProblem one(Blemish blemish, long length, Piece.Way... ways) {
        return new YieldProblem(
                List.of(Stock.clear("board", length, 100).blemished(List.of(blemish))),
                List.of(Piece.of("shelf", 300, 100, 1).lying(List.of(ways))), List.of(), Settings.kerf(3).steps(200));
    }

    private static Layout solved(YieldProblem problem) {
        assertThat(YieldSolver.solve(problem)).isInstanceOf(Layout.class);
        return (Layout) YieldSolver.solve(problem);
    }

    @Test
    void aPlaceKeepsClearOfTheReachAndTheRestMayLieOnTheFlaw() {
        assertThat(solved(one(knot(150, 50, 5), 300, STRAIGHT)).complete()).isTrue();
        assertThat(solved(one(knot(29, 50, 5), 300, STRAIGHT)).complete()).isFalse();
        assertThat(solved(one(knot(30, 50, 5), 300, STRAIGHT)).complete()).isTrue();
        assertThat(solved(one(knot(29, 50, 5), 300, STRAIGHT, TURNED)).complete()).isTrue();
        assertThat(solved(one(knot(150, 50, 5), 300)).complete()).isFalse();
    }

    @Test
    void thePartMovesAlongUntilItsPlaceIsClear() {
        Layout layout = solved(one(knot(25, 50, 5), 312, STRAIGHT));
        assertThat(layout.complete()).isFalse();
        layout = solved(one(knot(36, 50, 5), 306, STRAIGHT));
        assertThat(layout.boards().getFirst().placements().getFirst().area().x()).isLessThanOrEqualTo(6);
        assertThat(layout.complete()).isTrue();
        layout = solved(one(knot(10, 50, 5), 320, STRAIGHT));
        assertThat(layout.boards().getFirst().placements().getFirst().area().x()).isGreaterThanOrEqualTo(15);
    }

    @Test
    void theCheckerSeesAPartOnAFlawInTheWrongPlace() {
        YieldProblem sound = one(knot(150, 50, 5), 300, STRAIGHT);
        Layout layout = solved(sound);
        assertThat(LayoutChecker.check(sound, layout)).isEmpty();
        for (YieldProblem wrong : List.of(one(knot(10, 50, 5), 300, STRAIGHT), one(knot(150, 50, 5), 300))) {
            assertThat(LayoutChecker.check(wrong, layout)).extracting(LayoutChecker.Breach::rule)
                    .contains(LayoutChecker.Rule.DEFECT);
        }
    }

    /** More freedom never leaves more parts out of one part alone, and every layout passes the checker. */
    @Test
    void everyRandomProblemGivesALayoutThatTheCheckerPasses() {
        Random random = new Random(11);
        int lying = 0;
        for (int i = 0; i < 60; i++) {
            List<Blemish> blemishes = new ArrayList<>();
            for (int k = 0; k < 1 + random.nextInt(4); k++) {
                blemishes.add(knot(random.nextInt(1000), random.nextInt(200), 1 + random.nextInt(30)));
            }
            List<Piece> pieces = new ArrayList<>();
            for (int k = 0; k < 6; k++) {
                int length = 50 + random.nextInt(400);
                int width = 20 + random.nextInt(80);
                Rect place = new Rect(random.nextInt(length / 2), 0, 1 + random.nextInt(length / 2), width);
                pieces.add(Piece.of("p" + k, length, width, 1)
                        .lying(k % 2 == 0 ? List.of() : List.of(new Piece.Way("", Map.of("knot", List.of(place))))));
            }
            YieldProblem problem = new YieldProblem(
                    List.of(Stock.clear("b", 1000, 200).blemished(blemishes)), pieces,
                    List.of(new Run(List.of("p1", "p2"))), Settings.kerf(2).wasting(5, 2).steps(300));
            Layout layout = solved(problem);
            Stock stock = problem.stocks().getFirst();
            lying += (int) layout.boards().stream()
                    .flatMap(board -> board.placements().stream())
                    .filter(part -> !Lying.under(stock, part.area()).isEmpty())
                    .count();
        }
        assertThat(lying).isGreaterThan(10);
    }
}

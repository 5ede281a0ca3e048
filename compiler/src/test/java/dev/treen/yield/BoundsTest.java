package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Bounds on boards: never above a layout that is there by construction, and sharp where reason says so. */
class BoundsTest {

    /** Boards cut at random into parts, so that so many boards are certainly enough, without any waste. */
    @Test
    void boardsCutApartComeTogetherAgainWithinTheBound() {
        for (int seed = 0; seed < 30; seed++) {
            var random = new Random(seed);
            int boards = 1 + random.nextInt(4);
            var pieces = new ArrayList<Piece>();
            for (int b = 0; b < boards; b++) {
                cut(200, 120, 3, random, pieces);
            }
            var stock = Stock.clear("board", 200, 120).costing(1).times(Stock.UNLIMITED);
            var layout = Solved.of(new YieldProblem(List.of(stock), pieces, List.of(), Settings.kerf(0).steps(3_000)));
            assertThat(layout.bound().value()).as("seed %d", seed).isEqualTo(boards);
        }
    }

    private static void cut(int length, int width, int depth, Random random, List<Piece> pieces) {
        if (depth == 0 || length < 2 || width < 2) {
            pieces.add(Piece.of("p" + pieces.size(), length, width, 1));
        } else if (random.nextBoolean()) {
            int at = 1 + random.nextInt(length - 1);
            cut(at, width, depth - 1, random, pieces);
            cut(length - at, width, depth - 1, random, pieces);
        } else {
            int at = 1 + random.nextInt(width - 1);
            cut(length, at, depth - 1, random, pieces);
            cut(length, width - at, depth - 1, random, pieces);
        }
    }

    // Martello and Vigo 1998 (Management Science 44, 388-399): parts over half a board in both directions go one to a
    // board, whatever their area.
    @Test
    void partsOverHalfABoardTakeABoardEach() {
        var stock = Stock.clear("sheet", 100, 100).costing(1).times(Stock.UNLIMITED);
        var layout = Solved.of(new YieldProblem(
                List.of(stock), List.of(Piece.of("door", 51, 51, 7)), List.of(), Settings.kerf(0).steps(2_000)));
        assertThat(layout.score()).isEqualTo(7);
        assertThat(layout.proved()).isTrue();
    }

    @Test
    void oneBoardThatCannotHoldAllPartsIsProvedTooSmall() {
        // Both boards have the area; the greater alone cannot hold the four parts, each too long to lie beside another.
        var boards = List.of(Stock.clear("greater", 1000, 400), Stock.clear("lesser", 900, 300));
        var parts = List.of(Piece.of("top", 620, 140, 1), Piece.of("shelf", 640, 130, 1),
                Piece.of("side", 600, 120, 2));
        var layout = Solved.of(new YieldProblem(boards, parts, List.of(), Settings.kerf(3).steps(4_000)));
        assertThat(layout.complete()).isTrue();
        assertThat(layout.score()).isEqualTo(1000 * 400 + 900 * 300);
        assertThat(layout.proved()).isTrue();
    }

    @Test
    void knotsTakeTheirAreaOffTheBound() {
        var clear = Stock.clear("plank", 1000, 100);
        var knotty = clear.with(List.of(new Defect.Box(new Rect(400, 0, 200, 100))));
        var parts = List.of(Piece.of("slat", 300, 45, 4));
        var two = new YieldProblem(
                List.of(knotty, Stock.clear("spare", 2000, 100)), parts, List.of(), Settings.kerf(2).steps(2_000));
        var layout = Solved.of(two);
        assertThat(layout.complete()).isTrue();
        assertThat(layout.score()).isEqualTo(100_000);
        assertThat(layout.proved()).isTrue();
    }
}

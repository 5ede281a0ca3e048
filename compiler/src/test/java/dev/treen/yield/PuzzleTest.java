package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts that were sawn from a board without waste find their way back onto it. */
class PuzzleTest {

    private static Layout solved(long length, long width, List<int[]> parts, long steps) {
        var pieces = new ArrayList<Piece>();
        for (int[] p : parts) {
            pieces.add(Piece.of("p" + pieces.size(), p[0], p[1], 1).worth((long) p[0] * p[1]));
        }
        var problem = new YieldProblem(
                List.of(Stock.clear("board", length, width)), pieces, List.of(),
                Settings.kerf(0).aiming(Objective.MOST_VALUE).steps(steps));
        return Solved.of(problem);
    }

    // Generated: each time the largest part is sawn through at a place drawn by lot.
    private static List<int[]> sawn(long seed, int length, int width, int count) {
        var random = new Random(seed);
        var parts = new ArrayList<int[]>();
        parts.add(new int[]{length, width});
        while (parts.size() < count) {
            int at = 0;
            for (int i = 1; i < parts.size(); i++) {
                at = parts.get(i)[0] * parts.get(i)[1] > parts.get(at)[0] * parts.get(at)[1] ? i : at;
            }
            int[] part = parts.remove(at);
            if (part[0] >= part[1]) {
                int cut = 1 + random.nextInt(part[0] - 1);
                parts.add(new int[]{cut, part[1]});
                parts.add(new int[]{part[0] - cut, part[1]});
            } else {
                int cut = 1 + random.nextInt(part[1] - 1);
                parts.add(new int[]{part[0], cut});
                parts.add(new int[]{part[0], part[1] - cut});
            }
        }
        return parts;
    }

    @Test
    void aBoardSawnUpAtRandomIsPutTogetherAgain() {
        for (int seed = 0; seed < 12; seed++) {
            Layout layout = solved(60, 35, sawn(seed, 60, 35, 20), 40_000);
            assertThat(layout.score()).as("seed %d", seed).isEqualTo(60 * 35);
            assertThat(layout.proved()).isTrue();
        }
    }

    // So many parts are not found whole in few steps; strip by strip nearly all of the board is.
    @Test
    void ofManyPartsNearlyAllFindTheirWayBack() {
        for (int seed = 0; seed < 3; seed++) {
            Layout layout = solved(60, 90, sawn(seed, 60, 90, 73), 40_000);
            assertThat(layout.score()).as("seed %d", seed).isBetween(60 * 90 * 97L / 100, 60L * 90);
        }
    }

    // Five parts round a middle one fill the board, but no cut goes through.
    @Test
    void aPinwheelDoesNotGoTogetherWithCutsThatGoThrough() {
        List<int[]> pinwheel = List.of(
                new int[]{4, 2}, new int[]{4, 2}, new int[]{2, 4}, new int[]{2, 4}, new int[]{2, 2});
        Layout layout = solved(6, 6, pinwheel, 4000);
        assertThat(layout.score()).isEqualTo(28);
        assertThat(layout.proved()).isTrue();
    }
}

package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whether all parts fit one board, against published answers, and the least length of a strip. */
class WholeTest {

    private static Layout solved(Stock board, int[][] parts, Settings settings) {
        var pieces = new ArrayList<Piece>();
        for (int[] p : parts) {
            pieces.add(Piece.of("p" + pieces.size(), p[0], p[1], p[2]));
        }
        var problem = new YieldProblem(List.of(board), pieces, List.of(), settings);
        return Solved.of(problem);
    }

    // Instances E08N15 and E05X15 of Clautiaux, Carlier and Moukrim 2007 (European Journal of Operational Research 183,
    // 1196-1211), 20 by 20; that they do not fit with saw-through cuts: runs of a general solver in the data of Becker's
    // thesis (2022).
    @Test
    void partsThatDoNotFitAreProvedNotTo() {
        int[][] first = {
                {7, 7, 2}, {4, 13, 1}, {13, 4, 1}, {3, 17, 1}, {1, 20, 1}, {16, 3, 1},
                {1, 10, 1}, {1, 8, 1}, {1, 5, 2}, {1, 3, 1}, {1, 4, 2}, {3, 3, 1}
        };
        int[][] second = {
                {7, 6, 1}, {9, 6, 1}, {11, 6, 1}, {3, 13, 1}, {2, 10, 1}, {11, 4, 1},
                {5, 13, 1}, {4, 2, 1}, {1, 13, 1}, {1, 2, 1}, {1, 3, 2}, {1, 4, 1},
                {1, 7, 1}, {2, 5, 1}
        };
        for (int[][] parts : List.of(first, second)) {
            Layout layout = solved(Stock.clear("board", 20, 20), parts, Settings.kerf(0));
            assertThat(layout.unplaced()).isNotEmpty();
            assertThat(layout.unplaced()).allSatisfy(left -> assertThat(left.reason()).isInstanceOfSatisfying(
                    Unplaced.Reason.NoRoom.class, room -> assertThat(room.certain()).isTrue()));
        }
    }

    // Five parts round a middle one have no cut that goes through; with one unit more there is one.
    @Test
    void aPinwheelIsLongerThanItsAreaWhenItIsSawn() {
        int[][] pinwheel = {{4, 2, 2}, {2, 4, 2}, {2, 2, 1}};
        Layout layout = solved(Stock.clear("strip", 40, 6), pinwheel,
                Settings.kerf(0).aiming(Objective.SHORTEST_BOARD).steps(2000));
        assertThat(layout.score()).isGreaterThan(6);
        assertThat(layout.bound().value()).isGreaterThan(6);
        assertThat(layout.proved()).isTrue();
    }

    // Hopper and Turton 2001 (European Journal of Operational Research 128, 34-57), C1-P1: cut from 20 by 20 without waste.
    @Test
    void aStripIsCutWithoutWasteWhereThatCanBe() {
        int[][] parts = {
                {12, 2, 1}, {12, 7, 1}, {6, 8, 1}, {6, 3, 1}, {5, 3, 1}, {5, 5, 1},
                {12, 3, 1}, {7, 3, 1}, {7, 5, 1}, {6, 2, 1}, {2, 3, 1}, {2, 4, 1},
                {4, 3, 1}, {4, 4, 1}, {2, 9, 1}, {2, 11, 1}
        };
        Layout layout = solved(Stock.clear("strip", 100, 20), parts,
                Settings.kerf(0).aiming(Objective.SHORTEST_BOARD).steps(20_000));
        assertThat(layout.score()).isEqualTo(20);
        assertThat(layout.proved()).isTrue();
    }
}

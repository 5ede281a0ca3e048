package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Parts that fill the width of their boards, so that only lengths count. */
class LengthsTest {

    private static Layout solved(long bar, List<int[]> parts, long steps) {
        var pieces = new ArrayList<Piece>();
        for (int[] p : parts) {
            pieces.add(Piece.of("p" + pieces.size(), p[0], 1, p[1]));
        }
        var stock = Stock.clear("bar", bar, 1).costing(1).times(Stock.UNLIMITED);
        var problem = new YieldProblem(List.of(stock), pieces, List.of(), Settings.kerf(0).steps(steps));
        return Solved.of(problem);
    }

    // Falkenauer 1996 (Journal of Heuristics 2, 5-30), first of the triplets of 60, in the OR-Library: each bar of 1000
    // holds three parts without waste.
    @Test
    void findsTheTripletsOfFalkenauer() {
        int[] lengths = {
                495, 474, 473, 472, 466, 450, 445, 444, 439, 430, 419, 414, 410, 395, 372, 370, 366, 366, 366, 363, 361,
                357, 355, 351, 350, 350, 347, 320, 315, 307, 303, 299, 298, 298, 292, 288, 287, 283, 275, 275, 274, 273,
                273, 272, 272, 271, 269, 269, 268, 263, 262, 261, 259, 258, 255, 254, 252, 252, 252, 251
        };
        var layout = solved(1000, Arrays.stream(lengths).mapToObj(l -> new int[]{l, 1}).toList(), 20_000);
        assertThat(layout.score()).isEqualTo(20);
        assertThat(layout.proved()).isTrue();
    }

    // Generated: where hundreds of parts are short against their bars, these can be filled up one after the other; no prices
    // are needed, and few steps.
    @Test
    void manyShortPartsFillTheirBarsAtOnce() {
        for (int seed = 0; seed < 5; seed++) {
            var random = new Random(300 + seed);
            var parts = new ArrayList<int[]>();
            for (int i = 0; i < 300; i++) {
                parts.add(new int[]{60 + random.nextInt(300), 1});
            }
            var layout = solved(1000, parts, 3000);
            assertThat(layout.proved()).as("seed %d", seed).isTrue();
            assertThat(layout.steps()).as("seed %d", seed).isLessThan(2900);
        }
    }

    @Test
    void agreesWithTryingEverySetOfPartsOnSmallProblems() {
        for (int seed = 0; seed < 60; seed++) {
            var random = new Random(seed);
            int n = 6 + random.nextInt(7);
            var lengths = new int[n];
            for (int i = 0; i < n; i++) {
                lengths[i] = 20 + random.nextInt(60);
            }
            var layout = solved(100, Arrays.stream(lengths).mapToObj(l -> new int[]{l, 1}).toList(), 5_000);
            int fewest = fewest(lengths, 100);
            assertThat(layout.bound().value()).as("seed %d", seed).isLessThanOrEqualTo(fewest);
            assertThat(layout.score()).as("seed %d", seed).isEqualTo(fewest);
        }
    }

    // By sets of parts: the fewest bars, and of those the least room taken on the last.
    private static int fewest(int[] lengths, int bar) {
        int sets = 1 << lengths.length;
        var bars = new int[sets];
        var room = new int[sets];
        Arrays.fill(bars, Integer.MAX_VALUE);
        bars[0] = 0;
        room[0] = bar;
        for (int set = 0; set < sets; set++) {
            for (int i = 0; i < lengths.length; i++) {
                if ((set & 1 << i) == 0) {
                    boolean fits = room[set] + lengths[i] <= bar;
                    int more = bars[set] + (fits ? 0 : 1);
                    int taken = fits ? room[set] + lengths[i] : lengths[i];
                    int with = set | 1 << i;
                    if (more < bars[with] || (more == bars[with] && taken < room[with])) {
                        bars[with] = more;
                        room[with] = taken;
                    }
                }
            }
        }
        return bars[sets - 1];
    }

    // Paper rolls, a worked example often used in teaching the method; figures and the least number from memory.
    @Test
    void manyCopiesOfFewLengthsAreProvedAtOnce() {
        var layout = solved(5600, List.of(
                new int[]{1380, 22}, new int[]{1520, 25}, new int[]{1560, 12}, new int[]{1710, 14}, new int[]{1820, 18},
                new int[]{1880, 18}, new int[]{1930, 20}, new int[]{2000, 10}, new int[]{2050, 12}, new int[]{2100, 14},
                new int[]{2140, 16}, new int[]{2150, 18}, new int[]{2200, 20}), 20_000);
        assertThat(layout.score()).isEqualTo(73);
        assertThat(layout.proved()).isTrue();
    }
}

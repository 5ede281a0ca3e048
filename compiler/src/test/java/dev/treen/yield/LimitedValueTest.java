package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Most value from one board with limits on copies: against published optima and against all layouts there are. */
class LimitedValueTest {

    private static Layout solved(long length, long width, int[][] parts, long steps) {
        var pieces = new ArrayList<Piece>();
        for (int[] p : parts) {
            pieces.add(Piece.of("p" + pieces.size(), p[0], p[1], p[2]).worth(p[3]));
        }
        var problem = new YieldProblem(
                List.of(Stock.clear("board", length, width)), pieces, List.of(),
                Settings.kerf(0).aiming(Objective.MOST_VALUE).steps(steps));
        return Solved.of(problem);
    }

    // Christofides and Whitlock 1977 (Operations Research 25, 30-44), second and third instance as passed on by Hifi.
    @Test
    void reachesTheOptimaOfChristofidesAndWhitlock() {
        int[][] second = {
                {21, 22, 1, 582}, {31, 13, 1, 403}, {9, 35, 3, 315}, {9, 24, 3, 216}, {30, 7, 2, 210},
                {11, 13, 3, 143}, {10, 14, 1, 140}, {13, 7, 3, 90}, {14, 8, 3, 110}, {12, 8, 3, 94}
        };
        var layout = solved(40, 70, second, 20_000);
        assertThat(layout.score()).isEqualTo(2892);
        assertThat(layout.proved()).isTrue();
        int[][] third = {
                {9, 17, 1, 140}, {19, 11, 4, 160}, {21, 12, 3, 180}, {23, 14, 4, 220}, {15, 24, 1, 240},
                {15, 24, 2, 240}, {16, 25, 4, 260}, {17, 27, 2, 280}, {29, 18, 3, 300}, {31, 21, 3, 320},
                {22, 32, 3, 340}, {33, 23, 4, 360}, {24, 34, 4, 380}, {25, 35, 3, 400}, {26, 36, 4, 410},
                {27, 37, 3, 420}, {28, 38, 4, 440}, {29, 39, 4, 460}, {30, 41, 2, 480}, {31, 43, 4, 500}
        };
        layout = solved(40, 70, third, 20_000);
        assertThat(layout.score()).isEqualTo(1860);
        assertThat(layout.proved()).isTrue();
    }

    // Oliveira and Ferreira 1990 (European Journal of Operational Research 44, 256-266).
    @Test
    void reachesTheOptimaOfOliveiraAndFerreira() {
        int[][] first = {
                {55, 9, 1, 495}, {23, 21, 3, 483}, {31, 15, 1, 465}, {29, 14, 4, 406}, {9, 39, 4, 351},
                {9, 36, 2, 324}, {16, 19, 3, 304}, {11, 16, 2, 176}, {29, 5, 1, 145}, {22, 4, 2, 88}
        };
        assertThat(solved(70, 40, first, 20_000).score()).isEqualTo(2737);
        int[][] second = {
                {36, 16, 4, 576}, {47, 9, 1, 423}, {23, 18, 2, 414}, {40, 10, 1, 400}, {22, 18, 2, 396},
                {19, 19, 4, 361}, {13, 27, 3, 351}, {29, 8, 4, 232}, {13, 16, 2, 208}, {16, 4, 1, 64}
        };
        var layout = solved(70, 40, second, 20_000);
        assertThat(layout.score()).isEqualTo(2690);
        assertThat(layout.proved()).isTrue();
    }

    @Test
    void agreesWithTryingEveryCutOnSmallBoards() {
        for (int seed = 0; seed < 60; seed++) {
            var random = new Random(seed);
            int[][] parts = new int[2 + random.nextInt(3)][];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = new int[]{
                        2 + random.nextInt(6), 2 + random.nextInt(6), 1 + random.nextInt(2), 1 + random.nextInt(30)
                };
            }
            int length = 6 + random.nextInt(5);
            int width = 6 + random.nextInt(5);
            var layout = solved(length, width, parts, 20_000);
            assertThat(layout.score()).as("seed %d", seed).isEqualTo(new EveryCut(parts).most(length, width));
            assertThat(layout.proved()).as("seed %d", seed).isTrue();
        }
    }

    // The sides are no multiple of what the sizes have in common.
    @Test
    void agreesWithTryingEveryCutWhereSizesHaveACommonMeasure() {
        for (int seed = 0; seed < 20; seed++) {
            var random = new Random(500 + seed);
            int[][] parts = new int[3][];
            int[][] tripled = new int[3][];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = new int[]{2 + random.nextInt(5), 2 + random.nextInt(5), 1 + random.nextInt(2), 1 + i * 7};
                tripled[i] = new int[]{3 * parts[i][0], 3 * parts[i][1], parts[i][2], parts[i][3]};
            }
            var layout = solved(3 * 9 + random.nextInt(3), 3 * 8 + random.nextInt(3), tripled, 20_000);
            assertThat(layout.score()).as("seed %d", seed).isEqualTo(new EveryCut(parts).most(9, 8));
            assertThat(layout.proved()).as("seed %d", seed).isTrue();
        }
    }

    // Generated: a board of tens of thousands of units and parts of a few hundred, as often as wished; no table over all
    // cuts fits into memory there.
    @Test
    void wastesNextToNothingOfAVastBoardWithoutLimits() {
        var random = new Random(5);
        int[][] parts = new int[80][];
        for (int i = 0; i < parts.length; i++) {
            int l = 150 + random.nextInt(1500);
            int w = 120 + random.nextInt(1600);
            parts[i] = new int[]{l, w, Piece.UNLIMITED, l * w};
        }
        var layout = solved(26_001, 31_003, parts, 10_000);
        assertThat(layout.score()).isBetween((long) (0.999 * 26_001 * 31_003), 26_001L * 31_003);
    }

    // Generated after the way of Cui and Huang: wide boards, parts of up to 500 units, up to ten of each.
    @Test
    void fillsLargeBoardsWithinTheLimitsAndTheSameWayEveryTime() {
        for (int seed = 1; seed <= 3; seed++) {
            var random = new Random(seed);
            int[][] parts = new int[40][];
            for (int i = 0; i < parts.length; i++) {
                int l = 50 + random.nextInt(450);
                int w = 50 + random.nextInt(450);
                parts[i] = new int[]{l, w, 2 + random.nextInt(9), l * w};
            }
            var layout = solved(2500, 1300, parts, 4000);
            assertThat(layout.score()).as("seed %d", seed).isBetween(2500L * 1300 * 98 / 100, layout.bound().value());
            assertThat(solved(2500, 1300, parts, 4000)).isEqualTo(layout);
        }
    }

    // Where there are more copies than a board can take, limits change nothing; with few steps a table of all cuts is
    // filled once at the most.
    @Test
    void limitsThatDoNotBindLeaveTheValueOfTheBoardWithoutThem() {
        for (int seed = 0; seed < 4; seed++) {
            var random = new Random(70 + seed);
            int[][] parts = new int[10][];
            int[][] endless = new int[10][];
            for (int i = 0; i < parts.length; i++) {
                int l = 50 + random.nextInt(150);
                int w = 50 + random.nextInt(150);
                int worth = l * w * (60 + random.nextInt(40)) / 100;
                parts[i] = new int[]{l, w, 90, worth};
                endless[i] = new int[]{l, w, Piece.UNLIMITED, worth};
            }
            var layout = solved(640, 520, parts, 16_000);
            assertThat(layout.score()).as("seed %d", seed).isEqualTo(solved(640, 520, endless, 16_000).score());
            assertThat(layout.proved()).as("seed %d", seed).isTrue();
        }
    }

    @Test
    void neverClaimsMoreThanItsBoundWhenStoppedEarly() {
        for (int seed = 0; seed < 20; seed++) {
            var random = new Random(1000 + seed);
            int[][] parts = new int[12][];
            for (int i = 0; i < parts.length; i++) {
                int l = 10 + random.nextInt(40);
                int w = 10 + random.nextInt(40);
                parts[i] = new int[]{l, w, 1 + random.nextInt(4), l * w + random.nextInt(300)};
            }
            var few = solved(120, 90, parts, 20);
            var many = solved(120, 90, parts, 30_000);
            assertThat(few.score()).isLessThanOrEqualTo(many.bound().value());
            assertThat(many.score()).isLessThanOrEqualTo(few.bound().value());
            assertThat(many.score()).isGreaterThanOrEqualTo(few.score());
        }
    }

    /** All guillotine layouts by brute force: for each size of board, the sets of parts that it can give. */
    private static final class EveryCut {
        private final int[][] parts;
        private final java.util.Map<Long, java.util.Set<List<Integer>>> known = new java.util.HashMap<>();

        EveryCut(int[][] parts) {
            this.parts = parts;
        }

        long most(int length, int width) {
            long most = 0;
            for (List<Integer> counts : sets(length, width)) {
                long value = 0;
                for (int i = 0; i < parts.length; i++) {
                    value += (long) counts.get(i) * parts[i][3];
                }
                most = Math.max(most, value);
            }
            return most;
        }

        private java.util.Set<List<Integer>> sets(int length, int width) {
            long key = length * 1000L + width;
            var found = known.get(key);
            if (found != null) {
                return found;
            }
            found = new java.util.HashSet<>();
            found.add(java.util.Collections.nCopies(parts.length, 0));
            for (int i = 0; i < parts.length; i++) {
                if (parts[i][0] <= length && parts[i][1] <= width) {
                    var one = new ArrayList<>(java.util.Collections.nCopies(parts.length, 0));
                    one.set(i, 1);
                    found.add(List.copyOf(one));
                }
            }
            for (int x = 1; 2 * x <= length; x++) {
                join(sets(x, width), sets(length - x, width), found);
            }
            for (int y = 1; 2 * y <= width; y++) {
                join(sets(length, y), sets(length, width - y), found);
            }
            known.put(key, found);
            return found;
        }

        private void join(
                java.util.Set<List<Integer>> a, java.util.Set<List<Integer>> b, java.util.Set<List<Integer>> into) {
            for (List<Integer> p : a) {
                for (List<Integer> q : b) {
                    var sum = new ArrayList<Integer>();
                    boolean within = true;
                    for (int i = 0; i < parts.length; i++) {
                        sum.add(p.get(i) + q.get(i));
                        within &= sum.get(i) <= parts[i][2];
                    }
                    if (within) {
                        into.add(List.copyOf(sum));
                    }
                }
            }
        }
    }
}

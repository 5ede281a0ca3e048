package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Lists of fillings against the plain table over every length (Bellman 1957), on drawn instances. */
class KnapsackTest {
    @Test
    void fillsABarAsWellAsTheTableOverAllLengths() {
        var dice = new Dice(11);
        for (int turn = 0; turn < 400; turn++) {
            int n = 1 + dice.below(12);
            int room = 20 + dice.below(180);
            var size = new int[n];
            var price = new long[n];
            var limit = new int[n];
            for (int i = 0; i < n; i++) {
                size[i] = 1 + dice.below(room);
                price[i] = dice.below(50);
                limit[i] = dice.below(5);
            }
            var knapsack = new Knapsack(room, size);
            knapsack.fill(price, limit, 0, true);
            long most = table(room, size, price, limit);
            assertThat(knapsack.bound).isEqualTo(most);
            long length = 0;
            long worth = 0;
            for (int i = 0; i < n; i++) {
                assertThat(knapsack.taken[i]).isBetween(0, limit[i]);
                length += (long) knapsack.taken[i] * size[i];
                worth += knapsack.taken[i] * price[i];
            }
            assertThat(length).isLessThanOrEqualTo(room);
            assertThat(worth).isEqualTo(most);
        }
    }

    @Test
    void findsNothingWhereNothingBeatsTheFloor() {
        var knapsack = new Knapsack(100, new int[]{30, 45});
        knapsack.fill(new long[]{3, 5}, new int[]{3, 2}, 10, true);
        assertThat(knapsack.bound).isEqualTo(10);
        assertThat(knapsack.taken).containsOnly(0);
    }

    private static long table(int room, int[] size, long[] price, int[] limit) {
        var best = new long[room + 1];
        for (int i = 0; i < size.length; i++) {
            for (int copy = 0; copy < limit[i]; copy++) {
                for (int c = room; c >= size[i]; c--) {
                    best[c] = Math.max(best[c], best[c - size[i]] + price[i]);
                }
            }
        }
        return best[room];
    }
}

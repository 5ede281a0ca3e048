package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Packed counts against plain ones, on drawn limits. */
class TallyTest {
    @Test
    void countsAndKeepsToLimitsAsPlainNumbersDo() {
        var dice = new Dice(5);
        for (int turn = 0; turn < 300; turn++) {
            int types = 1 + dice.below(40);
            var limit = new int[types];
            for (int t = 0; t < types; t++) {
                limit[t] = dice.below(5) == 0 ? 0 : 1 + dice.below(dice.below(2) == 0 ? 3 : 3000);
            }
            var tally = new Tally(limit);
            var a = new int[types];
            var b = new int[types];
            boolean within = true;
            for (int t = 0; t < types; t++) {
                a[t] = dice.below(limit[t] + 1);
                b[t] = dice.below(dice.below(3) == 0 ? limit[t] + 1 : limit[t] - a[t] + 1);
                within &= a[t] + b[t] <= limit[t];
            }
            long[] packedA = packed(tally, a);
            long[] packedB = packed(tally, b);
            assertThat(tally.within(packedA, 0, packedB, 0)).isEqualTo(within);
            if (within) {
                var sum = new long[tally.words];
                tally.add(packedA, 0, packedB, 0, sum, 0);
                for (int t = 0; t < types; t++) {
                    assertThat(tally.count(sum, 0, t)).isEqualTo(a[t] + b[t]);
                }
            }
        }
    }

    @Test
    void holdsTheGreatestLimitThereIs() {
        var tally = new Tally(new int[]{Integer.MAX_VALUE, 1});
        long[] one = packed(tally, new int[]{1, 1});
        long[] all = packed(tally, new int[]{1, 0});
        assertThat(tally.within(one, 0, all, 0)).isTrue();
        assertThat(tally.within(one, 0, one, 0)).isFalse();
    }

    private static long[] packed(Tally tally, int[] counts) {
        var packed = new long[tally.words];
        for (int t = 0; t < counts.length; t++) {
            for (int c = 0; c < counts[t]; c++) {
                var one = new long[tally.words];
                tally.one(t, one, 0);
                tally.add(packed, 0, one, 0, packed, 0);
            }
        }
        return packed;
    }
}

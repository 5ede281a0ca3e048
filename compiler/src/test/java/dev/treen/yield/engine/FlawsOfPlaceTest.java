package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Places between defects, against looking at every unit; places and defects invented. */
class FlawsOfPlaceTest {

    /** Every place that a part may have above or below defects begins where it can go no lower, or ends where it can go no higher. */
    @Test
    void theEndsOfGapsAreAllThatLookingAtEveryUnitFinds() {
        for (int seed = 0; seed < 300; seed++) {
            var random = new Random(seed);
            List<long[]> flaws = new ArrayList<>();
            for (int i = random.nextInt(7); i > 0; i--) {
                long x = random.nextInt(60) - 5L;
                long y = random.nextInt(60) - 5L;
                flaws.add(new long[]{x, y, x + random.nextInt(12) - 2, y + random.nextInt(12) - 2});
            }
            flaws.sort(Comparator.<long[]>comparingLong(box -> box[1]).thenComparingLong(box -> box[0]));
            long[] flat = flaws.stream().flatMapToLong(java.util.Arrays::stream).toArray();
            long l = 1L + random.nextInt(20);
            long w = 1L + random.nextInt(20);
            long x = random.nextInt(40);
            var way = new FlawsOfPlace();
            way.keep(flat, x, 0, l, 60);
            var found = new TreeSet<Long>();
            for (int i = way.gaps(0, 60, w); i > 0; i--) {
                found.add(way.gapEnd(i - 1));
            }
            var free = new TreeSet<Long>();
            for (long y = 0; y + w <= 60; y++) {
                if (clear(flat, x, y, l, w)) {
                    free.add(y);
                }
            }
            var ends = new TreeSet<Long>();
            for (long y : free) {
                if (!free.contains(y - 1) || !free.contains(y + 1)) {
                    ends.add(y);
                }
            }
            assertThat(free).as("seed %d", seed).containsAll(found);
            assertThat(found).as("seed %d", seed).containsAll(ends);
        }
    }

    private static boolean clear(long[] flaws, long x, long y, long l, long w) {
        for (int i = 0; i < flaws.length; i += 4) {
            if (x < flaws[i + 2] && x + l > flaws[i] && y < flaws[i + 3] && y + w > flaws[i + 1]) {
                return false;
            }
        }
        return true;
    }
}

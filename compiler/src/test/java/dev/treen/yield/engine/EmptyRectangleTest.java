package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** The sweep against a plain look at all rectangles between sides, on flaws strewn by chance. */
class EmptyRectangleTest {
    private static final long LONG = 60;
    private static final long WIDE = 40;

    private static boolean clear(long[] d, long x1, long y1, long x2, long y2) {
        for (int i = 0; i < d.length; i += 4) {
            if (d[i] < x2 && d[i + 2] > x1 && d[i + 1] < y2 && d[i + 3] > y1) {
                return false;
            }
        }
        return true;
    }

    private static long[] sides(long[] d, int first, long end) {
        return LongStream.concat(LongStream.of(0, end), LongStream.range(0, d.length / 4)
                .flatMap(i -> LongStream.of(d[(int) (4 * i + first)], d[(int) (4 * i + first + 2)])))
                .map(side -> Math.clamp(side, 0, end))
                .distinct()
                .toArray();
    }

    private static long most(long[] d, long leastL, long leastW) {
        long most = 0;
        for (long x1 : sides(d, 0, LONG)) {
            for (long x2 : sides(d, 0, LONG)) {
                for (long y1 : sides(d, 1, WIDE)) {
                    for (long y2 : sides(d, 1, WIDE)) {
                        boolean large = x2 - x1 >= leastL && y2 - y1 >= leastW;
                        if (large && (x2 - x1) * (y2 - y1) > most && clear(d, x1, y1, x2, y2)) {
                            most = (x2 - x1) * (y2 - y1);
                        }
                    }
                }
            }
        }
        return most;
    }

    @Test
    void theLargestIsFound() {
        Random chance = new Random(7);
        for (int round = 0; round < 300; round++) {
            long[] d = new long[4 * (1 + chance.nextInt(8))];
            for (int i = 0; i < d.length; i += 4) {
                d[i] = chance.nextLong(70) - 8;
                d[i + 1] = chance.nextLong(50) - 8;
                d[i + 2] = d[i] + 1 + chance.nextLong(9);
                d[i + 3] = d[i + 1] + 1 + chance.nextLong(9);
            }
            long leastL = 1 + chance.nextLong(12);
            long leastW = 1 + chance.nextLong(12);
            long[] found = EmptyRectangle.in(d, 0, 0, LONG, WIDE, leastL, leastW, 0);
            long area = found == null ? 0 : found[2] * found[3];
            assertThat(area).as("round %d", round).isEqualTo(most(d, leastL, leastW));
            if (found != null) {
                assertThat(clear(d, found[0], found[1], found[0] + found[2], found[1] + found[3])).isTrue();
            }
        }
    }
}

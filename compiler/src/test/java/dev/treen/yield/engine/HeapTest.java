package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Numbers in the order of their promise, against a sorted list; promises drawn, many of them equal. */
class HeapTest {
    @Test
    void theMostComesFirstAndOfEqualsTheLatest() {
        for (int seed = 0; seed < 50; seed++) {
            var random = new Random(seed);
            double[] promise = random.doubles(3000, -3, 3).map(each -> Math.rint(4 * each) / 4).toArray();
            var heap = new Heap();
            for (int n = 0; n < promise.length; n++) {
                heap.push(n, Heap.key(promise[n]));
            }
            int[] sorted = IntStream.range(0, promise.length).boxed()
                    .sorted(Comparator.comparingDouble((Integer n) -> -promise[n] + 0.0)
                            .thenComparing(Comparator.reverseOrder()))
                    .mapToInt(Integer::intValue).toArray();
            assertThat(IntStream.range(0, promise.length).map(i -> heap.pop()).toArray()).as("seed %d", seed)
                    .isEqualTo(sorted);
            assertThat(heap.size()).isZero();
        }
    }
}

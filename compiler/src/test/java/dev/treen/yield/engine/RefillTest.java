package dev.treen.yield.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.yield.Cancel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Bars cut up at random are put together again from bars filled as the parts come; lengths invented. */
class RefillTest {
    private static final int ROOM = 1000;

    @Test
    void findsTheBarsThatWereCutUp() {
        int found = 0;
        for (int seed = 0; seed < 20; seed++) {
            var random = new Random(seed);
            List<Integer> lengths = new ArrayList<>();
            for (int bar = 0; bar < 12; bar++) {
                int rest = ROOM;
                while (rest > 0) {
                    int part = rest < 250 ? rest : Math.min(rest, 100 + random.nextInt(400));
                    lengths.add(part);
                    rest -= part;
                }
            }
            int[] length = lengths.stream().mapToInt(Integer::intValue).distinct().toArray();
            int[] need = Arrays.stream(length)
                    .map(each -> (int) lengths.stream().filter(other -> other == each).count())
                    .toArray();
            List<int[]> cut = asTheyCome(length, need);
            while (cut.size() > 12) {
                var refill = Refill.of(ROOM, length, cut, new Dice(seed));
                List<int[]> fewer = refill == null ? List.of()
                        : refill.run(length.length, new Budget(20_000, Optional.empty(), Cancel.never()));
                if (fewer.isEmpty()) {
                    break;
                }
                assertThat(fewer).hasSize(cut.size() - 1);
                assertThat(fewer).allMatch(bar -> used(length, bar) <= ROOM);
                assertThat(IntStream.range(0, need.length)
                        .map(i -> fewer.stream().mapToInt(bar -> bar[i]).sum())
                        .toArray()).containsExactly(need);
                cut = fewer;
            }
            found += cut.size() == 12 ? 1 : 0;
        }
        assertThat(found).isGreaterThanOrEqualTo(18);
    }

    /** 20 parts of 600 need 20 bars; nothing is promised that does not fit, and the steps end it. */
    @Test
    void endsWhereThereIsNothingToFind() {
        int[] length = {600};
        Refill refill = Objects.requireNonNull(Refill.of(ROOM, length, asTheyCome(length, new int[]{20}), new Dice(1)));
        assertThat(refill.run(1, new Budget(200, Optional.empty(), Cancel.never()))).isEmpty();
    }

    private static int used(int[] length, int[] bar) {
        return IntStream.range(0, length.length).map(i -> length[i] * bar[i]).sum();
    }

    private static List<int[]> asTheyCome(int[] length, int[] need) {
        List<int[]> cut = new ArrayList<>();
        for (int i = 0; i < length.length; i++) {
            for (int k = 0; k < need[i]; k++) {
                int item = i;
                int[] bar = cut.stream().filter(each -> used(length, each) + length[item] <= ROOM).findFirst()
                        .orElseGet(() -> {
                            cut.add(new int[length.length]);
                            return cut.getLast();
                        });
                bar[i]++;
            }
        }
        return cut;
    }
}

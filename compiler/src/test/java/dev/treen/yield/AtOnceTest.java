package dev.treen.yield;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class AtOnceTest {
    /** Two tasks that wait for each other end only where both run. */
    @Test
    void tasksRunAtTheSameTime() {
        var both = new CountDownLatch(2);
        Supplier<Boolean> meets = () -> {
            both.countDown();
            try {
                return both.await(30, TimeUnit.SECONDS);
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        };
        assertThat(AtOnce.on(2, () -> AtOnce.all(List.of(meets, meets)))).containsExactly(true, true);
    }

    @Test
    void resultsComeInTheOrderOfTheTasksAndWorkWithinWorkEnds() {
        for (int threads : List.of(1, 2, 8)) {
            List<List<Integer>> results = AtOnce.on(threads,
                    () -> AtOnce.all(tasks(20, i -> AtOnce.all(tasks(5, j -> 10 * i + j)))));
            assertThat(results).hasSize(20);
            for (int i = 0; i < 20; i++) {
                assertThat(results.get(i)).containsExactly(10 * i, 10 * i + 1, 10 * i + 2, 10 * i + 3, 10 * i + 4);
            }
        }
    }

    /** Memory is bounded by how many run at once, within each other too. */
    @Test
    void noMoreRunThanThereAreThreads() {
        var running = new AtomicInteger();
        var most = new AtomicInteger();
        AtOnce.on(3, () -> AtOnce.all(tasks(6, i -> AtOnce.all(tasks(6, j -> {
            most.accumulateAndGet(running.incrementAndGet(), Math::max);
            Thread.onSpinWait();
            return running.decrementAndGet();
        })))));
        assertThat(most.get()).isBetween(1, 3);
    }

    @Test
    void theFirstFailureIsThrownWhenAllAreThroughAndThreadsAreFreeAgain() {
        for (int times = 0; times < 10; times++) {
            var through = new AtomicInteger();
            assertThatThrownBy(() -> AtOnce.on(2, () -> AtOnce.all(tasks(8, i -> {
                through.incrementAndGet();
                if (i == 3) {
                    throw new IllegalArgumentException("three");
                }
                if (i == 5) {
                    throw new StackOverflowError("five");
                }
                return i;
            })))).isInstanceOf(IllegalArgumentException.class).hasMessage("three");
            assertThat(through.get()).isEqualTo(8);
        }
        assertThat(AtOnce.<Integer>all(List.of())).isEmpty();
    }

    private static <T> List<Supplier<T>> tasks(int count, java.util.function.IntFunction<T> task) {
        List<Supplier<T>> tasks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int number = i;
            tasks.add(() -> task.apply(number));
        }
        return tasks;
    }
}

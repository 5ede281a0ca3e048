package dev.treen.yield;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

/**
 * Work that can be done in any order, done on as many processors as are free, and its results in the order in which it was
 * asked for: what comes of it is the same on one processor and on many. The thread that asks works itself, so that work
 * within work never waits for a thread; others only help. All searches of a process share these others, of which there are few,
 * because each search holds tables of its own: memory stays within so many times what one takes.
 */
public final class AtOnce {
    /** More threads than this would take more memory than they save time; the figure is our own. */
    private static final int MOST = 4;

    /** As the other threads that search have it: trees of cuts are walked by recursion. */
    private static final long STACK = 16L << 20;

    private static final Semaphore PROCESSORS = new Semaphore(
            Math.min(MOST, Runtime.getRuntime().availableProcessors()) - 1);

    private static final ScopedValue<Semaphore> HELPERS = ScopedValue.newInstance();

    private AtOnce() {
    }

    /**
     * The results of {@code tasks}, in their order. A task must not write to what another one reads. Where some fail, the
     * failure of the first of them is thrown when all are through.
     */
    public static <T> List<T> all(List<? extends Supplier<? extends T>> tasks) {
        return new Round<T>(tasks).run();
    }

    /** Does {@code work} with at most so many threads, itself counted, whatever there are of processors. */
    public static <T> T on(int threads, Supplier<T> work) {
        return ScopedValue.where(HELPERS, new Semaphore(threads - 1)).call(work::get);
    }

    /** What came of one task. */
    private sealed interface Done<T> {
        record Result<T>(T value) implements Done<T> {}

        record Fault<T>(RuntimeException what) implements Done<T> {}

        record Breakdown<T>(Error what) implements Done<T> {}
    }

    private static final class Round<T> {
        private final List<? extends Supplier<? extends T>> tasks;
        private final Map<Integer, Done<T>> done = new ConcurrentHashMap<>();
        private final AtomicInteger next = new AtomicInteger();
        private final Semaphore helpers = HELPERS.orElse(PROCESSORS);

        Round(List<? extends Supplier<? extends T>> tasks) {
            this.tasks = List.copyOf(tasks);
        }

        List<T> run() {
            List<Thread> others = helpers();
            work();
            others.forEach(Round::join);
            List<T> results = new ArrayList<>();
            for (int i = 0; i < tasks.size(); i++) {
                switch (Objects.requireNonNull(done.get(i))) {
                    case Done.Result<T>(T value) -> results.add(value);
                    case Done.Fault<T>(RuntimeException what) -> throw what;
                    case Done.Breakdown<T>(Error what) -> throw what;
                }
            }
            return List.copyOf(results);
        }

        private List<Thread> helpers() {
            List<Thread> others = new ArrayList<>();
            while (others.size() + 1 < tasks.size() && helpers.tryAcquire()) {
                try {
                    others.add(Thread.ofPlatform().daemon().name("treen-at-once").stackSize(STACK).start(this::help));
                } catch (OutOfMemoryError _) {
                    // The machine gives no more threads; the work is done by those that there are.
                    helpers.release();
                    break;
                }
            }
            return others;
        }

        private void help() {
            try {
                ScopedValue.where(HELPERS, helpers).run(this::work);
            } finally {
                helpers.release();
            }
        }

        private void work() {
            for (int i = next.getAndIncrement(); i < tasks.size(); i = next.getAndIncrement()) {
                done.put(i, done(tasks.get(i)));
            }
        }

        // A failure is carried to the thread that asked, whatever it is.
        private static <T> Done<T> done(Supplier<? extends T> task) {
            try {
                return new Done.Result<>(task.get());
            } catch (RuntimeException fault) {
                return new Done.Fault<>(fault);
            } catch (Error breakdown) {
                return new Done.Breakdown<>(breakdown);
            }
        }

        private static void join(Thread thread) {
            boolean interrupted = false;
            while (thread.isAlive()) {
                try {
                    thread.join();
                } catch (InterruptedException _) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}

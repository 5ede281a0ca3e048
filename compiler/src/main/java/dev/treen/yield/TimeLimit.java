package dev.treen.yield;

import java.lang.management.ManagementFactory;
import java.time.Duration;

/**
 * When a search stops, besides its steps.
 *
 * @param length how long it may take
 * @param clock what counts as time
 */
public record TimeLimit(Duration length, Clock clock) {

    /** What counts as time; a limit holds for the thread that searches. */
    public enum Clock {
        /** Time as it passes for whoever waits. */
        WALL,
        /** Time that the processor gave to the thread that asks: the same beside other work, so fit for measuring. */
        PROCESSOR;

        /** Nanoseconds since some fixed moment. */
        public long nanos() {
            return switch (this) {
                case WALL -> System.nanoTime();
                case PROCESSOR -> ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            };
        }
    }
}

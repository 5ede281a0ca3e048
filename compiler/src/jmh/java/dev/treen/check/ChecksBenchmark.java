package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.joinery.Joinery;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** All checks over a project of 100 parts: twenty boxes with floating bases. Goal: 2 ms at once, warm; the median counts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ChecksBenchmark {
    private Joined joined = joined(20);

    @Setup
    public void setUp() {
        joined = joined(20);
    }

    private static Joined joined(int boxes) {
        return Joinery.join(ManyParts.project(ManyParts.boxes(boxes)));
    }

    /** What runs at every keystroke, nothing of it remembered: all rules of movement, fit and strength. */
    @Benchmark
    public Checked atOnce() {
        return Checks.quickly(joined, new Remembered());
    }

    /** With what finished bodies show, which the editor looks at when typing rests. */
    @Benchmark
    public Checked all() {
        return Checks.check(joined);
    }
}

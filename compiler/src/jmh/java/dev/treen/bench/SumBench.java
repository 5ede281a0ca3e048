package dev.treen.bench;

import dev.treen.quantity.Length;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** What exactness costs: a thousand sixty-fourths of an inch, added exactly and as double. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@State(Scope.Benchmark)
public class SumBench {

    private static final int TERMS = 1000;

    private final Length step = Length.ofInches(1, 64);
    private final double stepInMm = 25.4 / 64;

    /** As the compiler adds. */
    @Benchmark
    public Length exactly() {
        Length sum = Length.ZERO;
        for (int i = 0; i < TERMS; i++) {
            sum = sum.plus(step);
        }
        return sum;
    }

    /** What it is compared with. */
    @Benchmark
    public double asDouble() {
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            sum += stepInMm;
        }
        return sum;
    }
}

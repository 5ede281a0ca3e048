package dev.treen.solid;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.apache.commons.numbers.fraction.BigFraction;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The step nearly all work consists of, the value of a plane at a corner, in short fractions and in BigFraction: corners
 * in sixty-fourths of an inch, which are 127/320 mm, and planes of slope 1:8.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class RatBenchmark {
    private static final int CORNERS = 100;

    private final Rat[][] rats = new Rat[CORNERS][3];
    private final BigFraction[][] fractions = new BigFraction[CORNERS][3];

    /** Chooses the corners. */
    @Setup
    public void choose() {
        Random random = new Random(1);
        for (int i = 0; i < CORNERS; i++) {
            for (int k = 0; k < 3; k++) {
                fractions[i][k] = BigFraction.of(127 * (1 + random.nextInt(2000)), 320);
                rats[i][k] = Rat.of(fractions[i][k]);
            }
        }
    }

    /** With short fractions. */
    @Benchmark
    public int rat() {
        Rat a = Rat.of(1);
        Rat b = Rat.of(8);
        Rat offset = Rat.of(1270, 8);
        int inside = 0;
        for (Rat[] p : rats) {
            inside += p[0].times(a).plus(p[1].times(b)).plus(p[2].times(a)).minus(offset).signum();
        }
        return inside;
    }

    /** With BigFraction. */
    @Benchmark
    public int bigFraction() {
        BigFraction a = BigFraction.of(1);
        BigFraction b = BigFraction.of(8);
        BigFraction offset = BigFraction.of(1270, 8);
        int inside = 0;
        for (BigFraction[] p : fractions) {
            inside += p[0].multiply(a).add(p[1].multiply(b)).add(p[2].multiply(a)).subtract(offset).signum();
        }
        return inside;
    }
}

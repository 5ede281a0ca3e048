package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.joinery.Joinery;
import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
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
        StringBuilder text = new StringBuilder("""
                project "Row of boxes" { climate { humidity 35%..65%; temperature 18degC..24degC } }
                let wall = 9
                let inside = 160 x 80 x 70
                board plank { species black_cherry; size 9000 x 140 x 27; rings flat; moisture 9% }
                """);
        for (int i = 0; i < boxes; i++) {
            text.append("""
                    part front%1$d { length 160; width 84; thickness 9; from plank; place { length right; width up; at %2$d, -9, 0 } }
                    part back%1$d like front%1$d { place { at %2$d, 80, 0 } }
                    part left%1$d { length 80; width 84; thickness 9; from plank; place { length back; width up; at %2$d - 9, 0, 0 } }
                    part right%1$d like left%1$d { place { at %2$d + 160, 0, 0 } }
                    part base%1$d { length 160; width 80; thickness 7; from plank; place { length right; width back; at %2$d, 0, 5 } }
                    joint mitre front%1$d to left%1$d, left%1$d to back%1$d, back%1$d to right%1$d, right%1$d to front%1$d
                    joint groove base%1$d into front%1$d, back%1$d, left%1$d, right%1$d { wide 5; deep 4; gap auto }
                    """.formatted(i, 200 * i));
        }
        SourceFile file = new SourceFile("boxes.treen", text.toString());
        return Joinery.join(
                Evaluator.evaluate(Parser.parse(file), FileLoader.NONE, JointKinds.schemas()).project());
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

package dev.treen.model;

import dev.treen.joinery.JointKinds;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Lines a second through the parser and the evaluation: a project of 1,000 lines, written out or by pattern. */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.Throughput, Mode.SingleShotTime})
@OutputTimeUnit(TimeUnit.SECONDS)
public class EvaluateBenchmark {
    private static final int LINES = 1_000;

    private final SourceFile writtenOut = writtenOut();
    private final SourceFile byPattern = byPattern();

    private static SourceFile writtenOut() {
        StringBuilder text = new StringBuilder("project \"Many\" { units mm }\nlet wall = 9\n");
        for (int i = 0; i < (LINES - 2) / 6; i++) {
            text.append("part p").append(i).append(" {\n  length     160 + 2 * wall\n  width      84\n")
                    .append("  thickness  wall\n  place      { length right; width up; at ").append(200 * i)
                    .append(", 0, 0 }\n}\n");
        }
        return new SourceFile("many.treen", text.toString());
    }

    private static SourceFile byPattern() {
        StringBuilder text = new StringBuilder("project \"Many\" { units mm }\nuse \"treen/box\"\n");
        for (int i = 0; i < (LINES - 2) / 5; i++) {
            text.append("box b").append(i).append(" {\n  inside  160 x 80 x 70\n  lid     sliding\n  place   { at ")
                    .append(300 * i).append(", 0, 0 }\n}\n");
        }
        return new SourceFile("many.treen", text.toString());
    }

    /** Parts one by one: 166 of them. */
    @Benchmark
    @OperationsPerInvocation(LINES)
    public Evaluation linesWrittenOut() {
        return Evaluator.evaluate(Parser.parse(writtenOut), FileLoader.NONE, JointKinds.schemas());
    }

    /** Boxes of six parts: 1,194 parts of 199 boxes. */
    @Benchmark
    @OperationsPerInvocation(LINES)
    public Evaluation linesByPattern() {
        return Evaluator.evaluate(Parser.parse(byPattern), FileLoader.NONE, JointKinds.schemas());
    }
}

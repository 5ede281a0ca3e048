package dev.treen.check;

import dev.treen.drawing.DrawingSet;
import dev.treen.drawing.Drawings;
import dev.treen.drawing.Figures;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GlueFaces;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Joinery;
import dev.treen.model.Project;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Drawing;
import dev.treen.solid.Overlap;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.solid.View;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How work on the bodies of a project grows with its parts: separate boxes of five parts, side by side, and one carcase
 * with shelf upon shelf. Both are made up.
 *
 * <p>Beside the time that JMH takes on the wall it counts processor time of the thread ({@code processorMs}), which says
 * more on a machine busy with other work. DEVELOPERS.md has the figures.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class BodiesBenchmark {

    /** What kind of project. */
    @Param({"boxes", "carcase", "store"})
    public String kind = "boxes";

    /** About how many parts. */
    @Param({"10", "100", "1000"})
    public int parts = 10;

    private Project project = ManyParts.project("");
    private Joined joined = Joinery.join(project);
    private Standing standing = Standing.of(joined);

    /** Reads the project once; its bodies are cut anew where that is asked for. */
    @Setup(Level.Trial)
    public void setUp() {
        project = ManyParts.project(switch (kind) {
            case "boxes" -> ManyParts.boxes(parts / 5);
            case "carcase" -> ManyParts.carcase(parts - 2);
            default -> ManyParts.store(parts);
        });
        joined = Joinery.join(project);
        standing = Standing.of(joined);
    }

    /** Makes the joints and cuts all bodies. */
    @Benchmark
    public long build(Processor processor) {
        return Joinery.join(project).parts().stream().flatMap(part -> part.solid().stream())
                .mapToLong(solid -> solid.pieces().size()).sum();
    }

    /** Finds all pairs that share volume. */
    @Benchmark
    public List<Overlap> overlap(Processor processor) {
        return Overlap.among(standing.all());
    }

    /** All checks of finished bodies but the way of putting them together, whose answers are remembered. */
    @Benchmark
    public int checks(Processor processor) {
        return new PartsClash().run(joined, standing).size()
                + new JointTouches().run(joined, standing).size()
                + new SlidesOut().run(joined, standing).size()
                + new GrooveShows().run(joined, standing).size()
                + new CutsMeet().run(joined, standing).size()
                + new WallThin().run(joined, standing).size();
    }

    /** Takes each group of joined parts apart, within the bound that a check keeps to. */
    @Benchmark
    public int goesTogether(Processor processor) {
        List<Vec3> ways = Arrays.stream(Side.values()).map(Side::unit).toList();
        return standing.joinedGroups(joined.joints()).stream()
                .mapToInt(group -> AssemblyOrder.of(group, ways, GoesTogether.MOST).hashCode())
                .sum();
    }

    /** Draws all parts from the front with hidden lines. */
    @Benchmark
    public Drawing frontView(Processor processor) {
        return Drawing.lines(standing.all(), View.FRONT);
    }

    /** All drawings of the project: every part's sheet, the whole assembled and taken apart. */
    @Benchmark
    public DrawingSet drawings(Processor processor) {
        return Drawings.all(joined, Figures.of(joined.project().settings()));
    }

    /** All parts with the faces that their joints touch on. */
    @Benchmark
    public double glue(Processor processor) {
        return GlueFaces.of(joined).stream().mapToDouble(GlueFaces::total).sum();
    }

    /** The surfaces of all parts, from fresh bodies. */
    @Benchmark
    public double surfaces(Processor processor) {
        return Joinery.join(project).parts().stream()
                .map(FinishedPart::solid)
                .flatMap(Optional::stream)
                .mapToDouble(solid -> solid.surface().area())
                .sum();
    }

    /** How much processor time one call takes. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Processor {
        private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        private long calls;
        private long nanoseconds;
        private long began;

        /** Forgets the iteration before. */
        @Setup(Level.Iteration)
        public void clear() {
            calls = 0;
            nanoseconds = 0;
        }

        /** Looks at the clock. */
        @Setup(Level.Invocation)
        public void begin() {
            began = threads.getCurrentThreadCpuTime();
        }

        /** Looks at it again. */
        @TearDown(Level.Invocation)
        public void end() {
            nanoseconds += threads.getCurrentThreadCpuTime() - began;
            calls++;
        }

        /** Milliseconds a call. */
        public double processorMs() {
            return calls == 0 ? 0 : nanoseconds / 1e6 / calls;
        }
    }
}

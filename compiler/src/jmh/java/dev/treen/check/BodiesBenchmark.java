package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GlueFaces;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Joinery;
import dev.treen.joinery.JointKinds;
import dev.treen.model.Evaluator;
import dev.treen.model.FileLoader;
import dev.treen.model.Project;
import dev.treen.solid.AssemblyOrder;
import dev.treen.solid.Drawing;
import dev.treen.solid.Overlap;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.solid.View;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Parser;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.annotations.Warmup;

/**
 * How work on the bodies of a project grows with its parts: separate boxes of five parts, side by side, and one carcase
 * with shelf upon shelf. Both are made up.
 *
 * <p>From 100 to 1,000 parts one run on a machine busy with other work took so many times as long (wall time, boxes and
 * carcase): build 16 and 14, overlap 16 and 9, checks 7 and 6, front view 10 and 18.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class BodiesBenchmark {

    /** What kind of project. */
    @Param({"boxes", "carcase"})
    public String kind = "boxes";

    /** About how many parts. */
    @Param({"10", "100", "1000"})
    public int parts = 10;

    private Project project = project("");
    private Joined joined = Joinery.join(project);
    private Standing standing = Standing.of(joined);

    /** Reads the project once; its bodies are cut anew where that is asked for. */
    @Setup(Level.Trial)
    public void setUp() {
        project = project(kind.equals("boxes") ? boxes(parts / 5) : carcase(parts - 2));
        joined = Joinery.join(project);
        standing = Standing.of(joined);
    }

    /** Makes the joints and cuts all bodies. */
    @Benchmark
    public long build() {
        return Joinery.join(project).parts().stream().flatMap(part -> part.solid().stream())
                .mapToLong(solid -> solid.pieces().size()).sum();
    }

    /** Finds all pairs that share volume. */
    @Benchmark
    public List<Overlap> overlap() {
        return Overlap.among(standing.all());
    }

    /** All checks of finished bodies but the way of putting them together, whose answers are remembered. */
    @Benchmark
    public int checks() {
        return new PartsClash().run(joined, standing).size()
                + new JointTouches().run(joined, standing).size()
                + new SlidesOut().run(joined, standing).size()
                + new GrooveShows().run(joined, standing).size()
                + new CutsMeet().run(joined, standing).size()
                + new WallThin().run(joined, standing).size();
    }

    /** Takes each group of joined parts apart, within the bound that a check keeps to. */
    @Benchmark
    public int goesTogether() {
        List<Vec3> ways = Arrays.stream(Side.values()).map(Side::unit).toList();
        return standing.joinedGroups(joined.joints()).stream()
                .mapToInt(group -> AssemblyOrder.of(group, ways, GoesTogether.MOST).hashCode())
                .sum();
    }

    /** Draws all parts from the front with hidden lines. */
    @Benchmark
    public Drawing frontView() {
        return Drawing.lines(standing.all(), View.FRONT);
    }

    /** All parts with the faces that their joints touch on. */
    @Benchmark
    public double glue() {
        return GlueFaces.of(joined).stream().mapToDouble(GlueFaces::total).sum();
    }

    /** The surfaces of all parts, from fresh bodies. */
    @Benchmark
    public double surfaces() {
        return Joinery.join(project).parts().stream()
                .map(FinishedPart::solid)
                .flatMap(Optional::stream)
                .mapToDouble(solid -> solid.surface().area())
                .sum();
    }

    private static Project project(String text) {
        SourceFile file = new SourceFile("many.treen", """
                project "Many parts" { climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 9000 x 400 x 27; rings flat; moisture 9% }
                """ + text);
        return Evaluator.evaluate(Parser.parse(file), FileLoader.NONE, JointKinds.schemas()).project();
    }

    private static String boxes(int boxes) {
        StringBuilder text = new StringBuilder();
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
        return text.toString();
    }

    private static String carcase(int shelves) {
        StringBuilder text = new StringBuilder("""
                part left  { length %1$d; width 200; thickness 18; from plank; place { length up; width back; at -18, 0, 0 } }
                part right like left { place { at 600, 0, 0 } }
                """.formatted(60 * shelves + 60));
        for (int i = 0; i < shelves; i++) {
            text.append("""
                    part shelf%1$d { length 600; width 200; thickness 16; from plank; place { length right; width back; at 0, 0, %2$d } }
                    joint housing shelf%1$d into left, right { deep 5 }
                    """.formatted(i, 60 * i + 30));
        }
        return text.toString();
    }
}

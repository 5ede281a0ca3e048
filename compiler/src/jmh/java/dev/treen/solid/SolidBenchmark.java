package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How work on solids grows with the number of parts: rows of mitred, grooved boxes, each of five parts, stacked on a
 * square floor, with bases a little too large so that they share volume with the walls.
 *
 * <p>Best processor times seen for 10, 100 and 1000 parts, in milliseconds (JDK 25, a busy machine): build and overlap
 * 0.36, 4.3, 39; overlap alone 0.16, 2.1, 20; contact 0.29, 3.2, 26; front view 1.1, 16, 293. The first three are near
 * linear; the view also grows with the number of rows behind one another.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class SolidBenchmark {

    /** The number of parts. */
    @Param({"10", "100", "1000"})
    public int parts;

    private List<Placed> built = List.of();

    /** Builds once, for the benchmarks that only ask. */
    @Setup
    public void build() {
        built = buildAll();
    }

    /** Cuts all parts and finds all pairs that share volume. */
    @Benchmark
    public List<Overlap> buildAndOverlap() {
        return Overlap.among(buildAll());
    }

    /** Finds all pairs that share volume. */
    @Benchmark
    public List<Overlap> overlap() {
        return Overlap.among(built);
    }

    /** Finds all areas of contact. */
    @Benchmark
    public List<Contact.Pair> contact() {
        return Contact.among(built);
    }

    /** Draws all parts from the front with hidden lines. */
    @Benchmark
    public Drawing frontView() {
        return Drawing.lines(built, View.FRONT);
    }

    private List<Placed> buildAll() {
        List<Placed> all = new ArrayList<>(parts);
        int side = (int) Math.ceil(Math.sqrt(parts / 5.0));
        for (int i = 0; all.size() < parts; i++) {
            box(Vec3.of(178L * (i % side), 98L * (i / side), 0), i, all);
        }
        return all.subList(0, parts);
    }

    private static void box(Vec3 at, int number, List<Placed> all) {
        Origin groove = Origin.cut("groove");
        Origin mitre = Origin.cut("mitre");
        Solid front = Solid.of(Box.of(-9, -9, 0, 169, 0, 84))
                .keep(Plane.through(Vec3.ZERO, Vec3.of(-1, 1, 0)), mitre)
                .keep(Plane.through(Vec3.of(160, 0, 0), Vec3.of(1, 1, 0)), mitre)
                .subtract(Convex.box(Box.of(-9, -4, 5, 169, 0, 10), groove));
        Solid left = Solid.of(Box.of(-9, -9, 0, 0, 89, 84))
                .keep(Plane.through(Vec3.ZERO, Vec3.of(1, -1, 0)), mitre)
                .keep(Plane.through(Vec3.of(0, 80, 0), Vec3.of(1, 1, 0)), mitre)
                .subtract(Convex.box(Box.of(-4, -9, 5, 0, 89, 10), groove));
        List<Solid> five = List.of(front, left, front.turn(Turn.mirror(Axis.Y)).translate(Vec3.of(0, 80, 0)),
                left.turn(Turn.mirror(Axis.X)).translate(Vec3.of(160, 0, 0)),
                Solid.of(Box.of(-5, -3, 5, 165, 83, 10)));
        for (Solid solid : five) {
            all.add(new Placed("p" + number + "." + all.size(), solid.translate(at)));
        }
    }
}

package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import dev.treen.check.Bench;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Round;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.SurfaceFace;
import dev.treen.solid.Vec3;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.ConvexPolygon3D;
import org.apache.commons.geometry.euclidean.threed.ConvexVolume;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Bodies against another library, Apache Commons Geometry, which keeps them as trees of half-spaces in doubles and shares
 * nothing with ours: volumes of random joints from their surfaces alone, cut and shared volumes, and closed formulae.
 */
class SecondBodiesTest {
    private static final double SHARE = 1e-6;
    private static final Precision.DoubleEquivalence NEAR = Precision.doubleEquivalenceOfEpsilon(1e-9);

    private static Vector3D point(Vec3 at) {
        return Vector3D.of(at.x().doubleValue(), at.y().doubleValue(), at.z().doubleValue());
    }

    /** The body that a surface encloses, if it encloses one. */
    private static RegionBSPTree3D enclosed(Solid solid) {
        List<PlaneConvexSubset> faces = new ArrayList<>();
        for (SurfaceFace face : solid.surface().faces()) {
            for (List<Vec3> bit : face.region().pieces()) {
                ConvexPolygon3D polygon = Planes.convexPolygonFromVertices(
                        bit.stream().map(SecondBodiesTest::point).toList(), NEAR);
                faces.add(polygon);
            }
        }
        return RegionBSPTree3D.partitionedRegionBuilder().insertBoundaries(faces).build();
    }

    private static RegionBSPTree3D tree(Convex piece) {
        return ConvexVolume.fromBounds(piece.faces().stream()
                .map(face -> Planes.fromPointAndNormal(point(face.corners().getFirst()),
                        point(face.plane().normal()), NEAR))
                .toList()).toTree();
    }

    private static void same(double ours, double theirs, String what) {
        assertThat(theirs).as(what).isCloseTo(ours, offset(SHARE * Math.max(1, ours)));
    }

    /** A joint of each family with numbers that a seed gives. */
    static List<String> joints() {
        return IntStream.rangeClosed(1, 6).boxed().flatMap(seed -> joints(new Random(seed)).stream()).toList();
    }

    private static List<String> joints(Random random) {
        int thick = 14 + random.nextInt(12);
        int wide = 60 + random.nextInt(60);
        String corner = """
                part one { length 200; width %2$d; thickness %1$d; from ash; place { length right; width up; at 0, -%1$d, 0 } }
                part two { length 120; width %2$d; thickness %1$d; from ash; place { length back; width up; at -%1$d, 0, 0 } }
                """.formatted(thick, wide);
        String tee = """
                part two { length 300; width %2$d; thickness %1$d; from ash; place { length up; width back; at -%1$d, 0, 0 } }
                part one { length 200; width %2$d; thickness 12; from ash; place { length right; width back; at 0, 0, %3$d } }
                """.formatted(thick, wide, 40 + random.nextInt(100));
        String leg = """
                part two { length 300; width 45; thickness 45; from ash; place { length up; width right; at -45, 0, 0 } }
                part one { length 200; width %1$d; thickness %2$d; from ash; place { length right; width up; at 0, %3$d, 80 } }
                """.formatted(wide, thick, random.nextInt(15));
        return List.of(
                corner + "joint mitre one to two",
                corner + "joint finger one to two",
                corner + "joint dovetail one to two",
                corner + "joint dovetail one to two { cut lapped }",
                corner + "joint rebate two into one { lip %d }".formatted(4 + random.nextInt(4)),
                tee + "joint housing one into two { deep %d }".formatted(3 + random.nextInt(2)),
                tee + "joint sliding_dovetail one into two",
                tee + String.format(Locale.ROOT, "joint groove one into two { wide 6; deep %.1f; gap 1 }",
                        3 + random.nextInt(20) / 10.0),
                leg + "joint mortise_tenon one into two { long %d }".formatted(18 + random.nextInt(14)),
                leg + "joint dowel one to two");
    }

    /** The volume of each finished part is that which its surface encloses. */
    @ParameterizedTest
    @MethodSource("joints")
    void jointsHaveTheVolumeThatTheirSurfaceEncloses(String joint) {
        Bench bench = Bench.of("""
                project "Try" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board ash { species white_ash; size 3000 x 300 x 60; rings rift; moisture 9% }
                """ + joint);
        Solid one = bench.part("one").solid().orElseThrow();
        Solid two = bench.part("two").solid().orElseThrow();
        assertThat(bench.joined().joints()).as("it can be made: %s", bench.codes()).hasSize(1);
        assertThat(List.of(one, two)).as("something was cut").anyMatch(
                solid -> solid.volume().doubleValue() < solid.bounds().orElseThrow().volume().doubleValue());
        RegionBSPTree3D first = enclosed(one);
        RegionBSPTree3D second = enclosed(two);
        same(one.volume().doubleValue(), first.getSize(), "one");
        same(two.volume().doubleValue(), second.getSize(), "two");
        RegionBSPTree3D shared = RegionBSPTree3D.empty();
        shared.intersection(first, second);
        same(0, shared.isEmpty() ? 0 : shared.getSize(), "shared where they stand");
        // Pushed into each other they share what both libraries find.
        Vec3 push = Vec3.of(-7, 5, -3);
        Solid moved = one.translate(push);
        RegionBSPTree3D pushed = RegionBSPTree3D.empty();
        pushed.intersection(enclosed(moved), second);
        same(moved.intersect(two).volume().doubleValue(), pushed.isEmpty() ? 0 : pushed.getSize(),
                "shared when pushed");
    }

    static List<String> kinds() throws IOException {
        return JointExamplesTest.examples();
    }

    /**
     * Every form of joint that has an example: each body has the volume that its surface encloses, and pushed by what the
     * seed gives, joined parts share what both libraries find.
     */
    @ParameterizedTest
    @MethodSource("kinds")
    void everyFormOfJointAgrees(String name) throws IOException {
        Bench bench = Bench.of(Files.readString(Path.of("..", "examples", "joints", name)));
        Random random = new Random(name.hashCode());
        Map<String, RegionBSPTree3D> theirs = new HashMap<>();
        for (FinishedPart part : bench.joined().parts()) {
            Solid solid = part.bare().orElseThrow();
            RegionBSPTree3D tree = enclosed(solid);
            theirs.put(part.part().name(), tree);
            same(solid.volume().doubleValue(), tree.getSize(), part.part().name());
        }
        assertThat(bench.joined().joints()).isNotEmpty();
        for (MadeJoint made : bench.joined().joints()) {
            Solid left = bench.part(made.joint().left().name()).bare().orElseThrow();
            Solid right = bench.part(made.joint().right().name()).bare().orElseThrow();
            Vec3 push = Vec3.of(random.nextInt(15) - 7, random.nextInt(15) - 7, random.nextInt(15) - 7);
            Solid moved = left.translate(push);
            RegionBSPTree3D shared = RegionBSPTree3D.empty();
            shared.intersection(enclosed(moved), Objects.requireNonNull(theirs.get(made.joint().right().name())));
            same(moved.intersect(right).volume().doubleValue(), shared.isEmpty() ? 0 : shared.getSize(),
                    made.joint().name() + " pushed by " + push);
        }
    }

    /** Random cuts of random slopes out of a random block, and what two such bodies share. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void cutsAndSharesAgree(long seed) {
        Random random = new Random(seed);
        Convex block = Convex.box(Box.of(0, 0, 0, 60 + random.nextInt(60), 40 + random.nextInt(40), 30), Origin.STOCK);
        Solid ours = Solid.of(block);
        RegionBSPTree3D theirs = tree(block);
        for (int i = 0; i < 4; i++) {
            Convex cutter = cutter(random);
            ours = ours.subtract(cutter, Origin.cut("c" + i));
            theirs.difference(tree(cutter));
        }
        same(ours.volume().doubleValue(), theirs.getSize(), "cut");
        Convex probe = cutter(random).translate(Vec3.of(3, 2, 1));
        RegionBSPTree3D shared = RegionBSPTree3D.empty();
        shared.intersection(theirs, tree(probe));
        same(ours.intersect(Solid.of(probe)).volume().doubleValue(), shared.isEmpty() ? 0 : shared.getSize(), "shared");
        same(ours.volume().doubleValue(), enclosed(ours).getSize(), "from its surface");
    }

    /** A wedge-like cutter: a foursided outline with slanted sides, pushed along a slanted arrow. */
    private static Convex cutter(Random random) {
        int x = random.nextInt(70);
        int y = random.nextInt(40);
        int wide = 8 + random.nextInt(30);
        int deep = 8 + random.nextInt(20);
        int lean = random.nextInt(5) - 2;
        List<Vec3> outline = List.of(Vec3.of(x, y, -5), Vec3.of(x + wide, y + lean, -5),
                Vec3.of(x + wide - 3, y + deep, -5), Vec3.of(x + 2, y + deep + 1, -5));
        return Convex.prism(outline, Vec3.of(random.nextInt(9) - 4, random.nextInt(9) - 4, 10 + random.nextInt(30)),
                Origin.STOCK);
    }

    /**
     * Closed formulae: a frustum h/3 · (A + √(A·B) + B), and a rod that is a prism on a 24-gon, 12 · r² · sin 15° · h. Its
     * corners lie on the circle at fractions near the true ones, hence the coarser bound.
     */
    @ParameterizedTest
    @ValueSource(ints = {3, 7, 12})
    void closedFormulae(int size) {
        Convex frustum = Convex.hull(List.of(
                Vec3.of(0, 0, 0), Vec3.of(2L * size, 0, 0), Vec3.of(2L * size, 2L * size, 0), Vec3.of(0, 2L * size, 0),
                Vec3.of(0, 0, size), Vec3.of(size, 0, size), Vec3.of(size, size, size), Vec3.of(0, size, size)),
                Origin.STOCK);
        double low = 4.0 * size * size;
        double high = (double) size * size;
        same(size / 3.0 * (low + Math.sqrt(low * high) + high), frustum.volume().doubleValue(), "frustum");
        Solid rod = Solid.of(Round.rod(Vec3.ZERO, Side.TOP, BigFraction.of(40),
                BigFraction.of(size), "hole"));
        double polygon = 12.0 * size * size * Math.sin(Math.toRadians(15)) * 40;
        assertThat(rod.volume().doubleValue()).as("rod").isCloseTo(polygon, offset(1e-3 * polygon));
        same(rod.volume().doubleValue(), enclosed(rod).getSize(), "rod by its surface");
    }
}

package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.block;
import static dev.treen.solid.Numbers.cutter;
import static dev.treen.solid.Numbers.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/** Drawings of bodies whose pictures are known, and two independent ways of finding what is visible. */
class DrawingTest {
    private static final GeometryFactory FLAT = new GeometryFactory();

    private static List<Placed> one(Solid solid) {
        return List.of(new Placed("part", solid));
    }

    /** Lines as text, ends and lines in order, so that a picture can be read in the test. */
    private static List<String> text(List<Stroke> strokes) {
        TreeSet<String> lines = new TreeSet<>();
        for (Stroke stroke : strokes) {
            boolean forward = Poly.order(stroke.from(), stroke.to()) < 0;
            Vec2 low = forward ? stroke.from() : stroke.to();
            Vec2 high = forward ? stroke.to() : stroke.from();
            lines.add(low.u + "," + low.v + " " + high.u + "," + high.v);
        }
        return List.copyOf(lines);
    }

    @Test
    void boxFromTheFrontIsARectangleWithNothingHidden() {
        Drawing drawing = Drawing.lines(one(block(0, 0, 0, 30, 20, 10)), View.FRONT);
        assertThat(text(drawing.visible())).containsExactly("0,0 0,10", "0,0 30,0", "0,10 30,10", "30,0 30,10");
        assertThat(drawing.hidden()).isEmpty();
    }

    @Test
    void cubeInIsometricShowsNineEdgesAndHidesThree() {
        Drawing drawing = Drawing.shaded(one(block(0, 0, 0, 10, 10, 10)), View.ISOMETRIC);
        assertThat(drawing.visible()).hasSize(9);
        assertThat(drawing.hidden()).hasSize(3);
        assertThat(drawing.fills()).hasSize(3);
        // All three axes are shortened by √(2/3) and stand at 120° (ISO 5456-3, isometric; from memory).
        for (Axis axis : Axis.values()) {
            View.Spot spot = View.ISOMETRIC.onPaper(Vec3.along(axis, Numbers.whole(1)));
            assertThat(Math.hypot(spot.x(), spot.y())).isCloseTo(Math.sqrt(2.0 / 3), within(1e-12));
        }
        assertThat(View.ISOMETRIC.onPaper(at(0, 0, 1)).x()).isZero();
        assertThat(angle(View.ISOMETRIC, at(1, 0, 0))).isCloseTo(-30, within(1e-9));
        assertThat(angle(View.ISOMETRIC, at(0, 1, 0))).isCloseTo(30, within(1e-9));
    }

    @Test
    void dimetricHasHalfDepth() {
        // ISO 5456-3, dimetric: scales 1 : 1 : 1/2, axes at 7° and 42° as rounded there (from memory).
        View.Spot x = View.DIMETRIC.onPaper(at(1, 0, 0));
        View.Spot y = View.DIMETRIC.onPaper(at(0, 1, 0));
        View.Spot z = View.DIMETRIC.onPaper(at(0, 0, 1));
        double full = Math.hypot(x.x(), x.y());
        assertThat(full).isCloseTo(Math.hypot(z.x(), z.y()), within(1e-12));
        assertThat(Math.hypot(y.x(), y.y()) / full).isCloseTo(0.5, within(1e-4));
        assertThat(angle(View.DIMETRIC, at(1, 0, 0))).isCloseTo(-7, within(0.5));
        assertThat(angle(View.DIMETRIC, at(0, 1, 0))).isCloseTo(42, within(1.0));
    }

    private static double angle(View view, Vec3 arrow) {
        View.Spot spot = view.onPaper(arrow);
        return Math.toDegrees(Math.atan2(spot.y(), spot.x()));
    }

    @Test
    void grooveInsideIsHiddenFromTheFrontAndShowsAtTheEnd() {
        Solid board = block(0, 0, 0, 178, 9, 84).subtract(cutter(0, 5, 5, 178, 9, 10), Origin.cut("groove"));
        Drawing front = Drawing.lines(one(board), View.FRONT);
        assertThat(text(front.hidden())).containsExactly("0,10 178,10", "0,5 178,5");
        assertThat(front.visible()).hasSize(4);
        Drawing end = Drawing.lines(one(board), View.RIGHT);
        assertThat(end.hidden()).isEmpty();
        assertThat(text(end.visible())).containsExactly("0,0 0,84", "0,0 9,0", "0,84 9,84", "5,10 9,10", "5,5 5,10",
                "5,5 9,5", "9,0 9,5", "9,10 9,84");
    }

    @Test
    void seamsOfOnePartAreNotDrawnAndThoseBetweenPartsAre() {
        Solid left = block(0, 0, 0, 10, 10, 10);
        Solid right = block(10, 0, 0, 20, 10, 10);
        assertThat(text(Drawing.lines(one(left.union(right)), View.FRONT).strokes()))
                .containsExactly("0,0 0,10", "0,0 20,0", "0,10 20,10", "20,0 20,10");
        List<Placed> two = List.of(new Placed("left", left), new Placed("right", right));
        assertThat(text(Drawing.lines(two, View.FRONT).visible())).contains("10,0 10,10").hasSize(7);
    }

    @Test
    void whatLiesBehindASeamIsHidden() {
        // The rail behind starts exactly where two boards meet: nobody can see that end through the seam.
        List<Placed> parts = List.of(new Placed("left", block(0, 0, 0, 10, 2, 10)),
                new Placed("right", block(10, 0, 0, 20, 2, 10)), new Placed("rail", block(10, 5, 2, 18, 7, 4)));
        Drawing drawing = Drawing.lines(parts, View.FRONT);
        assertThat(text(drawing.hidden())).containsExactly("10,2 18,2", "10,4 18,4", "18,2 18,4");
        assertThat(drawing.visible().stream().filter(s -> s.part().equals("rail"))).isEmpty();
    }

    @Test
    void stepShowsItsInnerEdge() {
        Solid step = block(0, 0, 0, 20, 10, 20).subtract(cutter(10, 0, 10, 20, 10, 20), Origin.cut("rebate"));
        assertThat(text(Drawing.lines(one(step), View.TOP).visible())).containsExactly("0,0 0,10",
                "0,0 20,0", "0,10 20,10", "10,0 10,10", "20,0 20,10");
        // Of 18 edges only those at the lower back left corner, three of them, are hidden.
        assertThat(Drawing.lines(one(step), View.ISOMETRIC).visible()).hasSize(15);
    }

    @Test
    void roundFacesShowTheirSilhouetteOnly() {
        Solid peg = Solid.of(Round.rod(at(0, 0, 1), Side.TOP, Numbers.whole(8), Numbers.whole(1), "dowel"));
        Drawing drawing = Drawing.lines(one(peg), View.FRONT);
        assertThat(text(drawing.strokes())).containsExactly("-1,1 -1,9", "-1,1 1,1", "-1,9 1,9", "1,1 1,9");
        Drawing slanted = Drawing.lines(one(peg), View.pictorial(at(0, -1, 1)));
        assertThat(slanted.strokes().stream().filter(s -> s.from().u.equals(s.to().u))).hasSize(2);
    }

    /**
     * Lines come from edges, fills from faces, by different ways. On paper the visible lines must be exactly the
     * outlines of the visible faces, stretch by stretch.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void visibleLinesAreTheOutlinesOfVisibleFaces(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 6; round++) {
            List<Placed> parts = scene(random);
            for (View view : List.of(View.FRONT, View.from(Side.LEFT), View.from(Side.BOTTOM), View.ISOMETRIC,
                    View.pictorial(at(1, 3, -2)))) {
                Drawing drawing = Drawing.shaded(parts, view);
                Map<Line2, Intervals> outlines = new HashMap<>();
                for (Fill fill : drawing.fills()) {
                    for (List<Vec2> loop : fill.outlines()) {
                        for (int i = 0; i < loop.size(); i++) {
                            add(outlines, loop.get(i), loop.get((i + 1) % loop.size()));
                        }
                    }
                }
                Map<Line2, Intervals> lines = new HashMap<>();
                drawing.visible().forEach(s -> add(lines, s.from(), s.to()));
                assertThat(lines).isEqualTo(outlines);
            }
        }
    }

    /** Parts that share no volume, on a coarse grid so that flush faces and seams are frequent, some with slants. */
    private static List<Placed> scene(Random random) {
        List<Placed> parts = new ArrayList<>();
        Solid taken = Solid.EMPTY;
        for (int i = 0; i < 4; i++) {
            Vec3 corner = at(2L * random.nextInt(3), 2L * random.nextInt(3), 2L * random.nextInt(3));
            Solid next = Solid.of(Box.at(corner, at(2 + 2L * random.nextInt(2), 2 + 2L * random.nextInt(3), 2)));
            if (random.nextBoolean()) {
                next = next.subtract(RandomBodiesTest.random(random));
            }
            next = next.subtract(taken);
            taken = taken.union(next);
            parts.add(new Placed("p" + i, next));
        }
        return parts;
    }

    private static void add(Map<Line2, Intervals> lines, Vec2 from, Vec2 to) {
        Line2 line = Line2.through(from, to);
        Rat a = line.parameter(from);
        Rat b = line.parameter(to);
        lines.merge(line, Intervals.of(a.min(b), a.max(b)), Intervals::with);
    }

    /** The visible faces cover the shadow of the whole assembly once; JTS works that out in doubles. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void visibleFacesCoverTheShadowOnce(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 6; round++) {
            List<Placed> parts = scene(random);
            for (View view : List.of(View.FRONT, View.TOP, View.pictorial(at(2, -3, 4)))) {
                double covered = 0;
                for (Fill fill : Drawing.shaded(parts, view).fills()) {
                    for (List<Vec2> loop : fill.outlines()) {
                        covered += Poly.signedArea(loop).toDouble();
                    }
                }
                assertThat(covered).isCloseTo(shadow(parts, view), within(1e-6 * covered));
            }
        }
    }

    private static double shadow(List<Placed> parts, View view) {
        List<Geometry> shadows = new ArrayList<>();
        for (Placed part : parts) {
            for (Triangle t : Triangle.of(part.solid())) {
                Coordinate[] ring = new Coordinate[]{flat(view, t.a()), flat(view, t.b()), flat(view, t.c()),
                        flat(view, t.a())};
                Geometry triangle = FLAT.createPolygon(ring);
                if (triangle.getArea() > 1e-12) {
                    shadows.add(triangle);
                }
            }
        }
        return CascadedPolygonUnion.union(shadows).getArea();
    }

    private static Coordinate flat(View view, Vec3 point) {
        Vec2 flat = view.flatten(point);
        return new Coordinate(flat.u.toDouble(), flat.v.toDouble());
    }

    @Test
    void viewsMustBeSquare() {
        assertThat(View.from(Side.BACK).right()).isEqualTo(Side.LEFT.unit());
        assertThat(View.from(Side.BOTTOM).right()).isEqualTo(Side.RIGHT.unit());
        assertThat(View.FRONT.flatten(Vec3.of(part(1, 3), part(1, 5), part(1, 7))))
                .isEqualTo(Vec2.of(part(1, 3), part(1, 7)));
    }
}

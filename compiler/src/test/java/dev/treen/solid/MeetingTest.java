package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.block;
import static dev.treen.solid.Numbers.cutter;
import static dev.treen.solid.Numbers.part;
import static dev.treen.solid.Numbers.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Overlap, contact and distance. */
class MeetingTest {
    private static final GeometryFactory FLAT = new GeometryFactory();

    @Test
    void partsThatTouchDoNotOverlap() {
        List<Placed> parts = List.of(new Placed("a", block(0, 0, 0, 10, 10, 10)),
                new Placed("b", block(10, 0, 0, 20, 10, 10)), new Placed("c", block(19, 9, 9, 30, 30, 30)));
        List<Overlap> overlaps = Overlap.among(parts);
        assertThat(overlaps).singleElement().satisfies(overlap -> {
            assertThat(overlap.first()).isEqualTo("b");
            assertThat(overlap.second()).isEqualTo("c");
            assertThat(overlap.volume()).isEqualTo(whole(1));
            assertThat(overlap.bounds()).isEqualTo(Box.of(19, 9, 9, 20, 10, 10));
        });
        assertThat(Contact.among(parts)).singleElement()
                .satisfies(pair -> assertThat(pair.contacts().getFirst().region().exactArea()).contains(whole(100)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theTreeFindsWhatAskingEveryPairFinds(long seed) {
        Random random = new Random(seed);
        List<Placed> parts = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            Vec3 corner = at(random.nextInt(60), random.nextInt(60), random.nextInt(60));
            Vec3 size = at(1 + random.nextInt(12), 1 + random.nextInt(12), 1 + random.nextInt(12));
            parts.add(new Placed("p" + i, Solid.of(Box.at(corner, size))));
        }
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                int first = i;
                int second = j;
                parts.get(i).solid().bounds().orElseThrow().overlap(parts.get(j).solid().bounds().orElseThrow())
                        .ifPresent(box -> expected.add("p" + first + " p" + second + " " + box.volume()));
            }
        }
        assertThat(expected).isNotEmpty();
        assertThat(Overlap.among(parts).stream().map(o -> o.first() + " " + o.second() + " " + o.volume()))
                .containsExactlyElementsOf(expected);
    }

    @Test
    void mitreMeetsOnItsWholeFaceAndSaysWhichCutsMeet() {
        // Two boards of 9, 84 wide, mitred at the corner in the origin: a face of 9√2 by 84.
        Solid front = block(-9, -9, 0, 100, 0, 84).keep(Plane.through(at(0, 0, 0), at(-1, 1, 0)), Origin.cut("m1"));
        Solid left = block(-9, -9, 0, 0, 100, 84).keep(Plane.through(at(0, 0, 0), at(1, -1, 0)), Origin.cut("m2"));
        assertThat(Overlap.among(List.of(new Placed("front", front), new Placed("left", left)))).isEmpty();
        assertThat(Contact.between(front, left)).singleElement().satisfies(contact -> {
            assertThat(contact.region().areaSquared()).isEqualTo(whole(2L * 81 * 84 * 84));
            assertThat(contact.first().name()).isEqualTo("m1");
            assertThat(contact.second().name()).isEqualTo("m2");
        });
        assertThat(Contact.area(front, block(-20, -20, 0, -9, -9, 84))).isZero();
    }

    @Test
    void distancesKnownByHand() {
        Solid cube = block(0, 0, 0, 10, 10, 10);
        assertThat(Distance.squared(cube, block(13, 14, 22, 20, 20, 30))).isEqualTo(whole(9 + 16 + 144));
        assertThat(Distance.squared(cube, block(10, 10, 10, 20, 20, 20))).isEqualTo(whole(0));
        assertThat(Distance.squared(cube, block(2, 2, 2, 3, 3, 3))).isEqualTo(whole(0));
        // The plane x + y + z = 60 of the corner beyond is (60 - 30)/√3 from the cube's corner.
        Solid beyond = block(0, 0, 0, 60, 60, 60).keep(Plane.of(at(-1, -1, -1), whole(-60)), Origin.STOCK);
        assertThat(Distance.squared(cube, beyond)).isEqualTo(whole(300));
    }

    /** JTS works in doubles on the footprints of upright prisms; ours is exact in space. */
    @ParameterizedTest
    @ValueSource(longs = {5, 6, 7, 8})
    void distanceOfUprightPrismsAgreesWithJts(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 20; round++) {
            Convex a = prism(random, 0);
            Convex b = prism(random, 15);
            double flat = footprint(a).distance(footprint(b));
            assertThat(Distance.between(Solid.of(a), Solid.of(b))).isCloseTo(flat, within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {15, 16, 17, 18})
    void crossSectionsAgreeWithJts(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 20; round++) {
            Convex a = prism(random, 0);
            Convex b = prism(random, 2);
            Convex c = prism(random, 4);
            Region section = Solid.of(List.of(a, b)).subtract(c, Origin.cut("c"))
                    .section(Plane.at(Side.TOP, part(7, 3)));
            Geometry expected = footprint(a).union(footprint(b)).difference(footprint(c));
            assertThat(section.area()).isCloseTo(expected.getArea(), within(1e-9));
            double length = 0;
            for (List<Vec3> loop : section.loops()) {
                for (int i = 0; i < loop.size(); i++) {
                    length += loop.get((i + 1) % loop.size()).minus(loop.get(i)).length();
                }
            }
            assertThat(length).isCloseTo(expected.getLength(), within(1e-9));
        }
    }

    static Convex prism(Random random, int shift) {
        while (true) {
            List<Vec2> points = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                points.add(Vec2.of(whole(shift + random.nextInt(12)), whole(random.nextInt(12))));
            }
            var outline = Poly.around(points);
            if (outline.isPresent()) {
                List<Vec3> base = outline.get().corners().stream().map(p -> Vec3.of(p.u(), p.v(), whole(0))).toList();
                return Convex.prism(base, at(0, 0, 5), Origin.STOCK);
            }
        }
    }

    static Geometry footprint(Convex prism) {
        List<Vec3> corners = prism.faces().stream()
                .filter(f -> f.plane().side().equals(java.util.Optional.of(Side.TOP)))
                .findFirst().orElseThrow().corners();
        List<Coordinate> ring = new ArrayList<>();
        corners.forEach(c -> ring.add(new Coordinate(c.x().doubleValue(), c.y().doubleValue())));
        ring.add(ring.getFirst());
        return FLAT.createPolygon(ring.toArray(Coordinate[]::new));
    }

    @Test
    void grooveBreaksOutAtTheEndsAndLeavesItsWalls() {
        Solid board = block(0, 0, 0, 178, 9, 84);
        Convex through = cutter(0, 5, 5, 178, 9, 10);
        assertThat(Breakout.of(board, through)).extracting(b -> b.face().plane().side().orElseThrow())
                .containsExactlyInAnyOrder(Side.LEFT, Side.RIGHT, Side.BACK);
        Convex stopped = cutter(4, 5, 5, 174, 9, 10);
        assertThat(Breakout.of(board, stopped)).singleElement()
                .satisfies(b -> assertThat(b.opening().exactArea()).contains(whole(170 * 5)));
        List<Wall> walls = Wall.beside(board, stopped);
        assertThat(walls).extracting(w -> w.face().plane().side().orElseThrow() + " " + w.exact().orElseThrow())
                .containsExactlyInAnyOrder("BACK 0", "LEFT 4", "RIGHT 4", "FRONT 5", "BOTTOM 5", "TOP 74");
        assertThat(walls.getFirst().thickness()).isZero();
    }

    @Test
    void wallTowardsAnotherCutNamesThatCut() {
        Solid stile = block(0, 0, 0, 60, 25, 500).subtract(cutter(20, 0, 100, 40, 10, 150), Origin.cut("mortise"));
        List<Wall> walls = Wall.beside(stile, cutter(20, 17, 90, 40, 25, 200));
        assertThat(walls).filteredOn(w -> w.face().origin().name().equals("mortise")).singleElement()
                .satisfies(w -> assertThat(w.exact()).contains(whole(7)));
    }

    @Test
    void wallToASlantedFaceIsMeasuredSquareToIt() {
        // Under the slope 3:4 through the origin the corner (0, -5 below) has a wall of 5 · 4/5 = 4.
        Solid wedge = block(0, 0, -50, 60, 25, 80).keep(Plane.of(at(-3, 0, 4), whole(0)), Origin.cut("slope"));
        List<Wall> walls = Wall.beside(wedge, cutter(20, 0, -20, 40, 25, 10));
        assertThat(walls).filteredOn(w -> w.face().origin().name().equals("slope")).singleElement()
                .satisfies(w -> assertThat(w.exact()).contains(whole(4)));
    }
}

package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.block;
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
}

package dev.treen.solid;

import static dev.treen.solid.Numbers.part;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Identities of sets that hold for all bodies, on bodies made from a seed: no measuring, both sides are exact. */
class RandomBodiesTest {

    static Convex random(Random random) {
        Vec3 at = Vec3.of(random.nextInt(8), random.nextInt(8), random.nextInt(8));
        Vec3 size = Vec3.of(1 + random.nextInt(8), 1 + random.nextInt(8), 1 + random.nextInt(8));
        Convex piece = Convex.box(Box.at(at, size), Origin.STOCK);
        for (int i = random.nextInt(4); i > 0; i--) {
            Vec3 normal = Vec3.of(random.nextInt(7) - 3, random.nextInt(7) - 3, random.nextInt(7) - 3);
            if (!normal.equals(Vec3.ZERO)) {
                Plane plane = Plane.of(normal, piece.centroid().dot(normal).add(part(random.nextInt(9), 3)));
                piece = piece.clip(plane, Origin.cut("c" + i)).orElseThrow();
            }
        }
        return piece;
    }

    static Solid randomSolid(Random random) {
        List<Convex> pieces = new ArrayList<>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            pieces.add(random(random));
        }
        return Solid.of(pieces);
    }

    private static Axis anyAxis(Random random) {
        return List.of(Axis.X, Axis.Y, Axis.Z).get(random.nextInt(3));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void volumesAddUp(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 12; round++) {
            Solid a = randomSolid(random);
            Solid b = randomSolid(random);
            Solid both = a.intersect(b);
            BigFraction sum = a.volume().add(b.volume());
            assertThat(a.subtract(b).volume().add(both.volume())).isEqualTo(a.volume());
            assertThat(a.union(b).volume()).isEqualTo(sum.subtract(both.volume()));
            assertThat(both.sameBody(b.intersect(a))).isTrue();
            assertThat(a.subtract(b).intersect(b).isEmpty()).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void convexPiecesAreWellFormed(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 50; round++) {
            Convex piece = random(random);
            int corners = piece.faces().stream().mapToInt(face -> face.corners().size()).sum();
            // Euler: V - E + F = 2, every edge being a side of two faces.
            assertThat(piece.vertices().size() - corners / 2 + piece.faces().size()).isEqualTo(2);
            // The area vectors of a closed surface add up to nothing.
            assertThat(piece.faces().stream().map(Face::areaVector).reduce(Vec3.ZERO, Vec3::plus)).isEqualTo(Vec3.ZERO);
            assertThat(Convex.hull(piece.vertices(), Origin.STOCK)).isEqualTo(piece);
            List<Plane> planes = piece.faces().stream().map(Face::plane).toList();
            assertThat(Convex.of(planes, Origin.STOCK)).contains(piece);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void surfacesClose(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 20; round++) {
            Solid a = randomSolid(random).subtract(random(random), Origin.cut("cut"));
            // By the divergence theorem a third of the sum of offset × area over closed faces is the volume.
            Vec3 closed = Vec3.ZERO;
            Rat threefold = Rat.ZERO;
            for (SurfaceFace face : a.surface().faces()) {
                for (List<Vec3> bit : face.region().pieces()) {
                    Vec3 area = new Face(face.plane(), bit, face.origin()).areaVector();
                    closed = closed.plus(area);
                    threefold = threefold.plus(area.inner(bit.getFirst()));
                }
            }
            assertThat(closed).isEqualTo(Vec3.ZERO);
            assertThat(threefold.times(Rat.of(1, 3)).toFraction()).isEqualTo(a.volume());
            assertThat(a.surface().edges()).allSatisfy(edge -> assertThat(edge.rims()).hasSizeGreaterThan(1));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void turnsKeepVolumeAndUndoThemselves(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 20; round++) {
            Solid a = randomSolid(random);
            Axis axis = anyAxis(random);
            Turn turn = Turn.quarter(axis, random.nextInt(4)).then(Turn.mirror(anyAxis(random)));
            Solid turned = a.turn(turn);
            assertThat(turned.volume()).isEqualTo(a.volume());
            assertThat(turned.turn(turn.inverse()).sameBody(a)).isTrue();
            assertThat(turned.surface().area()).isCloseTo(a.surface().area(), withPercentage(1e-9));
        }
    }
}

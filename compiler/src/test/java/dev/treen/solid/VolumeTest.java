package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.block;
import static dev.treen.solid.Numbers.cutter;
import static dev.treen.solid.Numbers.part;
import static dev.treen.solid.Numbers.whole;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Volumes and areas against closed formulae of school geometry, named beside each check. */
class VolumeTest {

    @Test
    void cuboid() {
        // V = l w t; A = 2 (lw + wt + tl)
        Solid board = block(0, 0, 0, 178, 9, 84);
        assertThat(board.volume()).isEqualTo(whole(178 * 9 * 84));
        assertThat(board.surface().area()).isEqualTo(2.0 * (178 * 9 + 9 * 84 + 84 * 178));
        assertThat(board.surface().faces()).hasSize(6);
        assertThat(board.surface().edges()).hasSize(12);
    }

    @Test
    void boardMitredAtBothEnds() {
        // A trapezium of parallel sides L and L - 2t, height t, pushed along w: V = (L - t) t w.
        Solid board = block(0, 0, 0, 178, 9, 84)
                .keep(Plane.through(at(0, 0, 0), at(-1, 1, 0)), Origin.cut("left"))
                .keep(Plane.through(at(178, 0, 0), at(1, 1, 0)), Origin.cut("right"));
        assertThat(board.volume()).isEqualTo(whole((178 - 9) * 9 * 84));
        SurfaceFace mitre = board.surface().madeBy("left").findFirst().orElseThrow();
        // The mitre's face is t√2 by w, so its squared area is 2 t² w².
        assertThat(mitre.region().areaSquared()).isEqualTo(whole(2L * 9 * 9 * 84 * 84));
        assertThat(mitre.region().exactArea()).isEmpty();
    }

    @Test
    void triangularPrismAndItsHull() {
        // V = base area × height
        List<Vec3> outline = List.of(at(0, 0, 0), at(8, 0, 0), at(0, 6, 0));
        Convex prism = Convex.prism(outline, at(0, 0, 10), Origin.STOCK);
        assertThat(prism.volume()).isEqualTo(whole(240));
        assertThat(Convex.prism(outline.reversed(), at(0, 0, 10), Origin.STOCK)).isEqualTo(prism);
        assertThat(Convex.hull(prism.vertices(), Origin.STOCK)).isEqualTo(prism);
        assertThat(prism.centroid()).isEqualTo(Vec3.of(part(8, 3), whole(2), whole(5)));
    }

    @Test
    void frustumOfAPyramid() {
        // V = h/3 (A + a + √(A a)); here A = 144, a = 36, h = 10.
        Convex frustum = Convex.hull(
                List.of(
                        at(0, 0, 0), at(12, 0, 0), at(12, 12, 0), at(0, 12, 0),
                        at(3, 3, 10), at(9, 3, 10), at(9, 9, 10), at(3, 9, 10)),
                Origin.STOCK);
        assertThat(frustum.volume()).isEqualTo(part(10 * (144 + 36 + 72), 3));
        assertThat(frustum.faces()).hasSize(6);
    }

    @Test
    void tetrahedronFromItsPlanes() {
        // V = |det| / 6 for the corner cut off by x/a + y/b + z/c = 1.
        Convex corner = Convex.of(
                List.of(
                        Plane.at(Side.LEFT, whole(0)),
                        Plane.at(Side.FRONT, whole(0)),
                        Plane.at(Side.BOTTOM, whole(0)),
                        Plane.of(at(6, 4, 3), whole(12))),
                Origin.STOCK)
                .orElseThrow();
        assertThat(corner.volume()).isEqualTo(part(2 * 3 * 4, 6));
    }

    @Test
    void dovetailTailsByTheirTrapezia() {
        // Rule J-11 of the trade's rules: H 84, N 3, half-pin 5, pin 4, mate 9, slope 1:8 gives 22 at the end and 19 3/4 at
        // the baseline; each tail is a trapezium (22 + 19.75)/2 × 9 through the thickness of 9.
        BigFraction tailAtEnd = part(84 - 2 * 5 - 2 * 4, 3);
        BigFraction tailAtBase = tailAtEnd.subtract(part(2 * 9, 8));
        assertThat(tailAtEnd).isEqualTo(whole(22));
        assertThat(tailAtBase).isEqualTo(part(79, 4));
        Solid end = block(0, 0, 0, 9, 9, 84);
        for (int socket = 0; socket <= 3; socket++) {
            end = end.subtract(socket(socket), Origin.cut("corner"));
        }
        assertThat(end.volume()).isEqualTo(tailAtEnd.add(tailAtBase).multiply(part(3 * 9 * 9, 2)));
        assertThat(end.pieces()).hasSize(3);
        assertThat(end.surface().madeBy("corner")).hasSize(6);
    }

    /** The waste beside a tail: narrow at the end (x = 0), wider at the baseline (x = 9) by 9/8 a side. */
    private static Convex socket(int number) {
        BigFraction low = number == 0 ? whole(-10) : whole(5 + 22L * number + 4L * (number - 1));
        BigFraction high = number == 3 ? whole(94) : whole(5 + 26L * number);
        BigFraction spread = part(9, 8);
        BigFraction zero = BigFraction.ZERO;
        return Convex.prism(
                List.of(
                        Vec3.of(zero, zero, low),
                        Vec3.of(zero, zero, high),
                        Vec3.of(whole(9), zero, high.add(spread)),
                        Vec3.of(whole(9), zero, low.subtract(spread))),
                at(0, 9, 0),
                Origin.STOCK);
    }

    @Test
    void throughGrooveAndStoppedGroove() {
        Solid board = block(0, 0, 0, 178, 9, 84);
        Solid through = board.subtract(cutter(0, 5, 5, 178, 9, 10), Origin.cut("groove"));
        Solid stopped = board.subtract(cutter(4, 5, 5, 174, 9, 10), Origin.cut("groove"));
        assertThat(through.volume()).isEqualTo(whole(178 * 9 * 84 - 178 * 4 * 5));
        assertThat(stopped.volume()).isEqualTo(whole(178 * 9 * 84 - 170 * 4 * 5));
        assertThat(through.surface().madeBy("groove")).hasSize(3);
        assertThat(stopped.surface().madeBy("groove")).hasSize(5);
    }

    @Test
    void roundRodHasTheVolumeOfItsPolygon() {
        // n/2 r² sin(360°/n) × length for a regular n-gon; the corners are within 1e-6 of their angles.
        Convex rod = Round.rod(at(3, 4, 5), Side.FRONT, whole(30), whole(4), "dowel");
        assertThat(rod.volume().doubleValue())
                .isCloseTo(12 * 16 * Math.sin(Math.PI / 12) * 30, withPercentage(1e-3));
        assertThat(rod.bounds()).isEqualTo(Box.of(-1, -26, 1, 7, 4, 9));
        Solid board = block(-20, -50, -20, 20, 10, 20);
        assertThat(Contact.area(board.subtract(rod), Solid.of(rod)))
                .isCloseTo(Solid.of(rod).surface().area(), withPercentage(1e-9));
    }

    /** A frustum h (R² + R r + r²) / 3 over the polygon of a circle of radius 1; the same whichever end it begins from. */
    @Test
    void aConeHasTheVolumeOfItsFrustum() {
        double polygon = 12 * Math.sin(Math.PI / 12);
        for (Side side : Side.values()) {
            Convex cone = Round.cone(at(3, 4, 5), side, whole(3), whole(5), whole(2), "sink");
            assertThat(cone.volume().doubleValue())
                    .isCloseTo(polygon * 3 * (25 + 10 + 4) / 3, withPercentage(1e-3));
            Vec3 end = at(3, 4, 5).plus(side.unit().times(whole(3)));
            Convex turned = Round.cone(end, side.opposite(), whole(3), whole(2), whole(5), "sink");
            assertThat(turned.volume()).isEqualTo(cone.volume());
            assertThat(cone.bounds()).isEqualTo(turned.bounds());
            assertThat(cone.faces()).hasSize(Round.SIDES + 2);
        }
    }

    /** The outline of a round is not looked at again where it is made: here it is, in every direction and at odd radii. */
    @Test
    void roundsHaveConvexOutlines() {
        for (Side side : Side.values()) {
            for (BigFraction radius : List.of(whole(4), BigFraction.of(1, 64), BigFraction.of(127, 320), whole(900))) {
                Convex rod = Round.rod(at(3, 4, 5), side, whole(30), radius, "dowel");
                List<Vec3> outline = rod.vertices().subList(0, Round.SIDES);
                Convex again = Convex.prism(outline, rod.vertices().get(Round.SIDES).minus(outline.getFirst()),
                        Origin.cut("dowel"));
                assertThat(again.volume()).isEqualTo(rod.volume());
            }
        }
    }

    @Test
    void facesRememberTheirCutAlsoWhereItRunsAlongASeam() {
        // The first cut divides the block into pieces; the second takes away all that lies beyond one of the seams.
        Solid block = block(0, 0, 0, 30, 30, 30).subtract(cutter(10, 10, 20, 20, 20, 30), Origin.cut("mortise"))
                .subtract(cutter(0, 0, 0, 10, 30, 30), Origin.cut("saw"));
        assertThat(block.surface().faces()).filteredOn(f -> f.plane().equals(Plane.at(Side.LEFT, whole(10))))
                .extracting(f -> f.origin().name()).containsOnly("saw");
        Solid other = block(0, 0, 0, 30, 30, 30).subtract(cutter(10, 10, 20, 20, 20, 30), Origin.cut("mortise"))
                .keep(Plane.at(Side.RIGHT, whole(10)), Origin.cut("rip"));
        // On the plane of the second cut the first had already made a wall of 10 by 10: the rest is the second's.
        Plane cut = Plane.at(Side.RIGHT, whole(10));
        assertThat(area(other, cut, "mortise")).isEqualTo(whole(100));
        assertThat(area(other, cut, "rip")).isEqualTo(whole(800));
    }

    private static BigFraction area(Solid solid, Plane plane, String cut) {
        return solid.surface().madeBy(cut).filter(f -> f.plane().equals(plane)).findFirst().orElseThrow().region()
                .exactArea().orElseThrow();
    }

    @Test
    void rebateAsDeepAsTheGrooveBesideItKeepsItsOwnFloor() {
        Solid board = block(0, 0, 0, 178, 9, 84).subtract(cutter(0, 5, 5, 178, 9, 10), Origin.cut("groove"))
                .subtract(cutter(0, 5, 74, 178, 9, 84), Origin.cut("rebate"));
        Plane floor = Plane.at(Side.BACK, whole(5));
        assertThat(area(board, floor, "groove")).isEqualTo(whole(178 * 5));
        assertThat(area(board, floor, "rebate")).isEqualTo(whole(178 * 10));
        Solid turned = board.turn(Turn.quarter(Axis.X, 1).then(Turn.mirror(Axis.Y))).translate(at(1, 2, 3));
        assertThat(turned.surface().madeBy("rebate").mapToDouble(f -> f.region().area()).sum())
                .isEqualTo(178.0 * 10 + 178 * 4);
    }

    @Test
    void faceWithAHoleHasTwoOutlines() {
        Solid stile = block(0, 0, 0, 60, 25, 100).subtract(cutter(20, 0, 30, 40, 25, 60), Origin.cut("mortise"));
        SurfaceFace front = stile.surface().faces().stream()
                .filter(f -> f.plane().side().equals(Optional.of(Side.FRONT))).findFirst().orElseThrow();
        List<List<Vec3>> loops = front.region().loops();
        assertThat(loops).hasSize(2).allSatisfy(loop -> assertThat(loop).hasSize(4));
        // Areas run counter-clockwise as seen from outside, holes clockwise: the arrows of area point out and in.
        assertThat(loops).extracting(l -> new Face(front.plane(), l, Origin.STOCK).areaVector())
                .containsExactlyInAnyOrder(at(0, -6000, 0), at(0, 600, 0));
        assertThat(front.region().exactArea()).contains(whole(5400));
        assertThat(stile.surface().edges()).hasSize(24);
    }

    @Test
    void emptyAndUnboundedAreToldApart() {
        Plane left = Plane.at(Side.LEFT, whole(3));
        Plane right = Plane.at(Side.RIGHT, whole(3));
        assertThat(block(0, 0, 0, 9, 9, 9).keep(left, Origin.STOCK).keep(right, Origin.STOCK).isEmpty()).isTrue();
        List<Plane> open = List.of(left);
        assertThatThrownBy(() -> Convex.of(open, Origin.STOCK)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Box.of(0, 0, 0, 1, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        List<Vec3> bent = List.of(at(0, 0, 0), at(4, 0, 0), at(1, 1, 0), at(0, 4, 0));
        Vec3 up = at(0, 0, 1);
        assertThatThrownBy(() -> Convex.prism(bent, up, Origin.STOCK)).isInstanceOf(IllegalArgumentException.class);
    }
}

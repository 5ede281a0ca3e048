package dev.treen.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Holes in an end, and thin wood between faces; all values by hand. */
class HolesTest {
    private static final Plane UP = Plane.at(Side.TOP, BigFraction.of(10));

    private static Region section(Box... boxes) {
        return Solid.of(Stream.of(boxes).map(box -> Convex.box(box, Origin.STOCK)).toList()).section(UP);
    }

    /** A square ring of four sticks, each from another body, with a square hole of 20 by 30. */
    @Test
    void aRingHasAHole() {
        List<Region> ring = List.of(
                section(Box.of(0, 0, 0, 40, 10, 10)),
                section(Box.of(0, 40, 0, 40, 50, 10)),
                section(Box.of(0, 10, 0, 10, 40, 10)),
                section(Box.of(30, 10, 0, 40, 40, 10)));
        assertThat(Holes.in(UP, ring)).singleElement().satisfies(hole -> {
            assertThat(hole.area()).isEqualTo(600);
            assertThat(hole.contains(Vec3.of(20, 20, 10))).isTrue();
            assertThat(hole.contains(Vec3.of(10, 20, 10))).as("its border").isTrue();
            assertThat(hole.contains(Vec3.of(5, 5, 10))).isFalse();
            assertThat(hole.contains(Vec3.of(20, 20, 9))).as("off the plane").isFalse();
        });
    }

    @Test
    void aGapOpensIt() {
        List<Region> ring = List.of(
                section(Box.of(0, 0, 0, 40, 10, 10)),
                section(Box.of(0, 40, 0, 40, 50, 10)),
                section(Box.of(0, 10, 0, 10, 40, 10)),
                section(Box.of(30, 10, 0, 40, 39, 10)));
        assertThat(Holes.in(UP, ring)).isEmpty();
        assertThat(Holes.in(UP, List.of())).isEmpty();
        assertThat(Holes.in(UP, List.of(section(Box.of(0, 0, 0, 40, 10, 5))))).as("nothing reaches up to it").isEmpty();
    }

    /** Two holes with a common corner are two. */
    @Test
    void aPointDoesNotJoinHoles() {
        Solid board = Solid.of(Box.of(0, 0, 0, 60, 60, 10))
                .subtract(Convex.box(Box.of(10, 10, 0, 20, 20, 10), Origin.cut("one")), Origin.cut("one"))
                .subtract(Convex.box(Box.of(20, 20, 0, 40, 40, 10), Origin.cut("two")), Origin.cut("two"));
        assertThat(Holes.in(UP, List.of(board.section(UP)))).extracting(Region::area)
                .containsExactlyInAnyOrder(100.0, 400.0);
    }

    /** Grooves of 5 and 4.5 into a wall of 12 leave 2.5 over their common 4 of height; elsewhere it is thicker. */
    @Test
    void woodBetweenTwoCuts() {
        Solid wall = Solid.of(Box.of(0, 0, 0, 12, 100, 60))
                .subtract(Convex.box(Box.of(0, 0, 20, 5, 100, 26), Origin.cut("near")), Origin.cut("near"))
                .subtract(Convex.box(new Box(Vec3.of(BigFraction.of(15, 2), BigFraction.ZERO, BigFraction.of(22)),
                        Vec3.of(12, 100, 28)), Origin.cut("far")), Origin.cut("far"));
        assertThat(ThinPlace.in(wall, BigFraction.of(3), BigFraction.of(3))).singleElement().satisfies(thin -> {
            assertThat(thin.thickness()).isEqualTo(BigFraction.of(5, 2));
            assertThat(List.of(thin.one().name(), thin.other().name())).containsExactlyInAnyOrder("near", "far");
            assertThat(thin.place()).isEqualTo(new Box(Vec3.of(5, 0, 22),
                    Vec3.of(BigFraction.of(15, 2), BigFraction.of(100), BigFraction.of(26))));
        });
        assertThat(ThinPlace.in(wall, BigFraction.of(5, 2), BigFraction.ONE)).as("not less than that").isEmpty();
        assertThat(ThinPlace.in(wall, BigFraction.of(3), BigFraction.of(5))).as("over a lower area").isEmpty();
    }

    /** A void between two faces is no wood; a thin board is as thin as it is; a bevel has no parallel face. */
    @Test
    void whatIsNoWall() {
        Solid grooved = Solid.of(Box.of(0, 0, 0, 12, 100, 60))
                .subtract(Convex.box(Box.of(4, 0, 20, 6, 100, 60), Origin.cut("slot")), Origin.cut("slot"));
        assertThat(ThinPlace.in(grooved, BigFraction.of(3), BigFraction.ONE)).as("the slot itself").isEmpty();
        assertThat(ThinPlace.in(Solid.of(Box.of(0, 0, 0, 2, 100, 60)), BigFraction.of(3), BigFraction.ONE)).isEmpty();
        Solid bevelled = Solid.of(Box.of(0, 0, 0, 12, 100, 60))
                .keep(Plane.through(Vec3.of(2, 0, 0), Vec3.of(12, 0, 60), Vec3.of(2, 100, 0)).flip(),
                        Origin.cut("bevel"));
        assertThat(ThinPlace.in(bevelled, BigFraction.of(3), BigFraction.ONE)).isEmpty();
    }

    @Test
    void neighboursAreThoseNearBy() {
        List<Placed> row = Stream.iterate(0, i -> i + 1)
                .limit(50)
                .map(i -> new Placed("p" + i, Solid.of(Box.of(20L * i, 0, 0, 20L * i + 10, 10, 10))))
                .toList();
        Neighbours neighbours = new Neighbours(row);
        assertThat(neighbours.near(Box.of(110, 0, 0, 140, 10, 10))).extracting(Placed::name)
                .as("touching counts").containsExactly("p5", "p6", "p7");
        assertThat(neighbours.near(Box.of(0, 20, 0, 1000, 30, 10))).isEmpty();
    }
}

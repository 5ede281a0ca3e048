package dev.treen.solid;

import static dev.treen.solid.Numbers.at;
import static dev.treen.solid.Numbers.block;
import static dev.treen.solid.Numbers.cutter;
import static dev.treen.solid.Numbers.part;
import static dev.treen.solid.Numbers.whole;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moves and orders of assembly, on an invented tea caddy and on bodies from a seed. */
class AssemblyTest {

    @Test
    void partsSlideAlongButNotThrough() {
        Solid block = block(0, 0, 0, 10, 10, 10);
        List<Solid> stop = List.of(block(20, 0, 0, 30, 10, 10));
        assertThat(Motion.canMove(block, stop, Side.RIGHT, whole(10))).isTrue();
        assertThat(Motion.canMove(block, stop, Side.RIGHT, whole(10).add(part(1, 1_000_000)))).isFalse();
        assertThat(Motion.free(block, stop, Side.RIGHT.unit())).contains(whole(10));
        assertThat(Motion.free(block, stop, Side.TOP.unit())).isEmpty();
        // Flush underneath: sliding along the common face is free, and it can not rise.
        List<Solid> roof = List.of(block(-50, 0, 10, 50, 10, 20));
        assertThat(Motion.canMove(block, roof, Side.RIGHT, whole(500))).isTrue();
        assertThat(Motion.free(block, roof, Side.TOP.unit())).contains(whole(0));
        // A skew move: 3 right and 4 up reaches the block to the right after 10/3 of the arrow.
        assertThat(Motion.free(block, stop, at(3, 0, 1))).contains(part(10, 3));
        assertThat(Motion.free(block, stop, at(3, 0, 4))).isEmpty();
    }

    @Test
    void dovetailComesApartOneWayOnly() {
        List<Placed> parts = dovetailed();
        Solid tails = parts.get(0).solid();
        List<Solid> pins = List.of(parts.get(1).solid());
        assertThat(Overlap.among(parts)).isEmpty();
        for (Side side : Side.values()) {
            assertThat(Motion.canMove(tails, pins, side, whole(100))).as(side.name()).isEqualTo(side == Side.FRONT);
        }
        assertThat(AssemblyOrder.of(parts)).isEqualTo(new AssemblyOrder.Possible(List.of(
                new AssemblyOrder.Move(Set.of("pins"), Side.FRONT.unit(), Set.of("tails")))));
    }

    /** One tail of 22 narrowing by 1:8 over 9, lengthwise along x, in a pin board that runs along y. */
    static List<Placed> dovetailed() {
        BigFraction spread = part(9, 8);
        List<Vec3> outline = List.of(at(0, 0, 10), at(0, 0, 32),
                Vec3.of(whole(9), whole(0), whole(32).subtract(spread)),
                Vec3.of(whole(9), whole(0), whole(10).add(spread)));
        Convex tail = Convex.prism(outline, at(0, 9, 0), Origin.cut("corner"));
        Solid tails = Solid.of(tail).union(block(9, 0, 0, 100, 9, 42));
        Solid pins = block(0, 0, 0, 9, 100, 42).subtract(tail);
        return List.of(new Placed("tails", tails), new Placed("pins", pins));
    }

    static List<Placed> caddy() {
        Origin groove = Origin.cut("groove");
        Solid front = block(-9, -9, 0, 169, 0, 84).keep(Plane.through(at(0, 0, 0), at(-1, 1, 0)), Origin.cut("mitre"))
                .keep(Plane.through(at(160, 0, 0), at(1, 1, 0)), Origin.cut("mitre"))
                .subtract(cutter(-9, -4, 5, 169, 0, 10), groove);
        Solid back = front.turn(Turn.mirror(Axis.Y)).translate(at(0, 80, 0));
        Solid left = block(-9, -9, 0, 0, 89, 84).keep(Plane.through(at(0, 0, 0), at(1, -1, 0)), Origin.cut("mitre"))
                .keep(Plane.through(at(0, 80, 0), at(1, 1, 0)), Origin.cut("mitre"))
                .subtract(cutter(-4, -9, 5, 0, 89, 10), groove);
        Solid right = left.turn(Turn.mirror(Axis.X)).translate(at(160, 0, 0));
        Solid base = block(-3, -3, 5, 163, 83, 10);
        return List.of(new Placed("front", front), new Placed("back", back), new Placed("left", left),
                new Placed("right", right), new Placed("base", base));
    }

    @Test
    void caddyGoesTogetherRoundItsBase() {
        List<Placed> parts = caddy();
        assertThat(Overlap.among(parts)).isEmpty();
        AssemblyOrder order = AssemblyOrder.of(parts);
        assertThat(order).isInstanceOf(AssemblyOrder.Possible.class);
        check(parts, ((AssemblyOrder.Possible) order).moves());
    }

    @Test
    void groupsThatHoldEachOtherAreNamed() {
        Solid shell = block(0, 0, 0, 10, 10, 10).subtract(cutter(2, 2, 2, 8, 8, 8), Origin.cut("hollow"));
        Solid core = block(3, 3, 3, 7, 7, 7);
        List<Placed> parts = List.of(new Placed("shell", shell), new Placed("core", core),
                new Placed("shell2", shell.translate(at(10, 0, 0))), new Placed("core2", core.translate(at(10, 0, 0))));
        assertThat(AssemblyOrder.of(parts)).isInstanceOfSatisfying(AssemblyOrder.Blocked.class, blocked -> {
            assertThat(blocked.groups()).containsExactlyInAnyOrder(Set.of("shell", "core"), Set.of("shell2", "core2"));
            assertThat(blocked.moves()).hasSize(1);
        });
        assertThat(AssemblyOrder.of(parts, List.of(Side.TOP.unit()), 1)).isInstanceOf(AssemblyOrder.Unknown.class);
    }

    @Test
    void aKeyThatGoesInAtASlantNeedsThatDirection() {
        // A slot along (1, 0, 1), closed at its lower end: along the axes nothing moves but sideways.
        Turn slant = Turn.about(Axis.Y, Directions.rational(30));
        Solid block = block(-50, 0, -50, 50, 10, 50).turn(slant);
        Convex slot = Convex.box(Box.of(-5, 0, -20, 5, 10, 60), Origin.cut("slot")).turn(slant);
        Solid body = block.subtract(slot).union(block(-200, -5, -200, 200, 0, 200))
                .union(block(-200, 10, -200, 200, 15, 200));
        List<Placed> parts = List.of(new Placed("body", body), new Placed("key", Solid.of(slot)));
        assertThat(AssemblyOrder.of(parts)).isInstanceOf(AssemblyOrder.Blocked.class);
        Vec3 in = slant.apply(at(0, 0, -1));
        assertThat(AssemblyOrder.of(parts, List.of(in), 10)).isInstanceOf(AssemblyOrder.Possible.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void everyMoveFoundIsFree(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 4; round++) {
            List<Placed> parts = new ArrayList<>();
            Solid taken = Solid.EMPTY;
            for (int i = 0; i < 4; i++) {
                Solid next = RandomBodiesTest.randomSolid(random).subtract(taken);
                taken = taken.union(next);
                if (!next.isEmpty()) {
                    parts.add(new Placed("p" + i, next));
                }
            }
            switch (AssemblyOrder.of(parts)) {
                case AssemblyOrder.Possible possible -> check(parts, possible.moves());
                case AssemblyOrder.Blocked blocked -> assertThat(blocked.groups()).isNotEmpty();
                case AssemblyOrder.Unknown unknown -> assertThat(unknown.questions()).isNegative();
            }
        }
    }

    /** Plays the moves: each group comes from far away without meeting what is there, and all parts end up together. */
    private static void check(List<Placed> parts, List<AssemblyOrder.Move> moves) {
        Map<String, Solid> byName = new HashMap<>();
        parts.forEach(part -> byName.put(part.name(), part.solid()));
        assertThat(moves).hasSize(parts.size() - 1);
        for (AssemblyOrder.Move move : moves) {
            List<Solid> still = solids(move.onto(), byName);
            for (Solid moving : solids(move.parts(), byName)) {
                assertThat(Motion.free(moving, still, move.to().negate())).isEmpty();
            }
        }
        AssemblyOrder.Move last = moves.getLast();
        assertThat(Stream.concat(last.parts().stream(), last.onto().stream()))
                .containsExactlyInAnyOrderElementsOf(byName.keySet());
    }

    private static List<Solid> solids(Set<String> names, Map<String, Solid> byName) {
        return names.stream().map(name -> byName.getOrDefault(name, Solid.EMPTY)).toList();
    }
}

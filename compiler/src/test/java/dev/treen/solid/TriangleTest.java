package dev.treen.solid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Triangulated surfaces close and hold the body's volume. */
class TriangleTest {
    private record Way(Vec3 from, Vec3 to) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void surfacesAreWatertight(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 15; round++) {
            Solid solid = RandomBodiesTest.randomSolid(random).subtract(RandomBodiesTest.random(random));
            Map<Way, Integer> sides = new HashMap<>();
            Rat sixfold = Rat.ZERO;
            for (Triangle t : Triangle.of(solid)) {
                Vec3 square = t.b().minus(t.a()).cross(t.c().minus(t.a()));
                assertThat(square.inner(t.normal()).signum()).isPositive();
                sixfold = sixfold.plus(t.a().inner(t.b().cross(t.c())));
                for (Way way : List.of(new Way(t.a(), t.b()), new Way(t.b(), t.c()), new Way(t.c(), t.a()))) {
                    sides.merge(way, 1, Integer::sum);
                }
            }
            assertThat(sixfold.times(Rat.of(1, 6)).toFraction()).isEqualTo(solid.volume());
            sides.forEach((way, count) -> assertThat(sides.getOrDefault(new Way(way.to(), way.from()), 0))
                    .isEqualTo(count));
        }
    }
}

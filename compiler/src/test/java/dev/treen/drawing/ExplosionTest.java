package dev.treen.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.plan.Projects;
import dev.treen.solid.Box;
import dev.treen.solid.Placed;
import dev.treen.solid.Vec3;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExplosionTest {
    private static List<Placed> placed(String example) {
        return Drawings.placed(Projects.example(example).joined());
    }

    private static List<Box> apart(List<Placed> parts, Map<String, Vec3> shifts) {
        return parts.stream()
                .map(p -> p.solid().bounds().orElseThrow().translate(shifts.getOrDefault(p.name(), Vec3.ZERO)))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "garden-table", "kitchen-cabinet", "hall-bookcase", "recipe-box"})
    void everyJointStandsOpen(String example) {
        List<Placed> parts = placed(example);
        List<Box> boxes = apart(parts, Explosion.of(parts).shifts());
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = i + 1; j < boxes.size(); j++) {
                assertThat(boxes.get(i).overlap(boxes.get(j)))
                        .as(parts.get(i).name() + " and " + parts.get(j).name()).isEmpty();
            }
        }
    }

    /** A picture three times as large as the parts put together shows them at a third: then nothing is to be seen. */
    @ParameterizedTest
    @ValueSource(
            strings = {"tea-caddy", "garden-table", "kitchen-cabinet", "hall-bookcase", "recipe-box", "larder-door"})
    void thePictureStaysSmall(String example) {
        List<Placed> parts = placed(example);
        Bounds whole = room(apart(parts, Map.of()));
        Bounds open = room(apart(parts, Explosion.of(parts).shifts()));
        assertThat(side(open) / side(whole)).isLessThan(2.6);
    }

    /** Sheets are wider than high. */
    private static double side(Bounds room) {
        return Math.max(room.width() / 1.3, room.height());
    }

    private static Bounds room(List<Box> boxes) {
        return boxes.stream().map(Hexagon::of).map(Hexagon::onPaper).reduce(Bounds::join).orElseThrow();
    }

    /** Every way leads from where a part is drawn straight along one axis. */
    @Test
    void aWayBackRunsAlongOneAxis() {
        assertThat(Explosion.of(placed("garden-table")).ways()).isNotEmpty().allSatisfy(way -> {
            Vec3 by = way.by();
            assertThat(List.of(by.x(), by.y(), by.z()).stream().filter(d -> d.signum() != 0)).hasSize(1);
        });
    }

    /** A cube of one is a hexagon of three unit rhombs; one right before it on the line of sight covers it wholly. */
    @Test
    void aHexagonIsCoveredByWhatStandsBeforeIt() {
        Hexagon cube = Hexagon.of(Box.of(0, 0, 0, 1, 1, 1));
        Hexagon before = Hexagon.of(Box.of(2, -2, 2, 3, -1, 3));
        Hexagon beside = Hexagon.of(Box.of(5, 0, 0, 6, 1, 1));
        Hexagon half = Hexagon.of(Box.of(1, 0, 0, 2, 1, 1));
        assertThat(cube.area()).isCloseTo(3, within(1e-9));
        assertThat(cube.overlap(before)).isCloseTo(3, within(1e-9));
        assertThat(cube.behind(before)).isTrue();
        assertThat(before.behind(cube)).isFalse();
        assertThat(cube.overlap(beside)).isZero();
        // Two cubes side by side share the rhomb of the face between them.
        assertThat(cube.overlap(half)).isCloseTo(1, within(1e-9));
    }
}

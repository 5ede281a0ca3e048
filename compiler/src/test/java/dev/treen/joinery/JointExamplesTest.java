package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of joint has a small project under {@code examples/joints}: it has no findings and its parts fit. */
class JointExamplesTest {
    private static final Path EXAMPLES = Path.of("..", "examples", "joints");

    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".treen")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void hasNoFindingsAndItsPartsShareNoSpace(String name) throws IOException {
        Bench bench = Bench.of(Files.readString(EXAMPLES.resolve(name)));
        assertThat(bench.checked().findings()).isEmpty();
        List<Placed> placed = new ArrayList<>();
        bench.joined().parts().forEach(part -> part.solid()
                .ifPresent(solid -> placed.add(new Placed(part.part().name(), solid))));
        assertThat(Overlap.among(placed)).isEmpty();
    }
}

package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.Severity;
import dev.treen.joinery.FinishedPart;
import dev.treen.model.FileLoader;
import dev.treen.model.Instance;
import dev.treen.model.Library;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The library of patterns, through the examples that use it. */
final class LibraryTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    private static Compilation compile(Path file) {
        FileLoader loader = (path, from) -> {
            Path beside = Path.of(from.name()).resolveSibling(path + ".treen");
            return Files.isRegularFile(beside) ? Optional.of(read(beside)) : Optional.empty();
        };
        return Compilation.of(read(file), loader);
    }

    private static SourceFile read(Path file) {
        try {
            return new SourceFile(file.toString(), Files.readString(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Stream<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            return folders
                    .map(folder -> folder.resolve(folder.getFileName() + ".treen"))
                    .filter(Files::isRegularFile)
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsSilent(Path file) {
        List<Finding> findings = compile(file).findings().stream()
                .filter(f -> f.severity() != Severity.NOTE)
                .toList();
        assertThat(findings).extracting(Finding::headline).isEmpty();
    }

    @Test
    void everyPatternHasAnExample() throws IOException {
        Set<String> used = new TreeSet<>();
        examples().forEach(file -> compile(file).evaluation().project().instances().stream()
                .map(Instance::pattern)
                .forEach(used::add));
        assertThat(used).containsExactlyInAnyOrderElementsOf(
                Library.paths().stream().map(p -> p.substring(Library.FOLDER.length())).toList());
    }

    @Test
    void everyPatternAndParameterIsDocumented() {
        for (String path : Library.paths()) {
            var patterns = Compilation.of(new SourceFile("t.treen", "use \"" + path + "\""), FileLoader.NONE)
                    .evaluation()
                    .patterns();
            patterns.values().forEach(pattern -> {
                assertThat(pattern.doc()).as(pattern.word()).isNotBlank();
                pattern.properties().forEach(p -> assertThat(p.doc()).as(pattern.word() + "." + p.name()).isNotBlank());
            });
        }
    }

    /** Fifteen lines and the explicit form are one box: every part the same size, and the same work in the same order. */
    @Test
    void theCaddyByPatternIsTheCaddyInFull() {
        Compilation byPattern = compile(EXAMPLES.resolve("tea-caddy-by-pattern/tea-caddy-by-pattern.treen"));
        SourceFile other = read(EXAMPLES.resolve("tea-caddy/tea-caddy.treen"));
        // The example in full has a knot more and says nothing of the run.
        String text = other.text().replaceAll("  knot +\\{ at 655.*\n", "") + "\nrun front, right, back, left\n";
        Compilation inFull = Compilation.of(new SourceFile(other.name(), text), FileLoader.NONE);
        assertThat(sizes(byPattern)).isEqualTo(sizes(inFull));
        assertThat(works(byPattern)).isEqualTo(works(inFull));
    }

    private static Map<String, String> sizes(Compilation compilation) {
        Map<String, String> sizes = new TreeMap<>();
        for (FinishedPart part : compilation.joined().parts()) {
            sizes.put(
                    part.part().name().replace("caddy.", ""),
                    part.part().seen() + " " + part.finished() + " " + part.rough() + " "
                            + part.solid().orElseThrow().volume());
        }
        return sizes;
    }

    private static List<String> works(Compilation compilation) {
        return compilation.order().steps().stream()
                .map(step -> step.toString().replace("caddy.", ""))
                .toList();
    }
}

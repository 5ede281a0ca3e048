package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.Severity;
import dev.treen.joinery.FinishedPart;
import dev.treen.model.FileLoader;
import dev.treen.model.Instance;
import dev.treen.model.Library;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
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
import org.junit.jupiter.params.provider.CsvSource;
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

    @Test
    void aBoxHasDividersAndARebatedBase() {
        Compilation made = Compilation.of(new SourceFile("t.treen", """
                project "Seeds" { units mm; climate { humidity 35%..60%; temperature 18degC..24degC } }
                use "treen/box"
                board ash { species white_ash; size 1600 x 150 x 16; rings quarter; moisture 9% }
                sheet ply { size 400 x 300 x 6 }
                box seeds { inside 200 x 120 x 80; wall 12; base rebated { thick 6; from ply }; dividers 2; from ash }
                """), FileLoader.NONE);
        assertThat(made.findings()).extracting(Finding::headline).isEmpty();
        assertThat(made.joined().part("seeds.divider[2]").orElseThrow().length().value().toDoubleMm())
                .isEqualTo(126);
    }

    /** Every corner that a frame may have goes together with the panel's groove, and says nothing. */
    @ParameterizedTest
    @CsvSource({"mortise_tenon", "bridle", "dowel"})
    void aFrameHasItsCornersInSeveralWays(String corner) {
        Compilation made = Compilation.of(new SourceFile("t.treen", """
                project "Larder door" { units mm; climate { humidity 35%%..60%%; temperature 18degC..24degC } }
                use "treen/frame_and_panel"
                board ash { species white_ash; size 2400 x 300 x 27; rings quarter; moisture 9%% }
                frame_and_panel door { outside 350 x 500 x 20; corner %s; from ash }
                """.formatted(corner)), FileLoader.NONE);
        assertThat(made.findings()).extracting(Finding::headline).isEmpty();
        assertThat(Overlap.among(placed(made))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"mitre", "spline"})
    void aPictureFrameHasItsCornersPlainOrTongued(String corner) {
        Compilation made = Compilation.of(new SourceFile("t.treen", """
                project "Print" { units mm; climate { humidity 35%%..60%%; temperature 18degC..24degC } }
                use "treen/picture_frame"
                board ash { species white_ash; size 2400 x 120 x 27; rings quarter; moisture 9%% }
                picture_frame print { picture 300 x 200; bar 22mm x 18mm; corner %s; from ash }
                """.formatted(corner)), FileLoader.NONE);
        assertThat(made.findings()).extracting(Finding::headline).isEmpty();
        List<Placed> bars = placed(made).stream().filter(part -> !part.name().equals("print.pane")).toList();
        assertThat(Overlap.among(bars)).isEmpty();
    }

    private static List<Placed> placed(Compilation made) {
        return made.joined().parts().stream()
                .map(part -> new Placed(part.part().name(), part.solid().orElseThrow()))
                .toList();
    }

    /** A through groove is hidden by a mitre and shows in a dovetailed or fingered corner (rules of the trade J-05c). */
    @ParameterizedTest
    @CsvSource({"mitre, false", "spline, false", "dovetail, true", "finger, true", "butt, true"})
    void aGrooveShowsWhereTheCornerIsOpen(String corner, boolean shows) {
        String text = "use \"treen/box\"\nbox b { inside 200 x 120 x 80; wall 12; corner " + corner + " }";
        assertThat(Compilation.of(new SourceFile("t.treen", text), FileLoader.NONE).checked().findings().stream()
                .anyMatch(f -> f.code().equals("groove-shows"))).isEqualTo(shows);
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

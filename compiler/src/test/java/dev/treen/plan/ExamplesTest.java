package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.treen.cli.Main;
import dev.treen.cli.Subcommand;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every example gives the outputs that stand beside it. {@code -Dtreen.update=true} writes them anew; look at what
 * changed before you commit it.
 */
class ExamplesTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    /** These say again what the others say; tests of their own look at them. */
    private static final Set<String> LARGE = Set.of("plan.html", "plan.pdf", "plan.md", "labels.html", "assembly.gltf",
            "templates-a4.html", "templates-letter.html");

    private static final List<String> LISTS = List.of("cut-list.csv", "shopping.csv", "order.md");

    /** Turkish has its own i, Arabic its own digits; Kiritimati is already in tomorrow. */
    @ParameterizedTest
    @CsvSource({"tea-caddy, tr-TR", "tea-caddy, ar-EG-u-nu-arab", "wall-shelf, tr-TR", "wall-shelf, ar-EG-u-nu-arab",
            "spice-cupboard, tr-TR", "recipe-box, de-DE", "tea-chest, fr-CH"})
    void givesItsOutputsEverywhere(String name, String locale, @TempDir Path out) throws IOException {
        Locale before = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        Locale.setDefault(Locale.forLanguageTag(locale));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        try {
            compare(name, out);
        } finally {
            Locale.setDefault(before);
            TimeZone.setDefault(zone);
        }
    }

    /** Those whose drawings are not kept keep their lists and their order. */
    @ParameterizedTest
    @ValueSource(strings = {"breakfast-tray", "button-box", "garden-bench", "garden-table", "hall-bookcase",
            "kitchen-cabinet", "kitchen-drawer", "larder-door", "pencil-box", "print-frame", "sewing-box",
            "spice-cabinet",
            "tea-caddy-by-pattern"})
    void givesItsListsAndItsOrder(String name, @TempDir Path out) throws IOException {
        build(name, out, "--paper", "none");
        Path expected = EXAMPLES.resolve(name).resolve("expected");
        for (String each : LISTS) {
            if (Boolean.getBoolean("treen.update")) {
                Files.createDirectories(expected);
                Files.writeString(expected.resolve(each), Files.readString(out.resolve(each)).replace("\r\n", "\n"));
            }
            assertThat(out.resolve(each)).as(each).hasSameTextualContentAs(expected.resolve(each));
        }
    }

    @Test
    void everyExampleIsHeldAgainstWhatItGave() throws IOException {
        try (var folders = Files.list(EXAMPLES)) {
            assertThat(folders.filter(folder -> Files.exists(folder.resolve(folder.getFileName() + ".treen"))))
                    .allSatisfy(folder -> assertThat(folder.resolve("expected")).isNotEmptyDirectory());
        }
    }

    private static void compare(String name, Path out) throws IOException {
        assertEquals("", build(name, out));
        Path expected = EXAMPLES.resolve(name).resolve("expected");
        if (Boolean.getBoolean("treen.update")) {
            update(out, expected);
        }
        assertEquals(names(expected), names(out));
        for (String each : names(expected)) {
            // Tells the lines that differ, with their numbers.
            assertThat(out.resolve(each)).as(each).hasSameTextualContentAs(expected.resolve(each));
        }
    }

    /** Writes the plan of an example; what was complained of. */
    private static String build(String name, Path out, String... more) {
        String file = EXAMPLES.resolve(name).resolve(name + ".treen").toString();
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        ByteArrayOutputStream complaints = new ByteArrayOutputStream();
        int exit = Main.run(
                Stream.concat(Stream.of("build", file, "-o", out.toString()), Stream.of(more)).toList(),
                new Subcommand.Streams(
                        InputStream.nullInputStream(),
                        new PrintStream(printed, true, StandardCharsets.UTF_8),
                        new PrintStream(complaints, true, StandardCharsets.UTF_8)));
        assertEquals(0, exit);
        return complaints.toString(StandardCharsets.UTF_8);
    }

    private static Set<String> names(Path folder) throws IOException {
        Set<String> names = new TreeSet<>();
        try (var files = Files.list(folder)) {
            files.map(f -> f.getFileName().toString())
                    .filter(f -> !f.startsWith(".") && !LARGE.contains(f) && !f.endsWith(".dxf")
                            && !f.startsWith("step-"))
                    .forEach(names::add);
        }
        return names;
    }

    private static void update(Path out, Path expected) throws IOException {
        Files.createDirectories(expected);
        for (String old : names(expected)) {
            Files.delete(expected.resolve(old));
        }
        for (String each : names(out)) {
            // Kept with the line ends of the repository; that the CSV has its own is tested elsewhere.
            Files.writeString(expected.resolve(each), Files.readString(out.resolve(each)).replace("\r\n", "\n"));
        }
    }
}

package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same project gives the same bytes wherever it is built: each time in a Java of its own, with another language, other
 * digits, another time zone and another number of processors.
 */
class SameEverywhereTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    /** Three with all kinds of output: a year, templates, several files, an assembly in turned parts. */
    private static final List<String> NAMES = List.of("tea-caddy", "spice-cabinet", "print-frame");

    /**
     * A place to build in. Turkish has its own i, German its own comma, Arabic its own digits; Kiritimati is already in
     * tomorrow, and St John's lies half an hour beside the others.
     *
     * @param says what a Java there says of itself
     */
    private record Place(String language, String country, String extensions, String zone, int processors, String says) {
        List<String> options() {
            return List.of(
                    "-Duser.language=" + language, "-Duser.country=" + country, "-Duser.extensions=" + extensions,
                    "-Duser.timezone=" + zone, "-XX:ActiveProcessorCount=" + processors,
                    "-Djava.util.concurrent.ForkJoinPool.common.parallelism=" + processors,
                    "-Dstdout.encoding=UTF-8", "-Djava.awt.headless=true", "-XX:TieredStopAtLevel=1");
        }
    }

    private static final List<Place> PLACES = List.of(
            new Place("en", "GB", "", "UTC", 1, "en-GB 12 I UTC 1 1"),
            new Place("tr", "TR", "", "Pacific/Kiritimati", 2, "tr-TR 12 İ Pacific/Kiritimati 2 2"),
            new Place("de", "DE", "", "America/St_Johns", 8, "de-DE 12 I America/St_Johns 8 8"),
            new Place("ar", "EG", "u-nu-arab", "Asia/Kathmandu", 2, "ar-EG-u-nu-arab ١٢ I Asia/Kathmandu 2 2"));

    @Test
    void allOutputsAreTheSameToTheByte(@TempDir Path folder) throws IOException, InterruptedException {
        Map<String, byte[]> first = built(PLACES.getFirst(), folder.resolve("0"));
        for (String name : NAMES) {
            assertThat(first.keySet()).contains(
                    name + ".treen/plan.html", name + ".treen/plan.pdf", name + ".treen/plan.json",
                    name + ".treen/plan.md", name + ".treen/cut-list.csv", name + ".treen/shopping.csv",
                    name + ".treen/assembled.svg", name + ".treen/labels.html", name + ".treen/assembly.gltf");
        }
        for (Place place : PLACES.subList(1, PLACES.size())) {
            Map<String, byte[]> other = built(place, folder.resolve(place.language()));
            assertThat(other.keySet()).isEqualTo(first.keySet());
            first.forEach((file, bytes) -> assertThat(other.get(file)).as(file + " in " + place).isEqualTo(bytes));
        }
    }

    private static Map<String, byte[]> built(Place place, Path into) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(place.options());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Elsewhere.class.getName(),
                into.toString()));
        NAMES.forEach(name -> command.add(EXAMPLES.resolve(name).resolve(name + ".treen").toString()));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(said.lines().toList()).as("the place is what it should be").contains(place.says());
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(into)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(into.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        return files;
    }
}

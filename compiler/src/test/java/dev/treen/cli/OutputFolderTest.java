package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Folders that cannot be written: said plainly, and nothing half-written left behind. */
class OutputFolderTest {
    private static final Map<String, byte[]> SMALL = Map.of("order.md", "1. Saw\n".getBytes(StandardCharsets.UTF_8));

    @TempDir
    private Path folder = Path.of("");

    private static List<String> names(Path in) throws IOException {
        try (Stream<Path> files = Files.list(in)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    private static boolean run(String... command) throws IOException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true).start().waitFor() == 0;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** A file system of our own, so small or so closed; skipped where nobody may mount one. */
    private Path mounted(String options) throws IOException {
        Path place = Files.createDirectory(folder.resolve("mounted"));
        boolean mounted;
        try {
            mounted = run("mount", "-t", "tmpfs", "-o", options, "tmpfs", place.toString());
        } catch (IOException noMount) {
            mounted = false;
        }
        assumeTrue(mounted, "mounting a file system wants its rights");
        return place;
    }

    @Test
    void aFullDiskLeavesTheOldPlanWhole() throws IOException {
        Path disk = mounted("size=64k");
        try {
            Path plan = disk.resolve("plan");
            assertThat(new OutputFolder(plan).write(SMALL)).isEmpty();
            var refused = new OutputFolder(plan)
                    .write(Map.of("order.md", new byte[4000], "plan.html", new byte[1_000_000]));
            assertThat(refused.orElseThrow()).contains("cannot be written", "No space left on device")
                    .doesNotContain("treen-new");
            assertThat(names(plan)).containsExactly(".treen-made", "order.md");
            assertThat(plan.resolve("order.md")).hasContent("1. Saw\n");
            assertThat(new OutputFolder(disk.resolve("other")).write(Map.of("a.svg", new byte[1_000_000]))).isPresent();
            assertThat(names(disk)).as("a folder that came to nothing goes again").containsExactly("plan");
        } finally {
            assertThat(run("umount", disk.toString())).isTrue();
        }
    }

    @Test
    void aDiskThatTakesNoWritingIsSaid() throws IOException {
        Path disk = mounted("ro,size=64k");
        try {
            assertThat(new OutputFolder(disk.resolve("plan")).write(SMALL).orElseThrow())
                    .contains("cannot be written", "Read-only file system");
        } finally {
            assertThat(run("umount", disk.toString())).isTrue();
        }
    }

    @Test
    void aFileWhereAFolderIsWantedIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("mine"), "mine");
        assertThat(new OutputFolder(file).write(SMALL).orElseThrow()).contains("is a file, and a folder is wanted");
        assertThat(new OutputFolder(file.resolve("plan")).write(SMALL)).isPresent();
        assertThat(file).hasContent("mine");
    }

    @Test
    void whatACutShortWritingLeftIsWrittenOver() throws IOException {
        Path plan = folder.resolve("plan");
        assertThat(new OutputFolder(plan).write(SMALL)).isEmpty();
        // As if a writing had stopped after the list and one file.
        Files.writeString(plan.resolve(".treen-made"), "order.md\nplan.html\n");
        Files.writeString(plan.resolve("plan.html"), "new");
        assertThat(new OutputFolder(plan).write(SMALL)).isEmpty();
        assertThat(names(plan)).containsExactly(".treen-made", "order.md");
    }
}

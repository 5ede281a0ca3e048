package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code treen format} on files, folders and streams. */
class FormatCommandTest {
    private static final String MESSY = "part shelf {\n length   300 ; width 90\n  thickness   9  // planed \n}\n";
    private static final String NEAT = "part shelf {\n  length     300\n  width      90\n  thickness  9  // planed\n}\n";
    private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder = Path.of("");

    private Path shelf = Path.of("");

    @BeforeEach
    void write() throws IOException {
        shelf = Files.writeString(folder.resolve("shelf.treen"), MESSY);
    }

    private int run(String input, Object... arguments) {
        out.reset();
        err.reset();
        return Main.run(
                Stream.concat(Stream.of("format"), Stream.of(arguments)).map(Object::toString).toList(),
                new Subcommand.Streams(
                        new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8)));
    }

    private String printed() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String complained() {
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    void putsAFileIntoTheOneStyle() throws IOException {
        assertThat(run("", shelf)).isZero();
        assertThat(shelf).hasContent(NEAT);
        assertThat(printed()).isEqualTo("formatted " + shelf + "\n");
        assertThat(complained()).isEmpty();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(shelf);
        }
    }

    @Test
    void aFileInTheOneStyleIsNotWritten() throws IOException {
        Files.writeString(shelf, NEAT);
        Files.setLastModifiedTime(shelf, LONG_AGO);
        assertThat(run("", shelf)).isZero();
        assertThat(Files.getLastModifiedTime(shelf)).isEqualTo(LONG_AGO);
        assertThat(printed()).isEmpty();
    }

    @Test
    void checkOnlyTells() throws IOException {
        Path neat = Files.writeString(folder.resolve("neat.treen"), NEAT);
        assertThat(run("", "--check", neat, shelf)).isEqualTo(1);
        assertThat(printed()).isEqualTo(shelf + "\n");
        assertThat(shelf).hasContent(MESSY);
        assertThat(run("", neat, "--check")).isZero();
        assertThat(printed()).isEmpty();
    }

    @Test
    void readsAndWritesTheStandardStreams() {
        assertThat(run(MESSY, "-")).isZero();
        assertThat(printed()).isEqualTo(NEAT);
        assertThat(run(MESSY, "-", "--check")).isEqualTo(1);
        assertThat(printed()).isEmpty();
        assertThat(run(NEAT, "-", "--check")).isZero();
        assertThat(run("", "-", shelf)).isEqualTo(2);
    }

    @Test
    void linesThatCannotBeReadStayAsTheyAre() throws IOException {
        Files.writeString(shelf, "part shelf {\n length   300\n   width (  90 +\n}\nlet   a=1\n");
        assertThat(run("", shelf)).isZero();
        assertThat(shelf).hasContent("part shelf {\n  length 300\n  width (  90 +\n}\nlet a = 1\n");
    }

    @Test
    void windowsLineEndsAndMarksAtTheStartStay() throws IOException {
        Files.writeString(shelf, "\uFEFF" + MESSY.replace("\n", "\r\n"));
        assertThat(run("", shelf)).isZero();
        assertThat(Files.readString(shelf)).isEqualTo("\uFEFF" + NEAT.replace("\n", "\r\n"));
    }

    @Test
    void oneBadFileDoesNotStopTheOthers() throws IOException {
        Path picture = Files.write(folder.resolve("oak.jpg"), new byte[]{(byte) 0xff, (byte) 0xd8, 0, 1});
        assertThat(run("", folder.resolve("none.treen"), picture, folder, shelf)).isEqualTo(1);
        assertThat(complained()).contains("there is no file", "is not text in UTF-8", "is a folder");
        assertThat(shelf).hasContent(NEAT);
        assertThat(Files.readAllBytes(picture)).hasSize(4);
    }

    @Test
    void aLinkStaysALinkAndRightsStay() throws IOException {
        Assumptions.assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(shelf, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.treen"), shelf);
        assertThat(run("", link)).isZero();
        assertThat(link).isSymbolicLink();
        assertThat(shelf).hasContent(NEAT);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(shelf))).isEqualTo("rw-r-----");
    }

    @Test
    void tellsHowItIsMeant() {
        assertThat(run("")).isEqualTo(2);
        assertThat(run("", shelf, "--chekc")).isEqualTo(2);
        assertThat(complained()).contains("near is --check");
        assertThat(run("", "--help")).isZero();
        assertThat(printed()).contains("usage: treen format FILE... [--check]");
        assertThat(List.of(run("", "--", shelf))).containsExactly(0);
    }
}

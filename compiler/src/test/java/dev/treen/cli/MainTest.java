package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void tellsItsVersion() {
        assertThat(run("--version")).isZero();
        assertThat(text(out)).matches("treen \\d+\\.\\d+\\.\\d+\\S*\\R");
        assertThat(text(err)).isEmpty();
    }

    @Test
    void tellsHowItIsUsed() {
        assertThat(run("--help")).isZero();
        assertThat(text(out)).contains("usage: treen COMMAND");
    }

    @Test
    void hintsAtHelpWhenTheCommandMakesNoSense() {
        assertThat(run()).isEqualTo(2);
        assertThat(run("saw")).isEqualTo(2);
        assertThat(run("--loud")).isEqualTo(2);
        assertThat(text(err)).contains("no command given", "unknown command saw", "unknown option --loud",
                "treen --help");
        assertThat(text(out)).isEmpty();
    }

    /** The launcher's training run would fail in silence, so what it builds is built here aloud. */
    @Test
    void warmsUpOnAProjectThatBuilds(@TempDir Path folder) throws IOException {
        Path project = folder.resolve("warm-up.treen");
        try (InputStream in = Main.class.getResourceAsStream("warm-up.treen")) {
            Files.copy(in, project);
        }
        assertThat(run("build", project.toString(), "-o", folder.resolve("out").toString())).as(text(err)).isZero();
        assertThat(run("explain", project.toString(), "base.width")).isZero();
        assertThat(folder.resolve("out/cut-list.csv")).exists();
        assertThat(run("--warm-up")).isZero();
    }

    private int run(String... arguments) {
        PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream errTo = new PrintStream(err, true, StandardCharsets.UTF_8);
        return Main.run(List.of(arguments), new Subcommand.Streams(InputStream.nullInputStream(), to, errTo));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}

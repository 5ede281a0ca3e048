package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

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

    private int run(String... arguments) {
        PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream errTo = new PrintStream(err, true, StandardCharsets.UTF_8);
        return Main.run(List.of(arguments), new Subcommand.Streams(InputStream.nullInputStream(), to, errTo));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8);
    }
}

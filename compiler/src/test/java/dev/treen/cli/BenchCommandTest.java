package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command that measures the layout search, on an instance of our own. */
class BenchCommandTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... arguments) {
        var streams = new Subcommand.Streams(
                InputStream.nullInputStream(), new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return Main.run(List.of(arguments), streams);
    }

    @Test
    void printsOneLineOfJsonForEachInstance(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("shelves.json");
        Files.writeString(file, """
                {"family":"shelves","objective":"cut all parts from the fewest equal boards","kerf":0,
                 "instances":[
                  {"name":"two shelves","boards":[[10,4,null]],"parts":[[6,4,2]],"best":2},
                  {"name":"four shelves","boards":[[12,4,null]],"parts":[[6,4,4]],"best":2}]}
                """);
        assertThat(run("bench", "yield", file.toString(), "--steps", "1000")).isZero();
        List<String> lines = out.toString(StandardCharsets.UTF_8).lines().toList();
        assertThat(lines).hasSize(2);
        var last = new ObjectMapper().readTree(lines.getLast());
        assertThat(last.get("name").asText()).isEqualTo("four shelves");
        assertThat(last.get("value").asLong()).isEqualTo(2);
        assertThat(last.get("bound").asLong()).isEqualTo(2);
        assertThat(last.get("proved").asBoolean()).isTrue();
        assertThat(last.get("seconds").isNumber()).isTrue();
        assertThat(last.get("secondsToBest").isNumber()).isTrue();
    }

    @Test
    void saysWhatItCannotRead() {
        assertThat(run("bench", "yield", "no-such-file.json")).isEqualTo(1);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("no-such-file.json");
        assertThat(run("bench", "yield", "x.json", "--steps", "many")).isEqualTo(Main.WRONG_USE);
        assertThat(run("bench")).isEqualTo(Main.WRONG_USE);
    }

    @Test
    void staysOutOfTheHelp() {
        run("--help");
        assertThat(out.toString(StandardCharsets.UTF_8)).doesNotContain("bench");
    }
}

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

    /** Sheets of 10 by 4: two parts of 3 by 4 fill 6 of the length, three 9, a fourth 3 of a second sheet, and 1 by 4 is lost. */
    @Test
    void countsTheWasteOfSheetsUpToTheLastCutAcross(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("panes.json");
        Files.writeString(file, """
                {"family":"panes","objective":"least waste","instances":[
                  {"name":"one","boardSize":[10,4],"boards":[[],[[9,0,1,1]]],"parts":[[3,4,0],[4,3,0]],"best":0},
                  {"name":"two","boardSize":[10,4],"boards":[[],[]],"parts":[[3,4,0],[3,4,1],[4,3,2],[3,4,3]],"best":4}]}
                """);
        assertThat(run("bench", "yield", file.toString(), "--steps", "20000")).isZero();
        var lines = out.toString(StandardCharsets.UTF_8).lines().toList();
        var one = new ObjectMapper().readTree(lines.getFirst());
        assertThat(one.get("value").asLong()).isZero();
        assertThat(one.get("rules").asText()).contains("any order");
        var two = new ObjectMapper().readTree(lines.getLast());
        assertThat(two.get("left").asInt()).isZero();
        assertThat(two.get("value").asLong()).isEqualTo(4);
        assertThat(two.get("bound").asLong()).isLessThanOrEqualTo(4);
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

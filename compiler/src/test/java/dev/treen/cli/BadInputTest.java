package dev.treen.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Projects that nobody means: each ends soon with a finding, most of which name a bound, and without a fault of Treen's. */
class BadInputTest {
    private static final String TRAY = """
            project "Tray" { units mm; climate { humidity 40%..60%; temperature 18degC..22degC } }
            board plank { species black_cherry; size 900 x 140 x 12; moisture 9% }
            part base { length 200; width 100; thickness 9; from plank }
            """;

    @TempDir
    private Path folder;

    static Stream<Arguments> projects() {
        return Stream.of(
                Arguments.of("a repeat of a billion", "repeat i in 1..1000000000 { let a = i }", "too-many", "10000"),
                Arguments.of("repeats in repeats", """
                        repeat i in 1..10000 { repeat j in 1..10000 { repeat k in 1..10000 { let a = i } } }""",
                        "too-many", "10000"),
                Arguments.of("blocks in blocks", "pattern p {".repeat(20_000), "brace-not-closed", ""),
                Arguments.of("closed blocks in blocks", "pattern p {\n".repeat(300) + "}\n".repeat(300),
                        "nested-too-deep", "128"),
                Arguments.of("brackets in brackets", "let a = " + "(".repeat(100_000) + "1" + ")".repeat(100_000),
                        "nested-too-deep", "256"),
                Arguments.of("signs before signs", "let a = " + "-".repeat(100_000) + "1", "nested-too-deep", "256"),
                Arguments.of("a sum without end", "let a = 1mm" + " + 1mm".repeat(100_000), "nested-too-deep", "256"),
                Arguments.of("a chain of values", chain(500), "too-many", "120"),
                Arguments.of("a thousand digits", "let a = " + "9".repeat(1_000), "number-too-long", "30"),
                Arguments.of("a number squared and squared", squares(60), "too-many", "1000"),
                Arguments.of("a pattern in itself", "pattern p { p inner { } }\np x { }", "too-many", "20"),
                Arguments.of("patterns that double", doubling(19), "too-many", "5000"),
                Arguments.of("a name that is read from the right", "let ba\u202Ese = 9", "hidden-character", ""),
                Arguments.of("a name with a bell", "let ba\u0007se = 9", "hidden-character", ""),
                Arguments.of("a size of zero", "part z { length 0; width -3; thickness 0 }", "absurd-size", ""),
                Arguments.of("a share of nothing", "let a = 1mm / (2 - 2)", "do-not-add-up", ""),
                Arguments.of("a file without end", "// a remark\n".repeat(500_000), "file-too-large", "4194304"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("projects")
    void endsWithAFinding(String what, String text, String code, String bound) throws IOException {
        Path file = Files.writeString(folder.resolve("bad.treen"), TRAY + text + "\n");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
        int ended = assertTimeoutPreemptively(Duration.ofMinutes(1), () -> Main.run(
                List.of("build", file.toString(), "-o", folder.resolve("plan").toString()),
                new Subcommand.Streams(InputStream.nullInputStream(), stream, stream)));
        String said = out.toString(StandardCharsets.UTF_8);
        assertThat(said).as(what).contains(code).contains(bound).doesNotContain("Exception", "\tat ", "StackOverflow");
        assertThat(ended).as(what).isEqualTo(1);
        assertThat(folder.resolve("plan")).doesNotExist();
    }

    private static String chain(int length) {
        return IntStream.range(0, length)
                .mapToObj(i -> "let a" + i + " = a" + (i + 1) + " + 1mm\n")
                .collect(Collectors.joining()) + "let a" + length + " = 1mm";
    }

    private static String squares(int times) {
        return "let a0 = 99999999999\n" + IntStream.range(0, times)
                .mapToObj(i -> "let a" + (i + 1) + " = a" + i + " * a" + i + "\n")
                .collect(Collectors.joining());
    }

    private static String doubling(int deep) {
        return "pattern p0 { part a { length 10; width 10; thickness 9 } }\n" + IntStream.range(0, deep)
                .mapToObj(i -> "pattern p" + (i + 1) + " { p" + i + " a { }\n p" + i + " b { } }\n")
                .collect(Collectors.joining()) + "p" + deep + " x { }";
    }
}

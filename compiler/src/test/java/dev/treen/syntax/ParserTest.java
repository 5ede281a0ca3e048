package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What reads as what: samples against their trees as they were looked over, and single forms. */
class ParserTest {
    static Stream<String> samples() {
        return Samples.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void samplesReadWhole(String name) throws IOException {
        SyntaxTree tree = Parser.parse(Samples.file(name));
        assertThat(tree.findings()).map(f -> f.at() + " " + f.headline()).isEmpty();
        try (InputStream in = ParserTest.class.getResourceAsStream("samples/" + name + ".tree")) {
            String expected = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(Dump.of(tree.statements()).strip()).isEqualTo(expected.strip());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            9                   | 9
            9mm                 | 9mm
            9 mm                | 9mm
            3/4in               | 3/4in
            2 3/8in             | 19/8in
            5ft 3 1/2in         | (5ft + 7/2in)
            1.2m                | 6/5m
            .5                  | 1/2
            1:8                 | 1:8
            35%                 | 35%
            18degC..24degC      | (18degC .. 24degC)
            -5degF              | -5degF
            900x140x27          | (900 x 140 x 27)
            9mmx14mm            | (9mm x 14mm)
            72 x 6 3/4 x 7/8    | (72 x 27/4 x 7/8)
            a + b x c           | ((a + b) x c)
            a x b + c x d * 2   | (a x (b + c) x (d * 2))
            a - b - c           | ((a - b) - c)
            a/3/4               | ((a / 3) / 4)
            24/3mm              | 8mm
            24 / 3mm            | (24 / 3mm)
            a+3/4in             | (a + 3/4in)
            -a.b * 2            | ((- a.b) * 2)
            -a[1]               | (- a[1])
            a + b .. c + d      | ((a + b) .. (c + d))
            a .. b < c          | ((a .. b) < c)
            not a < b and c or d| (((not (a < b)) and c) or d)
            a or b and not c    | (a or (b and (not c)))
            when a then 1 else 2 + b | (when a then 1 else (2 + b))
            1 + when a then 1 else 2 | (1 + (when a then 1 else 2))
            max(1, b.c, (2))    | max(1, b.c, 2)
            shelf[i - 1].sag    | shelf[(i - 1)].sag
            x x x               | (x x x)
            (1 x 2) x 3         | ((1 x 2) x 3)
            in.to               | in.to
            "a \\" b"           | "a " b"
            a != b              | (a != b)
            """)
    void expressions(String text, String tree) {
        SyntaxTree read = Parser.parse(new SourceFile("test.treen", "let v = " + text + "\nlet after = 1\n"));
        assertThat(read.findings()).isEmpty();
        assertThat(Dump.of(read.statements())).isEqualTo("let v = " + tree + "\nlet after = 1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3inset          | unknown-unit      | ?
            3 inset         | ''                | 3 ~inset
            3inch           | unknown-unit      | 3in
            3/4"            | unknown-unit      | 3/4in
            18°C            | unknown-unit      | 18degC
            1/0             | unreadable-number | ?
            1234567890123456789012345678901 | number-too-long | ?
            """)
    void figuresThatAreNot(String text, String code, String tree) {
        SyntaxTree read = Parser.parse(new SourceFile("test.treen", "wide " + text + "\nlet after = 1\n"));
        assertThat(String.join(" ", read.findings().stream().map(Finding::code).toList())).isEqualTo(code);
        assertThat(Dump.of(read.statements())).isEqualTo("wide " + tree + "\nlet after = 1");
    }
}

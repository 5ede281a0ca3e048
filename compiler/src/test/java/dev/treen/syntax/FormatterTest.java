package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One style, reached in one step, that never changes what a file says. */
class FormatterTest {
    static List<String> samples() {
        return Samples.ALL;
    }

    private static SyntaxTree parse(String text) {
        return Parser.parse(new SourceFile("test.treen", text));
    }

    private static String format(String text) {
        return Formatter.format(parse(text));
    }

    /** Formats, and checks what must hold of every file: same tree, same findings, and nothing left to do. */
    private static String checked(String text) {
        SyntaxTree before = parse(text);
        String once = Formatter.format(before);
        SyntaxTree after = parse(once);
        assertThat(Dump.of(after.statements())).as("of %s", text).isEqualTo(Dump.of(before.statements()));
        assertThat(after.findings()).as("of %s", text).map(Finding::code)
                .containsExactlyElementsOf(before.findings().stream().map(Finding::code).toList());
        assertThat(Formatter.format(after)).as("twice: %s", text).isEqualTo(once);
        return once;
    }

    /** Also that the writer itself kept every token, so that the formatter did not have to hold back. */
    private static String written(String text) {
        String once = checked(text);
        assertThat(once).as("of %s", text).isEqualTo(new FormatWriter(parse(text)).write());
        return once;
    }

    @Test
    void oneStyle() {
        String messy = """


                project   "Tea tray"{units mm;
                climate{humidity 35 %..65%;temperature 18 degC ..24degC} // the kitchen
                   tools hand;; }


                let a=9
                let inside=160x80x(70+-a) // clear
                part  front like other . thing [ 1+i ]
                {
                length inside . length;width 2 3/8 in+1 // all of it

                /* a note
                     over two lines */
                splay 1 : 8
                  place { }
                place{length right;at 0,-wall,max (1,2)*( 3-4 )}
                }
                pattern p { param stile:length=57 mm /// width
                  param top : one of a,b=a {
                    thick:length=9 } }
                accept panel-tight on base because "dry"
                when a<b
                {
                x 1 }

                else { x 2 }
                // the end
                """;
        assertThat(written(messy)).isEqualTo("""
                project "Tea tray" {
                  units    mm
                  climate  { humidity 35%..65%; temperature 18degC..24degC }  // the kitchen
                  tools    hand
                }

                let a      = 9
                let inside = 160 x 80 x (70 + -a)  // clear
                part front like other.thing[1 + i] {
                  length  inside.length
                  width   2 3/8in + 1  // all of it

                  /* a note
                     over two lines */
                  splay  1:8
                  place  {}
                  place  { length right; at 0, -wall, max(1, 2) * (3 - 4) }
                }
                pattern p {
                  param stile : length = 57mm  /// width
                  param top   : one of a, b = a {
                    thick : length = 9
                  }
                }
                accept panel-tight on base because "dry"
                when a < b {
                  x 1
                } else { x 2 }
                // the end
                """);
    }

    @Test
    void brokenLinesStayAsTheyAre() {
        String text = """
                part a{
                    length   5
                  width   (  3 +
                    thickness   7
                }
                part b{length   5
                part c   { length   5 }
                let  d=1
                """;
        assertThat(checked(text)).isEqualTo("""
                part a {
                  length     5
                  width   (  3 +
                  thickness  7
                }
                part b{length   5
                part c { length 5 }
                let d = 1
                """);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void samplesKeepTheirMeaning(String name) {
        String text = Samples.text(name);
        String formatted = written(text);
        assertThat(written(formatted.replace("\n", "\r\n"))).isEqualTo(formatted.replace("\n", "\r\n"));
        if (!text.contains("/*")) {
            assertThat(written(formatted.indent(7))).isEqualTo(formatted);
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void blanksDoNotMatter(String name) {
        Random random = new Random(11);
        for (int round = 0; round < 6; round++) {
            written(respaced(parse(Samples.text(name)), random));
        }
    }

    /** The same tokens with other blanks between them wherever there are some. */
    private static String respaced(SyntaxTree tree, Random random) {
        StringBuilder text = new StringBuilder();
        int at = 0;
        for (Token token : tree.tokens()) {
            if (token.start() > at) {
                text.append(" ".repeat(1 + random.nextInt(4)));
            }
            String own = tree.file().text().substring(token.start(), token.end());
            text.append(own);
            text.append(token.kind() == Token.Kind.NEW_LINE && random.nextInt(4) == 0
                    && !text.toString().endsWith("thing.\n")
                            ? "   " : "");
            text.append(List.of("{", "}", ",", "(", "*", "+").contains(own) && random.nextInt(3) == 0 ? "  " : "");
            at = token.end();
        }
        return text.toString();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void damageIsWorkedAround(String name) {
        String text = Samples.text(name);
        for (Token token : parse(text).tokens()) {
            written(text.substring(0, token.start()) + text.substring(token.end()));
        }
    }

    @Test
    void garbageIsWorkedAround() {
        Random random = new Random(5);
        for (String name : Samples.ALL) {
            String text = Samples.text(name);
            for (int round = 0; round < 12; round++) {
                StringBuilder mixed = new StringBuilder(text);
                for (int i = 0; i < 8; i++) {
                    int from = random.nextInt(mixed.length());
                    int to = Math.min(mixed.length(), from + random.nextInt(20));
                    String piece = mixed.substring(from, to);
                    mixed.delete(from, to);
                    mixed.insert(random.nextInt(mixed.length()), piece);
                }
                checked(mixed.toString());
            }
        }
    }

    @Test
    void editsAreSmall() {
        SyntaxTree tree = parse("part a {\n  length  5\n  width   6\n}\nlet b  = 1\n");
        List<Edit> edits = Formatter.edits(tree);
        assertThat(edits).hasSize(1);
        assertThat(edits.getFirst().at().text()).isEqualTo("  ");
        assertThat(edits.getFirst().text()).isEqualTo(" ");
        assertThat(Formatter.edits(parse(Formatter.format(tree)))).isEmpty();
    }

    @Test
    void emptyAndUnreadableFilesStay() {
        assertThat(format("")).isEmpty();
        assertThat(format("\n \n")).isEmpty();
        assertThat(format("let  a\0")).isEqualTo("let  a\0");
    }
}

package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever stands in a file, reading it ends soon, says what is wrong, and never fails. */
class ParserBoundsTest {
    private static SyntaxTree parse(String text) {
        return Parser.parse(new SourceFile("test.treen", text));
    }

    private static List<String> codes(SyntaxTree tree) {
        return tree.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aFileBeyondTheBoundIsNotRead() {
        SyntaxTree tree = parse("let a = 1\n".repeat(1_000_000));
        assertThat(codes(tree)).containsExactly("file-too-large");
        assertThat(tree.statements()).isEmpty();
    }

    @Test
    void aBinaryFileIsNotRead() {
        SyntaxTree tree = parse("let a = 1\n\0\1\2 {{{");
        assertThat(codes(tree)).containsExactly("not-text");
        assertThat(tree.findings().getFirst().at().start()).isEqualTo(10);
    }

    @Test
    void anEmptyFileIsAProjectWithNothingInIt() {
        assertThat(parse("").statements()).isEmpty();
        assertThat(parse("").findings()).isEmpty();
        assertThat(parse(" \n\r\n\t// nothing").findings()).isEmpty();
        assertThat(parse("\uFEFFlet a = 1\r\nlet b = 2\r").statements()).hasSize(2);
    }

    @Test
    void blocksMayNestSoDeepAndNoDeeper() {
        int most = BlockReader.DEEPEST;
        assertThat(codes(parse("a {".repeat(most) + "}".repeat(most)))).isEmpty();
        SyntaxTree tree = parse("a {".repeat(most + 1) + "}".repeat(most + 1) + "\nlet after = 1");
        assertThat(codes(tree)).containsExactly("nested-too-deep");
        assertThat(Dump.of(tree.statements().getLast())).isEqualTo("let after = 1");
        assertThat(codes(parse("a {".repeat(100_000)))).hasSize(FindingList.MOST);
        assertThat(codes(parse("a {} ".repeat(100_000) + "}"))).containsExactly("stray-brace");
        assertThat(codes(parse("}".repeat(100_000)))).hasSize(FindingList.MOST);
    }

    @Test
    void valuesMayNestSoDeepAndNoDeeper() {
        int most = TreeBuilder.DEEPEST;
        assertThat(codes(parse("let a = " + "(".repeat(most - 1) + "1" + ")".repeat(most - 1)))).isEmpty();
        for (String deep : List.of("(".repeat(5000) + "1" + ")".repeat(5000), "-".repeat(5000) + "1",
                "1" + " + 1".repeat(5000),
                "a" + ".b".repeat(5000), "a" + "[1]".repeat(5000), "not ".repeat(5000) + "a",
                "f(a, 1 + 1 + 1 + ".repeat(100), "when a then ".repeat(5000), "1" + " x 1".repeat(5000),
                "f(".repeat(5000))) {
            SyntaxTree tree = parse("let a = " + deep + "\nlet after = 1");
            assertThat(codes(tree)).containsExactly("nested-too-deep");
            assertThat(Dump.of(tree.statements())).isEqualTo("let a = ?\nlet after = 1");
        }
        assertThat(codes(parse("run " + "(a + b), ".repeat(5000) + "c"))).isEmpty();
    }

    @Test
    void onlySoManyFindingsAreShown() {
        SyntaxTree tree = parse("let = 1\n".repeat(250));
        assertThat(tree.findings()).hasSize(FindingList.MOST);
        assertThat(tree.findings().getLast().headline()).isEqualTo("and 151 more findings in this file");
        assertThat(tree.statements()).hasSize(250);
    }

    /** The trick is known from Unicode Technical Report 36, section 3 (from memory): marks that turn the reading order. */
    @Test
    void hiddenCharactersInNamesAreShown() {
        SyntaxTree tree = parse("part fr\u202Eont { length 5 }\npart fr\u200Bont { length 5 }\nlet \u0007 = 1");
        assertThat(codes(tree)).containsExactly("hidden-character", "hidden-character", "hidden-character");
        assertThat(tree.findings().getFirst().headline()).contains("fr\\u202Eont").doesNotContain("\u202E");
        assertThat(Dump.of(tree.statements().getFirst())).startsWith("part front");
    }

    @Test
    void lettersOfAnyScriptMakeNamesAndOffsetsCountUnits() {
        SyntaxTree tree = parse("/* 🪵 */ let länge_é = \"🪵\"; let ĉu = 2 // 🪚\nlet next = 3");
        assertThat(tree.findings()).isEmpty();
        assertThat(tree.statements()).map(s -> s.span().text())
                .containsExactly("let länge_é = \"🪵\"", "let ĉu = 2", "let next = 3");
    }

    @Test
    void garbageIsRead() {
        Random random = new Random(20_250_101);
        String[] words = {"part", "let", "{", "}", "(", ")", "[", "]", "\n", ";", ",", "=", "x", "9", "3/4", "in", "\"",
                "//",
                "/*", "*/", "///", "..", ".", "when", "then", "else", "joint", "to", "into", "a", "b", "-", "+", " ",
                " ", "\n  ",
                "param", ":", "one of", "\u202E", "🪵", "\r", "\\", "°", "%", "require", "because"};
        for (int round = 0; round < 200; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(120); i > 0; i--) {
                text.append(random.nextInt(20) == 0
                        ? String.valueOf((char) (1 + random.nextInt(0xFFFF)))
                        : words[random.nextInt(words.length)]);
                text.append(random.nextBoolean() ? " " : "");
            }
            SyntaxTree tree = parse(text.toString());
            coversTheText(tree);
        }
    }

    @Test
    void samplesShuffledAreRead() {
        Random random = new Random(7);
        for (String name : Samples.ALL) {
            String text = Samples.text(name);
            for (int round = 0; round < 10; round++) {
                StringBuilder mixed = new StringBuilder(text);
                for (int i = 0; i < 10; i++) {
                    int from = random.nextInt(mixed.length());
                    int to = Math.min(mixed.length(), from + random.nextInt(30));
                    String piece = mixed.substring(from, to);
                    mixed.delete(from, to);
                    mixed.insert(random.nextInt(mixed.length()), piece);
                }
                coversTheText(parse(mixed.toString()));
            }
        }
    }

    /** Tokens lie in order, everything between them is blank, and statements lie within their parents. */
    private static void coversTheText(SyntaxTree tree) {
        String text = tree.file().text();
        int at = 0;
        for (Token token : tree.tokens()) {
            assertThat(token.start()).isGreaterThanOrEqualTo(at);
            assertThat(text.substring(at, token.start()).replaceAll("[ \\t\\f\\u00A0\\uFEFF]", "")).isEmpty();
            at = token.end();
        }
        assertThat(text.substring(at).replaceAll("[ \\t\\f\\u00A0\\uFEFF]", "")).isEmpty();
        within(tree.statements(), 0, text.length());
    }

    private static void within(List<Statement> statements, int start, int end) {
        int at = start;
        for (Statement statement : statements) {
            assertThat(statement.span().start()).isGreaterThanOrEqualTo(at);
            assertThat(statement.span().end()).isLessThanOrEqualTo(end);
            at = statement.span().end();
            statement.body().ifPresent(b -> within(b.statements(), b.span().start(), b.span().end()));
        }
    }

    /** How long it takes is printed for people; no machine is fast enough to promise it. */
    @Test
    void hundredThousandLinesAreRead() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 16_667; i++) {
            text.append("part p").append(i)
                    .append(" {\n  length 5 + 2 * a\n  width 3/4in\n  place { at 1, 2, 3 }\n  from oak\n}\n");
        }
        assertThat(text.length()).isLessThan(Parser.MOST_CHARACTERS);
        for (int round = 0; round < 2; round++) {
            long start = System.nanoTime();
            SyntaxTree tree = parse(text.toString());
            System.out.printf("%d lines read in %d ms%n", tree.file().lineCount(),
                    (System.nanoTime() - start) / 1_000_000);
            assertThat(tree.statements()).hasSize(16_667);
        }
    }
}

package dev.treen.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is kept of a line that does not read, and what is said about it, at which place. */
class BrokenLineTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            let wall =                 | let wall = ?              | 10 | a value is missing after `=`
            let = 9                    | let ? = 9                 | 3  | a name is missing after `let`
            let wall 9                 | let wall = 9              | 8  | `=` is missing after `wall`
            let wall = 9 9             | let wall = ?              | 13 | `9` cannot stand here
            part                       | part ?                    | 4  | a name is missing after `part`
            part 5                     | part ?                    | 5  | `5` cannot stand here
            part shelf[1               | part shelf[1]             | 12 | `]` is missing after `1`
            length inside.             | length inside.?           | 14 | a name is missing after `.`
            length (a + b              | length (a + b)            | 13 | `)` is missing after `b`
            length a +                 | length (a + ?)            | 10 | a value is missing after `+`
            length a b) c              | length ?                  | 10 | `)` cannot stand here
            length 5,, 6               | length 5, ?, 6            | 9  | a value is missing after `,`
            size 900 140 x 27          | size ?                    | 9  | `140` cannot stand here
            size 9 x                   | size (9 x ?)              | 8  | a value is missing after `x`
            joint mitre front          | joint mitre front to ?    | 17 | `to` or `into` is missing after `front`
            joint mitre front back     | joint mitre front to back | 17 | `to` is missing after `front`
            joint                      | joint ?                   | 5  | a name is missing after `joint`
            require because "x"        | require ? because "x"     | 7  | a value is missing after `require`
            accept on base             | accept ? on base          | 6  | a name is missing after `accept`
            measured caddy             | measured caddy ?          | 14 | a value is missing after `caddy`
            param x : one of           | param x : one of ?        | 16 | a name is missing after `of`
            repeat i 1..3              | repeat i in (1 .. 3)      | 8  | `in` is missing after `i`
            let a = when b then 1      | let a = ?                 | 21 | `else` or an operator is missing after `1`
            let a = when b 1 else 2    | let a = (when b then 1 else 2) | 14 | `then` is missing after `b`
            use box                    | use ?                     | 4  | `box` cannot stand here
            else                       | broken                    | 0  | this `else` follows no `when` with a block
            = 5                        | broken                    | 0  | `=` cannot stand here
            wide = 5                   | wide ?                    | 5  | `=` cannot stand here
            wide 5 @                   | wide 5                    | 7  | `@` means nothing here
            size 1 x 2 x 3 x 4         | size (1 x 2 x 3)          | 17 | a size has two or three measures
            name "tea                  | name "tea"                | 5  | this text has no closing quote
            wide 5 /* note             | wide 5                    | 7  | this comment is never closed
            """)
    void whatIsLeftOfALine(String line, String tree, int at, String headline) {
        SyntaxTree read = Parser.parse(new SourceFile("test.treen", line + "\nlet after = 1"));
        assertThat(Dump.of(read.statements())).isEqualTo(tree + "\nlet after = 1");
        assertThat(read.findings()).map(Finding::headline).containsExactly(headline);
        assertThat(read.findings().getFirst().at().start()).isEqualTo(at);
        read.findings().getFirst().safeRemedy().ifPresent(remedy -> assertThat(afterwards(line, remedy).findings())
                .isEmpty());
    }

    private static SyntaxTree afterwards(String text, Remedy remedy) {
        return Parser.parse(new SourceFile("test.treen", Edit.applied(text, remedy.edits())));
    }

    @Test
    void aLostBraceIsSoughtByIndentation() {
        String text = """
                part a {
                  length 5
                  place { at 1, 2, 3

                part b
                  length 6
                }
                part c { length 7 }
                """;
        SyntaxTree tree = Parser.parse(new SourceFile("test.treen", text));
        assertThat(tree.findings()).map(f -> f.code() + " " + f.at().line() + ":" + f.at().column())
                .containsExactly(
                        "brace-not-closed 1:8", "brace-not-closed 3:9", "brace-not-opened 5:7");
        assertThat(tree.statements()).hasSize(3).allMatch(s -> s.body().isPresent());
    }

    @Test
    void whereBracesBalanceIndentationMeansNothing() {
        String text = "part a {\nlength 5\n}\n    part b\n    {\n  width 6\n  }";
        SyntaxTree tree = Parser.parse(new SourceFile("test.treen", text));
        assertThat(tree.findings()).isEmpty();
        assertThat(Dump.of(tree.statements())).isEqualTo("part a {\n  length 5\n}\npart b {\n  width 6\n}");
    }

    @Test
    void everyKindOfFindingIsListedOnce() {
        List<String> codes = SyntaxFindings.all().stream().map(kind -> kind.code()).toList();
        assertThat(codes).doesNotHaveDuplicates().hasSize(SyntaxFindings.class.getFields().length);
    }
}

package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a thing is to hold goes in or not: figures worked by hand; the bounds are F-08, common practice, no source. */
final class ContentsFitTest {
    private static List<Finding> findings(String holds) {
        String text = "let room = 160 x 80 x 70\npart p { length 9; width 9; thickness 9 }\n" + holds;
        return Compilation.of(new SourceFile("test.treen", text), FileLoader.NONE).checked().findings().stream()
                .filter(f -> f.code().startsWith("contents"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tin 150 x 70 x 60                          |
            tin 78 x 158 x 68                          |
            tin 159 x 70 x 60                          | contents-tight
            tin 160 x 80 x 70                          | contents-tight
            tin 161 x 70 x 60                          | contents-do-not-fit
            tin 70 x 60 x 71                           | contents-do-not-fit
            cup 39 x 39 x 60; count 8                  |
            cup 39 x 39 x 60; count 9                  | contents-do-not-fit
            cup 39 x 39 x 33; count 16                 |
            cup 50 x 70 x 60; count 3                  |
            cup 50 x 70 x 60; count 2; jar 40 x 50 x 30 |
            cup 50 x 70 x 60; count 3; jar 40 x 50 x 30 | contents-do-not-fit
            spoon 158 x 20 x 10; count 3; tin 150 x 16 x 60 |
            tin 155 x 70 x 60; room 3                  | contents-tight
            """)
    void whatGoesInIsSaid(String contents, String code) {
        assertThat(findings("holds room { " + contents + " }")).extracting(Finding::code)
                .containsExactlyElementsOf(code == null ? List.of() : List.of(code));
    }

    @Test
    void theRemedyMakesRoom() {
        Finding finding = findings("holds room { tin 170 x 70 x 75 }").getFirst();
        assertThat(finding.remedies().getFirst().text()).isEqualTo("make the inside 172 x 80 x 77");
        assertThat(finding.remedies().getFirst().edits().getFirst().at().text()).isEqualTo("160 x 80 x 70");
    }

    @Test
    void theInsideOfAnInstanceHolds() {
        String box = "use \"treen/box\"\nbox b { inside 100 x 60 x 40 }\nholds b { tin 110 x 50 x 30 }";
        Finding finding = Compilation.of(new SourceFile("t.treen", box), FileLoader.NONE).checked().findings().stream()
                .filter(f -> f.code().equals("contents-do-not-fit"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.related().getFirst().at().text()).isEqualTo("100 x 60 x 40");
    }
}

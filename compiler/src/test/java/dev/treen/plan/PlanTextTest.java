package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanTextTest {

    @ParameterizedTest
    @ValueSource(strings = {"tea-caddy", "wall-shelf"})
    void fitsAHundredColumns(String name) {
        assertThat(PlanText.of(Projects.example(name).plan()).lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void longNamesAreCutAndStrangeOnesCannotDriveTheTerminal() {
        String name = "shelf_" + "x".repeat(300);
        String text = PlanText.of(Projects.compile("project \"bad \\u001b[2J title\" { units mm }\npart " + name
                + " { length 100; width 50; thickness 10 }").plan());
        assertThat(text).doesNotContain("\u001b").contains("…");
    }

    @Test
    void aProjectWithoutPartsIsStillAPlan() {
        assertThat(PlanText.of(Projects.compile("project \"nothing\" { units mm }").plan())).contains("Cut list");
    }

    @Test
    void markdownKeepsTextAsText() {
        String markdown = OrderMarkdown.of(Projects.compile("""
                project "*Not* <b>bold</b> [link](x) `code" { units mm }
                part a { length 100; width 50; thickness 10 }
                """).plan());
        assertThat(markdown.lines().findFirst().orElseThrow())
                .isEqualTo("# \\*Not\\* \\<b\\>bold\\</b\\> \\[link\\](x) `code: order of work");
    }
}

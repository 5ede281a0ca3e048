package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.FindingKind;
import org.junit.jupiter.api.Test;

class CompilationTest {

    @Test
    void everyStageIsWorkedOutOnce() {
        Compilation compilation = Projects.example("tea-caddy");
        assertThat(compilation.checked()).isSameAs(compilation.checked());
        assertThat(compilation.cutting()).isSameAs(compilation.cutting());
        assertThat(compilation.plan().order()).isSameAs(compilation.order());
    }

    @Test
    void aPartTooLargeForItsBoardIsSaidOnce() {
        String text = Projects.text("tea-caddy").replace("x 140 x 27", "x 90 x 27");
        assertThat(Projects.codes(Projects.compile(text).findings())).contains("board-too-narrow")
                .doesNotContain("part-fits-no-board");
    }

    @Test
    void aPartForWhichThereIsNoRoomIsAFinding() {
        String text = Projects.text("tea-caddy").replace("900 x 140", "400 x 140");
        assertThat(Projects.codes(Projects.compile(text).findings())).contains("part-fits-no-board");
    }

    @Test
    void codesAreDeclaredOnce() {
        assertThat(Compilation.kinds()).extracting(FindingKind::code).doesNotHaveDuplicates();
    }

    @Test
    void nothingIsTooBrokenToBeCompiled() {
        for (String text : new String[]{"", "{", "}}}", "part", "board b { size 1 x 1 x 1 }\npart p { length 0",
                "\0\0"}) {
            Compilation compilation = Projects.compile(text);
            assertThat(compilation.findings()).isNotNull();
            assertThat(compilation.plan()).isNotNull();
        }
    }
}

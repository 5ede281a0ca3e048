package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    /** A tenon near a groove asks where that lies, even where it cannot be made. */
    @Test
    void aGrooveOfNoWidthIsToldWhateverIsBesideIt() {
        Compilation compilation = Projects.compile("""
                part stile { length 300; width 40; thickness 15; place { length up; width right; at 300, 0, 0 } }
                part rail  { length 120; width 40; thickness 15; place { length right; width up; at 340, 0, 0 } }
                part panel { length 220; width 120; thickness 10; place { length up; width right; at 340, 0, 40 } }
                joint mortise_tenon rail into stile
                joint groove panel into stile, rail { wide 0; deep 8; shoulder front }
                """);
        assertThat(Compilation.hasErrors(compilation.findings())).isTrue();
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

    /** A chain longer than is followed is an error, and no waiting for one another hides all errors. */
    @Test
    void somethingIsAlwaysToldOfAProjectThatIsWrong() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 400; i++) {
            text.append("let a").append(i).append(" = a").append(i + 1).append(" + 1\n");
        }
        text.append("let a400 = 1\npart p { length a0; width 10; thickness 10 }\n");
        Compilation made = Compilation.of(
                new dev.treen.source.SourceFile("chain.treen", text.toString()), dev.treen.model.FileLoader.NONE);
        assertTrue(Compilation.hasErrors(made.checked().findings()));
    }
}

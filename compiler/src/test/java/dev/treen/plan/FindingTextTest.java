package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.source.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class FindingTextTest {
    private static final SourceFile FILE = new SourceFile("bench.treen",
            "board seat { size 900 x 300 x 27 }\nlet x = 4\n");
    private static final FindingKind KIND = FindingKind.warning("seat-wide", "A seat is wide");

    @Test
    void showsTheLineTheMarkAndTheWayOut() {
        Finding finding = Finding.of(KIND, FILE.span(20, 32), "`seat` is wide")
                .label("300 mm across the grain")
                .related(FILE.span(39, 40), "a let that has nothing to do with it")
                .found("300 mm; 250 mm are usual.")
                .because("It moves with the seasons.")
                .remedy(Remedy.safe("write `250`"))
                .build();
        assertThat(new FindingText(false).of(List.of(finding))).isEqualTo("""
                warning seat-wide  `seat` is wide
                  bench.treen:1:21
                     1 | board seat { size 900 x 300 x 27 }
                       |                     ^^^^^^^^^^^^ 300 mm across the grain
                     2 | let x = 4
                       |     ^ a let that has nothing to do with it
                  Found    300 mm; 250 mm are usual.
                  Because  It moves with the seasons.
                  Do       write `250`  [safe to apply]

                0 errors, 1 warning, 0 notes
                """);
    }

    @Test
    void colourOnlyWhenTold() {
        Finding finding = Finding.of(KIND, FILE.span(6, 10), "`seat` is wide").build();
        assertThat(new FindingText(false).of(List.of(finding))).doesNotContain("\u001b");
        assertThat(new FindingText(true).of(List.of(finding))).contains("\u001b[1;33m");
    }

    @Test
    void aFindingOfAnotherFileSaysWhich() {
        SourceFile other = new SourceFile("rack.treen", "board seat {}\n");
        Finding finding = Finding.of(KIND, FILE.span(6, 10), "`seat` is there twice")
                .related(other.span(6, 10), "here too")
                .build();
        assertThat(new FindingText(false).of(List.of(finding))).contains("  rack.treen:1:7\n");
    }

    /** A joint that stands once for two pairs of parts: what differs is only which parts it is about. */
    @Test
    void whatReadsTheSameIsToldOnce() {
        Finding.Builder left = Finding.of(KIND, FILE.span(6, 10), "`seat` is wide").about("left");
        Finding.Builder right = Finding.of(KIND, FILE.span(6, 10), "`seat` is wide").about("right");
        Finding other = Finding.of(KIND, FILE.span(39, 40), "`seat` is wide").build();
        assertThat(new FindingText(false).of(List.of(left.build(), right.build(), other)))
                .containsOnlyOnce("bench.treen:1:7").contains("bench.treen:2:5", "2 warnings");
    }
}

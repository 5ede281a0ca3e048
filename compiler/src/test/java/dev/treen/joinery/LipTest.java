package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.treen.check.Bench;
import dev.treen.finding.Severity;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** A lid that is lifted off an invented box of four butted sides. */
class LipTest {
    private static Bench box(String how) {
        return Bench.of("""
                project "Salt box" { climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board maple { species sugar_maple; size 2400 x 200 x 40; rings flat; moisture 8%% }
                part front { length 120; width 60; thickness 8; from maple; place { length right; width up; at 0, -8, 0 } }
                part back like front { place { at 0, 90, 0 } }
                part left { length 90; width 60; thickness 8; from maple; place { length back; width up; at -8, 0, 0 } }
                part right like left { place { at 120, 0, 0 } }
                joint butt front to left, back to left, back to right, front to right
                part lid { length 120; width 90; thickness 9; from maple; place { length right; width back; at 0, 0, 56 } }
                joint lip lid into front, back, left, right { %s }
                """.formatted(how));
    }

    @Test
    void theLidCoversTheRimsAndItsLipDropsIn() {
        Bench bench = box("gap 1; overhang 3");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("lid").length().value()).isEqualTo(mm(120 + 2 * 11));
        assertThat(bench.part("lid").width().value()).isEqualTo(mm(90 + 2 * 11));
        assertThat(bench.figure("lid", "front", "deep")).isEqualTo(mm(4));
        // The plate above the rims, and the lip between its four gaps.
        assertThat(bench.part("lid").solid().orElseThrow().volume())
                .isEqualTo(BigFraction.of(142 * 112 * 5 + 118 * 88 * 4));
        List<Placed> placed = List.of("front", "back", "left", "right", "lid").stream()
                .map(name -> new Placed(name, bench.part(name).solid().orElseThrow()))
                .toList();
        assertThat(Overlap.among(placed)).isEmpty();
    }

    /** M-13 with F-01 (0.5 a side, common practice): 90 × 0.00353 × 4.06 ÷ 2 + 0.5 (Wood Handbook table 13-5). */
    @Test
    void itsRoomIsWhatItGrowsAndABitToMove() {
        Bench bench = box("gap auto");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("lid", "front", "gap").toDoubleMm())
                .isCloseTo(90 * 0.00353 * 4.06 / 2 + 0.5, offset(0.02));
        assertThat(bench.part("lid").width().value()).as("flush").isEqualTo(mm(106));
    }

    @Test
    void aLidWithoutRoomJams() {
        Bench bench = box("gap 0.3");
        assertThat(bench.codes()).containsExactly("lid-jams");
        assertThat(bench.finding("lid-jams").severity()).isEqualTo(Severity.ERROR);
        assertThat(bench.mended("lid-jams").codes()).isEmpty();
    }

    @Test
    void aLidThatLiesWhollyInOrOnTheRimHasNoLip() {
        assertThat(box("gap 1").with("at 0, 0, 56", "at 0, 0, 50").codes()).contains("meets-wrongly");
        assertThat(box("gap 1").with("at 0, 0, 56", "at 0, 0, 60").codes()).isNotEmpty();
    }
}

package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.finding.Finding;
import dev.treen.quantity.Length;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Rebates along an edge, planed through or stopped: volumes in closed form. The projects are invented. */
class RebateTest {

    /** A rail of 200 x 40 x 12, and a base of 160 x 80 x 4 that lies in a rebate along its lower edge, from 20 to 180. */
    private static Bench rail(String settings) {
        return Bench.of("""
                project "Letter tray" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board ash { species white_ash; size 1200 x 120 x 20; rings quarter; moisture 9%% }
                sheet ply { size 600 x 300 x 4 }
                part rail { length 200; width 40; thickness 12; from ash; place { length right; width up; at 0, -12, 0 } }
                part base { length 160; width 80; thickness 4; from ply; place { length right; width back; at 20, 0, 0 } }
                joint rebate base into rail { deep 4%s }
                """.formatted(settings));
    }

    private static BigFraction volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume();
    }

    @Test
    void planedThroughItTakesTheWholeLength() {
        Bench bench = rail("");
        assertThat(volume(bench, "rail")).isEqualTo(BigFraction.of(200 * 40 * 12 - 200 * 4 * 4));
        assertThat(volume(bench, "base")).isEqualTo(BigFraction.of(160 * 84 * 4));
        assertThat(bench.figure("base", "rail", "wide")).isEqualTo(Length.ofMm(4));
        assertThat(bench.figure("base", "rail", "lip")).isEqualTo(Length.ofMm(8));
        assertThat(bench.finding("groove-shows").found()).contains("a notch of 4 mm by 4 mm at the rim");
    }

    @Test
    void stoppedByItselfItGoesAsFarAsTheBase() {
        Bench bench = rail("; stop auto");
        assertThat(bench.codes()).isEmpty();
        assertThat(volume(bench, "rail")).isEqualTo(BigFraction.of(200 * 40 * 12 - 160 * 4 * 4));
        assertThat(volume(bench, "base")).isEqualTo(BigFraction.of(160 * 84 * 4));
    }

    /** Stopped 30 short of each end, 10 of the base at each end would strike. */
    @Test
    void stoppedShorterTheBaseIsNotched() {
        Bench bench = rail("; stop 30");
        assertThat(bench.codes()).isEmpty();
        assertThat(volume(bench, "rail")).isEqualTo(BigFraction.of(200 * 40 * 12 - 140 * 4 * 4));
        assertThat(volume(bench, "base")).isEqualTo(BigFraction.of(160 * 84 * 4 - 2 * 10 * 4 * 4));
    }

    @Test
    void atOneEndOnly() {
        Bench bench = rail("; stop 20 from left");
        assertThat(volume(bench, "rail")).isEqualTo(BigFraction.of(200 * 40 * 12 - 180 * 4 * 4));
        assertThat(bench.finding("groove-shows").subjects()).contains("rail");
    }

    @Test
    void aStopThatLeavesNothingOrHasNoEndIsTold() {
        assertThat(rail("; stop 100").finding("setting-does-not-fit").headline())
                .isEqualTo("The stop leaves no rebate for `base`");
        Finding up = rail("; stop 5 from up").finding("setting-does-not-fit");
        assertThat(up.headline()).isEqualTo("The rebate for `base` does not run to that end");
    }

    /** A rebated corner of a carcase runs across the grain, as long as what lies in it. */
    @Test
    void acrossTheGrainThereIsNothingToStop() {
        Bench bench = Bench.of("""
                project "Shelf" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board ash { species white_ash; size 1200 x 120 x 20; rings quarter; moisture 9% }
                part side { length 200; width 80; thickness 12; from ash; place { length up; width back; at -12, 0, 0 } }
                part shelf { length 160; width 80; thickness 12; from ash; place { length right; width back; at 0, 0, 188 } }
                joint rebate shelf into side { stop auto }
                """);
        assertThat(bench.finding("setting-does-not-fit").headline())
                .isEqualTo("The rebate for `shelf` has no ends to stop short of");
    }

    /** The fence is set by the base, and parts with another setting are another piece of work. */
    @Test
    void theWorkSaysWhatIsSet() {
        Bench bench = rail("");
        MadeJoint made = bench.joined().joints().getFirst();
        Work work = RebateWorks.of(List.of(made)).getFirst();
        assertThat(work.stage()).isEqualTo(Work.Stage.ALONG_STRIP);
        assertThat(work.settings()).containsExactly(
                new Work.GaugeSetting("fence", Length.ofMm(4)), new Work.GaugeSetting("depth", Length.ofMm(4)));
        assertThat(work.from()).isEqualTo("the inside face, the fence on the bottom edge");
        MadeJoint stopped = rail("; stop auto").joined().joints().getFirst();
        assertThat(RebateWorks.of(List.of(made, stopped))).hasSize(3);
    }
}

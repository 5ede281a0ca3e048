package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Tenons that strike each other in a leg, and a pane in four rebates. The projects are invented. */
class MeetingTenonsTest {
    private static final String LEG = """
            project "Stool" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board ash { species white_ash; size 1200 x 200 x 60; rings flat; moisture 9% }
            part leg   { length 400; width 40; thickness 40; from ash; place { length up; width right; at 0, 0, 0 } }
            part front { length 300; width 60; thickness 20; from ash; place { length right; width up; at 40, 10, 300 } }
            part left  { length 300; width 60; thickness 20; from ash; place { length back; width up; at 10, 40, 300 } }
            joint mortise_tenon front into leg { thick 8; long 26; shoulder 5; split none }
            joint mortise_tenon left into leg { thick 8; long 26; shoulder 5; split none }
            """;

    /**
     * Fairham, Woodwork Joints: tenons that meet in a leg are mitred. By hand: the front's tenon fills x 14 to 40 and y
     * 16 to 24, the left's x 16 to 24 and y 14 to 40, both z 305 to 355. Both would fill 8 x 8 x 50 mm, and each loses half.
     */
    @Test
    void eachLosesHalfOfWhatBothWant() {
        Bench bench = Bench.of(LEG);
        assertThat(volume(bench, "front")).isEqualTo(BigFraction.of(300 * 60 * 20 + 26 * 8 * 50 - 8 * 8 * 50 / 2));
        assertThat(volume(bench, "left")).isEqualTo(volume(bench, "front"));
        assertThat(bench.figure("front", "leg", "mitred")).isEqualTo(Bench.mm(8));
        assertThat(Overlap.among(bench.joined().parts().stream()
                .map(p -> new Placed(p.part().name(), p.solid().orElseThrow()))
                .toList())).isEmpty();
    }

    @Test
    void tenonsThatStayClearAreLeftAlone() {
        Bench clear = Bench.of(LEG.replace("long 26", "long 14"));
        assertThat(clear.joint("front", "leg").figure("mitred")).isEmpty();
        assertThat(volume(clear, "front")).isEqualTo(BigFraction.of(300 * 60 * 20 + 14 * 8 * 50));
    }

    private static BigFraction volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume();
    }
}

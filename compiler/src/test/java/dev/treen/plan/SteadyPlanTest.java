package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.cutting.Cutting;
import dev.treen.cutting.EarlierLayout;
import dev.treen.model.FileLoader;
import dev.treen.source.SourceFile;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A plan that is built again, on a kitchen dresser of invented parts. */
class SteadyPlanTest {
    private static final String DRESSER = """
            project "Dresser" { units mm }
            board oak_1 { species white_oak; size 2400 x 200 x 24; knot { at 900, 60; radius 15 } }
            board oak_2 { species white_oak; size 2420 x 180 x 24; check { from 0, 90; to 80, 95 } }
            board oak_3 { species white_oak; size 1800 x 220 x 24 }
            board oak_4 { species white_oak; size 2000 x 160 x 24 }
            part side_left  { length 800; width 180; thickness 19 }
            part side_right { length 800; width 180; thickness 19 }
            repeat i in 1..4 { part shelf[i] { length 600; width 150; thickness 19 } }
            part rail_a { length 560; width 60; thickness 19 }
            part rail_b { length 560; width 60; thickness 19 }
            part front  { length 580; width 120; thickness 19 }
            """;

    private static Plan built(String text, EarlierLayout earlier) {
        return Compilation.of(new SourceFile("dresser.treen", text), FileLoader.NONE, Optional.empty(), earlier).plan();
    }

    private static EarlierLayout layout(Plan plan) {
        return PlanReader.layout(PlanJson.of(plan));
    }

    @Test
    void thePlanBuiltAgainIsTheSame() {
        Plan first = built(DRESSER, EarlierLayout.NONE);
        Plan again = built(DRESSER, layout(first));
        assertThat(PlanJson.of(again)).isEqualTo(PlanJson.of(first));
        assertThat(PlanText.of(again)).isEqualTo(PlanText.of(first)).doesNotContain("Since the last plan");
    }

    @Test
    void aChangeMovesNothingElse() {
        Plan first = built(DRESSER, EarlierLayout.NONE);
        Plan again = built(
                DRESSER.replace("length 580", "length 570") + "part peg { length 160; width 40; thickness 19 }",
                layout(first));
        Cutting cutting = again.cutting();
        assertThat(cutting.moves().anew()).isFalse();
        assertThat(cutting.moves().added()).containsExactly("peg");
        assertThat(cutting.moves().moved()).hasSizeLessThanOrEqualTo(1);
        assertThat(cutting.moves().stayed()).isGreaterThanOrEqualTo(8);
        assertThat(PlanText.of(again)).contains("Since the last plan: 8 parts lie where they were.", "New: `peg`.");
    }

    @Test
    void aPartThatWasMeasuredStaysWhereItWasCut() {
        Plan first = built(DRESSER, EarlierLayout.NONE);
        Plan again = built(DRESSER.replace("length 800", "length 812") + "measured front.length 578.5\n",
                layout(first));
        assertThat(again.cutting().moves().cut()).containsExactly("front");
        assertThat(again.cutting().moves().lost()).isEmpty();
    }

    @Test
    void whatIsNoPlanIsNoEarlierLayout() {
        assertThat(PlanReader.layout("")).isEqualTo(EarlierLayout.NONE);
        assertThat(PlanReader.layout("{\"version\": 1, \"layout\": 3}")).isEqualTo(EarlierLayout.NONE);
        assertThat(PlanReader.layout("{\"version\": 1, \"layout\": {\"boards\": [{\"board\""))
                .isEqualTo(EarlierLayout.NONE);
        assertThat(PlanReader.layout("[".repeat(5000))).isEqualTo(EarlierLayout.NONE);
    }
}

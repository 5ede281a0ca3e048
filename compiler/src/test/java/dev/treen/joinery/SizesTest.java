package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.plan.Explanation;
import dev.treen.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * Seen, finished and rough sizes. Outside values: worked examples of the trade's rules (WE-…; lengths derived from
 * geometry, checked there by another route), and bench rules marked as such.
 */
class SizesTest {

    /** WE-052: a mitred box 160 inside in 9 mm walls has sides of 178; language page: 178 x 98 over all. */
    @Test
    void aMitreAddsTheWallAtEachEnd() {
        Bench caddy = Bench.caddy();
        assertThat(caddy.part("front").length().value()).isEqualTo(mm(178));
        assertThat(caddy.part("left").length().value()).isEqualTo(mm(98));
        assertThat(caddy.part("front").width().value()).isEqualTo(mm(84));
    }

    /** WE-053: butted, outside 98 in 9 mm walls: the part between is 80, the one that runs past 178. */
    @Test
    void aButtAddsToThePartThatRunsOn() {
        String butts = "joint butt front to left, right to front, back to right, left to back";
        Bench butted = Bench.caddy()
                .with("joint mitre front to left, left to back, back to right, right to front", butts);
        assertThat(butted.part("front").length().value()).isEqualTo(mm(169));
        assertThat(butted.part("left").length().value()).isEqualTo(mm(89));
        Bench through = Bench.caddy()
                .with(
                        "joint mitre front to left, left to back, back to right, right to front",
                        "joint butt front to left, front to right, back to left, back to right");
        assertThat(through.part("front").length().value()).isEqualTo(mm(178));
        assertThat(through.part("left").length().value()).isEqualTo(mm(80));
        Bench other = through.with("back to right", "back to right { through right }");
        assertThat(other.part("right").length().value()).isEqualTo(mm(98));
        assertThat(other.part("front").length().value()).isEqualTo(mm(169));
    }

    /** WE-054: a rebated corner, outside 140, lip 4: the part that lies in the rebates is 132. */
    @Test
    void aRebatedCornerAddsWhatLiesInTheRebate() {
        Bench box = Bench.of("""
                part side_a { length 200; width 60; thickness 12; place { length right; width up; at 0, -12, 0 } }
                part side_b like side_a { place { at 0, 116, 0 } }
                part end { length 116; width 60; thickness 12; place { length back; width up; at -12, 0, 0 } }
                joint rebate end into side_a, side_b { lip 4 }
                """);
        assertThat(box.part("end").length().value()).isEqualTo(mm(132));
        assertThat(box.part("side_a").length().value()).isEqualTo(mm(212));
        assertThat(box.figure("end", "side_a", "deep")).isEqualTo(mm(8));
        assertThat(box.codes()).isEmpty();
        assertThat(box.with("lip 4", "lip 4; deep 7").codes()).containsOnly("setting-does-not-fit");
        assertThat(box.with("lip 4", "lip 12").codes()).contains("setting-does-not-fit");
    }

    /** WE-055: a shelf housed 6 deep at both ends, 564 between them, is 576 long. */
    @Test
    void aHousingAddsItsDepth() {
        Bench shelf = Bench.of("""
                part a { length 600; width 200; thickness 18; place { length up; width back; at -18, 0, 0 } }
                part b like a { place { at 564, 0, 0 } }
                part shelf { length 564; width 200; thickness 18; place { length right; width back; at 0, 0, 300 } }
                joint housing shelf into a, b { deep 6 }
                """);
        assertThat(shelf.part("shelf").length().value()).isEqualTo(mm(576));
        assertThat(shelf.codes()).isEmpty();
        assertThat(shelf.with("deep 6", "deep auto").figure("shelf", "a", "deep")).isEqualTo(mm(4.5));
    }

    /** WE-056: an opening of 80, grooves 4 deep, gap 1.5: the panel is 85. */
    @Test
    void aGrooveAddsItsDepthLessTheGap() {
        Bench caddy = Bench.caddy().with("gap auto", "gap 1.5");
        assertThat(caddy.part("base").width().value()).isEqualTo(mm(85));
        assertThat(caddy.part("base").length().value()).isEqualTo(mm(165));
        assertThat(caddy.codes()).isEmpty();
    }

    /** The closing example of the language page: 86.34 = 80 + 2 × (4 − 0.83), where 0.83 is 0.33 and 0.5. */
    @Test
    void autoLeavesRoomForTheDampSeasonAndSaysWhy() {
        Bench caddy = Bench.caddy();
        assertThat(caddy.figure("base", "front", "gap")).isEqualTo(mm(0.83));
        assertThat(caddy.figure("base", "left", "gap")).isEqualTo(mm(0.5));
        assertThat(caddy.part("base").width().value()).isEqualTo(mm(86.34));
        assertThat(caddy.part("base").length().value()).isEqualTo(mm(167));
        assertThat(Explanation.of(caddy.part("base").width().how(), caddy.joined().project().settings()))
                .contains("80 opening + 2 × (4 groove − 0.83 mm gap)")
                .contains("0.33 mm swelling + 0.5 mm for making")
                .contains("from 9 % to 12.06 % moisture; flat-sawn black cherry, 0.00248 per 1 %")
                .contains("Wood Handbook FPL-GTR-190 Table 13-5");
        assertThat(caddy.codes()).isEmpty();
    }

    /** Allowances by hand (common practice, no source): 0.5 at each end, edge and face. */
    @Test
    void roughSizesHoldTheAllowances() {
        Bench caddy = Bench.caddy();
        assertThat(caddy.part("front").rough().length()).isEqualTo(mm(179));
        assertThat(caddy.part("front").rough().width()).isEqualTo(mm(85));
        assertThat(caddy.part("front").rough().thickness()).isEqualTo(mm(10));
    }

    /** Written over all the joints are taken off, and everything else comes to the same. */
    @Test
    void overallIsTheSameSaidTheOtherWayRound() {
        Bench seen = Bench.caddy();
        Bench overall = seen
                .with("length inside.length; width 84; thickness wall;",
                        "length 178 overall; width 84; thickness wall;")
                .with("width inside.width; thickness 7", "width 85 overall; thickness 7")
                .with("gap auto", "gap 1.5");
        assertThat(overall.codes()).isEmpty();
        assertThat(overall.part("front").length().value()).isEqualTo(mm(178));
        assertThat(overall.part("base").width().value()).isEqualTo(mm(85));
        assertThat(overall.figure("base", "front", "opening")).isEqualTo(mm(80));
        assertThat(overall.part("front").solid().orElseThrow().volume())
                .isEqualTo(seen.part("front").solid().orElseThrow().volume());
        Bench wrong = overall.with("178 overall", "180 overall");
        assertThat(wrong.codes()).contains("meets-wrongly");
        assertThat(seen.with("length inside.length; width 84", "length 18 overall; width 84").codes())
                .contains("parts-do-not-meet");
    }

    /** The corner of a caddy from two routes: the solids' volumes, and areas by hand. */
    @Test
    void solidsAreCutByTheirJoints() {
        Bench caddy = Bench.caddy();
        // 178 x 84 x 9 less two mitres of 9 x 9 / 2 x 84, less a groove 5 x 4 whose middle line is 164 long.
        assertThat(caddy.part("front").solid().orElseThrow().volume().doubleValue())
                .isEqualTo(178 * 84 * 9 - 9 * 9 * 84 - 5 * 4 * 164);
        // The base: tongue 167 x 86.34 x 5, and above it what stands within the shoulders, 2 thick.
        double across = 80 - 2 * caddy.figure("base", "front", "shoulder_gap").toDoubleMm();
        double along = 160 - 2 * caddy.figure("base", "left", "shoulder_gap").toDoubleMm();
        assertThat(caddy.part("base").solid().orElseThrow().volume().doubleValue())
                .isCloseTo(167 * 86.34 * 5 + across * along * 2, org.assertj.core.data.Offset.offset(1e-6));
    }

    @Test
    void aStoppedHousingIsHiddenByANotch() {
        Bench shelf = Bench.shelf();
        Length deep = shelf.figure("shelf", "side_left", "deep");
        assertThat(deep).isEqualTo(Length.ofInches(3, 16));
        assertThat(shelf.part("shelf").length().value()).isEqualTo(Length.ofInches(30 * 8 + 3, 8));
        Length notch = Length.ofInches(3, 8);
        double whole = shelf.part("shelf").length().value().toDoubleMm() * 6 * 25.4 * 5 / 8 * 25.4;
        double notches = 2 * deep.toDoubleMm() * notch.toDoubleMm() * 5 / 8 * 25.4;
        assertThat(shelf.part("shelf").solid().orElseThrow().volume().doubleValue())
                .isCloseTo(whole - notches, org.assertj.core.data.Offset.offset(1e-6));
        assertThat(shelf.codes()).isEmpty();
        assertThat(shelf.with("from front", "from top").codes()).contains("setting-does-not-fit");
        assertThat(shelf.with("stop 3/8", "stop 6").codes()).contains("setting-does-not-fit");
    }

    /** A panel's edge that lies in two rails is lengthened once. */
    @Test
    void twoPartsAtOneEdgeAddOnce() {
        Bench bench = Bench.of("""
                part low  { length 100; width 40; thickness 20; place { length right; width up; at 0, -20, 0 } }
                part next like low { place { at 100, -20, 0 } }
                part panel { length 200; width 80; thickness 6; place { length right; width back; at 0, 0, 10 } }
                joint groove panel into low, next { wide 6; deep 5; gap 1 }
                """);
        assertThat(bench.part("panel").width().value()).isEqualTo(mm(84));
    }

    @Test
    void partsThatDoNotMeetSayHowFarTheyAreApart() {
        Bench bench = Bench.caddy().with("at 0, 0, 5", "at 0, 3, 5");
        assertThat(bench.finding("parts-do-not-meet").found()).contains("3 mm from front to back");
        assertThat(bench.finding("parts-do-not-meet").related()).hasSize(2);
        assertThat(bench.codes()).contains("parts-overlap");
        Bench nowhere = Bench.caddy().with("  place { length right; width back; at 0, 0, 5 }\n", "");
        assertThat(nowhere.codes()).containsOnlyOnce("joint-needs-place");
    }

    /** In inches Treen's own gap stands on a mark of the rule where that leaves enough of the groove. */
    @Test
    void autoInInchesIsOnAMarkOfTheRule() {
        Bench frame = Bench.of("""
                project "Cupboard door" { units in; climate { humidity 30%..60%; temperature 65degF..75degF } }
                board oak { species white_oak; size 72 x 14 x 7/8; rings flat; moisture 8% }
                part low  { length 20; width 2; thickness 3/4; from oak; place { length right; width back; at 0, 0, -3/4 } }
                part high like low { place { at 0, 0, 12 } }
                part panel { length 20; width 12; thickness 3/8; from oak; place { length right; width up; at 0, 1, 0 } }
                joint groove panel into low, high { deep 3/8 }
                """);
        // 18 to 24 °C: 8 to 11.07 % moisture; (304.8 + 19.05 - 1) / (1 + 0.00365 x 3.07) leaves 2.29; 6/64 in is 2.38.
        assertThat(frame.figure("panel", "low", "gap")).isEqualTo(Length.ofInches(6, 64));
        assertThat(frame.figure("panel", "low", "wide")).isEqualTo(Length.ofInches(3, 8));
    }

    /**
     * A rule of the bench (common practice, no source): a small base of solid wood with 65 mm between the walls and
     * grooves 4 mm deep has 73 mm to live in and is made about 70 mm wide, so about 1.5 mm a side; along the grain it is
     * cut to fit.
     */
    @Test
    void theBenchRuleForSmallBases() {
        Bench small = Bench.caddy().with("160 x 80 x 70", "160 x 65 x 70").with("gap auto", "gap 1.5");
        assertThat(small.part("base").width().value()).isEqualTo(mm(70));
        assertThat(small.codes()).isEmpty();
        Bench auto = small.with("gap 1.5", "gap auto");
        assertThat(auto.part("base").width().value()).isBetween(mm(70), mm(73));
        assertThat(auto.figure("base", "left", "gap")).as("along the grain, for making only").isEqualTo(mm(0.5));
        assertThat(auto.codes()).isEmpty();
    }
}

package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.solid.Contact;
import dev.treen.solid.Motion;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import java.util.List;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Halvings and bridles between two bars of an invented trivet. Outside values: half each, and thirds for bridles, after
 * Fairham, Woodwork Joints; volumes against closed formulae.
 */
class LappedJointsTest {
    private static Bench bars(String bar, String spine, String joint) {
        return Bench.of("""
                project "Trivet" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species white_ash; size 900 x 140 x 27; rings rift; moisture 9%% }
                part bar   { %s; from plank; place { length right; width back; at %s, 0, 0 } }
                part spine { %s; from plank; place { length back; width right; at 0, %s, 0 } }
                joint %s
                """.formatted(
                bar.substring(bar.indexOf(';') + 1).strip(), bar.substring(0, bar.indexOf(';')),
                spine.substring(spine.indexOf(';') + 1).strip(), spine.substring(0, spine.indexOf(';')),
                joint));
    }

    private static Bench cross(String joint) {
        return bars("-88; length 200; width 24; thickness 16", "-68; length 160; width 30; thickness 16", joint);
    }

    /** The bar ends at the left edge of the spine, which runs on both ways. */
    private static Bench tee(String joint) {
        return bars("-100; length 100; width 24; thickness 16", "-68; length 160; width 30; thickness 16", joint);
    }

    /** Inside to inside: the end of each at the end of the other. */
    private static Bench corner(String joint) {
        return bars("-100; length 100; width 24; thickness 16", "24; length 160; width 30; thickness 16", joint);
    }

    private static Solid solid(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow();
    }

    private static BigFraction volume(Bench bench, String part) {
        return solid(bench, part).volume();
    }

    private static void fits(Bench bench) {
        Solid bar = solid(bench, "bar");
        Solid spine = solid(bench, "spine");
        assertThat(Overlap.among(List.of(new Placed("bar", bar), new Placed("spine", spine)))).isEmpty();
        assertThat(Contact.between(bar, spine)).isNotEmpty();
    }

    /** A mitred face: the left part keeps a triangle of half the thickness, the right one all the rest of the block. */
    @Test
    void aCornerIsMitredOnItsFace() {
        Bench bench = corner("halving bar to spine { face mitred }");
        assertThat(bench.codes()).isEmpty();
        BigFraction triangle = BigFraction.of(24 * 30 * 8 / 2);
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(100 * 24 * 16).add(triangle));
        assertThat(volume(bench, "spine"))
                .isEqualTo(BigFraction.of(160 * 30 * 16 + 24 * 30 * 16).subtract(triangle));
        fits(bench);
        for (Side way : Side.values()) {
            assertThat(Motion.canMove(
                    solid(bench, "bar"), List.of(solid(bench, "spine")), way, BigFraction.of(300)))
                    .as(way.name())
                    .isEqualTo(way == Side.TOP || way == Side.LEFT || way == Side.FRONT);
        }
        Bench below = corner("halving bar to spine { face mitred; over down; deep 6 }");
        assertThat(below.codes()).isEmpty();
        assertThat(volume(below, "bar")).isEqualTo(BigFraction.of(100 * 24 * 16 + 24 * 30 * 10 / 2));
        fits(below);
        // The same where the spine is written to the outside and the bar to its edge.
        Bench flush = bars("-100; length 100; width 24; thickness 16", "0; length 160; width 30; thickness 16",
                "halving bar to spine { face mitred }");
        assertThat(flush.codes()).isEmpty();
        assertThat(volume(flush, "bar")).isEqualTo(BigFraction.of(100 * 24 * 16).add(triangle));
        fits(flush);
    }

    @Test
    void onlyAFlushCornerHasAFaceToMitre() {
        for (Bench bench : List.of(cross("halving bar to spine { face mitred }"),
                tee("halving bar to spine { face mitred }"),
                bars("-100; length 100; width 24; thickness 12", "24; length 160; width 30; thickness 16",
                        "halving bar to spine { face mitred; over up }"))) {
            assertThat(bench.codes()).containsExactly("setting-does-not-fit");
        }
        Bench tee = tee("halving bar to spine { face mitred }");
        assertThat(tee.applied(tee.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
    }

    /** Each loses half of the crossing: 24 by 30 by 8. */
    @Test
    void acrossEachLosesHalf() {
        Bench bench = cross("halving bar to spine");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("bar", "spine", "deep")).isEqualTo(mm(8));
        assertThat(bench.part("bar").length().value()).isEqualTo(mm(200));
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(200 * 24 * 16 - 24 * 30 * 8));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(160 * 30 * 16 - 24 * 30 * 8));
        fits(bench);
        assertThat(Motion.canMove(solid(bench, "bar"), List.of(solid(bench, "spine")), Side.TOP, BigFraction.of(300)))
                .isTrue();
        assertThat(Motion.canMove(solid(bench, "bar"), List.of(solid(bench, "spine")), Side.BOTTOM, BigFraction.of(9)))
                .isFalse();
    }

    @Test
    void overSaysWhichLiesOnTop() {
        Bench bench = cross("halving bar to spine { over down }");
        assertThat(Motion.canMove(
                solid(bench, "bar"), List.of(solid(bench, "spine")), Side.BOTTOM, BigFraction.of(300))).isTrue();
        fits(bench);
        Bench wrong = cross("halving bar to spine { over left }");
        assertThat(wrong.codes()).containsExactly("setting-does-not-fit");
        assertThat(wrong.applied(wrong.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
    }

    /** The end goes on over the other's width: 100 and 30. */
    @Test
    void aTeeReachesTheFarEdge() {
        Bench bench = tee("halving bar to spine");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("bar").length().value()).isEqualTo(mm(130));
        assertThat(bench.part("spine").length().value()).isEqualTo(mm(160));
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(130 * 24 * 16 - 24 * 30 * 8));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(160 * 30 * 16 - 24 * 30 * 8));
        fits(bench);
    }

    @Test
    void aCornerLengthensBothEnds() {
        Bench bench = corner("halving bar to spine");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("bar").length().value()).isEqualTo(mm(130));
        assertThat(bench.part("spine").length().value()).isEqualTo(mm(184));
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(130 * 24 * 16 - 24 * 30 * 8));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(184 * 30 * 16 - 24 * 30 * 8));
        fits(bench);
    }

    /** A bar of 10 on a spine of 20, flush above: 5 off each. */
    @Test
    void unequalBarsShareTheThinnerOne() {
        Bench bench = Bench.of(cross("halving bar to spine").text()
                .replace("width 24; thickness 16", "width 24; thickness 10")
                .replace("at -88, 0, 0", "at -88, 0, 10")
                .replace("width 30; thickness 16", "width 30; thickness 20"));
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("bar", "spine", "deep")).isEqualTo(mm(5));
        assertThat(bench.figure("bar", "spine", "deep_right")).isEqualTo(mm(5));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(160 * 30 * 20 - 24 * 30 * 5));
        fits(bench);
    }

    @Test
    void halvingsThatCannotBeAreTold() {
        assertThat(cross("halving bar to spine { deep 0 }").codes()).containsExactly("setting-does-not-fit");
        assertThat(cross("halving bar to spine { deep 16 }").codes()).containsExactly("setting-does-not-fit");
        assertThat(cross("halving bar to spine { deep 40 }").codes()).containsExactly("setting-does-not-fit");
        Bench deep = cross("halving bar to spine { deep 11 }");
        assertThat(deep.codes()).containsExactly("halving-too-deep");
        assertThat(deep.applied(deep.finding("halving-too-deep").remedies().getFirst()).codes()).isEmpty();
        // The end of the bar in the middle of the spine: neither a cross nor a tee.
        assertThat(bars("-100; length 110; width 24; thickness 16", "-68; length 160; width 30; thickness 16",
                "halving bar to spine").codes()).containsExactly("parts-overlap");
        // Side by side, both ways along.
        assertThat(cross("halving bar to spine").with("length back; width right; at 0, -68, 0",
                "length right; width back; at 0, 24, 0").codes()).containsExactly("meets-wrongly");
        assertThat(cross("butt bar to spine").codes()).contains("parts-overlap");
    }

    /** M-12: a lap up to 75 mm is let pass (Fairham, 3 in); a wide one tears. */
    @Test
    void aWideLapTears() {
        Bench wide = bars("-88; length 300; width 120; thickness 16", "-68; length 260; width 120; thickness 16",
                "halving bar to spine");
        assertThat(wide.codes()).contains("cross-grain-glue");
    }

    /** Whatever the sizes: together they fill the crossing once, and share no space. */
    @Test
    void anyHalvingFillsItsCrossingOnce() {
        Random random = new Random(7);
        for (int i = 0; i < 40; i++) {
            int wide = 10 + random.nextInt(40);
            int other = 10 + random.nextInt(40);
            int thick = 6 + random.nextInt(20);
            int deep = 1 + random.nextInt(thick - 1);
            Bench bench = bars("-88; length 200; width " + wide + "; thickness " + thick,
                    "-68; length 160; width " + other + "; thickness " + thick,
                    "halving bar to spine { deep " + deep + "; over " + (random.nextBoolean() ? "up" : "down") + " }");
            fits(bench);
            assertThat(volume(bench, "bar").add(volume(bench, "spine")))
                    .isEqualTo(BigFraction.of((200 * wide + 160 * other - wide * other) * thick));
        }
    }

    /** Thirds, after Fairham: 16 gives the chisel of 5. The left part has the tongue, the right one the open slot. */
    @Test
    void aCornerBridleHasItsSlotInTheRightPart() {
        Bench bench = corner("bridle bar into spine");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("bar", "spine", "thick")).isEqualTo(mm(5));
        assertThat(bench.part("bar").length().value()).isEqualTo(mm(130));
        assertThat(bench.part("spine").length().value()).isEqualTo(mm(184));
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(130 * 24 * 16 - 24 * 30 * 11));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(184 * 30 * 16 - 24 * 30 * 5));
        fits(bench);
        assertThat(Motion.canMove(solid(bench, "bar"), List.of(solid(bench, "spine")), Side.TOP, BigFraction.of(9)))
                .isFalse();
        assertThat(Motion.canMove(
                solid(bench, "bar"), List.of(solid(bench, "spine")), Side.LEFT, BigFraction.of(300))).isTrue();
    }

    /** A rail whose edge lies flush with the end of a stile is a corner too. */
    @Test
    void aRailFlushWithTheEndOfAStileIsACorner() {
        Bench bench = bars("-100; length 100; width 24; thickness 16", "0; length 160; width 30; thickness 16",
                "bridle bar into spine { thick 6 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("spine").length().value()).isEqualTo(mm(160));
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(130 * 24 * 16 - 24 * 30 * 10));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(160 * 30 * 16 - 24 * 30 * 6));
        fits(bench);
    }

    /** At a tee the fork is at the end of the left part. */
    @Test
    void aTeeBridleSitsAstride() {
        Bench bench = tee("bridle bar into spine { thick 6 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(volume(bench, "bar")).isEqualTo(BigFraction.of(130 * 24 * 16 - 24 * 30 * 6));
        assertThat(volume(bench, "spine")).isEqualTo(BigFraction.of(160 * 30 * 16 - 24 * 30 * 10));
        fits(bench);
    }

    @Test
    void bridlesThatCannotBeAreTold() {
        assertThat(corner("bridle bar into spine { thick 0 }").codes()).containsExactly("setting-does-not-fit");
        Bench none = corner("bridle bar into spine { thick 16 }");
        assertThat(none.codes()).containsExactly("setting-does-not-fit");
        assertThat(none.applied(none.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
        Bench fat = corner("bridle bar into spine { thick 9 }");
        assertThat(fat.codes()).containsExactly("tenon-proportions");
        assertThat(fat.applied(fat.finding("tenon-proportions").remedies().getFirst()).codes()).isEmpty();
        assertThat(Bench.of(corner("bridle bar into spine").text().replace("thickness 16", "thickness 7")).codes())
                .containsExactly("tenon-proportions");
        assertThat(cross("bridle bar into spine").codes()).contains("parts-overlap");
        assertThat(tee("bridle spine into bar").codes()).containsExactly("meets-wrongly");
    }
}

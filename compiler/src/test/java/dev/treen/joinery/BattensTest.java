package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.quantity.Length;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Round;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Battens and corner blocks: never glued across, slotted, shorter than the lid (rules of the trade J-23, common practice, no
 * source); glue holds on long grain only (Wood Handbook ch. 10). Volumes are reckoned by hand.
 */
final class BattensTest {
    /** The area of a polygon of 24 sides in a circle of radius 1. */
    private static final double ROUND = Round.SIDES / 2.0 * Math.sin(Math.toRadians(360.0 / Round.SIDES));

    /** Two battens' worth of a lid of flat cherry, 280 wide. */
    private static Bench lid(String batten) {
        return Bench.of("""
                project "Bin lid" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1500 x 300 x 27; rings flat; moisture 9%% }
                part lid { length 400; width 280; thickness 20; from plank
                  place { length right; width back; at 0, 0, 0 } }
                part cleat { length 270; width 40; thickness 12; from plank
                  place { length back; width right; at 60, 5, -12 } }
                joint batten cleat into lid { %s }
                """.formatted(batten));
    }

    /** A block in the corner of an apron and a leg. */
    private static Bench corner(String block) {
        return Bench.of("""
                project "Stool" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species white_ash; size 1500 x 120 x 50; rings quarter; moisture 9%% }
                part apron { length 300; width 70; thickness 20; from plank
                  place { length right; width up; at 0, 0, 0 } }
                part rail { length 200; width 70; thickness 20; from plank
                  place { length back; width up; at -20, 20, 0 } }
                part block { length 50; width 30; thickness 24; from plank
                  place { length up; width right; at 0, 20, 10 } }
                joint corner_block block into apron, rail { %s }
                """.formatted(block));
    }

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    private static void nothingOverlaps(Bench bench) {
        List<Placed> placed = new ArrayList<>();
        bench.joined().parts().forEach(
                part -> placed.add(new Placed(part.part().name(), part.solid().orElseThrow())));
        assertThat(Overlap.among(placed)).isEmpty();
    }

    @Test
    void theMiddleScrewHoldsAndTheOthersStandInSlots() {
        Bench made = lid("thick 4; bore 2; long 30; count 3; end 35");
        assertThat(made.codes()).isEmpty();
        MadeJoint joint = made.joined().joints().getFirst();
        assertThat(joint.fasteners().orElseThrow().slotted()).isEqualTo(2);
        assertThat(joint.fasteners().orElseThrow().over()).isEqualTo(Length.ZERO);
        // The middle one is countersunk at 90°: a frustum from 4 to 2, 2 deep, less the hole in it.
        // 100 from the middle; flat cherry 0.00248 per 1 % (Wood Handbook Table 13-5), 6.88 to 12.06 %.
        double slot = joint.figure("slot").orElseThrow().measure().value().toDoubleMm();
        assertThat(slot).isCloseTo(4 + 100 * 0.00248 * (12.06 - 6.88) + 0.5, within(0.02));
        assertThat(volume(made, "cleat")).isCloseTo(
                270 * 40 * 12 - 12 * (3 * ROUND * 4 + 2 * (slot - 4) * 4) - ROUND * 32 / 3, within(0.01));
        assertThat(volume(made, "lid")).isCloseTo(400 * 280 * 20 - 3 * 18 * ROUND, within(0.01));
        nothingOverlaps(made);
    }

    @Test
    void treenTakesAnOddNumber() {
        assertThat(lid("").joined().joints().getFirst().fasteners().orElseThrow().count()).isEqualTo(3);
        assertThat(lid("").codes()).isEmpty();
        assertThat(lid("every 60").joined().joints().getFirst().fasteners().orElseThrow().count() % 2).isEqualTo(1);
    }

    @Test
    void withAnEvenNumberNothingHolds() {
        Bench even = lid("count 2");
        assertThat(even.codes()).contains("setting-does-not-fit");
        assertThat(even.applied(even.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
    }

    @Test
    void aBattenLiesAcrossTheGrain() {
        assertThat(Bench.of(lid("").text().replace("length back; width right; at 60, 5, -12",
                "length right; width back; at 60, 5, -12")).codes()).contains("meets-wrongly");
        assertThat(Bench.of(lid("").text().replace("at 60, 5, -12", "at 400, 5, 4")).codes())
                .contains("meets-wrongly");
    }

    @Test
    void itIsShorterThanTheDryLid() {
        Bench whole = Bench.of(lid("").text().replace("length 270", "length 280").replace("60, 5, -12", "60, 0, -12"));
        assertThat(whole.codes()).containsExactly("batten-stands-out");
        // 140 · 0.00248 · (9 - 6.88): 0.74 on each side.
        Bench just = Bench.of(lid("").text().replace("length 270", "length 278").replace("60, 5, -12", "60, 1, -12"));
        assertThat(just.codes()).isEmpty();
    }

    @Test
    void aBlockFillsACorner() {
        Bench made = corner("bevel 10");
        assertThat(made.codes()).isEmpty();
        // A triangle of 10 by 10 off the edge that looks into the room.
        assertThat(volume(made, "block")).isEqualTo(50 * 30 * 24 - 50 * 10 * 10 / 2.0);
        assertThat(volume(corner(""), "block")).isEqualTo(50 * 30 * 24);
        nothingOverlaps(made);
    }

    @Test
    void whatIsWrongWithABlockIsSaid() {
        assertThat(corner("bevel 24").codes()).contains("setting-does-not-fit");
        assertThat(Bench.of(corner("").text().replace("into apron, rail", "into apron")).codes())
                .contains("meets-wrongly");
        Bench turned = Bench.of(corner("").text().replace("length up; width right; at 0, 20, 10",
                "length right; width up; at 0, 20, 10"));
        assertThat(turned.codes()).contains("block-end-grain");
        // Long grain across long grain over 110 mm.
        Bench across = Bench.of(corner("").text().replace("length 50; width 30", "length 110; width 30")
                .replace("width 70", "width 120").replace("length up; width right; at 0, 20, 10",
                        "length up; width right; at 0, 20, 0"));
        assertThat(across.codes()).contains("cross-grain-glue");
    }
}

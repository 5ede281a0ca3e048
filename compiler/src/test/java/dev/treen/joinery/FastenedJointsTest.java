package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.model.Datum;
import dev.treen.quantity.Length;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Round;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Screws and nails. Sizes: Wood Handbook FPL-GTR-282 ch. 8 (shanks, lead holes, withdrawal), US Navy training course 14119
 * (length of nails), all else common practice, no source. Volumes are reckoned by hand; a round hole is a prism of 24 sides.
 */
final class FastenedJointsTest {
    /** The area of a polygon of 24 sides in a circle of radius 1: 12 sin 15°. */
    private static final double ROUND = Round.SIDES / 2.0 * Math.sin(Math.toRadians(360.0 / Round.SIDES));

    private static Bench rack(String joint) {
        return rack("black_cherry", joint);
    }

    private static Bench rack(String species, String joint) {
        return Bench.of("""
                project "Hook rack" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species %s; size 1500 x 300 x 45; rings flat; moisture 9%% }
                part shelf { length 600; width 280; thickness 20; from plank
                  place { length right; width back; at 0, 0, 0 } }
                part cleat { length 240; width 40; thickness 12; from plank
                  place { length back; width right; at 280, 20, -12 } }
                joint %s
                """.formatted(species, joint));
    }

    private static Bench box(String joints) {
        return Bench.of("""
                project "Seed box" { units mm; climate { humidity 40%%..65%%; temperature 16degC..24degC } }
                board plank { species black_cherry; size 1800 x 120 x 14; rings quarter; moisture 10%% }
                part front { length 240; width 70; thickness 12; from plank
                  place { length right; width up; at 0, -12, 0 } }
                part left { length 90; width 70; thickness 12; from plank
                  place { length back; width up; at -12, 0, 0 } }
                part base { length 240; width 90; thickness 6; from plank
                  place { length right; width back; at 0, 0, 10 } }
                %s
                """.formatted(joints));
    }

    /**
     * What the countersink of a shank of 4 takes besides the hole: a head of 8, at 90° 2 deep (ISO 7721, from memory); the
     * frustum between the radii 4 and 2 less the cylinder in it.
     */
    private static final double CONE = ROUND * 2 * ((16 + 8 + 4) / 3.0 - 4);

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    private static double figure(Bench bench, String name) {
        return bench.joined().joints().getLast().figure(name).orElseThrow().measure().value().toDoubleMm();
    }

    private static Fasteners set(Bench bench) {
        return bench.joined().joints().getLast().fasteners().orElseThrow();
    }

    /** What the fact says, in grams. */
    private static double pullOut(Bench bench) {
        Datum fact = bench.checked().facts().fact("cleat", "pull_out").orElseThrow().value();
        return fact instanceof Datum.Exactly(var mass) ? mass.amount().doubleValue() : 0;
    }

    /** No. 8: shank 4.17 (handbook Table 8-9), pilots 1.9 and 2.5 (70 and 90 % of two thirds of it). */
    @ParameterizedTest
    @CsvSource({"black_cherry, 2.5", "eastern_white_pine, 1.9"})
    void aPilotIsBoredByTheWood(String species, double pilot) {
        Bench made = rack(species, "screw cleat into shelf { gauge 8; count 3 }");
        assertThat(made.codes()).isEmpty();
        assertThat(figure(made, "thick")).isEqualTo(4.17);
        assertThat(figure(made, "bore")).isEqualTo(pilot);
    }

    @Test
    void screwsAreLongEnoughToHoldAndDoNotComeThrough() {
        // Three times 12 are 36; 12 + 20 - 2 are 30.
        Bench made = rack("screw cleat into shelf { count 3 }");
        assertThat(figure(made, "long")).isEqualTo(30);
        assertThat(figure(made, "grip")).isEqualTo(18);
        // The thinner part is 12 thick: a no. 6.
        assertThat(figure(made, "thick")).isEqualTo(3.51);
    }

    @Test
    void holesTakeWhatTheirBodiesFill() {
        Bench made = rack("screw cleat into shelf { thick 4; bore 2; long 30; count 1 }");
        assertThat(volume(made, "cleat")).isCloseTo(240 * 40 * 12 - 12 * ROUND * 4 - CONE, within(0.01));
        assertThat(volume(made, "shelf")).isCloseTo(600 * 280 * 20 - 18 * ROUND * 1, within(0.01));
        Bench round = rack("screw cleat into shelf { thick 4; bore 2; long 30; count 1; head round }");
        assertThat(volume(round, "cleat")).isCloseTo(240 * 40 * 12 - 12 * ROUND * 4, within(0.01));
        // Let in 3 mm, under a head twice as wide as the shank; the point goes 3 mm deeper.
        Bench sunk = rack("screw cleat into shelf { thick 4; bore 2; long 25; count 1; sink 3 }");
        assertThat(volume(sunk, "cleat")).isCloseTo(240 * 40 * 12 - 9 * ROUND * 4 - 3 * ROUND * 16 - CONE,
                within(0.01));
        assertThat(volume(sunk, "shelf")).isCloseTo(600 * 280 * 20 - 16 * ROUND * 1, within(0.01));
    }

    /** 82° in inches (ASME B18.6.1, from memory): a little deeper than at 90°. */
    @Test
    void theCountersinkOfAScrewInInchesIsSteeper() {
        Bench made = rack("screw cleat into shelf { thick 4; bore 2; long 30; count 1 }").with("units mm", "units in")
                .with("thick 4; bore 2; long 30", "thick 4mm; bore 2mm; long 30mm")
                .with("size 1500 x 300 x 45", "size 1500mm x 300mm x 45mm")
                .with("length 600; width 280; thickness 20", "length 600mm; width 280mm; thickness 20mm")
                .with("length 240; width 40; thickness 12", "length 240mm; width 40mm; thickness 12mm")
                .with("at 280, 20, -12", "at 280mm, 20mm, -12mm");
        double deep = 2 / Math.tan(Math.toRadians(41));
        assertThat(volume(made, "cleat"))
                .isCloseTo(240 * 40 * 12 - 12 * ROUND * 4 - CONE / 2 * deep, within(0.1));
    }

    /** The head of a shank of 6 is 3 deep: let in 9 of 12, nothing stays below it. */
    @Test
    void aHeadThatIsDrawnThroughIsTold() {
        Bench made = rack("screw cleat into shelf { thick 6; long 20; count 1; sink 9 }");
        assertThat(made.codes()).containsExactly("setting-does-not-fit");
        Bench better = made.applied(made.finding("setting-does-not-fit").remedies().getFirst());
        assertThat(better.codes()).doesNotContain("setting-does-not-fit");
    }

    @Test
    void screwsAcrossTheGrainOfAWideBoardStandInSlots() {
        Bench made = rack("screw cleat into shelf { thick 4; bore 0; long 30; count 3; end 20 }");
        assertThat(made.codes()).isEmpty();
        assertThat(set(made).slotted()).isEqualTo(2);
        assertThat(set(made).over()).isEqualTo(Length.ZERO);
        // 100 mm from the middle, flat cherry 0.00248 per 1 % (Wood Handbook Table 13-5), 6.88 to 12.06 % (rules of the
        // trade M-01): travel 1.28, and 0.5 of ease.
        double slot = figure(made, "slot");
        assertThat(slot).isCloseTo(4 + 100 * 0.00248 * (12.06 - 6.88) + 0.5, within(0.02));
        double hole = 12 * (ROUND * 4 + (slot - 4) * 4);
        assertThat(volume(made, "cleat")).isCloseTo(240 * 40 * 12 - 2 * hole - 12 * ROUND * 4 - CONE, within(0.01));
        assertThat(volume(made, "shelf")).isEqualTo(600 * 280 * 20);
    }

    /** The screws go up through the cleat: no edge of it that moves lies above or below. */
    @Test
    void theEdgeThatStaysIsOneTowardWhichWoodMoves() {
        Bench wrong = rack("screw cleat into shelf { count 3; fixed up }");
        assertThat(wrong.codes()).containsExactly("setting-does-not-fit");
        assertThat(wrong.finding("setting-does-not-fit").found()).contains("`front` or `back`");
        assertThat(wrong.applied(wrong.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
        assertThat(rack("screw cleat into shelf { count 3; fixed back }").codes()).isEmpty();
    }

    @Test
    void withoutSlotsTheCleatHoldsTheShelfAcrossItsGrain() {
        Bench held = rack("screw cleat into shelf { count 3; slots none }");
        assertThat(held.codes()).containsExactly("cross-grain-glue");
        assertThat(held.joined().joints().getFirst().holdsFast()).isTrue();
        assertThat(rack("nail cleat into shelf").codes()).containsExactly("cross-grain-glue");
        // Fixed at the front edge the farthest slot takes twice the way.
        String row = "screw cleat into shelf { thick 4; count 3; end 20";
        assertThat(figure(rack(row + "; fixed front }"), "slot") - 4.5)
                .isCloseTo(2.4 * (figure(rack(row + " }"), "slot") - 4.5), within(0.05));
        // Nothing moves: no slots.
        Bench along = rack("screw cleat into shelf { count 3 }").with(
                "length back; width right; at 280, 20, -12", "length right; width back; at 180, 120, -12");
        assertThat(along.codes()).isEmpty();
        assertThat(set(along).slotted()).isZero();
    }

    /** No. 8, 18 mm of thread in cherry of 0.50: 108.25 · 0.25 · 4.17 · 18 (Wood Handbook Eq. 8-10). */
    @Test
    void theyBearAShareOfWhatTheHandbookGives() {
        Bench made = rack("screw cleat into shelf { gauge 8; count 3; pull 100kg }");
        assertThat(made.codes()).isEmpty();
        double ultimate = 108.25 * 0.25 * 4.17 * 18;
        double grams = pullOut(made);
        assertThat(grams).isCloseTo(3 * ultimate * 2850 / 15700 / 9.80665 * 1000, within(100.0));
        assertThat(rack("screw cleat into shelf { gauge 8; count 3; pull 120kg }").codes())
                .containsExactly("fastener-pulls-out");
        Bench asked = Bench.of(made.text() + "require cleat.pull_out >= 200kg because \"a bag of flour\"\n");
        assertThat(asked.codes()).containsExactly("requirement-not-met");
    }

    /** Plain nails, by the handbook's Eq. 8-1: 54.12 · G^2.5 · D · L, a sixth of it to work with. */
    @Test
    void nailsHoldLess() {
        Bench made = rack("nail cleat into shelf { thick 1.6; long 30; count 1; pull 1kg }");
        double newtons = 54.12 * Math.pow(0.5, 2.5) * 1.6 * 18 / 6;
        double grams = pullOut(made);
        assertThat(grams).isCloseTo(newtons / 9.80665 * 1000, within(10.0));
    }

    @Test
    void aNailIsThreeTimesAsLongAsWhatItHolds() {
        // US Navy training course 14119: 3 x 12 are 36, of usual lengths 40; 2 mm of the wall's 70 would be left.
        Bench made = box("joint butt front to left\njoint nail front into left");
        assertThat(figure(made, "long")).isEqualTo(40);
        // A tenth of a wall of 12 (common practice, no source); bored three quarters, since the end is near.
        assertThat(figure(made, "thick")).isEqualTo(1.2);
        assertThat(figure(made, "bore")).isEqualTo(0.9);
        assertThat(set(made).endGrain()).isTrue();
    }

    /** At a corner both parts are as their other joint leaves them. */
    @Test
    void nailsGoThroughTheCornerAsItIsJoined() {
        Bench butted = box("joint butt front to left\njoint nail front into left { count 2; long 40; bore 1 }");
        assertThat(butted.codes()).isEmpty();
        double hole = ROUND * 0.25;
        assertThat(volume(butted, "front")).isCloseTo((240 + 12) * 70 * 12 - 2 * 12 * hole, within(0.01));
        assertThat(volume(butted, "left")).isCloseTo(90 * 70 * 12 - 2 * 28 * hole, within(0.01));
        Bench rebated = box(
                "joint rebate left into front { lip 5 }\njoint nail front into left { count 2; long 20; bore 1 }");
        assertThat(rebated.codes()).isEmpty();
        // Through the lip of 5, then 15 into the wall's end.
        assertThat(volume(rebated, "front")).isCloseTo((252 * 12 - 12 * 7) * 70 - 2 * 5 * hole, within(0.01));
        assertThat(volume(rebated, "left")).isCloseTo(97 * 70 * 12 - 2 * 15 * hole, within(0.01));
        Bench mitred = box("joint mitre front to left\njoint nail front into left { count 2; long 25; bore 1 }");
        assertThat(mitred.codes()).isEmpty();
        // Half the corner each: through 6 of the front, then 19 into the left wall, up to the slope of the mitre.
        assertThat(volume(mitred, "front") + volume(mitred, "left"))
                .isCloseTo((240 + 90 + 12) * 70.0 * 12 - 2 * 25 * hole, within(0.01));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            screw cleat into shelf { long 32; count 3 }          | fastener-leaves-wood
            screw cleat into shelf { long 31; count 3 }          | fastener-nearly-through
            screw cleat into shelf { long 20; count 3 }          | fastener-grips-little
            screw cleat into shelf { count 3; end 1 }            | fastener-leaves-wood
            screw cleat into shelf { count 3; end 6 }            | fastener-near-edge
            screw cleat into shelf { long 12; count 3 }          | setting-does-not-fit
            screw cleat into shelf { count 0 }                   | setting-does-not-fit
            screw cleat into shelf { count 2; end 120 }          | setting-does-not-fit
            screw cleat into shelf { gauge 99 }                  | setting-does-not-fit
            screw cleat into shelf { thick 0 }                   | setting-does-not-fit
            screw cleat into shelf { thick 4; bore 5 }           | setting-does-not-fit
            screw cleat into shelf { sink 12; long 40 }          | setting-does-not-fit
            screw cleat into shelf { pull 5 }                    | wrong-kind
            nail cleat into shelf { thick 3; bore 0; count 1 }   | will-split
            nail cleat into shelf { end 4; bore 0; count 3 }     | fastener-near-edge
            """)
    void whatIsWrongIsSaid(String joint, String code) {
        assertThat(rack(joint).codes()).contains(code);
    }

    @Test
    void aThinEdgeSplits() {
        Bench thick = box("joint butt front to left\njoint screw front into left { gauge 10; long 40; count 2 }");
        assertThat(thick.codes()).contains("will-split");
        assertThat(thick.mended("will-split").codes()).doesNotContain("will-split");
    }

    @Test
    void aGrooveInTheWayIsSeen() {
        String grooved = "joint butt front to left\njoint groove base into front, left { wide 6; deep 4 }\n";
        Bench hit = box(grooved + "joint nail front into left { count 2; end 12; long 30 }");
        assertThat(hit.codes()).contains("fastener-hits-cut");
        Bench clear = box(grooved + "joint nail front into left { count 2; end 25; long 30 }");
        assertThat(clear.codes()).doesNotContain("fastener-hits-cut");
        // Two rows of screws that cross.
        Bench crossed = rack("""
                screw cleat into shelf { count 3; end 20 }
                part lath { length 240; width 40; thickness 10; from plank
                  place { length back; width right; at 280, 20, 20 } }
                joint screw lath into shelf { count 3; end 20 }
                """);
        assertThat(crossed.codes()).contains("fastener-hits-cut");
    }

    @Test
    void partsThatOnlyTouchAtAnEdgeAreNotFastened() {
        assertThat(box("joint screw front into left").codes()).contains("meets-wrongly");
    }

    /** Whatever the sizes: the holes lie in the wood, and what Treen chooses has no fault but one that wood forces. */
    @Test
    void whatTreenChoosesFits() {
        Random random = new Random(20261126);
        for (int i = 0; i < 40; i++) {
            int thick = 10 + random.nextInt(20);
            int wide = 60 + random.nextInt(220);
            Bench made = rack((random.nextBoolean() ? "screw" : "nail") + " cleat into shelf").with(
                    "thickness 20", "thickness " + (18 + random.nextInt(20))).with(
                            "length 240; width 40; thickness 12", "length " + wide + "; width 40; thickness " + thick)
                    .with("280, 20, -12", "280, 0, -" + thick);
            assertThat(made.codes()).as(made.text()).isSubsetOf("fastener-grips-little", "cross-grain-glue");
            List<Placed> placed = new ArrayList<>();
            made.joined().parts().forEach(
                    part -> placed.add(new Placed(part.part().name(), part.solid().orElseThrow())));
            assertThat(Overlap.among(placed)).isEmpty();
        }
    }
}

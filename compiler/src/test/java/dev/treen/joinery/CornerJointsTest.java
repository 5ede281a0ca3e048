package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.solid.Axis;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Dovetails and fingers at one corner of an invented kitchen box. Outside values: worked examples of the trade's rules
 * (WE-…: derived from geometry), slopes after Fairham, Woodwork Joints, and volumes against closed formulae.
 */
class CornerJointsTest {
    private static final String JOINT = "joint dovetail side to end { tails 3; pin 4; half_pin 5; slope 1:8 }";

    private static Bench corner(double height, double thick, double other, String joint) {
        return Bench.of("""
                project "Corner" {
                  units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC }
                }
                board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9%% }
                part side { length 200; width %s; thickness %s; from plank
                  place { length right; width up; at 0, -%s, 0 } }
                part end { length 100; width %s; thickness %s; from plank
                  place { length back; width up; at -%s, 0, 0 } }
                %s
                """.formatted(height, thick, thick, height, other, other, joint));
    }

    private static Solid solid(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow();
    }

    private static void fits(Bench bench) {
        Solid side = solid(bench, "side");
        Solid end = solid(bench, "end");
        assertThat(Overlap.among(List.of(new Placed("side", side), new Placed("end", end)))).isEmpty();
        assertThat(Contact.between(side, end)).isNotEmpty();
    }

    /** WE-062: three tails on 84, half-pins 5, pins 4, 9 thick, 1:8: 22 at the end and 19.75 at the base line. */
    @Test
    void tailsAreAsWorked() {
        Bench bench = corner(84, 9, 9, JOINT);
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("side", "end", "tail")).isEqualTo(mm(22));
        assertThat(bench.figure("side", "end", "tail_at_base")).isEqualTo(mm(19.75));
        assertThat(bench.part("side").length().value()).isEqualTo(mm(209));
        assertThat(bench.part("end").length().value()).isEqualTo(mm(109));
        fits(bench);
        // Tails: three prisms of mean width 20.875, 9 long, through 9; pins have the rest of the corner's block.
        BigFraction tails = BigFraction.of(3 * 20_875 * 81, 1000);
        assertThat(solid(bench, "side").volume()).isEqualTo(BigFraction.of(200 * 84 * 9).add(tails));
        assertThat(solid(bench, "end").volume())
                .isEqualTo(BigFraction.of(100 * 84 * 9).add(BigFraction.of(84 * 81)).subtract(tails));
    }

    /** WE-063: four tails on 120, half-pins 6, pins 3, 12 thick, 1:6: 20.75 at the base line; WE-066: a pin of 4 is 8 inside. */
    @Test
    void tailsAreAsWorkedInThickerWood() {
        String joint = "joint dovetail side to end { tails 4; pin 3; half_pin 6; slope 1:6 }";
        Bench bench = corner(120, 12, 12, joint);
        assertThat(bench.figure("side", "end", "tail_at_base")).isEqualTo(mm(20.75));
        assertThat(bench.with("pin 3", "pin 4").figure("side", "end", "pin_inside")).isEqualTo(mm(8));
        fits(bench);
    }

    /** The tails leave the way they lie and no other. */
    @Test
    void dovetailsComeApartOneWayOnly() {
        Bench bench = corner(84, 9, 9, JOINT);
        for (Side way : Side.values()) {
            boolean free = Motion.canMove(
                    solid(bench, "side"), List.of(solid(bench, "end")), way, BigFraction.of(300));
            assertThat(free).as(way.name()).isEqualTo(way == Side.FRONT);
        }
    }

    /** Lap 6 mm in a drawer front of 20: Fairham, Woodwork Joints, Dovetail; WE-060 takes the lap off the side. */
    @Test
    void lappedTailsStopBehindTheLap() {
        Bench bench = corner(84, 9, 20, "joint dovetail side to end { cut lapped }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("side", "end", "lap")).isEqualTo(mm(6));
        assertThat(bench.part("side").length().value()).isEqualTo(mm(214));
        assertThat(bench.part("end").length().value()).isEqualTo(mm(109));
        fits(bench);
        assertThat(bench.with("cut lapped", "cut lapped; lap 2").codes()).contains("joint-too-fine");
        assertThat(bench.with("cut lapped", "lap 20").codes()).contains("setting-does-not-fit");
    }

    /**
     * Two tails between edges mitred over 5 of 90, laps of 5 of 15, pins 4 and 5, 1:8: tails of mean width 31.75, 10 by 10;
     * laps of 10 by 5 and half of 5 by 5; halves of the block at both edges.
     */
    @Test
    void secretDovetailsAreHiddenByMitredLaps() {
        String joint = "joint dovetail side to end { cut secret; tails 2; pin 4; half_pin 5; slope 1:8 }";
        Bench bench = corner(90, 15, 15, joint);
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("side", "end", "lap")).isEqualTo(mm(5));
        assertThat(bench.figure("side", "end", "mitre")).isEqualTo(mm(5));
        assertThat(bench.figure("side", "end", "tail")).isEqualTo(mm(33));
        assertThat(bench.part("side").length().value()).isEqualTo(mm(215));
        assertThat(bench.part("end").length().value()).isEqualTo(mm(115));
        BigFraction gained = BigFraction.of(2 * 3_175, 1).add(BigFraction.of(80 * 125, 2)).add(
                BigFraction.of(10 * 225, 2));
        assertThat(solid(bench, "side").volume()).isEqualTo(BigFraction.of(200 * 90 * 15).add(gained));
        assertThat(solid(bench, "end").volume())
                .isEqualTo(BigFraction.of(100 * 90 * 15 + 90 * 225).subtract(gained));
        fits(bench);
        for (Side way : Side.values()) {
            assertThat(Motion.canMove(solid(bench, "side"), List.of(solid(bench, "end")), way, BigFraction.of(300)))
                    .as(way.name())
                    .isEqualTo(way == Side.FRONT);
        }
    }

    /** From outside the corner looks like a mitre: each wall reaches whole to the outer edge, and nothing else is there. */
    @Test
    void secretDovetailsShowNothingOutside() {
        Bench secret = corner(90, 15, 15, "joint dovetail side to end { cut secret }");
        assertThat(outside(secret, "side", Side.FRONT)).isCloseTo(215 * 90, within(1e-6));
        assertThat(outside(secret, "end", Side.LEFT)).isCloseTo(115 * 90, within(1e-6));
        Bench shown = corner(90, 15, 15, "joint dovetail side to end");
        assertThat(outside(shown, "side", Side.FRONT)).isLessThan(214 * 90);
        assertThat(outside(shown, "end", Side.LEFT)).isLessThan(114 * 90);
    }

    /** How much of a part's outermost face is there. */
    private static double outside(Bench bench, String part, Side side) {
        Solid solid = solid(bench, part);
        BigFraction at = solid.bounds().orElseThrow().coordinate(side);
        return solid.surface().faces().stream()
                .filter(face -> face.plane().side().filter(side::equals).isPresent())
                .filter(face -> face.region().extent().orElseThrow().min().get(side.axis()).equals(at))
                .mapToDouble(face -> face.region().area())
                .sum();
    }

    @Test
    void secretDovetailsThatCannotBeAreTold() {
        Bench unequal = corner(90, 15, 12, "joint dovetail side to end { cut secret }");
        assertThat(unequal.codes()).containsExactly("setting-does-not-fit");
        assertThat(unequal.applied(unequal.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
        for (String settings : List.of("lap 15", "lap 0", "mitre 45")) {
            assertThat(corner(90, 15, 15, "joint dovetail side to end { cut secret; " + settings + " }").codes())
                    .as(settings)
                    .contains("setting-does-not-fit");
        }
        assertThat(corner(90, 15, 15, "joint dovetail side to end { cut secret; lap 2 }").codes())
                .containsExactly("joint-too-fine");
    }

    @Test
    void aMitredShoulderSharesTheUpperEdgeAlongItsDiagonal() {
        Bench bench = corner(84, 9, 12, "joint dovetail side to end { mitre 10 }");
        assertThat(bench.codes()).isEmpty();
        fits(bench);
        BigFraction both = solid(bench, "side").volume().add(solid(bench, "end").volume());
        assertThat(both).isEqualTo(BigFraction.of(84 * (200 * 9 + 100 * 12 + 9 * 12)));
        assertThat(bench.with("mitre 10", "mitre 10; lap 4").codes()).contains("setting-does-not-fit");
    }

    /** Custom, common practice without a source: 1:6 in softwood, 1:8 in hardwood; both within Fairham's bounds. */
    @Test
    void theSlopeFollowsTheWood() {
        Bench hard = corner(84, 9, 9, "joint dovetail side to end { tails 3; pin 4; half_pin 5 }");
        assertThat(hard.figure("side", "end", "tail_at_base")).isEqualTo(mm(19.75));
        Bench soft = hard.with("black_cherry", "eastern_white_pine");
        assertThat(soft.figure("side", "end", "tail_at_base")).isEqualTo(mm(19));
    }

    @Test
    void tellsWhatIsTooFineAndWhatWouldWork() {
        Bench bench = corner(84, 9, 9, JOINT);
        assertThat(corner(84, 3, 3, "joint dovetail side to end").codes()).contains("joint-too-fine");
        assertThat(bench.with("half_pin 5", "half_pin 2").codes()).containsOnly("joint-too-fine");
        assertThat(bench.with("1:8", "1:3").codes()).contains("joint-too-fine");
        assertThat(bench.with("tails 3", "tails 40").codes()).containsOnly("setting-does-not-fit");
        assertThat(bench.with("tails 3", "tails 0").codes()).containsOnly("setting-does-not-fit");
        assertThat(bench.with("tails 3", "tails 2.5").codes()).containsOnly("setting-does-not-fit");
        Bench many = bench.with("tails 3", "tails 9");
        assertThat(many.codes()).containsOnly("joint-too-fine");
        Bench mended = many.applied(many.finding("joint-too-fine").remedies().getFirst());
        assertThat(mended.codes()).isEmpty();
        assertThat(corner(84, 9, 9, "joint dovetail side to end { tails 3mm }").codes()).isNotEmpty();
    }

    /** WE-067: on 84 about 9 wanted gives nine fingers of 9 1/3; WE-068: the glued sides have 648 mm2. */
    @Test
    void fingersShareTheHeightEvenly() {
        Bench bench = corner(84, 9, 9, "joint finger side to end { wide 9 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("side", "end", "finger").mm()).isEqualTo(BigFraction.of(28, 3));
        assertThat(bench.part("side").length().value()).isEqualTo(mm(209));
        fits(bench);
        assertThat(solid(bench, "side").volume()).isEqualTo(BigFraction.of(200 * 84 * 9 + 5 * 28 * 27));
        double flat = Contact.between(solid(bench, "side"), solid(bench, "end")).stream()
                .filter(c -> !c.region().plane().normal().get(Axis.Z).equals(BigFraction.ZERO))
                .mapToDouble(c -> c.region().area())
                .sum();
        assertThat(flat).isEqualTo(648);
    }

    @Test
    void tellsOfFingersThatCannotBe() {
        Bench bench = corner(84, 9, 9, "joint finger side to end { fingers 9 }");
        assertThat(bench.with("fingers 9", "fingers 200").codes()).containsOnly("setting-does-not-fit");
        Bench fine = bench.with("fingers 9", "fingers 31");
        assertThat(fine.codes()).containsOnly("joint-too-fine");
        assertThat(fine.applied(fine.finding("joint-too-fine").remedies().getFirst()).codes()).isEmpty();
        assertThat(bench.with("fingers 9", "fingers 1").codes()).containsOnly("setting-does-not-fit");
        assertThat(bench.with("fingers 9", "fingers some").codes()).isNotEmpty();
        String flat = "part end { length 100; width 84.0; thickness 9.0; from plank\n"
                + "  place { length back; width up; at -9.0, 0, 0 } }";
        assertThat(bench.with(flat, flat.replace("length back", "length up").replace("width up", "width back")).codes())
                .contains("meets-wrongly");
    }

    /** Seeded sizes: nothing is shared, nothing of the corner is lost. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void cornersOfRandomSizesAreShared(long seed) {
        Random random = new Random(seed);
        int height = 50 + random.nextInt(200);
        int thick = 6 + random.nextInt(20);
        int other = 6 + random.nextInt(20);
        for (String joint : List.of("joint dovetail side to end", "joint finger side to end")) {
            Bench bench = corner(height, thick, other, joint);
            fits(bench);
            BigFraction both = solid(bench, "side").volume().add(solid(bench, "end").volume());
            assertThat(both).isEqualTo(BigFraction.of(height * (200 * thick + 100 * other + thick * other)));
        }
    }
}

package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.solid.Motion;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * A shelf that slides into the side of an invented plate shelf. Outside values: one leaning side is enough (Noyes, Handwork
 * in Wood, ch. IX rule 7), 1:5 the steepest slope (Noyes, no. 48); volumes against closed formulae.
 */
class SlidingDovetailTest {
    private static Bench shelf(String settings) {
        return Bench.of("""
                project "Plate shelf" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1200 x 140 x 22; rings rift; moisture 9%% }
                part side { length 400; width 120; thickness 18; from plank
                  place { length up; width back; at -18, 0, 0 } }
                part shelf { length 500; width 120; thickness 16; from plank
                  place { length right; width back; at 0, 0, 180 } }
                joint sliding_dovetail shelf into side %s
                """.formatted(settings));
    }

    private static Solid solid(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow();
    }

    private static void noSpaceIsShared(Bench bench) {
        assertThat(Overlap.among(List.of(
                new Placed("side", solid(bench, "side")), new Placed("shelf", solid(bench, "shelf"))))).isEmpty();
    }

    /** A third of 18 deep, 1:8 leans 0.75: the tail is 16 wide at its end and 15.25 at its neck. */
    @Test
    void oneSideLeans() {
        Bench bench = shelf("");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("shelf", "side", "deep")).isEqualTo(mm(6));
        assertThat(bench.figure("shelf", "side", "neck")).isEqualTo(mm(15.25));
        assertThat(bench.part("shelf").length().value()).isEqualTo(mm(506));
        BigFraction tail = BigFraction.of(6 * 120 * 125, 8);
        assertThat(solid(bench, "side").volume()).isEqualTo(BigFraction.of(400 * 120 * 18).subtract(tail));
        assertThat(solid(bench, "shelf").volume()).isEqualTo(BigFraction.of(500 * 120 * 16).add(tail));
        noSpaceIsShared(bench);
    }

    @Test
    void bothSidesLean() {
        Bench bench = shelf("{ sides both; slope 1:6 }");
        assertThat(bench.codes()).isEmpty();
        BigFraction tail = BigFraction.of(6 * 120 * 15);
        assertThat(bench.figure("shelf", "side", "neck")).isEqualTo(mm(14));
        assertThat(solid(bench, "side").volume()).isEqualTo(BigFraction.of(400 * 120 * 18).subtract(tail));
        noSpaceIsShared(bench);
    }

    /** It moves along its trench and no other way. */
    @Test
    void itSlidesAndDoesNotPull() {
        Bench through = shelf("");
        for (Side way : Side.values()) {
            assertThat(Motion.canMove(
                    solid(through, "shelf"), List.of(solid(through, "side")), way, BigFraction.of(300)))
                    .as(way.name())
                    .isEqualTo(way == Side.FRONT || way == Side.BACK);
        }
        Bench stopped = shelf("{ stop 10 from front }");
        assertThat(stopped.codes()).isEmpty();
        noSpaceIsShared(stopped);
        assertThat(Motion.canMove(
                solid(stopped, "shelf"), List.of(solid(stopped, "side")), Side.FRONT, BigFraction.of(300))).isFalse();
        assertThat(Motion.canMove(
                solid(stopped, "shelf"), List.of(solid(stopped, "side")), Side.BACK, BigFraction.of(300))).isTrue();
        BigFraction tail = BigFraction.of(6 * 110 * 125, 8);
        assertThat(solid(stopped, "side").volume()).isEqualTo(BigFraction.of(400 * 120 * 18).subtract(tail));
        assertThat(solid(stopped, "shelf").volume()).isEqualTo(BigFraction.of(500 * 120 * 16).add(tail));
    }

    /** The upper side leans instead of the lower one: the same wood, the other way up. */
    @Test
    void theOtherSideLeans() {
        Bench bench = shelf("{ sides one from up }");
        assertThat(bench.codes()).isEmpty();
        assertThat(solid(bench, "side").volume()).isEqualTo(solid(shelf(""), "side").volume());
        assertThat(solid(bench, "shelf").bounds().orElseThrow().min().z()).isEqualTo(BigFraction.of(180));
        assertThat(solid(bench, "side")).isNotEqualTo(solid(shelf(""), "side"));
        noSpaceIsShared(bench);
    }

    /** A taper of 2 takes 1 of the mean width, on one side or shared by both; a stop of 10 keeps the wider 11 twelfths. */
    @Test
    void aTaperNarrowsItTowardTheEndThatGoesInFirst() {
        tapered("{ taper 2 }", BigFraction.of(720).multiply(BigFraction.of(125, 8).subtract(1)));
        tapered("{ sides both; taper 2 from front }",
                BigFraction.of(720).multiply(BigFraction.of(61, 4).subtract(1)));
        tapered("{ taper 2; stop 10 from front }",
                BigFraction.of(660).multiply(BigFraction.of(125, 8).subtract(BigFraction.of(11, 12))));
        assertThat(shelf("{ taper auto }").figure("shelf", "side", "taper")).isEqualTo(mm(1));
        assertThat(shelf("{ taper 2 }").figure("shelf", "side", "neck_narrow")).isEqualTo(mm(13.25));
    }

    private static void tapered(String settings, BigFraction tail) {
        Bench bench = shelf(settings);
        assertThat(bench.codes()).as(settings).isEmpty();
        assertThat(solid(bench, "side").volume()).as(settings).isEqualTo(
                BigFraction.of(400 * 120 * 18).subtract(tail));
        assertThat(solid(bench, "shelf").volume()).as(settings).isEqualTo(BigFraction.of(500 * 120 * 16).add(tail));
        noSpaceIsShared(bench);
        for (Side way : Side.values()) {
            assertThat(Motion.canMove(
                    solid(bench, "shelf"), List.of(solid(bench, "side")), way, BigFraction.of(300)))
                    .as(settings + way.name())
                    .isEqualTo(way == Side.BACK);
        }
    }

    @Test
    void aTaperThatCannotBeIsToldWithWhatWouldWork() {
        for (String settings : List.of("{ taper 2 from back; stop 10 from front }", "{ taper 20 }",
                "{ taper 2 from up }", "{ sides one from front }")) {
            Bench bench = shelf(settings);
            assertThat(bench.codes()).as(settings).containsExactly("setting-does-not-fit");
            assertThat(bench.applied(bench.finding("setting-does-not-fit").remedies().getFirst()).codes())
                    .as(settings)
                    .isEmpty();
        }
        assertThat(shelf("{ taper 8 }").codes()).containsExactly("joint-too-fine");
    }

    @Test
    void whatCannotBeIsTold() {
        for (String settings : List.of("{ deep 0 }", "{ deep 18 }", "{ slope 1:0.3 }", "{ stop 120 from front }",
                "{ stop 10 from top }")) {
            assertThat(shelf(settings).codes()).as(settings).contains("setting-does-not-fit");
        }
        // A shelf that reaches neither edge of its side cannot be slid in.
        Bench inside = shelf("").with("width 120; thickness 16", "width 80; thickness 16").with("at 0, 0, 180",
                "at 0, 20, 180");
        assertThat(inside.codes()).containsExactly("setting-does-not-fit");
        assertThat(shelf("").with("length right; width back; at 0, 0, 180", "length back; width right; at 0, 0, 180")
                .codes()).contains("meets-wrongly");
    }

    @Test
    void whatWouldNotHoldIsTold() {
        Bench steep = shelf("{ slope 1:3 }");
        assertThat(steep.codes()).containsExactly("joint-too-fine");
        assertThat(steep.applied(steep.finding("joint-too-fine").remedies().getFirst()).codes()).isEmpty();
        assertThat(shelf("{ deep 12 }").codes()).containsExactly("housing-too-deep");
    }
}

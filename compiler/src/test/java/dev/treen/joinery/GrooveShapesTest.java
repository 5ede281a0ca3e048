package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Stopped grooves and raised panels in an invented spoon tray. Outside values: in an open corner the groove stops the wall
 * less its depth before the end (WE: 9 less 4 gives 5, derived from the corner); volumes against closed formulae.
 */
class GrooveShapesTest {
    private static Bench tray(String corner, String settings) {
        return Bench.of("""
                project "Spoon tray" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 2000 x 140 x 18; rings rift; moisture 9%% }
                part front { length 200; width 63; thickness 9; from plank; place { length right; width up; at 0, -9, 0 } }
                part back like front { place { at 0, 100, 0 } }
                part left { length 100; width 63; thickness 9; from plank; place { length back; width up; at -9, 0, 0 } }
                part right like left { place { at 200, 0, 0 } }
                part base { length 200; width 100; thickness 7; from plank; place { length right; width back; at 0, 0, 7 } }
                joint %s front to left, front to right, back to left, back to right
                joint groove base into front, back, left, right { wide 5; deep 4; gap 1%s }
                """.formatted(corner, settings));
    }

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    private static void noSpaceIsShared(Bench bench) {
        List<Placed> placed = bench.joined().parts().stream()
                .map(part -> new Placed(part.part().name(), part.solid().orElseThrow()))
                .toList();
        assertThat(Overlap.among(placed)).isEmpty();
    }

    /** A butted front runs through: its groove shows, stopped it does not, and the base still goes in. */
    @Test
    void aStoppedGrooveDoesNotShow() {
        assertThat(tray("butt", "").codes()).contains("groove-shows");
        Bench bench = tray("butt", "; stop auto");
        assertThat(bench.codes()).doesNotContain("groove-shows");
        assertThat(bench.figure("base", "front", "stop")).isEqualTo(mm(5));
        // 218 long over all, the groove 5 from either end: 208 of 5 by 4.
        assertThat(volume(bench, "front")).isEqualTo(218 * 63 * 9 - 208 * 5 * 4);
        noSpaceIsShared(bench);
        // The base, 206 by 106 with tongues 3 long, is not cut by that stop: its corners end at the groove's.
        assertThat(volume(bench, "base")).isEqualTo(volume(tray("butt", ""), "base"));
    }

    @Test
    void fingersShowAndAStopHidesIt() {
        assertThat(tray("finger", "").codes()).contains("groove-shows");
        Bench bench = tray("finger", "; stop auto");
        assertThat(bench.codes()).doesNotContain("groove-shows");
        noSpaceIsShared(bench);
    }

    /** Stopped farther in than the base reaches, its corners are notched. */
    @Test
    void aPanelIsNotchedOverALongStop() {
        Bench bench = tray("butt", "; stop 20");
        assertThat(volume(bench, "front")).isEqualTo(218 * 63 * 9 - 178 * 5 * 4);
        assertThat(volume(bench, "base")).isLessThan(volume(tray("butt", "; stop auto"), "base"));
        noSpaceIsShared(bench);
    }

    @Test
    void oneEndOnly() {
        Bench bench = tray("butt", "").with("joint groove base into front, back, left, right { wide 5; deep 4; gap 1 }",
                "joint groove base into front, back { wide 5; deep 4; gap 1; stop 5 from left }\n"
                        + "joint groove base into left, right { wide 5; deep 4; gap 1 }");
        assertThat(volume(bench, "front")).isEqualTo(218 * 63 * 9 - 213 * 5 * 4);
        assertThat(bench.codes()).contains("groove-shows");
    }

    @Test
    void stopsThatCannotBeAreTold() {
        for (String stop : List.of("stop 120", "stop 5 from top")) {
            Bench bench = tray("mitre", "; " + stop);
            assertThat(bench.codes()).as(stop).containsOnly("setting-does-not-fit");
        }
        Bench long1 = tray("mitre", "; stop 120");
        assertThat(long1.applied(long1.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
    }

    private static Bench door(String settings) {
        return Bench.of("""
                project "Door" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 2000 x 140 x 18; rings rift; moisture 9%% }
                part low { length 200; width 40; thickness 16; from plank; place { length up; width right; at -40, 0, 0 } }
                part high like low { place { at 120, 0, 0 } }
                part panel { length 200; width 120; thickness 11; from plank; place { length up; width right; at 0, 0, 0 } }
                joint groove panel into low, high { wide 5; deep 9; gap 3; shoulder_gap 1; shoulder front%s }
                """.formatted(settings));
    }

    /** Between tongue and field lies half of a bar as wide as the bevel and as high as the shoulder. */
    @Test
    void aBevelIsHalfOfItsBar() {
        Bench plain = door("");
        Bench raised = door("; raise 18");
        assertThat(plain.codes()).isEmpty();
        assertThat(raised.codes()).isEmpty();
        assertThat(volume(plain, "panel") - volume(raised, "panel")).isCloseTo(2 * 200 * 18 * 6 / 2.0, within(1e-9));
        assertThat(door("; raise auto").figure("panel", "low", "raise")).isEqualTo(mm(18));
        noSpaceIsShared(raised);
    }

    /** Four bevels meet in the corners: a frustum with the field on top, by the prismoidal formula. */
    @Test
    void bevelsMeetInTheCorners() {
        Bench four = Bench.of(door("; raise 18").text().replace("joint groove panel into low, high", """
                part foot { length 120; width 40; thickness 16; from plank; place { length right; width up; at 0, 0, -40 } }
                part head like foot { place { at 0, 0, 200 } }
                joint groove panel into low, high, foot, head"""));
        double wide = 120 - 2;
        double high = 200 - 2;
        double top = (wide - 36) * (high - 36);
        double middle = (wide - 18) * (high - 18);
        double frustum = 6 * (wide * high + 4 * middle + top) / 6;
        double tongue = 5 * (120 + 12) * (200 + 12);
        assertThat(volume(four, "panel")).isCloseTo(tongue + frustum, within(1e-6));
    }

    @Test
    void panelsThatCannotBeRaisedAreTold() {
        Map<String, String> wrong = Map.of("; raise 0", "", "; raise 60", "", "; raise 10", "thickness 5");
        wrong.forEach((settings, thin) -> {
            Bench bench = thin.isEmpty() ? door(settings)
                    : door(settings).with("thickness 11", thin).with("right; at 0, 0, 0", "right; at 0, 5, 0");
            assertThat(bench.codes()).as(settings).containsOnly("setting-does-not-fit");
        });
    }
}

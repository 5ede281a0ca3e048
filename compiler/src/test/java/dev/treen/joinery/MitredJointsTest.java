package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Keys and loose tongues in the mitres of an invented tea caddy and a small frame. Outside values: the grain of a tongue
 * across the joint (Fairham, Woodwork Joints, cross tongues); volumes against closed formulae.
 */
class MitredJointsTest {
    private static final String HEAD = """
            project "Tea caddy" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board plank { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9% }
            """;

    private static Bench box(String joint) {
        return Bench.of(HEAD + """
                part front { length 160; width 84; thickness 12; from plank; place { length right; width up; at 0, -12, 0 } }
                part left { length 80; width 84; thickness 12; from plank; place { length back; width up; at -12, 0, 0 } }
                joint %s
                """.formatted(joint));
    }

    private static Bench frame(String joint) {
        return Bench.of(HEAD + """
                part low { length 200; width 24; thickness 16; from plank; place { length right; width back; at 0, -24, 0 } }
                part side { length 100; width 24; thickness 16; from plank; place { length back; width right; at -24, 0, 0 } }
                joint %s
                """.formatted(joint));
    }

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    private static void noSpaceIsShared(Bench bench, String one, String other) {
        Solid a = bench.part(one).solid().orElseThrow();
        Solid b = bench.part(other).solid().orElseThrow();
        assertThat(Overlap.among(List.of(new Placed(one, a), new Placed(other, b)))).isEmpty();
    }

    /** A key takes half of a square prism off the corner, a quarter of it off each part. */
    @Test
    void keysAreThreeCornered() {
        Bench bench = box("mitre front to left { keys 2; key_thick 3; key_deep 8 }");
        assertThat(bench.codes()).isEmpty();
        // The legs are 8 times the root of two: half their square is 64.
        double key = 64 * 3;
        assertThat(volume(bench, "front")).isCloseTo((160 + 6) * 84 * 12 - 2 * key / 2, within(1e-6));
        assertThat(volume(bench, "left")).isCloseTo((80 + 6) * 84 * 12 - 2 * key / 2, within(1e-6));
        noSpaceIsShared(bench, "front", "left");
        assertThat(box("mitre front to left").joint("front", "left").figures()).isEmpty();
    }

    @Test
    void keysGoHalfOfTheWay() {
        Bench bench = box("mitre front to left { keys 3 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("front", "left", "key_thick")).isEqualTo(mm(3));
        // Half of 12 times the root of two, on a mark of the rule.
        assertThat(bench.figure("front", "left", "key_deep")).isEqualTo(mm(8.5));
        assertThat(bench.joint("front", "left").works().getLast().stage()).isEqualTo(Work.Stage.AFTER_GLUE);
    }

    @Test
    void keysThatCannotBeAreTold() {
        for (String keys : List.of("keys 0", "keys 1.5", "keys 40; key_thick 3", "keys 2; key_thick 0",
                "keys 2; key_deep 0", "keys 2; key_deep 17")) {
            assertThat(box("mitre front to left { " + keys + " }").codes()).as(keys)
                    .containsExactly("setting-does-not-fit");
        }
        Bench deep = box("mitre front to left { keys 2; key_deep 12 }");
        assertThat(deep.codes()).containsExactly("spline-too-deep");
        assertThat(deep.applied(deep.finding("spline-too-deep").remedies().getFirst()).codes()).isEmpty();
    }

    /** A tongue upright in a box's corner, near the inner side: 4 thick, 4 into each wall, 84 high. */
    @Test
    void anUprightTongueLiesNearTheInnerCorner() {
        Bench bench = box("spline front to left");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("front", "left", "thick")).isEqualTo(mm(4));
        assertThat(bench.figure("front", "left", "deep")).isEqualTo(mm(4));
        assertThat(bench.figure("front", "left", "tongue")).isEqualTo(mm(7));
        assertThat(bench.part("front").length().value()).isEqualTo(mm(172));
        assertThat(volume(bench, "front")).isCloseTo(166 * 84 * 12 - 4 * 4 * 84, within(1e-4));
        assertThat(volume(bench, "left")).isCloseTo(86 * 84 * 12 - 4 * 4 * 84, within(1e-4));
        noSpaceIsShared(bench, "front", "left");
        Bench stopped = box("spline front to left { stop 10 }");
        assertThat(stopped.codes()).isEmpty();
        assertThat(volume(stopped, "front")).isCloseTo(166 * 84 * 12 - 4 * 4 * 64, within(1e-4));
    }

    /** Flat in a frame, stopped: a bar of 5 thick and 6 deep between two places of the cut. */
    @Test
    void aFlatTongueLiesInTheMiddle() {
        Bench bench = frame("spline low to side { deep 6; stop 8 }");
        assertThat(bench.codes()).doesNotContain("setting-does-not-fit", "spline-too-deep");
        double bar = (24 * Math.sqrt(2) - 16) * 6 * 5;
        // Stopped 8 from the inner corner, the groove, 6 deep, stays within both parts.
        assertThat(volume(bench, "low")).isCloseTo(212 * 24 * 16 - bar, within(0.1));
        assertThat(volume(bench, "side")).isCloseTo(112 * 24 * 16 - bar, within(0.1));
        noSpaceIsShared(bench, "low", "side");
    }

    @Test
    void aTongueAlongTwoEdges() {
        Bench bench = Bench.of(HEAD + """
                part one { length 400; width 90; thickness 20; from plank; place { length right; width back; at 0, 0, 0 } }
                part two like one { place { at 0, 90, 0 } }
                joint spline one to two { thick 6; deep 10; stop 30 }
                """);
        assertThat(bench.codes()).isEmpty();
        assertThat(volume(bench, "one")).isEqualTo(400 * 90 * 20 - 340 * 6 * 10);
        assertThat(volume(bench, "two")).isEqualTo(400 * 90 * 20 - 340 * 6 * 10);
        assertThat(bench.figure("one", "two", "tongue")).isEqualTo(mm(19));
        Bench through = bench.with("; stop 30", "");
        assertThat(volume(through, "one")).isEqualTo(400 * 90 * 20 - 400 * 6 * 10);
        assertThat(bench.with("deep 10", "deep 90").codes()).containsExactly("setting-does-not-fit");
    }

    @Test
    void tonguesThatCannotBeAreTold() {
        for (String settings : List.of("thick 0", "deep 0", "thick 12", "deep 13", "deep 0.4", "stop 42", "stop 200")) {
            assertThat(box("spline front to left { " + settings + " }").codes()).as(settings)
                    .containsExactly("setting-does-not-fit");
        }
        Bench deep = box("spline front to left { deep 8.5 }");
        assertThat(deep.codes()).containsExactly("spline-too-deep");
        assertThat(deep.applied(deep.finding("spline-too-deep").remedies().getFirst()).codes()).isEmpty();
        Bench along = box("spline front to left { grain along }");
        assertThat(along.codes()).containsExactly("spline-along");
        assertThat(along.mended("spline-along").codes()).isEmpty();
        assertThat(box("spline front to left").with("length back; width up; at -12, 0, 0",
                "length back; width up; at -12, -12, 0").codes()).containsExactly("meets-wrongly");
    }

    /** M-15: a flat mitre opens whatever is in it; a key or a tongue only keeps it from coming apart. */
    @Test
    void aTongueDoesNotStopAMitreFromOpening() {
        String wide = frame("mitre low to side").text().replace("width 24", "width 70").replace("at 0, -24, 0",
                "at 0, -70, 0").replace("at -24, 0, 0", "at -70, 0, 0");
        Bench plain = Bench.of(wide);
        assertThat(plain.codes()).contains("mitre-opens");
        assertThat(plain.with("mitre low", "spline low").codes()).contains("mitre-opens");
    }
}

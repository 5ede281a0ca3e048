package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.finding.Severity;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A lid cut free of a closed box (common practice, no source). A closed box 96 high of which a kerf of 1 and twice 0.5 of
 * planing go leaves a lid of 28 and a box of 66; all figures are reckoned by hand.
 */
final class LidLineTest {
    private static String box(String corners, String line) {
        return """
                project "Candle box" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1800 x 130 x 20; rings quarter; moisture 9%% }
                part front { length 220; width 96; thickness 10; from plank
                  place { length right; width up; at 0, -10, 0 } }
                part back like front { place { at 0, 90, 0 } }
                part left { length 90; width 96; thickness 10; from plank
                  place { length back; width up; at -10, 0, 0 } }
                part right like left { place { at 220, 0, 0 } }
                part top { length 220; width 90; thickness 6; from plank
                  place { length right; width back; at 0, 0, 84 } }
                %s
                joint groove top into front, back, left, right { wide 5; deep 3; stop auto }
                joint lid_line top to front, right, back, left { %s }
                """.formatted(corners, line);
    }

    private static final String MITRES = "joint mitre front to left, left to back, back to right, right to front";
    private static final String TAILS = "joint dovetail left to front, left to back, right to front, right to back";
    private static final String FINGERS = "joint finger front to left, left to back, back to right, right to front";

    private static Solid solid(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow();
    }

    /** What a part has between two heights. */
    private static double between(Bench bench, String part, long low, long high) {
        Box all = Box.of(-1000, -1000, low, 1000, 1000, high);
        return solid(bench, part).pieces().stream()
                .flatMap(piece -> piece.intersect(Convex.box(all, Origin.cut("probe"))).stream())
                .mapToDouble(piece -> piece.volume().doubleValue())
                .sum();
    }

    @Test
    void lidAndBoxAreTwoBodiesAndTheWallsStayOnePart() {
        Bench made = Bench.of(box(MITRES, "tall 28; kerf 1; dress 0.5"));
        assertThat(made.codes()).isEmpty();
        assertThat(made.part("front").finished().width()).isEqualTo(Length.ofMm(96));
        for (String wall : List.of("front", "right", "back", "left")) {
            assertThat(between(made, wall, 66, 68)).isZero();
            assertThat(between(made, wall, 65, 66)).isPositive();
            assertThat(between(made, wall, 68, 69)).isPositive();
        }
        // A mitred front of 240 outside and 220 inside, 10 thick: 2300 a millimetre of height, 94 of 96 left. The groove of
        // 5 by 3 runs into the mitres, at its bottom 3 further on each side than at its mouth.
        double groove = 5 * 3 * (220 + 2 * 1.5);
        assertThat(solid(made, "front").volume().doubleValue())
                .isCloseTo(2300 * 94 - groove, within(0.01));
    }

    @Test
    void hingesAreLetIntoBothRimsOfTheWall() {
        Bench plain = Bench.of(box(MITRES, "tall 28; kerf 1; dress 0.5"));
        Bench hung = Bench.of(box(MITRES, "tall 28; kerf 1; dress 0.5") + "joint hinge top into back { long 30 }\n");
        // Two hinges of 30, half a knuckle of 3 in each rim, each leaf 7 on the wood: what 10 leave of 3.
        assertThat(between(plain, "back", 60, 66) - between(hung, "back", 60, 66)).isEqualTo(2 * 30 * 7 * 1.5);
        assertThat(between(plain, "back", 68, 74) - between(hung, "back", 68, 74)).isEqualTo(2 * 30 * 7 * 1.5);
        assertThat(solid(hung, "top").volume()).isEqualTo(solid(plain, "top").volume());
        Bench notched = Bench.of(box(MITRES, "tall 28") + "joint hinge top into back { grip notch }\n");
        assertThat(notched.codes()).containsExactly("setting-does-not-fit");
        assertThat(notched.applied(notched.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
    }

    @Test
    void theLineFallsWithinAPinAndLeavesTwoHalfPins() {
        Bench made = Bench.of(box(TAILS, "tall 28; kerf 1; dress 0.5"));
        assertThat(made.codes()).isEmpty();
        // Half-pins of 4 on both sides of the saw, so no tail from 62 to 72; at their ends they stand full.
        Box end = Box.of(-10, -10, 0, 0, -9, 96);
        assertThat(solid(made, "left").pieces().stream()
                .flatMap(piece -> piece.intersect(Convex.box(end, Origin.cut("probe"))).stream())
                .map(Convex::bounds)
                .filter(bounds -> Length.ofMm(bounds.extent(Axis.Y)).equals(Length.ofMm(1)))
                .filter(bounds -> Length.ofMm(bounds.min().z()).compareTo(Length.ofMm(72)) < 0
                        && Length.ofMm(bounds.max().z()).compareTo(Length.ofMm(62)) > 0)
                .filter(bounds -> Length.ofMm(bounds.min().x()).compareTo(Length.ofMm(0)) < 0))
                .allSatisfy(bounds -> assertThat(Length.ofMm(bounds.min().z()).compareTo(Length.ofMm(62)) < 0
                        || Length.ofMm(bounds.max().z()).compareTo(Length.ofMm(72)) > 0).isTrue());
        assertThat(between(made, "front", 66, 68)).isZero();
        Bench one = Bench.of(box(TAILS + " { tails 1 }", "tall 28"));
        assertThat(one.codes()).contains("setting-does-not-fit");
        assertThat(one.applied(one.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
    }

    @Test
    void fingersShareWhatIsLeftAndTheLineFallsWithinOne() {
        Bench made = Bench.of(box(FINGERS, "tall 28; kerf 1; dress 0.5"));
        assertThat(made.codes()).isEmpty();
        // 94 shared out; nine fingers of 10.44 put the line, 66 up, a third into the seventh.
        assertThat(made.joint("front", "left").figure("finger").orElseThrow().measure().value())
                .isEqualTo(Length.ofMm(94).dividedBy(9));
        Bench near = Bench.of(box(FINGERS + " { fingers 7 }", "tall 28; kerf 1; dress 0.5"));
        // 94 / 7 = 13.43, and five of them are 67.14: 1.14 of a finger below the saw.
        assertThat(near.codes()).contains("joint-too-fine");
        assertThat(near.finding("joint-too-fine").headline()).contains("sliver");
    }

    @Test
    void whatStandsInTheWayIsFound() {
        assertThat(Bench.of(box(MITRES, "tall 10")).codes()).contains("lid-line-cuts");
        // 3 of 4 mm below the groove, whose lower side lies 85 up.
        Bench near = Bench.of(box(MITRES, "tall 14; kerf 1; dress 0.5"));
        assertThat(near.codes()).containsExactlyInAnyOrder("lid-line-cuts", "lid-line-cuts", "lid-line-cuts",
                "lid-line-cuts");
        assertThat(near.finding("lid-line-cuts").severity()).isEqualTo(Severity.WARNING);
        assertThat(Bench.of(box(MITRES, "tall 15; kerf 1; dress 0.5")).codes()).isEmpty();
        Bench keys = Bench.of(box(MITRES + " { keys 1 }", "tall 48"));
        assertThat(keys.codes()).contains("lid-line-cuts");
        Bench nails = Bench.of(box("joint butt front to left, back to left, back to right, front to right\n"
                + "joint nail front into left, right { count 3; end 29 }", "tall 28; kerf 1; dress 0.5"));
        assertThat(nails.codes()).contains("lid-line-cuts");
    }

    @Test
    void aLineThatDoesNotGoRoundIsFound() {
        Bench three = Bench.of(box(MITRES, "tall 28").replace("front, right, back, left {", "front, right, back {"));
        assertThat(three.codes()).contains("setting-does-not-fit");
        Bench steps = Bench.of(box(MITRES, "tall 28").replace("part right like left { place",
                "part right like left { width 93; place"));
        assertThat(steps.codes()).contains("setting-does-not-fit");
        for (String line : List.of("tall 0", "tall 95", "tall 200", "kerf 0", "dress 50")) {
            Bench wrong = Bench.of(box(MITRES, line));
            assertThat(wrong.codes()).as(line).contains("setting-does-not-fit");
        }
        Bench face = Bench.of(box(MITRES, "tall 28").replace("lid_line top to front", "lid_line left to front"));
        assertThat(face.codes()).contains("meets-wrongly");
    }
}

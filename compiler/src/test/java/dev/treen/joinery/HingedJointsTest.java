package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Hinges let in. Noyes, Handwork in Wood, Hinging: half the knuckle in each part or all of it in one, its own length in from
 * each end; Fairham, Woodwork Joints: hinge-bound. Sizes of hinges are common practice, no source. Volumes are reckoned by
 * hand.
 */
final class HingedJointsTest {
    /** A lid of 240 on the back of a box. */
    private static Bench box(String hinge) {
        return Bench.of("""
                project "Tea box" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1200 x 180 x 20; rings quarter; moisture 9%% }
                part back { length 240; width 80; thickness 12; from plank
                  place { length right; width up; at 0, 140, 0 } }
                part lid { length 240; width 152; thickness 12; from plank
                  place { length right; width back; at 0, 0, 80 } }
                joint hinge lid into back { %s }
                """.formatted(hinge));
    }

    private static Bench door(String hinge) {
        return Bench.of("""
                project "Spice door" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1200 x 240 x 30; rings quarter; moisture 9%% }
                part side { length 420; width 150; thickness 20; from plank
                  place { length up; width back; at -20, 0, 0 } }
                part door { length 400; width 200; thickness 20; from plank
                  place { length up; width right; at 0, 0, 10 } }
                joint inset door into side { gap 1 }
                joint hinge door into side { %s }
                """.formatted(hinge));
    }

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    private static double figure(Bench bench, String name) {
        return bench.joined().joints().getLast().figure(name).orElseThrow().measure().value().toDoubleMm();
    }

    private static void nothingOverlaps(Bench bench) {
        List<Placed> placed = new ArrayList<>();
        bench.joined().parts().forEach(
                part -> placed.add(new Placed(part.part().name(), part.solid().orElseThrow())));
        assertThat(Overlap.among(placed)).isEmpty();
    }

    @Test
    void halfTheKnuckleIsLetIntoEach() {
        Bench made = box("long 50; wide 8; knuckle 5");
        assertThat(made.codes()).isEmpty();
        assertThat(figure(made, "deep")).isEqualTo(2.5);
        assertThat(volume(made, "lid")).isEqualTo(240 * 152 * 12 - 2 * 50 * 8 * 2.5);
        assertThat(volume(made, "back")).isEqualTo(240 * 80 * 12 - 2 * 50 * 8 * 2.5);
        // Its own length in: 240 less four times 50 are 40 between them, the worked example of our rules.
        assertThat(figure(made, "end")).isEqualTo(50);
        // 12 thick, 2.5 let in, 2 under the points: 7.5 are left, less than any usual screw.
        assertThat(figure(made, "screws")).isEqualTo(7.5);
        nothingOverlaps(made);
    }

    @Test
    void oneOfThemMayTakeItAll() {
        Bench made = box("long 50; wide 8; knuckle 5; only back");
        assertThat(made.codes()).isEmpty();
        assertThat(volume(made, "lid")).isEqualTo(240 * 152 * 12);
        assertThat(volume(made, "back")).isEqualTo(240 * 80 * 12 - 2 * 50 * 8 * 5);
    }

    @Test
    void thePinMayStandOut() {
        assertThat(volume(box("long 50; wide 8; knuckle 5; set 2"), "back"))
                .isEqualTo(240 * 80 * 12 - 2 * 50 * 6 * 2.5);
    }

    @Test
    void treenChoosesHingesThatFit() {
        Bench made = box("");
        assertThat(made.codes()).isEmpty();
        // A sixth of 240 is 40; a tenth of that is the knuckle; 12 less 3 leaves 9 for the leaf.
        assertThat(figure(made, "long")).isEqualTo(40);
        assertThat(figure(made, "knuckle")).isEqualTo(4);
        assertThat(figure(made, "wide")).isEqualTo(9);
        nothingOverlaps(made);
    }

    @Test
    void aDoorKeepsItsGap() {
        Bench made = door("long 50; wide 12; knuckle 5");
        assertThat(made.codes()).isEmpty();
        // The gap of 1 leaves 4 for both recesses.
        assertThat(figure(made, "deep")).isEqualTo(2);
        assertThat(volume(made, "door")).isEqualTo(400 * 199 * 20 - 2 * 50 * 12 * 2);
        assertThat(volume(made, "side")).isEqualTo(420 * 150 * 20 - 2 * 50 * 12 * 2);
        nothingOverlaps(made);
        // The recesses lie at the front.
        assertThat(made.part("side").solid().orElseThrow().bounds().orElseThrow().max().y().intValue()).isEqualTo(150);
        assertThat(door("long 50; wide 12; knuckle 5; pin back").codes()).contains("meets-wrongly");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            deep 3; knuckle 5      | hinge-binds
            deep 1; knuckle 5      | hinge-binds
            wide 10                | hinge-wide
            wide 12                | setting-does-not-fit
            wide 3; set 3          | setting-does-not-fit
            long 130               | setting-does-not-fit
            long 0                 | setting-does-not-fit
            count 0                | setting-does-not-fit
            screws 10              | fastener-leaves-wood
            screws 9               | fastener-nearly-through
            """)
    void whatIsWrongIsSaid(String setting, String code) {
        assertThat(box(setting).codes()).contains(code);
    }

    @Test
    void theFacesAreFlushWhereThePinLies() {
        assertThat(Bench.of(box("").text().replace("width 152", "width 160")).codes()).contains("meets-wrongly");
    }

    @Test
    void aLidThatLiesNowhereHasNoHinges() {
        assertThat(Bench.of(box("").text().replace("at 0, 0, 80", "at 0, 152, 80")).codes()).contains("meets-wrongly");
    }

    /** A lid is lifted by what stands out, 3 mm, or by a notch of 20 by 4 (common practice, no source). */
    @Test
    void aLidIsLiftedByItsEdgeANotchOrAKnob() {
        String front = """
                part front { length 240; width 80; thickness 12; from plank
                  place { length right; width up; at 0, %d, 0 } }
                """;
        assertThat(Bench.of(box("long 50").text() + front.formatted(0)).codes()).containsExactly("lid-hard-to-lift");
        assertThat(Bench.of(box("long 50").text() + front.formatted(2)).codes()).containsExactly("lid-hard-to-lift");
        assertThat(Bench.of(box("long 50").text() + front.formatted(3)).codes()).isEmpty();
        assertThat(Bench.of(box("grip knob").text() + front.formatted(0)).codes()).isEmpty();
        Bench notched = Bench.of(box("long 50; wide 8; knuckle 5; grip notch").text() + front.formatted(0));
        assertThat(notched.codes()).isEmpty();
        assertThat(volume(notched, "lid")).isEqualTo(240 * 152 * 12 - 2 * 50 * 8 * 2.5 - 20 * 4 * 6);
    }

    /** It used to be read as free on both sides, and nothing was said. */
    @Test
    void aDoorIsHingedByAnEdge() {
        Bench wrong = door("").with("gap 1", "gap 1; hinge front");
        assertThat(wrong.codes()).contains("setting-does-not-fit");
        assertThat(wrong.finding("setting-does-not-fit").headline())
                .isEqualTo("`door` has no edge on that side to be hinged by");
        assertThat(wrong.applied(wrong.finding("setting-does-not-fit").remedies().getFirst()).codes())
                .doesNotContain("setting-does-not-fit");
        assertThat(door("").with("gap 1", "gap 1; hinge left").codes()).doesNotContain("setting-does-not-fit");
    }

    /** What moves is not held: the lid may grow past its hinges. */
    @Test
    void hingesHoldNothingFast() {
        assertThat(box("").joined().joints().getFirst().holdsFast()).isFalse();
    }
}

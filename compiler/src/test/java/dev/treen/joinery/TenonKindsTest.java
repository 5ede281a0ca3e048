package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.finding.Remedy;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Round;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Kinds of mortise and tenon: wedged, pegged, twin, loose, and those of grooved frames. Noyes, Handwork in Wood, no. 42;
 * Fairham, Woodwork Joints; the rest common practice, no source. Volumes are reckoned by hand.
 */
final class TenonKindsTest {
    /** The area of a polygon of 24 sides in a circle of radius 1. */
    private static final double ROUND = Round.SIDES / 2.0 * Math.sin(Math.toRadians(360.0 / Round.SIDES));

    private static Bench frame(long wide, long thick, long up, String joint) {
        return Bench.of("""
                project "Frame" { units mm; climate { humidity 35%%..60%%; temperature 18degC..24degC } }
                board oak { species white_oak; size 3000 x 420 x 60; rings quarter; moisture 9%% }
                part stile { length 600; width 60; thickness %2$d; from oak
                  place { length up; width right; at -60, 0, 0 } }
                part rail { length 300; width %1$d; thickness %2$d; from oak
                  place { length right; width up; at 0, 0, %3$d } }
                joint mortise_tenon rail into stile { %4$s }
                """.formatted(wide, thick, up, joint));
    }

    /** A stile and a top rail round a panel, whose groove is 6 wide and 7 deep. */
    private static Bench grooved(long rail, long panelAt, String joint) {
        return Bench.of("""
                project "Door" { units mm; climate { humidity 35%%..60%%; temperature 18degC..24degC } }
                board oak { species white_oak; size 3000 x 420 x 30; rings quarter; moisture 9%% }
                part stile { length 600; width 60; thickness 20; from oak
                  place { length up; width right; at -60, 0, 0 } }
                part rail { length 300; width %1$d; thickness 20; from oak
                  place { length right; width up; at 0, 0, 600 - %1$d } }
                part panel { length 400; width 300; thickness 6; from oak
                  place { length up; width right; at 0, %2$d, 200 - %1$d } }
                joint mortise_tenon rail into stile { %3$s }
                joint groove panel into stile, rail { wide 6; deep 7 }
                """.formatted(rail, panelAt, joint));
    }

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    private static double figure(Bench bench, String name) {
        return bench.figure("rail", "stile", name).toDoubleMm();
    }

    private static void nothingOverlaps(Bench bench) {
        List<Placed> placed = new ArrayList<>();
        bench.joined().parts().forEach(
                part -> placed.add(new Placed(part.part().name(), part.solid().orElseThrow())));
        assertThat(Overlap.among(placed)).isEmpty();
    }

    @Test
    void wedgesSpreadTheTenonInAMortiseThatIsLongerOutside() {
        Bench made = frame(50, 24, 200, "kind through; wedges two");
        assertThat(made.codes()).isEmpty();
        // 60 long, a sixteenth of it is 3.75: 3.5 on a mark of the rule.
        assertThat(figure(made, "flare")).isEqualTo(3.5);
        assertThat(volume(made, "stile")).isEqualTo(600 * 60 * 24 - 60 * 44 * 8 - 2 * (60 * 3.5 / 2) * 8);
        assertThat(volume(made, "rail")).isEqualTo(300 * 50 * 24 + 60 * 44 * 8);
        nothingOverlaps(made);
    }

    @Test
    void aFigureIsOfferedAsTheWordThatIsWanted() {
        Bench wrong = frame(50, 24, 200, "kind through; wedges 2");
        assertThat(wrong.codes()).containsExactly("wrong-kind");
        assertThat(wrong.finding("wrong-kind").remedies()).extracting(Remedy::text).contains("write `two`");
        assertThat(wrong.mended("wrong-kind").codes()).isEmpty();
    }

    @Test
    void aDrawboredPegHasItsHoleInTheTenonNearerToTheShoulder() {
        Bench made = frame(50, 24, 200, "peg auto");
        assertThat(made.codes()).isEmpty();
        assertThat(figure(made, "peg")).isEqualTo(6);
        // Furniture: 1 to 1.5 mm for 6 to 8 mm (common practice, no source); Fairham's third would be 2 mm.
        assertThat(figure(made, "offset")).isEqualTo(1);
        assertThat(figure(made, "peg_from")).isEqualTo(12);
        double hole = ROUND * 9;
        assertThat(volume(made, "stile")).isCloseTo(600 * 60 * 24 - 43 * 44 * 8 - (24 - 8) * hole, within(0.01));
        assertThat(volume(made, "rail")).isCloseTo(300 * 50 * 24 + 40 * 44 * 8 - 8 * hole, within(0.01));
        nothingOverlaps(made);
    }

    @Test
    void thickWoodHasTwoTenonsSideBySide() {
        Bench made = frame(50, 50, 200, "");
        assertThat(made.codes()).isEmpty();
        // A fifth of 50 is 10: shoulder, tenon, room, tenon, shoulder.
        assertThat(volume(made, "rail")).isEqualTo(300 * 50 * 50 + 2 * 40 * 44 * 10);
        assertThat(volume(made, "stile")).isEqualTo(600 * 60 * 50 - 2 * 43 * 44 * 10);
        nothingOverlaps(made);
        Bench one = frame(50, 50, 200, "twin none");
        assertThat(volume(one, "rail")).isEqualTo(300 * 50 * 50 + 40 * 44 * 16);
        // 44 is more than 6 x 6 wide, so each is made as two of (44 - 6) / 2.
        assertThat(volume(frame(50, 30, 200, "twin two"), "rail")).isEqualTo(300 * 50 * 30 + 4 * 40 * 19 * 6);
    }

    @Test
    void aLooseTenonAddsNothingToTheRail() {
        Bench made = frame(50, 24, 200, "kind loose");
        assertThat(made.codes()).isEmpty();
        assertThat(made.part("rail").length().value().toDoubleMm()).isEqualTo(300);
        // 40 into each, and 1.5 behind it.
        assertThat(figure(made, "piece")).isEqualTo(80);
        assertThat(volume(made, "rail")).isEqualTo(300 * 50 * 24 - 41.5 * 44 * 8);
        assertThat(volume(made, "stile")).isEqualTo(600 * 60 * 24 - 41.5 * 44 * 8);
        nothingOverlaps(made);
        Bench left = Bench.of(made.text().replace("at -60, 0, 0", "at 300, 0, 0"));
        assertThat(volume(left, "rail")).isEqualTo(300 * 50 * 24 - 41.5 * 44 * 8);
    }

    /** Noyes no. 42: at the corner half the rail less the groove; the worked example of our rules: 60 / 2 - 7 = 23. */
    @Test
    void inAGroovedFrameTheTenonIsHalfTheRailLessTheGroove() {
        Bench made = grooved(60, 7, "");
        assertThat(made.codes()).isEmpty();
        assertThat(figure(made, "glued")).isEqualTo(23);
        assertThat(figure(made, "thick")).isEqualTo(6);
        assertThat(figure(made, "haunch")).isEqualTo(7);
        // Tenon 40 x 23 x 6, haunch 7 x 30 x 6, less the groove along the rail's edge, which the tenon stays clear of.
        assertThat(volume(made, "rail")).isEqualTo(300 * 60 * 20 + 40 * 23 * 6 + 7 * 30 * 6 - 300 * 7 * 6);
        nothingOverlaps(made);
    }

    @ParameterizedTest
    @ValueSource(longs = {6, 7, 8})
    void aStubStandsInTheGrooveWhereverThatLies(long panelAt) {
        Bench made = grooved(60, panelAt, "kind stub");
        assertThat(made.codes()).isEmpty();
        assertThat(made.part("rail").length().value().toDoubleMm()).isEqualTo(307);
        // As thick as the groove and as long as it is deep, over the whole width but for the groove of the rail itself.
        assertThat(volume(made, "rail")).isEqualTo(300 * 60 * 20 + 7 * 60 * 6 - 307 * 7 * 6);
        assertThat(volume(made, "stile")).isEqualTo(600 * 60 * 20 - 600 * 7 * 6);
        nothingOverlaps(made);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            wedges two                             | setting-does-not-fit
            kind through; wedges two; shoulder 18  | setting-does-not-fit
            peg 6; offset 2.5                      | tenon-proportions
            peg 6; peg_from 33                     | tenon-proportions
            peg 6; peg_from 5                      | tenon-proportions
            kind loose; long 61                    | setting-does-not-fit
            twin two; thick 9                      | setting-does-not-fit
            """)
    void whatIsWrongIsSaid(String setting, String code) {
        assertThat(frame(50, 24, 200, setting).codes()).contains(code);
    }

    @Test
    void mortisesInBothEndsOfAShortRailMeet() {
        assertThat(Bench.of(frame(50, 24, 200, "kind loose").text().replace("length 300", "length 80")).codes())
                .contains("setting-does-not-fit");
    }

    @Test
    void wedgesNearAnEndOrAcrossTheGrainSplit() {
        assertThat(frame(50, 24, 0, "kind through; wedges two; shoulder 3").codes()).contains("wedge-splits");
        assertThat(Bench.of("""
                project "Frame" { units mm; climate { humidity 35%..60%; temperature 18degC..24degC } }
                board oak { species white_oak; size 3000 x 420 x 60; rings quarter; moisture 9% }
                part stile { length 600; width 60; thickness 40; from oak
                  place { length up; width right; at -60, 0, 0 } }
                part rail { length 300; width 36; thickness 20; from oak
                  place { length right; width back; at 0, 2, 200 } }
                joint mortise_tenon rail into stile { kind through; wedges two }
                """).codes()).contains("wedge-splits");
    }

    @Test
    void theWorkNamesPegsWedgesAndLoosePieces() {
        assertThat(actions(frame(50, 24, 200, "peg auto"))).anyMatch(a -> a.startsWith("Drive the pegs"));
        assertThat(actions(frame(50, 24, 200, "kind through; wedges two"))).anyMatch(a -> a.contains("wedges"));
        assertThat(actions(frame(50, 24, 200, "kind loose"))).noneMatch(a -> a.startsWith("Saw the tenons"))
                .anyMatch(a -> a.contains("loose tenons"));
    }

    private static List<String> actions(Bench bench) {
        return bench.joined().joints().getFirst().works().stream().map(Work::action).toList();
    }
}

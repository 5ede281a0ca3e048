package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Round;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Dowelled joints of an invented jar carrier. Outside values: half the wood and 3/4 in from the end (WOOD magazine, dowel
 * tips), 230 to 255 mm apart along an edge and 7/8 to 1 1/4 in long (Fairham, Woodwork Joints), 3 mm shorter than both
 * holes (How To, Dowelling); volumes against the formula of a regular polygon.
 */
class DowelTest {
    private static final String HEAD = """
            project "Jar carrier" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board plank { species white_ash; size 1800 x 180 x 27; rings rift; moisture 9% }
            """;

    private static Bench rail(String joint) {
        return Bench.of(HEAD + """
                part rail { length 200; width 50; thickness 18; from plank; place { length right; width up; at 0, 0, 0 } }
                part post { length 300; width 40; thickness 18; from plank; place { length up; width right; at -40, 0, -100 } }
                joint dowel rail to post %s
                """.formatted(joint));
    }

    private static Bench edges(int length, String joint) {
        return Bench.of(HEAD + """
                part one { length %s; width 100; thickness 20; from plank; place { length right; width back; at 0, 0, 0 } }
                part two like one { place { at 0, 100, 0 } }
                joint dowel one to two %s
                """.formatted(length, joint));
    }

    private static double volume(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow().volume().doubleValue();
    }

    /** The area of a regular polygon of so many sides within a circle. */
    private static double polygon(double radius) {
        return Round.SIDES / 2.0 * radius * radius * Math.sin(2 * Math.PI / Round.SIDES);
    }

    @Test
    void aRailHasTwoDowelsOfHalfItsWoodAtTheMost() {
        Bench bench = rail("");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("rail", "post", "thick")).isEqualTo(mm(8));
        assertThat(bench.figure("rail", "post", "deep")).isEqualTo(mm(16.5));
        assertThat(bench.figure("rail", "post", "deep_left")).isEqualTo(mm(16.5));
        assertThat(bench.figure("rail", "post", "long")).isEqualTo(mm(30));
        assertThat(bench.figure("rail", "post", "apart")).isEqualTo(mm(25));
        assertThat(bench.part("rail").length().value()).isEqualTo(mm(200));
        double hole = polygon(4) * 16.5;
        assertThat(volume(bench, "rail")).isCloseTo(200 * 50 * 18 - 2 * hole, within(1e-3));
        assertThat(volume(bench, "post")).isCloseTo(300 * 40 * 18 - 2 * hole, within(1e-3));
        assertThat(Overlap.among(List.of(
                new Placed("rail", bench.part("rail").solid().orElseThrow()),
                new Placed("post", bench.part("post").solid().orElseThrow())))).isEmpty();
    }

    /** Fairham: 230 to 255 mm apart along an edge; WOOD magazine: the first 19 mm from the end. */
    @Test
    void alongAnEdgeTheyStandWide() {
        Bench bench = edges(1000, "");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("one", "two", "margin")).isEqualTo(mm(19.05));
        assertThat(bench.figure("one", "two", "apart").toDoubleMm()).isBetween(190.0, 255.0);
        assertThat(edges(1000, "{ every 100 }").figure("one", "two", "apart").toDoubleMm()).isBetween(90.0, 100.0);
        assertThat(edges(1000, "{ count 3 }").figure("one", "two", "apart").toDoubleMm())
                .isCloseTo((1000 - 38.1) / 2, within(1e-9));
    }

    /** A box corner: the part that runs through is as long as its mate is thick beyond it. */
    @Test
    void atACornerOnePartRunsThrough() {
        String walls = HEAD + """
                part side { length 200; width 80; thickness 15; from plank; place { length right; width up; at 0, -15, 0 } }
                part end  { length 100; width 80; thickness 18; from plank; place { length back; width up; at -18, 0, 0 } }
                joint dowel side to end SETTINGS
                """;
        Bench bench = Bench.of(walls.replace("SETTINGS", ""));
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("side").length().value()).isEqualTo(mm(218));
        assertThat(bench.part("end").length().value()).isEqualTo(mm(100));
        // Two thirds of 15 into the side, half a dowel and its room into the end grain of the other.
        assertThat(bench.figure("side", "end", "deep_left")).isEqualTo(mm(10));
        assertThat(bench.figure("side", "end", "deep")).isEqualTo(mm(16.5));
        assertThat(bench.figure("side", "end", "long")).isEqualTo(mm(23.5));
        double area = polygon(bench.figure("side", "end", "thick").toDoubleMm() / 2);
        assertThat(volume(bench, "side")).isCloseTo(218 * 80 * 15 - 2 * area * 10, within(1e-3));
        assertThat(volume(bench, "end")).isCloseTo(100 * 80 * 18 - 2 * area * 16.5, within(1e-3));
        Bench other = Bench.of(walls.replace("SETTINGS", "{ through end }"));
        assertThat(other.part("end").length().value()).isEqualTo(mm(115));
        assertThat(other.part("side").length().value()).isEqualTo(mm(200));
    }

    @Test
    void aGivenLengthIsSharedOutBetweenTheHoles() {
        Bench bench = rail("{ long 40; deep 18 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("rail", "post", "deep_left")).isEqualTo(mm(25));
    }

    @Test
    void dowelsThatCannotBeBoredAreTold() {
        for (String joint : List.of("{ count 0 }", "{ count 2.5 }", "{ count 40 }", "{ thick 18 }", "{ thick 0 }",
                "{ deep 40 }", "{ deep 300 }", "{ long 2; deep 10 }", "{ every 0 }")) {
            assertThat(rail(joint).codes()).as(joint).containsExactly("setting-does-not-fit");
        }
        Bench through = rail("{ deep 40 }");
        assertThat(through.applied(through.finding("setting-does-not-fit").remedies().getFirst()).codes()).isEmpty();
        assertThat(rail("").with("at 0, 0, 0", "at 0, 18, 0").codes()).containsExactly("meets-wrongly");
    }

    @Test
    void dowelsOutOfProportionAreTold() {
        for (String joint : List.of("{ thick 12 }", "{ count 1 }", "{ deep 38 }")) {
            Bench bench = rail(joint);
            assertThat(bench.codes()).as(joint).containsExactly("dowel-proportions");
            assertThat(bench.applied(bench.finding("dowel-proportions").remedies().getFirst()).codes()).isEmpty();
        }
    }

    /** The drawings find a round hole by its faces. */
    @Test
    void theHolesAreRound() {
        long round = rail("").part("rail").solid().orElseThrow().surface().faces().stream()
                .filter(face -> face.origin().round())
                .count();
        assertThat(round).isEqualTo(2L * Round.SIDES);
    }
}

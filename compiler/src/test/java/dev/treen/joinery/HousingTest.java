package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.finding.Finding;
import dev.treen.solid.Motion;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Shelves in the housings of an invented rack, whole and rebated. Outside values: a quarter of the thickness deep (Port
 * Townsend School of Woodworking); volumes against closed formulae; half the thickness for a tongue is common practice, no
 * source.
 */
class HousingTest {
    private static Bench shelf(String settings) {
        return at(180, settings);
    }

    private static Bench at(int up, String settings) {
        return Bench.of("""
                project "Rack" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1200 x 140 x 22; rings quarter; moisture 9%% }
                part side { length 400; width 120; thickness 18; from plank
                  place { length up; width back; at -18, 0, 0 } }
                part shelf { length 500; width 120; thickness 16; from plank
                  place { length right; width back; at 0, 0, %d } }
                joint housing shelf into side %s
                """.formatted(up, settings));
    }

    private static Solid solid(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow();
    }

    /** What the side loses and the shelf keeps: so wide and long, 4.5 deep. */
    private static void holds(Bench bench, int wide, int run) {
        assertThat(bench.codes()).isEmpty();
        BigFraction tongue = BigFraction.of(9 * wide * run, 2);
        assertThat(solid(bench, "side").volume()).isEqualTo(BigFraction.of(400 * 120 * 18).subtract(tongue));
        assertThat(solid(bench, "shelf").volume()).isEqualTo(BigFraction.of(500 * 120 * 16).add(tongue));
        assertThat(bench.part("shelf").length().value()).isEqualTo(mm(504.5));
        assertThat(Overlap.among(List.of(
                new Placed("side", solid(bench, "side")), new Placed("shelf", solid(bench, "shelf"))))).isEmpty();
    }

    @Test
    void theWholeEndGoesInOrATongueOfIt() {
        holds(shelf(""), 16, 120);
        holds(shelf("{ stop 10 from front }"), 16, 110);
        holds(shelf("{ stop auto }"), 16, 110);
        holds(shelf("{ shoulder auto }"), 8, 120);
        holds(shelf("{ shoulder 6 from down }"), 10, 120);
        holds(shelf("{ shoulder 0 }"), 16, 120);
        holds(shelf("{ shoulder auto; stop 10 from front }"), 8, 110);
        assertThat(shelf("{ shoulder 6 }").figure("shelf", "side", "tongue")).isEqualTo(mm(10));
    }

    /** The shoulder is above, and at a corner outside: there it leaves wood before the trench. */
    @Test
    void theShoulderLiesWhereItServes() {
        assertThat(trench(shelf("{ shoulder 6 }"))).containsExactly(180, 190);
        assertThat(trench(at(384, "{ shoulder 6 }"))).containsExactly(384, 394);
        assertThat(trench(at(0, "{ shoulder 6 }"))).containsExactly(6, 16);
        assertThat(trench(at(0, "{ shoulder 6 from top }"))).containsExactly(0, 10);
    }

    /** From where to where in height the side is cut. */
    private static List<Integer> trench(Bench bench) {
        return solid(bench, "side").surface().madeBy("housing shelf into side")
                .flatMap(face -> face.region().extent().stream())
                .flatMap(box -> List.of(box.min().z(), box.max().z()).stream())
                .map(BigFraction::intValue)
                .distinct()
                .sorted()
                .toList();
    }

    @Test
    void aStoppedTongueGoesStraightInAndNoFurther() {
        Bench bench = shelf("{ shoulder auto; stop 10 from front }");
        List<Solid> side = List.of(solid(bench, "side"));
        for (Side way : Side.values()) {
            assertThat(Motion.canMove(solid(bench, "shelf"), side, way, BigFraction.of(3)))
                    .as(way.name())
                    .isEqualTo(way == Side.RIGHT || way == Side.BACK);
        }
    }

    @Test
    void whatCannotBeIsToldWithWhatWouldWork() {
        for (String settings : List.of("{ shoulder 16 }", "{ shoulder 20 }",
                "{ shoulder 6 from front }")) {
            Bench bench = shelf(settings);
            assertThat(bench.codes()).as(settings).containsExactly("setting-does-not-fit");
            Finding finding = bench.finding("setting-does-not-fit");
            assertThat(bench.applied(finding.remedies().getFirst()).codes()).as(settings).isEmpty();
        }
        assertThat(shelf("{ stop 0 from front }").codes()).containsExactly("setting-does-not-fit");
        assertThat(shelf("{ stop 200 from front }").codes()).contains("setting-does-not-fit");
        Bench thin = shelf("{ shoulder 13 }");
        assertThat(thin.codes()).containsExactly("joint-too-fine");
        assertThat(thin.applied(thin.finding("joint-too-fine").remedies().getFirst()).codes()).isEmpty();
    }
}

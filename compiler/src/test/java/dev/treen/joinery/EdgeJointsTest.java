package dev.treen.joinery;

import static dev.treen.check.Bench.mm;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.check.Bench;
import dev.treen.solid.Overlap;
import dev.treen.solid.Placed;
import dev.treen.solid.Solid;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/**
 * Boards edge to edge in an invented crockery shelf. Outside values: a third for the tongue and half the thickness for its
 * length (Fairham, Woodwork Joints); the room a board needs by rule M-20 (0.76 mm for 90 mm of pine from 8 to 12 %, plus
 * 0.2); volumes against closed formulae.
 */
class EdgeJointsTest {
    private static Bench boards(String settings, String one, String joint) {
        return Bench.of("""
                project "Crockery back" { units mm; climate { humidity %s; temperature 20degC..20degC } }
                board pine  { species eastern_white_pine; size 1600 x 140 x 20; rings flat; moisture 8%% }
                board maple { species sugar_maple; size 1600 x 140 x 20; rings quarter; moisture 8%% }
                part one { length 700; %s; from pine; place { length up; width right; at 0, 0, 0 } }
                part two { length 700; width 80; thickness 12; from pine; place { length up; width right; at 90, 0, 0 } }
                joint %s
                """.formatted(settings, one, joint));
    }

    private static Bench boards(String joint) {
        return boards("40%..65%", "width 90; thickness 12", joint);
    }

    private static Solid solid(Bench bench, String part) {
        return bench.part(part).solid().orElseThrow();
    }

    private static void noSpaceIsShared(Bench bench) {
        assertThat(Overlap.among(List.of(
                new Placed("one", solid(bench, "one")), new Placed("two", solid(bench, "two"))))).isEmpty();
    }

    @Test
    void aTongueIsAThirdThickAndLeavesRoom() {
        Bench bench = boards("tongue_groove one into two");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.figure("one", "two", "thick")).isEqualTo(mm(4));
        assertThat(bench.figure("one", "two", "deep")).isEqualTo(mm(6));
        // M-20: 90 x 0.00212 a percent (Wood Handbook, table 13-5) to the wettest, and 0.2.
        double wettest = Nature.of(bench.part("one").part(), bench.joined().project().settings()).seasons().wettest();
        double grows = 90 * 0.00212 * (wettest - 8);
        assertThat(grows).isBetween(0.5, 1.0);
        double gap = bench.figure("one", "two", "gap").toDoubleMm();
        assertThat(gap).isBetween(grows + 0.2 - 1e-9, grows + 0.211);
        assertThat(bench.part("one").width().value().toDoubleMm()).isCloseTo(96 - gap, org.assertj.core.api.Assertions
                .within(1e-9));
    }

    @Test
    void volumesAreAsWorked() {
        Bench bench = boards("tongue_groove one into two { thick 4; deep 6; gap 1 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("one").width().value()).isEqualTo(mm(95));
        assertThat(bench.figure("one", "two", "tongue")).isEqualTo(mm(6));
        // The body is drawn back by the gap; the tongue is 6 long from there.
        assertThat(solid(bench, "one").volume()).isEqualTo(BigFraction.of(700 * (89 * 12 + 6 * 4)));
        assertThat(solid(bench, "two").volume()).isEqualTo(BigFraction.of(700 * (80 * 12 - 6 * 4)));
        noSpaceIsShared(bench);
    }

    @Test
    void gluedBoardsHaveNoRoomAndNeedNone() {
        Bench bench = boards("tongue_groove one into two { gap 0 }");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("one").width().value()).isEqualTo(mm(96));
    }

    @Test
    void boardsWithoutRoomAreTold() {
        Bench tight = boards("tongue_groove one into two { gap 0.1 }");
        assertThat(tight.codes()).containsExactly("back-buckles");
        assertThat(tight.mended("back-buckles").codes()).isEmpty();
        assertThat(boards("tongue_groove one into two { deep 2 }").codes()).containsExactly("back-buckles");
    }

    @Test
    void tonguesThatCannotBeAreTold() {
        for (String joint : List.of("thick 0", "deep 0", "thick 12", "deep 80", "gap 6", "gap 9")) {
            assertThat(boards("tongue_groove one into two { " + joint + " }").codes()).as(joint)
                    .containsExactly("setting-does-not-fit");
        }
        Bench fat = boards("tongue_groove one into two { thick 9 }");
        assertThat(fat.codes()).containsExactly("tenon-proportions");
        assertThat(fat.applied(fat.finding("tenon-proportions").remedies().getFirst()).codes()).isEmpty();
        assertThat(boards("tongue_groove one into two").with("width right; at 90, 0, 0", "width back; at 90, 0, 0")
                .codes()).containsExactly("meets-wrongly");
    }

    @Test
    void stavesKeepTheirSizes() {
        Bench bench = boards("edge one to two");
        assertThat(bench.codes()).isEmpty();
        assertThat(bench.part("one").width().value()).isEqualTo(mm(90));
        assertThat(solid(bench, "one").volume()).isEqualTo(BigFraction.of(700 * 90 * 12));
        // 700 by 12 of glue.
        assertThat(bench.joint("one", "two").works().getLast().action()).contains("84 cm²");
        assertThat(bench.joint("one", "two").works().getFirst().action()).contains("by turns");
        Bench alike = boards("edge one to two { rings alike }");
        assertThat(alike.joint("one", "two").works().getFirst().action()).contains("all one way");
    }

    @Test
    void endsAndCrossedBoardsAreNoEdgeJoint() {
        Bench ends = boards("edge one to two").with("at 90, 0, 0", "at 0, 0, 700");
        assertThat(ends.codes()).containsExactly("meets-wrongly");
        assertThat(ends.finding("meets-wrongly").because()).contains("End grain");
        assertThat(boards("edge one to two").with("length up; width right; at 90, 0, 0",
                "length right; width up; at 90, 0, 0").codes()).containsExactly("meets-wrongly");
    }

    /** M-03: quartered maple moves by 0.00353 in its thickness, flat pine by 0.00071 (Wood Handbook, table 13-5). */
    @Test
    void stavesOfUnlikeWoodComeToStep() {
        Bench pine = boards("20%..80%", "width 90; thickness 12", "edge one to two").with("thickness 12",
                "thickness 18");
        assertThat(pine.codes()).doesNotContain("staves-step");
        Bench mixed = pine.with("thickness 18; from pine; place { length up; width right; at 90",
                "thickness 18; from maple; place { length up; width right; at 90");
        assertThat(mixed.codes()).contains("staves-step");
    }
}

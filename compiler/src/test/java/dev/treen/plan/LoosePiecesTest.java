package dev.treen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.joinery.LoosePiece;
import dev.treen.order.Phase;
import dev.treen.page.ShoppingCsv;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The small pieces that joints take stand in the cut list, are made before any glue, and ask for no room on a board. Outside
 * values: a tongue is 1 mm narrower than both grooves are deep (WE-162); its grain runs across the joint (Fairham, Woodwork
 * Joints: the cross tongue is the stronger).
 */
class LoosePiecesTest {
    private static List<String> rows(String joint) {
        return CutList.of(Projects.joint(joint).plan()).loose().stream().map(LoosePiecesTest::text).toList();
    }

    private static String text(CutList.Loose row) {
        Size size = row.piece().size();
        return row.mark() + " " + row.piece().count() + " " + row.piece().kind().name().toLowerCase(Locale.ROOT) + " "
                + mm(size.length()) + " x " + mm(size.width()) + " x " + mm(size.thickness()) + " " + row.source();
    }

    private static String mm(Length length) {
        return String.valueOf(length.toDoubleMm()).replace(".0", "");
    }

    /** Walls of 70 stopped by 10 at both ends, grooves 4 deep; a lid of 200 with grooves 6 deep. */
    @Test
    void tonguesRunAcrossTheJoint() {
        assertThat(rows("spline")).containsExactly(
                "D 4 tongue 7 x 50 x 4 an offcut of plank", "E 1 tongue 11 x 200 x 3 an offcut of plank");
    }

    /** Two in each of two corners: the slot is half as deep as it is wide at its mouth, for the corner is square. */
    @Test
    void keysAreAsWideAsTheirSlots() {
        assertThat(rows("mitre")).containsExactly("C 4 key 13 x 6.5 x 3 an offcut of plank");
    }

    @Test
    void tenonsPegsAndWedgesAreCountedOverAllJoints() {
        assertThat(rows("mortise_tenon")).containsExactly(
                "F 4 peg 48 x 6 x 6 an offcut of plank",
                "G 4 wedge 44 x 8 x 3.5 an offcut of plank",
                "H 2 tenon 58 x 34 x 8 an offcut of plank");
    }

    @Test
    void dowelsAreBoughtOrCutFromARod() {
        assertThat(rows("dowel")).containsExactly(
                "E 6 dowel 24 x 8 x 8 bought, or a rod",
                "F 4 dowel 26.5 x 8 x 8 bought, or a rod",
                "G 3 dowel 24 x 6 x 6 bought, or a rod");
        // Six of 24 with a saw cut of 2 each are 156 mm.
        assertThat(ShoppingCsv.of(Projects.joint("dowel").plan()))
                .contains("\"dowels, 8 x 24 mm\",6,").contains("160 mm of rod");
    }

    /** Three joints of two statements that ask for one piece share a row. */
    @Test
    void alikePiecesOfSeveralJointsShareARow() {
        Plan plan = Projects.compile("""
                project "Lids" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1500 x 140 x 16; rings rift; moisture 9% }
                sheet ply { species plywood; size 600 x 600 x 12 }
                part a { length 200; width 80; thickness 12; from plank; place { length right; width back; at 0, 0, 0 } }
                part b like a { place { at 0, 80, 0 } }
                part c like a { place { at 0, 160, 0 } }
                part d like a { from ply; place { at 0, 240, 0 } }
                joint spline a to b { thick 3; deep 6 }
                joint spline d to c { thick 3; deep 6 }
                joint spline b to c { thick 3; deep 6; grain along }
                """).plan();
        List<CutList.Loose> rows = CutList.of(plan).loose();
        assertThat(rows).extracting(LoosePiecesTest::text).containsExactly(
                "C 2 tongue 11 x 200 x 3 an offcut of plank", "D 1 tongue 200 x 11 x 3 an offcut of plank");
        assertThat(rows.getFirst().parts()).containsExactly("a", "b", "d", "c");
    }

    /** Each kind has a step of its own, after its grooves are cut and before glue. */
    @Test
    void theyAreMadeBeforeTheGlue() {
        for (String joint : List.of("spline", "mitre", "mortise_tenon")) {
            Plan plan = Projects.joint(joint).plan();
            for (LoosePiece.Kind kind : CutList.of(plan).loose().stream().map(row -> row.piece().kind()).toList()) {
                assertThat(plan.order().steps())
                        .as(joint + " " + kind)
                        .anySatisfy(step -> {
                            assertThat(step.operation().action()).startsWith("Make the " + kind.word(2));
                            assertThat(step.operation().phase()).isEqualTo(Phase.JOINTS);
                        });
            }
        }
    }

    @Test
    void theTableForSpreadsheetsHasThemToo() {
        String csv = CutListCsv.of(Projects.joint("mortise_tenon").plan());
        assertThat(csv)
                .contains(
                        "F,pegs,4,48,6,6,,,,white ash,plank,length,,\"round; an offcut of plank; for top_rail, leg_left,"
                                + " leg_right\"");
        assertThat(PlanText.of(Projects.joint("mortise_tenon").plan())).contains("Small pieces for the joints");
    }
}

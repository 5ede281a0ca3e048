package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.Length;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutterTest {
    private static final String BARE = "kerf 0; shooting 0; planing 0; resaw 0; end_waste 0";

    private static Cutting cut(String allow, String rest) {
        Compilation compilation = Projects.of(allow, rest);
        assertThat(compilation.checked().findings()).isEmpty();
        return compilation.cutting();
    }

    private static Finding only(Cutting cutting) {
        assertThat(cutting.findings()).hasSize(1);
        return cutting.findings().getFirst();
    }

    private static String plank(String size, String more) {
        return "board plank { species black_cherry; size " + size + "; rings flat; moisture 9%; " + more + " }\n";
    }

    /** Common practice, no source: the sum of parts, shooting, kerfs and ends (rules of the trade A-05), by hand 588.4. */
    @ParameterizedTest
    @CsvSource({"588.4, 4", "588.3, 3"})
    void takesAlongABoardWhatPartsKerfsAndEndsTake(String length, int placed) {
        Cutting cutting = cut("kerf 0.8; shooting 0.5; planing 0; resaw 1; end_waste 15",
                plank(length + " x 90 x 9", "")
                        + "part a { length 178; width 90; thickness 9; from plank }\n"
                        + "part b like a { length 98 }\npart c like a { length 98 }\npart d like a\n");
        assertThat(cutting.boards()).hasSize(1);
        assertThat(cutting.boards().getFirst().parts()).hasSize(placed);
        assertThat(cutting.unplaced()).hasSize(4 - placed);
    }

    /** Common practice, no source (rules of the trade A-04): 27 rough, 1.0 a face and a resawn face, kerf 1.2: 10.9. */
    @Test
    void resawsAThickBoardIntoAsManyLeavesAsStillGiveTheParts() {
        Cutting cutting = cut("kerf 1.2; shooting 0; planing 1; resaw 1; end_waste 0",
                plank("400 x 100 x 27", "") + "part a { length 300; width 90; thickness 9; from plank }\n");
        BoardCut leaf = cutting.boards().getFirst();
        assertThat(leaf.leaves()).isEqualTo(2);
        assertThat(leaf.thickness()).isEqualTo(Length.ofMm(BigFraction.of(109, 10)));
        assertThat(cutting.untouched()).containsExactly("plank leaf 2");
    }

    @Test
    void resawsNoThinnerThanTheThickestPart() {
        Cutting cutting = cut("kerf 1.2; shooting 0; planing 1; resaw 1; end_waste 0", plank("800 x 100 x 27", "")
                + "part a { length 300; width 90; thickness 9; from plank }\n"
                + "part b { length 300; width 90; thickness 11; from plank }\n");
        assertThat(cutting.boards()).extracting(BoardCut::leaves).containsExactly(1);
        assertThat(cutting.unplaced()).isEmpty();
    }

    /** Common practice, no source (rules of the trade A-04). */
    @Test
    void warnsOfAWideResawByHand() {
        Compilation compilation = Projects.of(BARE, plank("400 x 160 x 27", "")
                + "part a { length 300; width 90; thickness 9; from plank }\n");
        assertThat(Projects.codes(compilation.findings())).containsExactly("resaw-wide");
    }

    @Test
    void aFlawGoesThroughAllLeaves() {
        Cutting cutting = cut(BARE, plank("400 x 100 x 20", "knot { at 200, 50; radius 5 }")
                + "part a { length 300; width 90; thickness 9; from plank }\n");
        assertThat(cutting.boards()).isEmpty();
        Finding finding = only(cutting);
        assertThat(finding.code()).isEqualTo("part-fits-no-board");
        // The longer side of the knot leaves 195 mm, the broader edge beside it 45 mm.
        assertThat(finding.found()).contains("a knot stands in the way", "105 mm shorter", "45 mm narrower");
        assertThat(finding.related().getFirst().at().text()).startsWith("knot");
    }

    @Test
    void saysHowMuchTooLargeAPartIsForTheNearestBoard() {
        Cutting cutting = cut(BARE, plank("400 x 100 x 9", "")
                + "part a { length 410; width 120; thickness 9 }\n");
        assertThat(only(cutting).found()).contains("`plank`", "10 mm too long and 20 mm too wide");
        assertThat(only(cutting).numbers()).containsEntry("tooLong", 10.0).containsEntry("tooWide", 20.0);
    }

    @Test
    void saysThatPartsWhichFitAloneDoNotFitTogether() {
        Cutting cutting = cut(BARE, plank("400 x 100 x 9", "")
                + "part a { length 300; width 80; thickness 9 }\npart b like a\n");
        assertThat(cutting.unplaced()).hasSize(1);
        assertThat(only(cutting).found()).startsWith("It fits alone").contains("one more board like `plank`");
    }

    @Test
    void takesAPartOnlyFromTheBoardThatItNames() {
        String other = "board short { species black_cherry; size 200 x 100 x 9; rings flat; moisture 9% }\n";
        Cutting cutting = cut(BARE, other + plank("400 x 100 x 9", "")
                + "part a { length 150; width 80; thickness 9; from plank }\n");
        assertThat(cutting.boards()).extracting(each -> each.board().name()).containsExactly("plank");
    }

    @Test
    void usesASheetAsItIs() {
        String sheet = "sheet ply { size 600 x 300 x 6 }\n";
        assertThat(cut(BARE, sheet + "part a { length 200; width 200; thickness 6; from ply }\n").boards()).hasSize(1);
        Cutting cutting = cut(BARE, sheet + "part a { length 200; width 200; thickness 5; from ply }\n");
        assertThat(only(cutting).found()).contains("`ply` is 6 mm and is used as it is", "1 mm too much");
    }

    @Test
    void aSheetIsNotPlaned() {
        Compilation compilation = Projects.of("kerf 1; shooting 1; planing 1; resaw 1; end_waste 0",
                "sheet ply { size 600 x 300 x 6 }\npart a { length 200; width 200; thickness 6; from ply }\n");
        assertThat(compilation.joined().parts().getFirst().roughThickness().value()).isEqualTo(Length.ofMm(6));
    }

    @Test
    void whatABoardGivesUpAtItsEndsIsItsOwn() {
        String ends = "allow { end_waste 60 }";
        String parts = """
                part a { length 300; width 80; thickness 9; from plank }
                board clear { species black_cherry; size 400 x 100 x 9; rings flat; moisture 9% }
                part b { length 390; width 80; thickness 9; from clear }
                """;
        assertThat(cut(BARE, plank("420 x 100 x 9", ends) + parts).unplaced()).isEmpty();
        assertThat(Projects.of(BARE, plank("419 x 100 x 9", ends) + parts).cutting().unplaced())
                .containsExactly("a");
    }

    @Test
    void aProjectWithoutBoardsHasNoLayoutAndSaysSo() {
        Cutting cutting = cut(BARE, "part a { length 200; width 200; thickness 6 }\n");
        assertThat(cutting.boards()).isEmpty();
        assertThat(only(cutting).code()).isEqualTo("no-boards");
    }

    /** Rules of the trade Y-06: where the wood goes adds up to the boards. */
    @Test
    void areasAddUp() {
        Areas areas = Projects.example("tea-caddy").cutting().areas();
        double all = areas.finished() + areas.allowances() + areas.kerf() + areas.offcuts() + areas.waste();
        assertThat(all).isCloseTo(areas.boards(), org.assertj.core.api.Assertions.within(1e-6));
        assertThat(areas.boards()).isEqualTo(2 * 900.0 * 140.0);
    }

    @Test
    void theSameComesOutEveryTime() {
        Cutting first = Projects.example("tea-caddy").cutting();
        Cutting second = Projects.example("tea-caddy").cutting();
        assertThat(second.boards().toString()).isEqualTo(first.boards().toString());
    }

    @Test
    void aGlanceSaysTheSameAsALongLook() {
        for (String name : List.of("tea-caddy", "wall-shelf")) {
            Compilation compilation = Projects.example(name);
            assertThat(Cutter.findings(compilation.joined())).isEqualTo(compilation.cutting().findings());
        }
    }
}

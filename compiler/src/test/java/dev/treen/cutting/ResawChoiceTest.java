package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.order.Operation;
import dev.treen.order.Phase;
import dev.treen.plan.Compilation;
import dev.treen.plan.PlanJson;
import dev.treen.plan.Projects;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When thick boards are resawn, and books of two leaves; boards and parts invented, sums by hand. */
class ResawChoiceTest {
    private static String head(String layout) {
        return "project \"Rack\" { units mm; tools hand; allow { kerf 1; shooting 0; planing 0.5; resaw 1; end_waste 0 }"
                + " layout { " + layout + " } }\n";
    }

    private static String board(String name, String size, String more) {
        return "board " + name + " { species black_cherry; size " + size + "; rings quarter; moisture 9%; " + more
                + " }\n";
    }

    private static String part(String name, String size) {
        String[] of = size.split(" x ", -1);
        return "part " + name + " { length " + of[0] + "; width " + of[1] + "; thickness " + of[2] + " }\n";
    }

    private static Cutting cut(String text) {
        return Projects.compile(text).cutting();
    }

    private static final String FOUR = part("a", "400 x 99 x 9") + part("b", "400 x 99 x 9");

    /** The worked example of A-04: 27 rough, faces 1.0 and sawn faces 1.0, kerf 1.2, gives two leaves of 10.9. */
    @Test
    void aLeafIsAsThickAsInTheWorkedExample() {
        String text = "project \"Leaf\" { units mm; allow { kerf 1.2; planing 1; resaw 1; shooting 0; end_waste 0 } }\n"
                + board("plank", "900 x 120 x 27", "leaves 2") + part("a", "400 x 90 x 9");
        assertThat(cut(text).boards().getFirst().thickness().toDoubleMm()).isEqualTo(10.9);
    }

    /** One leaf of two takes both parts: half a board and a tenth for the cut are less than a whole one. */
    @Test
    void aBoardIsResawnWhereThatSavesMoreThanItsLabour() {
        String text = board("plank", "801 x 100 x 27", "") + FOUR;
        assertThat(cut(head("") + text).boards()).allMatch(each -> each.leaves() == 2).hasSize(1);
        assertThat(cut(head("labour 49%") + text).boards()).allMatch(each -> each.leaves() == 2);
        assertThat(cut(head("labour 51%") + text).boards()).allMatch(each -> each.leaves() == 1);
        assertThat(cut(head("resaw never") + text).boards()).allMatch(each -> each.leaves() == 1);
        assertThat(cut(head("") + text.replace("quarter;", "quarter; leaves 1;")).boards())
                .allMatch(each -> each.leaves() == 1);
        assertThat(cut(head("") + text).proved()).isTrue();
    }

    /** The sides need the thick board, so its cut is in what no layout can beat; the thin one, which is not sawn, is not. */
    @Test
    void theCutThroughABoardThatIsNeededIsPartOfTheProof() {
        String text = board("plank", "801 x 100 x 27", "") + board("thin", "500 x 100 x 11", "")
                + FOUR.replace("thickness 9", "thickness 9; from plank") + part("lid", "400 x 90 x 7; from thin");
        Cutting cutting = cut(head("") + text);
        assertThat(cutting.boards()).extracting(BoardCut::leaves).containsExactlyInAnyOrder(1, 2);
        assertThat(cutting.proved()).isTrue();
    }

    /** Two boards for thick legs and thin sides: only the board of the sides is resawn, as one of the legs would not do. */
    @Test
    void thickPartsKeepTheirBoardWhole() {
        Cutting cutting = cut(head("") + board("one", "801 x 100 x 27", "") + board("two", "801 x 100 x 27", "") + FOUR
                + part("leg", "800 x 90 x 25"));
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(cutting.boards()).extracting(BoardCut::leaves).containsExactlyInAnyOrder(1, 2);
    }

    /** Beyond 3 x 9 with two cuts of 3 between them are 33, and 34 as the board lies. */
    @Test
    void threeLeavesAreTakenWhereTheyGiveAllParts() {
        Cutting cutting = cut(head("") + board("plank", "401 x 100 x 34", "") + FOUR + part("c", "400 x 99 x 9"));
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(cutting.boards()).hasSize(3).allMatch(each -> each.leaves() == 3);
    }

    @Test
    void aPairComesFromOnePieceAndIsResawnBeforeItIsPlaned() {
        Compilation compilation = Projects
                .compile(head("bookmatch a, b") + board("plank", "801 x 100 x 27", "") + FOUR);
        assertThat(compilation.cutting().boards().getFirst().parts()).extracting(BoardCut.OnBoard::name)
                .containsExactly("a + b");
        List<Operation> steps = compilation.order().steps().stream().map(each -> each.operation()).toList();
        List<Phase> phases = steps.stream().map(Operation::phase).toList();
        assertThat(phases.indexOf(Phase.LEAVES)).isBetween(phases.indexOf(Phase.SAW), phases.indexOf(Phase.TRUE));
        Operation resaw = steps.get(phases.indexOf(Phase.LEAVES));
        assertThat(resaw.action()).contains("`a` and `b`");
        assertThat(resaw.settings().getFirst().value().toDoubleMm()).isEqualTo(10);
        assertThat(resaw.caution()).isNotEmpty();
        assertThat(PlanJson.of(compilation.plan())).contains("bookmatched: a and b are the leaves of one piece");
    }

    @Test
    void aPairThatIsToldTwiceOrGluedIsSaidSo() {
        String boards = board("plank", "1801 x 100 x 27", "");
        assertThat(cut(head("bookmatch a, c") + boards + FOUR).findings()).extracting(Finding::code)
                .containsExactly("layout-names-no-part");
        assertThat(cut(head("bookmatch a, b") + boards + FOUR.replace("9 }", "9; glue_up { } }")).findings())
                .extracting(Finding::code).containsOnly("layout-names-no-part");
        assertThat(Projects.codes(Projects.compile(head("bookmatch a, b, a") + boards + FOUR).findings()))
                .contains("wrong-kind");
    }

    /** 6 mm hollow over 240 is 6 x (119/240)² = 1.475 over 119: 24 - 1 - 1.475 = 21.525, and 17 as a whole. */
    @Test
    void aHollowBoardGivesMoreThicknessOnceItIsRipped() {
        String parts = part("a", "400 x 100 x 21.5");
        String whole = board("plank", "900 x 240 x 24", "cup 6");
        assertThat(cut(head("") + whole + parts).unplaced()).containsExactly("a");
        Compilation ripped = Projects.compile(head("") + whole.replace("cup 6", "cup 6; rip 119") + parts);
        assertThat(ripped.cutting().unplaced()).isEmpty();
        BoardCut cut = ripped.cutting().boards().getFirst();
        assertThat(cut.source().name()).isEqualTo("plank");
        assertThat(cut.thickness().toDoubleMm()).isEqualTo(23 - 6 * 119.0 * 119 / 240 / 240);
        assertThat(ripped.cutting().untouched()).hasSize(1);
        List<Phase> phases = ripped.order().steps().stream().map(each -> each.operation().phase()).toList();
        assertThat(phases.indexOf(Phase.RIP)).isBetween(phases.indexOf(Phase.REST), phases.indexOf(Phase.SAW));
    }

    /** A knot at 180 from the near edge lies 60 from the edge of the second piece, which begins at 120. */
    @Test
    void flawsStayWhereTheyAreOnTheirPiece() {
        Cutting cutting = cut(head("") + board("plank", "500 x 240 x 24", "rip 119; knot { at 250, 180; radius 10 }")
                + part("a", "490 x 100 x 20") + part("b", "490 x 48 x 20"));
        assertThat(cutting.unplaced()).isEmpty();
        BoardCut second = cutting.boards().stream().filter(each -> each.name().endsWith("2")).findFirst().orElseThrow();
        assertThat(second.parts()).extracting(BoardCut.OnBoard::name).containsExactly("b");
        assertThat(second.board().defects()).hasSize(1);
    }

    @Test
    void ripsOffTheBoardAreTold() {
        String text = head("") + board("plank", "500 x 240 x 24", "rip 239.5; rip 100; rip 100.5") + FOUR;
        assertThat(Projects.codes(Projects.compile(text).findings())).containsOnly("out-of-range").hasSize(2);
    }

    /** 23 once flat for parts of 9: 14 of 400 x 100 as sawn, twice, are 1120 cm³. Two leaves would be (24 - 1 - 3) / 2 = 10. */
    @Test
    void shavingsAreToldWithTheBetterUse() {
        String parts = FOUR + part("leg", "800 x 60 x 22");
        String text = head("") + board("plank", "801 x 180 x 24", "") + parts;
        assertThat(cut(text).unplaced()).isEmpty();
        assertThat(cut(text).remarks()).singleElement().asString()
                .contains("gives 23 mm once flat", "1120 cm³", "A part of 22 mm on it keeps it from being resawn into 2"
                        + " leaves of 10 mm");
        assertThat(cut(text.replace("x 24;", "x 24; leaves 1;")).remarks()).singleElement().asString()
                .contains("`leaves 1` keeps it from that");
        assertThat(cut(head("resaw never") + board("plank", "801 x 100 x 24", "") + FOUR).remarks())
                .singleElement().asString().contains("`resaw never`");
        assertThat(cut(head("") + board("plank", "801 x 100 x 20", "") + FOUR).remarks()).singleElement().asString()
                .contains("too thin to be resawn into 2 leaves", "a board of 10 mm would do");
        assertThat(cut(head("") + board("plank", "801 x 100 x 24", "") + FOUR).remarks()).isEmpty();
    }

    /** Two parts of 500 take two boards of 900 x 100 = 0.09 m²; one of 600 more and they take 0.06 less 0.09. */
    @Test
    void oneMoreBoardThatSavesIsTold() {
        String text = head("resaw never") + board("long_1", "900 x 100 x 10", "")
                + board("long_2", "900 x 100 x 10", "")
                + board("short", "600 x 100 x 10", "") + part("a", "500 x 99 x 9") + part("b", "500 x 99 x 9")
                + part("c", "500 x 99 x 9");
        Cutting cutting = cut(text);
        assertThat(cutting.boards()).hasSize(3);
        assertThat(cutting.remarks()).containsExactly("One more board like `short` would save 0.03 m² of board, itself"
                + " counted: `long_2` would stay whole.");
        assertThat(cut(text.replace("600 x 100", "900 x 100")).remarks()).isEmpty();
        String priced = text.replace("x 10;", "x 10; price { each 20 };").replaceFirst(
                "(?s)600 x 100 x 10; price \\{ each 20", "600 x 100 x 10; price { each 12.50");
        assertThat(cut(priced).remarks()).singleElement().asString().contains("would save 7.50, itself counted");
    }

    @Test
    void aHollowBoardThatIsTooThinAsAWholeIsTold() {
        String text = head("") + board("plank", "900 x 240 x 24", "cup 6") + board("plain", "900 x 120 x 24", "")
                + part("a", "400 x 100 x 20");
        List<Finding> findings = cut(text).findings();
        assertThat(findings).extracting(Finding::code).containsExactly("board-too-hollow");
        String mended = dev.treen.finding.Edit.applied(text, findings.getFirst().remedies().getFirst().edits());
        assertThat(mended).contains("cup 6; rip 101");
        assertThat(cut(mended).findings()).isEmpty();
        assertThat(cut(text + part("thin", "400 x 100 x 9")).findings()).isEmpty();
    }

    @Test
    void aCountThatMakesStavesWiderThanAskedIsTold() {
        Cutting cutting = cut(head("") + board("plank", "900 x 120 x 24", "leaves 1")
                + "part a { length 400; width 180; thickness 12; glue_up { staves 2; widest 70 } }\n");
        assertThat(cutting.findings()).extracting(Finding::code).containsExactly("staves-too-wide");
        assertThat(cutting.unplaced()).isEmpty();
    }
}

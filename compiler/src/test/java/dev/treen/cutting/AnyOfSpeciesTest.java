package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.joinery.Weight;
import dev.treen.model.Part;
import dev.treen.plan.Compilation;
import dev.treen.plan.CutList;
import dev.treen.plan.Projects;
import java.util.List;
import org.junit.jupiter.api.Test;

/** {@code from} names a species: the layout chooses among its boards. The projects are invented. */
class AnyOfSpeciesTest {
    private static final String BARE = "kerf 1; shooting 0; planing 0; resaw 0; end_waste 0";

    private static String board(String name, String species, String size, String more) {
        return "board " + name + " { species " + species + "; size " + size + "; " + more + " }\n";
    }

    private static final String RACK = board("long", "black_cherry", "900 x 100 x 20", "rings quarter; moisture 9%")
            + board("short", "black_cherry", "320 x 100 x 20", "rings quarter; moisture 9%")
            + board("pale", "sugar_maple", "310 x 100 x 20", "rings flat; moisture 9%");

    private static Compilation shelf(String parts) {
        return Projects.of(BARE, RACK + parts);
    }

    private static Part part(Compilation compilation, String name) {
        return compilation.joined().part(name).orElseThrow().part();
    }

    /** The smaller cherry board does; the maple would be smaller still, but is no cherry. */
    @Test
    void theLayoutTakesTheBoardOfTheSpeciesThatCostsLeast() {
        Compilation made = shelf("part shelf { length 300; width 90; thickness 20; from black_cherry }\n");
        assertThat(made.findings()).extracting(Finding::severity).isEmpty();
        assertThat(made.cutting().boards()).extracting(BoardCut::name).containsExactly("short");
        assertThat(CutChecker.check(made.joined(), made.cutting())).isEmpty();
        assertThat(CutList.of(made.plan()).rows()).extracting(CutList.Row::board).containsExactly("short");
        assertThat(CutList.of(made.plan()).rows()).extracting(CutList.Row::species).containsExactly("black cherry");
    }

    @Test
    void theCheckerSeesAPartOnABoardOfAnotherSpecies() {
        Compilation any = shelf("part shelf { length 300; width 90; thickness 20 }\n");
        assertThat(any.cutting().boards()).extracting(BoardCut::name).containsExactly("pale");
        Compilation cherry = shelf("part shelf { length 300; width 90; thickness 20; from black_cherry }\n");
        assertThat(CutChecker.check(cherry.joined(), any.cutting()))
                .anyMatch(each -> each.startsWith("from another board"));
    }

    @Test
    void oneSpeciesMayGiveManyPartsFromSeveralBoards() {
        Compilation made = shelf("""
                part a { length 800; width 90; thickness 20; from black_cherry }
                part b { length 310; width 90; thickness 20; from black_cherry }
                """);
        assertThat(made.cutting().unplaced()).isEmpty();
        assertThat(made.cutting().boards()).extracting(BoardCut::name).containsExactlyInAnyOrder("long", "short");
    }

    /** Glued up from staves of both boards, the cut list names both. */
    @Test
    void stavesMayComeFromSeveralBoardsOfTheSpecies() {
        Compilation made = shelf("part top { length 300; width 280; thickness 20; from black_cherry; glue_up { } }\n");
        assertThat(made.cutting().unplaced()).isEmpty();
        assertThat(CutList.of(made.plan()).rows().getFirst().board()).isEqualTo("long, short");
    }

    @Test
    void whatIsCalledSoComesBeforeASpecies() {
        Compilation made = Projects.of(BARE, RACK + board("black_cherry", "black_walnut", "700 x 100 x 20",
                "rings flat; moisture 9%") + "part shelf { length 300; width 90; thickness 20; from black_cherry }\n");
        assertThat(part(made, "shelf").anyOf()).isEmpty();
        assertThat(made.cutting().boards()).extracting(BoardCut::name).containsExactly("black_cherry");
    }

    @Test
    void aSpeciesThatIsNotOnTheRackOffersNearOnes() {
        Finding finding = shelf("part shelf { length 300; width 90; thickness 20; from black_chery }\n").findings()
                .getFirst();
        assertThat(finding.code()).isEqualTo("unknown-name");
        assertThat(finding.headline()).isEqualTo("No board, sheet or species on the rack is called `black_chery`");
        assertThat(finding.toString()).contains("black_cherry");
        assertThat(
                Projects.codes(shelf("part shelf { length 300; width 90; thickness 20; from white_oak }\n").findings()))
                .as("known to the tables, but nowhere on the rack").containsExactly("unknown-name");
    }

    @Test
    void aPatternHandsASpeciesOn() {
        String ledge = """
                pattern ledge {
                  wood : board = any
                  part rail { length 300; width 40; thickness 20; from wood }
                }
                """;
        Compilation made = shelf(ledge + "ledge upper { wood black_cherry }\nledge lower { from sugar_maple }\n");
        assertThat(part(made, "upper.rail").source()).isEqualTo("black_cherry");
        assertThat(part(made, "lower.rail").source()).isEqualTo("sugar_maple");
        assertThat(made.cutting().sourcesOf(part(made, "upper.rail"))).extracting(b -> b.name())
                .containsExactly("short");
        Compilation wrong = shelf(ledge + "ledge upper { wood black_chery }\n");
        assertThat(Projects.codes(wrong.findings())).contains("unknown-name");
        assertThat(wrong.findings().getFirst().at().text()).isEqualTo("black_chery");
    }

    /** Flat-sawn wood moves about twice as far in its width as quartered: what fits it fits the other too. */
    @Test
    void movementIsReckonedForTheBoardThatMovesMost() {
        String rack = board("calm", "black_cherry", "900 x 100 x 20", "rings quarter; moisture 9%")
                + board("lively", "black_cherry", "900 x 100 x 20", "rings flat; moisture 9%")
                + board("thin", "black_cherry", "900 x 100 x 10", "rings flat; moisture 6%");
        Compilation made = Projects.of(BARE, rack + "part a { length 300; width 90; thickness 20; from black_cherry }\n"
                + "part b { length 300; width 90; thickness 20; from calm }\n");
        var a = made.joined().nature(part(made, "a"));
        var b = made.joined().nature(part(made, "b"));
        assertThat(a.swelling(1, 90)).isGreaterThan(b.swelling(1, 90));
        assertThat(a.seasons().bench()).as("not as dry as the board that is too thin for it").isEqualTo(9);
        assertThat(a.wood()).contains("(as `lively`: of the boards that it may come from, the one that moves most)");
        assertThat(b.wood()).doesNotContain("moves most");
        assertThat(Weight.of(made.joined().part("a").orElseThrow(), made.joined()).kilograms()).isPresent();
    }

    @Test
    void oneBoardThatIsLargeEnoughWillDo() {
        assertThat(shelf("part shelf { length 600; width 90; thickness 20; from black_cherry }\n").findings())
                .isEmpty();
        List<Finding> findings = shelf("part shelf { length 950; width 90; thickness 20; from black_cherry }\n")
                .findings();
        assertThat(Projects.codes(findings)).contains("board-too-short");
        assertThat(findings.toString()).contains("No other board of `black_cherry` gives it either.");
    }

    @Test
    void ringsOfItsOwnAreHeldAgainstEveryBoardThatMayGiveIt() {
        Compilation made = Projects.of(BARE, RACK + board("flat", "black_cherry", "900 x 100 x 20",
                "rings flat; moisture 9%")
                + "part shelf { length 300; width 90; thickness 20; from black_cherry; rings quarter }\n");
        assertThat(made.findings().toString()).contains("`flat` has flat ones");
    }

    @Test
    void aSheetIsTakenOfItsSpeciesToo() {
        Compilation made = Projects.of(BARE, RACK
                + "sheet half { species baltic_birch; size 600 x 400 x 12 }\n"
                + "sheet whole { species baltic_birch; size 1500 x 1500 x 12 }\n"
                + "part back { length 500; width 300; thickness 12; from baltic_birch }\n");
        assertThat(made.cutting().boards()).extracting(BoardCut::name).containsExactly("half");
    }
}

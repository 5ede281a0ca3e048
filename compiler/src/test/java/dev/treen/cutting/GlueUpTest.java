package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.order.Operation;
import dev.treen.order.Phase;
import dev.treen.page.Labels;
import dev.treen.plan.Compilation;
import dev.treen.plan.Costs;
import dev.treen.plan.Plan;
import dev.treen.plan.PlanJson;
import dev.treen.plan.PlanReader;
import dev.treen.plan.PlanText;
import dev.treen.plan.Projects;
import dev.treen.quantity.Length;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wide parts from narrow boards; boards and parts invented, sums by hand. */
class GlueUpTest {
    private static final String HEAD = """
            project "Lid" { units mm; tools hand; climate { humidity 40%..60%; temperature 18degC..22degC }
              allow { kerf 1; shooting 0; planing 0.5; resaw 1; end_waste 0 } }
            """;

    private static String board(String name, String size) {
        return "board " + name + " { species black_cherry; size " + size + "; rings quarter; moisture 9% }\n";
    }

    private static Cutting cut(String text) {
        return Projects.compile(HEAD + text).cutting();
    }

    private static List<Double> mm(List<Length> lengths) {
        return lengths.stream().map(Length::toDoubleMm).toList();
    }

    private static String panel(String glueUp) {
        return "part panel { length 400; width 199; thickness 12; glue_up { " + glueUp + " } }\n";
    }

    /** 199 and 0.5 a side are 200; a board of 90 gives 89 once shot, so three staves are the fewest. */
    @Test
    void theFewestStavesAreChosenAndAddUp() {
        Cutting cutting = cut(board("plank", "1300 x 90 x 16") + panel(""));
        Glued glued = cutting.glued("panel").orElseThrow();
        assertThat(glued.staves()).hasSize(3);
        assertThat(mm(glued.staves()).stream().mapToDouble(Double::doubleValue).sum()).isEqualTo(200);
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(cutting.boards().getFirst().parts()).extracting(BoardCut.OnBoard::name)
                .containsExactlyInAnyOrder("panel stave 1", "panel stave 2", "panel stave 3");
        assertThat(cutting.boards().getFirst().parts()).allMatch(
                each -> each.area().width().equals(glued.roughWidth(each.blank().members().getFirst().stave())));
    }

    @Test
    void theCountAndTheWidestAreKept() {
        assertThat(cut(board("plank", "2500 x 90 x 16") + panel("staves 4")).glued("panel").orElseThrow().staves())
                .hasSize(4);
        assertThat(mm(cut(board("plank", "3000 x 90 x 16") + panel("widest 41")).glued("panel").orElseThrow()
                .staves())).hasSize(5).allMatch(each -> each <= 41);
    }

    /** Two boards, 130 and 72 wide, give 129 and 71 once shot: equal staves of 100 do not come out of them. */
    @Test
    void unequalStavesAreTakenWhereTheySaveABoard() {
        Cutting cutting = cut(board("broad", "400 x 130 x 16") + board("narrow", "400 x 72 x 16")
                + board("spare", "400 x 130 x 16") + panel(""));
        assertThat(mm(cutting.glued("panel").orElseThrow().staves())).containsExactly(129.0, 71.0);
        assertThat(cutting.boards()).extracting(BoardCut::name).containsExactlyInAnyOrder("broad", "narrow");
        assertThat(cutting.proved()).isTrue();
    }

    /** A glued part is planed once more: 12 and 1 are 13, and 14 gives 13 once flat, 13.9 does not. */
    @Test
    void stavesAreThickEnoughToBePlanedAgain() {
        assertThat(cut(board("plank", "1300 x 90 x 14") + panel("")).unplaced()).isEmpty();
        Cutting thin = cut(board("plank", "1300 x 90 x 13.9") + panel(""));
        assertThat(thin.unplaced()).hasSize(3);
        assertThat(thin.findings().getFirst().found()).contains("13 mm thick once flat", "0.1 mm are missing");
    }

    /** Two lines of 400 by 13, as the staves stand before the part is planed to 12: 104 cm². */
    @Test
    void theGlueOfTheLinesIsOnTheShoppingList() {
        String text = HEAD + board("plank", "1300 x 90 x 16") + panel("");
        assertThat(Costs.of(Projects.compile(text).plan()).supplies())
                .anyMatch(each -> each.reckoned().startsWith("104 cm² of glued faces"));
    }

    /** A housing that stops short of both edges crosses the lines as well as one that does not. */
    @Test
    void aHousingAcrossTheLinesIsNothingToKeepClearOf() {
        Cutting cutting = cut(board("plank", "2500 x 90 x 16") + board("slab", "600 x 170 x 16") + """
                part panel {
                  length 400; width 199; thickness 12; from plank; glue_up { }
                  place { length right; width back; at 0, 0, 60 }
                }
                part wing {
                  length 60; width 150; thickness 12; from slab
                  place { length up; width back; at 100, 20, 0 }
                }
                joint housing wing into panel { deep 3 }
                """);
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(cutting.findings()).isEmpty();
    }

    private static final String GROOVED = """
            board thin { species black_cherry; size 600 x 80 x 12; rings quarter; moisture 9% }
            part panel {
              length 400; width 199; thickness 12; from plank; glue_up { ASKED }
              place { length right; width back; at 0, 0, 60 }
            }
            part rib {
              length 400; width 60; thickness 10; from thin
              place { length right; width up; at 0, 95, 0 }
            }
            joint groove rib into panel { deep 4 }
            """;

    /** The groove lies from 95 to 105 of the panel, which is where two equal staves would meet. */
    @Test
    void glueLinesKeepClearOfAGroove() {
        Cutting cutting = cut(board("plank", "1300 x 150 x 16") + GROOVED.replace("ASKED", "staves 2"));
        Glued glued = cutting.glued("panel").orElseThrow();
        assertThat(glued.clear()).isTrue();
        assertThat(mm(glued.lines())).singleElement().matches(line -> line <= 95.5 - 3 || line >= 105.5 + 3);
        assertThat(cutting.findings()).isEmpty();
        Cutting book = cut(board("plank", "1300 x 150 x 34") + GROOVED.replace("ASKED", "match book"));
        assertThat(book.findings()).extracting(Finding::code).containsExactly("glue-line-cut");
    }

    @Test
    void stavesThatMatchComeFromOneBoard() {
        String boards = board("one", "500 x 110 x 16") + board("two", "500 x 110 x 16")
                + board("long", "1300 x 110 x 16");
        Cutting any = cut(boards + panel("staves 2"));
        assertThat(any.boards()).hasSize(2);
        Cutting alike = cut(boards + panel("staves 2; match board"));
        assertThat(alike.boards()).extracting(BoardCut::name).containsExactly("long");
        Cutting none = cut(board("one", "500 x 110 x 16") + board("two", "500 x 110 x 16")
                + panel("staves 2; match board"));
        assertThat(none.findings()).extracting(Finding::code).containsExactly("match-from-no-board");
        assertThat(none.findings().getFirst().headline()).contains("all staves of `panel`");
    }

    /** two leaves of 13 with 1 of saw and 2 of smoothing between them are 29, and 30 as the board lies. */
    @Test
    void aBookComesFromOnePiece() {
        Cutting book = cut(board("plank", "500 x 110 x 30") + panel("match book"));
        assertThat(book.boards().getFirst().parts()).extracting(BoardCut.OnBoard::name)
                .containsExactly("panel stave 1 + panel stave 2");
        assertThat(book.boards().getFirst().leaves()).isEqualTo(1);
        Cutting thin = cut(board("plank", "500 x 110 x 29.9") + panel("match book"));
        assertThat(thin.unplaced()).hasSize(1);
        assertThat(thin.findings().getFirst().found()).contains("29 mm thick once flat", "0.1 mm are missing");
    }

    @Test
    void theOrderGluesThePartBeforeItsEdgesAreTrued() {
        Compilation compilation = Projects.compile(HEAD + board("plank", "1300 x 90 x 16") + panel("rings alike"));
        List<Operation> steps = compilation.order().steps().stream().map(each -> each.operation()).toList();
        List<Phase> phases = steps.stream().map(Operation::phase).toList();
        assertThat(phases.lastIndexOf(Phase.SAW)).isLessThan(phases.indexOf(Phase.STAVES));
        assertThat(phases.lastIndexOf(Phase.STAVES)).isLessThan(phases.indexOf(Phase.TRUE));
        assertThat(steps.stream().filter(each -> each.phase() == Phase.STAVES).flatMap(each -> each.how().stream()))
                .anyMatch(line -> line.contains("all one way"));
        assertThat(PlanText.of(compilation.plan())).contains("glued up from 3 staves, shot to");
    }

    @Test
    void thePlanBuiltAgainKeepsItsStaves() {
        String text = HEAD + board("broad", "400 x 130 x 16") + board("narrow", "400 x 72 x 16") + panel("");
        Plan first = Projects.compile(text).plan();
        EarlierLayout earlier = PlanReader.layout(PlanJson.of(first));
        String more = text + board("wide", "400 x 130 x 16");
        Plan again = Compilation.of(new SourceFile("lid.treen", more), FileLoader.NONE, Optional.empty(), earlier)
                .plan();
        assertThat(again.cutting().glued("panel").orElseThrow().staves())
                .isEqualTo(first.cutting().glued("panel").orElseThrow().staves());
        assertThat(again.cutting().moves().moved()).isEmpty();
    }

    @Test
    void aRunOfAGluedPartIsToldAndLeftOut() {
        Cutting cutting = cut(board("plank", "2300 x 90 x 16") + panel("")
                + "part end { length 100; width 60; thickness 12 }\nrun panel, end\n");
        assertThat(cutting.findings()).extracting(Finding::code).containsExactly("layout-names-no-part");
        assertThat(cutting.findings().getFirst().headline()).isEqualTo("`panel` is not sawn out in one piece");
        assertThat(cutting.unplaced()).isEmpty();
    }

    /**
     * 300 by 98 of two staves of 49 and 0.5 a side to shoot, so 50 wide each; one board of 51 gives one, the knotty one the
     * other only where the part takes the knot. Common practice, no source (rules of the trade Y-02): a knot of 8 keeps 18
     * from an edge that is glued, by its middle, and 18.5 from the edge as sawn.
     */
    @ParameterizedTest
    @CsvSource({"'', 25.5, 1", "takes knot, 25.5, 0", "takes knot, 15, 1", "takes sapwood, 25.5, 1"})
    void aStaveHasAKnotInItWhereItsPartTakesOneAndNotAtAGlueLine(String takes, String at, int unplaced) {
        Cutting cutting = cut(board("clear", "310 x 51 x 16")
                + board("knotty", "310 x 51 x 16").replace("moisture",
                        "knot { at 155, " + at + "; radius 8 }; moisture")
                + "part panel { length 300; width 97; thickness 12; glue_up { staves 2 }; " + takes + " }\n");
        assertThat(cutting.unplaced()).hasSize(unplaced);
        List<String> flaws = cutting.boards().stream().flatMap(each -> each.parts().stream())
                .flatMap(each -> each.flaws().stream()).toList();
        assertThat(flaws).hasSize(takes.equals("takes knot") && unplaced == 0 ? 1 : 0);
    }

    /** A face that is to be clear may come to lie either way in a stave, so only what is taken on both is taken. */
    @Test
    void aKnotOfOneFaceAloneIsInNoStave() {
        Cutting cutting = cut(board("clear", "310 x 51 x 16")
                + board("knotty", "310 x 51 x 16").replace("moisture",
                        "knot { at 155, 25; radius 8; face under }; moisture")
                + "part panel { length 300; width 97; thickness 12; glue_up { staves 2 }; takes knot on bottom\n"
                + " place { length right; width back; at 0, 0, 0 } }\n");
        assertThat(cutting.unplaced()).hasSize(1);
    }

    /** The leaves of a book show a flaw twice: the piece for them is clear whatever the part takes. */
    @Test
    void aBookIsClear() {
        String book = "part panel { length 300; width 97; thickness 12; glue_up { match book }; takes knot }\n";
        String board = board("thick", "310 x 51 x 30");
        assertThat(cut(board + book).unplaced()).isEmpty();
        assertThat(cut(board.replace("moisture", "knot { at 155, 25; radius 8 }; moisture") + book).unplaced())
                .hasSize(1);
    }

    @Test
    void theOrderSaysHowEachHeartSideLies() {
        String staves = board("plank", "2500 x 90 x 16");
        assertThat(cut(staves + panel("staves 3")).glued("panel").orElseThrow().hearts())
                .containsExactly(Glued.Heart.UP, Glued.Heart.DOWN, Glued.Heart.UP);
        assertThat(cut(staves + panel("staves 3; rings alike")).glued("panel").orElseThrow().hearts())
                .containsOnly(Glued.Heart.UP);
        Compilation compilation = Projects.compile(HEAD + staves + panel("staves 3"));
        assertThat(compilation.order().steps().stream().flatMap(each -> each.operation().how().stream()))
                .contains("heart sides, from the same edge: up, down, up");
        String labels = Labels.of(compilation.plan());
        assertThat(labels).contains("panel stave 2").contains("stave 2 of 3, from the edge below · heart side down");
    }

    /** Two leaves are one piece until they are resawn: each label says whose mate it is. */
    @Test
    void labelsNameTheMateOfABook() {
        String pair = HEAD.replace("tools hand;", "tools hand; layout { bookmatch left, right };")
                + board("thick", "500 x 110 x 34")
                + "part left { length 300; width 90; thickness 12 }\npart right like left { }\n";
        String labels = Labels.of(Projects.compile(pair).plan());
        assertThat(labels).containsOnlyOnce("opens like a book with <bdi class=\"name\">left</bdi>")
                .containsOnlyOnce("opens like a book with <bdi class=\"name\">right</bdi>");
    }
}

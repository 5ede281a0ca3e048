package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.order.Operation;
import dev.treen.order.Phase;
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
}

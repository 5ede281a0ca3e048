package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.plan.Plan;
import dev.treen.plan.PlanJson;
import dev.treen.plan.PlanReader;
import dev.treen.plan.Projects;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Parts that may lie across a sheet, and those that may not; sheets and parts invented. */
class SheetGrainTest {
    private static final String BARE = "kerf 2; shooting 0; planing 0; resaw 0; end_waste 0";

    private static Compilation compiled(String stock, String part) {
        return Projects.of(BARE, stock + "part back { length 500; width 290; thickness 6; " + part + " }\n");
    }

    private static List<String> codes(Compilation compilation) {
        return compilation.checked().findings().stream().map(Finding::code).toList();
    }

    /** 500 is too long for a sheet of 300 along its face grain, and comes out of its 510 across it. */
    @Test
    void aPartOfAnyGrainLiesAcrossASheetWhereItHasRoomOnlySo() {
        String sheet = "sheet ply { size 300 x 510 x 6 }\n";
        assertThat(compiled(sheet, "from ply").cutting().unplaced()).containsExactly("back");
        assertThat(codes(compiled(sheet, "from ply"))).contains("board-too-short");
        Compilation turned = compiled(sheet, "from ply; grain any");
        assertThat(codes(turned)).doesNotContain("board-too-short");
        assertThat(turned.cutting().unplaced()).isEmpty();
        BoardCut.OnBoard back = turned.cutting().boards().getFirst().parts().getFirst();
        assertThat(back.lay()).isEqualTo(BoardCut.OnBoard.ACROSS);
        assertThat(back.note()).isEqualTo("lies across the face grain");
        assertThat(PlanJson.of(turned.plan())).contains("\"lay\" : \"across the face grain\"");
        assertThat(CutChecker.check(turned.joined(), turned.cutting())).isEmpty();
        Compilation along = compiled(sheet, "from ply");
        Cutting wrong = new Cutting(
                turned.cutting().boards(), List.of(), List.of(), Areas.NONE, List.of(), 0, true, "", Moves.NONE,
                List.of(),
                List.of());
        assertThat(CutChecker.check(along.joined(), wrong)).contains("grain of `back`");
    }

    @Test
    void onASheetWithoutGrainEveryPartMayTurn() {
        Compilation turned = compiled("sheet board { size 300 x 510 x 6; species mdf }\n", "");
        assertThat(turned.cutting().unplaced()).isEmpty();
        assertThat(turned.cutting().boards().getFirst().parts().getFirst().lay()).isEqualTo(BoardCut.OnBoard.ACROSS);
    }

    /** Wood moves and breaks by its grain: there the word changes nothing. */
    @Test
    void onABoardThePartLiesAlongItsGrain() {
        String board = "board plank { species black_cherry; size 300 x 510 x 8; rings flat; moisture 9% }\n";
        assertThat(compiled(board, "grain any").cutting().unplaced()).containsExactly("back");
    }

    @Test
    void aPlanBuiltAgainLeavesItAcross() {
        String text = "project \"Back\" { units mm; tools hand; allow { " + BARE + " } }\n"
                + "sheet ply { size 300 x 510 x 6 }\n"
                + "part back { length 500; width 290; thickness 6; grain any }\n";
        Plan first = Projects.compile(text).plan();
        EarlierLayout earlier = PlanReader.layout(PlanJson.of(first));
        String more = text + "sheet spare { size 300 x 510 x 6 }\n";
        Plan again = Compilation.of(new SourceFile("back.treen", more), FileLoader.NONE, Optional.empty(), earlier)
                .plan();
        assertThat(again.cutting().unplaced()).isEmpty();
        assertThat(again.cutting().moves().moved()).isEmpty();
    }
}

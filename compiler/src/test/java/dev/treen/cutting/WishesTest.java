package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.plan.Compilation;
import dev.treen.plan.RackText;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What an author may ask of the layout, on a kitchen of invented parts. */
class WishesTest {

    private static Compilation compiled(String text) {
        return Compilation.of(new SourceFile("kitchen.treen", text), (path, from) -> Optional.empty());
    }

    private static BoardCut.OnBoard on(Cutting cutting, String part) {
        return cutting.boards().stream()
                .flatMap(board -> board.parts().stream())
                .filter(each -> each.name().equals(part))
                .findFirst()
                .orElseThrow();
    }

    private static String boardOf(Cutting cutting, String part) {
        return cutting.boards().stream()
                .filter(board -> board.parts().stream().anyMatch(each -> each.name().equals(part)))
                .map(board -> board.board().name())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRunComesFromOneStripInItsOrder() {
        Cutting cutting = compiled("""
                project "Drawers" { units mm }
                run one, two, three
                board plank { species black_cherry; size 2400 x 180 x 24; knot { at 700, 90; radius 20 } }
                part three { length 420; width 120; thickness 19 }
                part one   { length 400; width 120; thickness 19 }
                part two   { length 410; width 120; thickness 19 }
                """).plan().cutting();
        var one = on(cutting, "one").area();
        var two = on(cutting, "two").area();
        var three = on(cutting, "three").area();
        assertThat(one.y()).isEqualTo(two.y()).isEqualTo(three.y());
        var kerf = dev.treen.quantity.Length.ofMm(org.apache.commons.numbers.fraction.BigFraction.of(12, 10));
        assertThat(two.x()).isEqualTo(one.x().plus(one.length()).plus(kerf));
        assertThat(three.x()).isEqualTo(two.x().plus(two.length()).plus(kerf));
    }

    @Test
    void matchedPartsComeFromOneBoard() {
        Cutting cutting = compiled("""
                project "Doors" { units mm; layout { matched door_left, door_right } }
                board short_one { species white_oak; size 700 x 200 x 24 }
                board long_one  { species white_oak; size 1500 x 200 x 24 }
                part door_left  { length 600; width 150; thickness 19 }
                part door_right { length 600; width 150; thickness 19 }
                part shelf      { length 600; width 150; thickness 19 }
                """).plan().cutting();
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(boardOf(cutting, "door_left")).isEqualTo(boardOf(cutting, "door_right")).isEqualTo("long_one");
    }

    @Test
    void whatCannotMatchIsToldAndLaidOutAllTheSame() {
        Compilation compilation = compiled("""
                project "Doors" { units mm; layout { matched door_left, door_right } }
                board one { species white_oak; size 700 x 200 x 24 }
                board two { species white_oak; size 700 x 200 x 24 }
                part door_left  { length 600; width 150; thickness 19; from one }
                part door_right { length 600; width 150; thickness 19; from two }
                """);
        assertThat(compilation.plan().cutting().unplaced()).isEmpty();
        assertThat(compilation.plan().findings().stream().map(Finding::kind).map(kind -> kind.code()))
                .contains("match-from-no-board");
    }

    @Test
    void offcutsGoFirstWhereThatIsAskedFor() {
        String text = """
                project "Shelf" { units mm; layout { offcuts %s } }
                board fresh  { species white_oak; size 700 x 200 x 24 }
                board remnant { species white_oak; size 900 x 200 x 24; offcut yes }
                part shelf { length 600; width 150; thickness 19 }
                """;
        assertThat(boardOf(compiled(text.formatted("first")).plan().cutting(), "shelf")).isEqualTo("remnant");
        assertThat(boardOf(compiled(text.formatted("alike")).plan().cutting(), "shelf")).isEqualTo("fresh");
    }

    @Test
    void aWishThatNamesNoPartIsTold() {
        Compilation compilation = compiled("""
                project "Shelf" { units mm; layout { matched shelf, shelv, side } }
                board plank { species white_oak; size 1900 x 200 x 24 }
                part shelf { length 600; width 150; thickness 19 }
                part side  { length 600; width 150; thickness 19 }
                """);
        List<Finding> findings = compilation.plan().findings();
        assertThat(findings.stream().map(f -> f.kind().code())).contains("layout-names-no-part");
        assertThat(findings.stream().map(Finding::headline)).anyMatch(line -> line.contains("`shelv`"));
    }

    @Test
    void theRackFileIsTakenUpByTheNextProject() {
        String rack = RackText.of(compiled("""
                project "Shelf" { units mm; layout { keep 300 x 100 } }
                board plank { species white_oak; size 1900 x 200 x 24; rings quarter; moisture 8.5% }
                part shelf { length 600; width 150; thickness 19 }
                """).plan());
        assertThat(rack).contains("board plank_offcut_1 {", "species   white_oak", "rings     quarter",
                "offcut    yes");
        Compilation next = Compilation.of(
                new SourceFile("next.treen", """
                        use "rack"
                        project "Box" { units mm; layout { offcuts first } }
                        board fresh { species white_oak; size 700 x 200 x 24 }
                        part side { length 500; width 120; thickness 19 }
                        """),
                (path, from) -> Optional.of(new SourceFile("rack.treen", rack)));
        Cutting cutting = next.plan().cutting();
        assertThat(next.plan().findings().stream().filter(f -> f.kind().code().contains("unknown"))).isEmpty();
        assertThat(boardOf(cutting, "side")).isEqualTo("plank_offcut_1");
    }
}

package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.model.Board;
import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** That the check of finished layouts sees what is wrong; boards and parts invented. */
class CutCheckerTest {
    private static final String TEXT = """
            project "Doors" { units mm; tools hand; allow { kerf 1; shooting 0; planing 0.5; resaw 1; end_waste 0 }
              layout { bookmatch a, b } }
            board plank { species black_cherry; size 1200 x 110 x 27; cup 1; rings quarter; moisture 9% }
            board other { species black_cherry; size 1300 x 110 x 16; rings quarter; moisture 9% }
            part a { length 400; width 99; thickness 9; from plank }
            part b { length 400; width 99; thickness 9; from plank }
            part panel { length 400; width 199; thickness 12; from other; glue_up { staves 2 } }
            """;

    private static final Compilation DOORS = Projects.compile(TEXT);

    private static List<String> breaches(Cutting cutting) {
        return CutChecker.check(DOORS.joined(), cutting);
    }

    private static Cutting with(List<BoardCut> boards, List<Glued> glued) {
        Cutting right = DOORS.cutting();
        return new Cutting(
                boards, right.untouched(), right.unplaced(), right.areas(), glued, right.gap(), right.proved(),
                right.bound(), right.moves(), right.remarks(), right.findings());
    }

    private static Cutting pieces(String board, UnaryOperator<List<BoardCut.OnBoard>> change) {
        return with(DOORS.cutting().boards().stream()
                .map(cut -> !cut.name().equals(board) ? cut : new BoardCut(
                        cut.source(), cut.board(), cut.leaf(), cut.leaves(), cut.thickness(),
                        change.apply(cut.parts()), cut.strips(), cut.cuts(), cut.offcuts()))
                .toList(), DOORS.cutting().glued());
    }

    private static Cutting thickness(String board, Length thick) {
        return with(DOORS.cutting().boards().stream()
                .map(cut -> !cut.name().equals(board) ? cut : new BoardCut(
                        cut.source(), cut.board(), cut.leaf(), cut.leaves(), thick, cut.parts(), cut.strips(),
                        cut.cuts(), cut.offcuts()))
                .toList(), DOORS.cutting().glued());
    }

    private static Cutting staves(Length... widths) {
        Glued right = DOORS.cutting().glued().getFirst();
        return with(DOORS.cutting().boards(), List.of(new Glued(
                right.part(), right.asked(), List.of(widths), right.roughLength(), right.edges(), right.thickness(),
                right.clear())));
    }

    @Test
    void aRightLayoutPasses() {
        assertThat(DOORS.cutting().unplaced()).isEmpty();
        assertThat(breaches(DOORS.cutting())).isEmpty();
    }

    @Test
    void aMissingStaveIsSeen() {
        assertThat(breaches(pieces("other", parts -> parts.subList(1, parts.size())))).hasSize(1);
    }

    @Test
    void aStaveThatIsThereTwiceIsSeen() {
        assertThat(breaches(pieces("other", parts -> {
            List<BoardCut.OnBoard> more = new ArrayList<>(parts);
            more.add(parts.getFirst());
            return more;
        }))).hasSize(1);
    }

    @Test
    void stavesThatDoNotAddUpAreSeen() {
        assertThat(breaches(staves(Length.ofMm(100), Length.ofMm(99)))).isNotEmpty();
        assertThat(breaches(staves(Length.ofMm(100), Length.ofMm(50), Length.ofMm(50)))).isNotEmpty();
        assertThat(breaches(with(DOORS.cutting().boards(), List.of()))).isNotEmpty();
    }

    @Test
    void leavesOfABookFromTwoPiecesAreSeen() {
        assertThat(breaches(pieces("plank", parts -> List.of(
                new BoardCut.OnBoard(Blank.of("a"), parts.getFirst().area(), List.of(), ""),
                new BoardCut.OnBoard(Blank.of("b"), parts.getFirst().area(), List.of(), "")))))
                .containsExactly("not one book: `a`");
    }

    /** 27 less 1 for the faces and 1 for the hollow is 25; two leaves of 9 with 3 between them take 21. */
    @Test
    void moreThicknessThanTheBoardHasIsSeen() {
        assertThat(breaches(thickness("plank", Length.ofMm(25)))).isEmpty();
        assertThat(breaches(thickness("plank", Length.ofMm(26)))).isNotEmpty();
        assertThat(breaches(thickness("plank", Length.ofMm(20)))).isNotEmpty();
    }

    /** The stave lies over a knot that its part does not take, or that comes too near its edge. */
    @Test
    void aKnotInAStaveIsSeen() {
        String text = TEXT.replace("part panel {", "part panel { takes knot;")
                .replace("size 1300 x 110 x 16;", "size 900 x 110 x 16; knot { at 600, AT; radius 9 };");
        Compilation taken = Projects.compile(text.replace("AT", "50"));
        assertThat(taken.cutting().unplaced()).isEmpty();
        assertThat(CutChecker.check(taken.joined(), taken.cutting())).isEmpty();
        Compilation clear = Projects.compile(text.replace("AT", "50").replace("takes knot;", ""));
        assertThat(CutChecker.check(clear.joined(), taken.cutting())).singleElement().asString()
                .startsWith("a knot in `panel stave ");
        Compilation low = Projects.compile(text.replace("AT", "9"));
        assertThat(CutChecker.check(low.joined(), moved(taken.cutting(), low))).singleElement().asString()
                .startsWith("a knot in `panel stave ");
    }

    /** A split that begins and ends beside a stave may still go right through it. */
    @Test
    void aSplitAcrossAStaveIsSeen() {
        String text = TEXT.replace("size 1300 x 110 x 16;",
                "size 1300 x 110 x 16; check { from 20, FROM; to 20, TO };");
        Compilation clear = Projects.compile(text.replace("FROM", "0").replace("TO", "1"));
        Compilation through = Projects.compile(text.replace("FROM", "0").replace("TO", "110"));
        Cutting moved = moved(Projects.compile(TEXT).cutting(), through);
        assertThat(CutChecker.check(through.joined(), moved)).isNotEmpty()
                .allSatisfy(each -> assertThat(each).startsWith("a check in `panel stave "));
        assertThat(CutChecker.check(clear.joined(), clear.cutting())).isEmpty();
    }

    // The layout of one project on the boards of another.
    private static Cutting moved(Cutting right, Compilation to) {
        List<BoardCut> boards = right.boards().stream()
                .map(cut -> {
                    Board board = to.joined().project().boards().stream()
                            .filter(each -> each.name().equals(cut.source().name())).findFirst().orElseThrow();
                    return new BoardCut(board, board, cut.leaf(), cut.leaves(), cut.thickness(), cut.parts(),
                            cut.strips(), cut.cuts(), cut.offcuts());
                })
                .toList();
        return new Cutting(
                boards, right.untouched(), right.unplaced(), right.areas(), right.glued(), right.gap(),
                right.proved(), right.bound(), right.moves(), right.remarks(), right.findings());
    }
}

package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.plan.Compilation;
import dev.treen.plan.Projects;
import dev.treen.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What parts take of flaws, and where; boards and parts invented. */
class FlawsTakenTest {
    private static final String BARE = "kerf 0; shooting 0; planing 0; resaw 0; end_waste 0";

    private static Cutting cut(String rest) {
        Compilation compilation = Projects.of(BARE, rest);
        assertThat(compilation.checked().findings()).isEmpty();
        return compilation.cutting();
    }

    private static String board(String size, String flaws) {
        return "board plank { species black_cherry; size " + size + " x 12; rings flat; moisture 9%; " + flaws + " }\n";
    }

    private static String shelf(String more) {
        return "part shelf { length 300; width 100; thickness 12; from plank; " + more + " }\n";
    }

    @Test
    void aPartLiesOnAKnotOnlyWhereItTakesOne() {
        String knotty = board("300 x 100", "knot { at 150, 50; radius 8 }");
        assertThat(cut(knotty + shelf("")).unplaced()).containsExactly("shelf");
        assertThat(cut(knotty + shelf("takes sapwood")).unplaced()).containsExactly("shelf");
        BoardCut.OnBoard shelf = cut(knotty + shelf("takes knot")).boards().getFirst().parts().getFirst();
        assertThat(shelf.flaws()).containsExactly("knot");
        assertThat(shelf.lay()).isEmpty();
    }

    /**
     * Common practice, no source (rules of the trade Y-02): a knot keeps r + 10 from an edge, by its middle, or r and half
     * of it if that is more.
     */
    @ParameterizedTest
    @CsvSource({"18.1, 8, 0", "17.9, 8, 1", "45.1, 30, 0", "44.9, 30, 1"})
    void aKnotThatIsTakenKeepsFromTheEdge(String across, int radius, int unplaced) {
        String knotty = board("300 x 100", "knot { at 150, " + across + "; radius " + radius + " }");
        assertThat(cut(knotty + shelf("takes knot")).unplaced()).hasSize(unplaced);
    }

    private static String housed(String flaws, String takes) {
        return "board post { species black_cherry; size 900 x 100 x 12; rings flat; moisture 9% }\n"
                + board("300 x 100", flaws)
                + "part side { length 400; width 100; thickness 12; from post;"
                + " place { length up; width back; at -12, 0, 0 } }\n"
                + "part shelf { length 296; width 100; thickness 12; from plank; " + takes
                + "; place { length right; width back; at 0, 0, 100 } }\n"
                + "joint housing shelf into side { deep 4 }\n";
    }

    /** The shelf enters the side by 4 mm at its left end and touches nothing at its right. */
    @Test
    void aPartThatIsTurnedEndForEndKeepsItsJointClear() {
        Cutting cutting = cut(housed("sapwood { at 0, 0; size 6 x 100 }", "takes sapwood"));
        BoardCut.OnBoard shelf = cutting.boards().stream()
                .flatMap(each -> each.parts().stream())
                .filter(each -> each.name().equals("shelf"))
                .findFirst()
                .orElseThrow();
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(shelf.flaws()).containsExactly("sapwood");
        assertThat(shelf.lay()).endsWith("right end to the left");
    }

    /** One statement joins both ends, so its cuts lie far apart, and the middle between them is free. */
    @Test
    void betweenTwoJointsOfOneStatementAFlawMayLie() {
        String both = housed("knot { at 150, 50; radius 8 }", "takes knot").replace("length 296", "length 292")
                .replace("joint housing shelf into side", "part far like side { place { at 292, 0, 0 } }\n"
                        + "joint housing shelf into side, far")
                .replace("deep 4 }", "deep 4; stop 10 from front }");
        assertThat(cut(both).unplaced()).isEmpty();
    }

    @Test
    void noJointIsMadeInAFlaw() {
        String both = "sapwood { at 0, 0; size 6 x 100 }; sapwood { at 294, 0; size 6 x 100 }";
        assertThat(cut(housed(both, "takes sapwood")).unplaced()).containsExactly("shelf");
    }

    /** In a joint the side has the housing, where a knot in the shelf's place is as bad as in the shelf's end. */
    @Test
    void aPartKeepsClearWhereAnotherEntersIt() {
        for (int at : List.of(50, 106, 300)) {
            String project = housed("", "").replace("size 900 x 100 x 12",
                    "size 400 x 100 x 12; knot { at " + at + ", 50; radius 5 }")
                    .replace("from post;", "from post; takes knot;");
            assertThat(cut(project).unplaced()).as("a knot at %s", at)
                    .isEmpty();
        }
        // End for end the housing lies at 288 to 300, clear of one knot at 106, but one of these two is always in it.
        String both = housed("", "").replace("size 900 x 100 x 12",
                "size 400 x 100 x 12; knot { at 106, 50; radius 5 }; knot { at 294, 50; radius 5 }")
                .replace("from post;", "from post; takes knot;");
        assertThat(cut(both).unplaced()).containsExactly("side");
    }

    @Test
    void aFlawOnOneFaceLiesOnTheFaceThatTakesIt() {
        String seen = "sapwood { at 100, 0; size 100 x 100; face upper }";
        assertThat(cut(housed(seen, "takes sapwood on bottom")).unplaced()).isEmpty();
        BoardCut.OnBoard under = cut(housed(seen, "takes sapwood on bottom")).boards().getLast().parts().getFirst();
        assertThat(under.lay()).startsWith("bottom up");
        BoardCut.OnBoard over = cut(housed(seen, "takes sapwood on top")).boards().getLast().parts().getFirst();
        assertThat(over.lay()).startsWith("top up");
        assertThat(cut(housed(seen.replace("upper", "both"), "takes sapwood on bottom")).unplaced())
                .containsExactly("shelf");
    }

    @Test
    void inAResawnBoardAFlawGoesThrough() {
        String thick = housed("sapwood { at 100, 0; size 100 x 100; face under }", "takes sapwood on bottom")
                .replace("size 300 x 100 x 12", "leaves 2; size 300 x 100 x 24");
        assertThat(cut(thick).unplaced()).containsExactly("shelf");
    }

    /** Of 62 mm two shelves of 30 come; the one that takes no knot lies beside it. */
    @Test
    void aClearPartLiesBesideTheKnotAndTheOtherOnIt() {
        Cutting cutting = cut(board("300 x 122", "knot { at 40, 30; radius 5 }")
                + "part a { length 300; width 60; thickness 12; from plank; takes knot }\n"
                + "part b { length 300; width 60; thickness 12; from plank }\n");
        assertThat(cutting.unplaced()).isEmpty();
        assertThat(cutting.boards().getFirst().parts())
                .filteredOn(each -> each.name().equals("b"))
                .allSatisfy(each -> assertThat(each.area().y()).isGreaterThanOrEqualTo(Length.ofMm(60)));
    }

    @Test
    void aRunKeepsItsJointsClearWhicheverWayItLies() {
        String run = housed("sapwood { at 0, 0; size 6 x 100 }", "takes sapwood")
                .replace("size 300 x 100", "size 340 x 100")
                + "part lip { length 40; width 100; thickness 12; from plank }\n"
                + "run shelf, lip\n";
        assertThat(cut(run).unplaced()).containsExactly("shelf", "lip");
        assertThat(cut(run.replace("at 0, 0;", "at 100, 0;")).unplaced()).isEmpty();
    }

    @Test
    void theProjectMaySayItForAllAndAPartOverrulesIt() {
        String knotty = board("300 x 100", "knot { at 150, 50; radius 8 }");
        String all = "project \"Jars\" { units mm; allow { " + BARE + " }; layout { takes knot } }\n";
        assertThat(Projects.compile(all + knotty + shelf("")).cutting().unplaced()).isEmpty();
        assertThat(Projects.compile(all + knotty + shelf("takes none")).cutting().unplaced()).containsExactly("shelf");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "takes knots|`knots` is none of them", "takes knot on left|Its faces are `bottom` and `top`",
            "takes knot from top|A face is said", "takes punky|`punky` is none", "takes knot, none|`none` is none",
            "takes 12|`12` is none"})
    void whatIsNoFlawOrNoFaceIsSaid(String takes, String found) {
        Compilation compilation = Projects.of(BARE, housed("", takes));
        assertThat(compilation.checked().findings()).hasSize(1);
        assertThat(compilation.checked().findings().getFirst().found()).contains(found);
    }
}

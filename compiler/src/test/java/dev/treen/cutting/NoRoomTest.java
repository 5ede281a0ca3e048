package dev.treen.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.plan.Projects;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Why a part has no room and what would let it in; boards and parts invented. Every change is written and tried. */
class NoRoomTest {
    private static final String BARE = "kerf 0; shooting 0; planing 0; resaw 0; end_waste 0";

    private static String head(String allow) {
        return "project \"A shelf for jars\" { units mm; tools hand; allow { " + allow + " } }\n";
    }

    private static String board(String name, String size, String more) {
        return "board " + name + " { species black_cherry; size " + size + "; rings flat; moisture 9%; " + more
                + " }\n";
    }

    private static List<Finding> findings(String text) {
        return Projects.compile(text).cutting().findings();
    }

    private static String written(String text, Remedy remedy) {
        return Edit.applied(text, remedy.edits());
    }

    /** All remedies of the one finding that are written into the text let everything in. */
    private static Finding everyEditHelps(String text, int edits) {
        List<Finding> findings = findings(text);
        assertThat(findings).hasSize(1);
        List<Remedy> writable = findings.getFirst().remedies().stream().filter(r -> !r.edits().isEmpty()).toList();
        assertThat(writable).hasSize(edits);
        for (Remedy remedy : writable) {
            assertThat(Projects.compile(written(text, remedy)).cutting().unplaced()).as(remedy.text()).isEmpty();
        }
        return findings.getFirst();
    }

    /** Between knot and end there are 195 mm, beside it 45: worked out by hand. */
    @Test
    void aKnotInTheWayTellsHowMuchSmallerThePartWouldFit() {
        String text = head(BARE) + board("plank", "400 x 100 x 12", "knot { at 200, 50; radius 5 }")
                + "part a { length 300; width 90; thickness 12; from plank }\n";
        Finding finding = everyEditHelps(text, 2);
        assertThat(finding.found()).isEqualTo(
                "On `plank` a knot stands in the way. It would fit if it were 105 mm shorter, or 45 mm narrower.");
        assertThat(finding.remedies()).extracting(Remedy::text).contains("make it 105 mm shorter")
                .anyMatch(each -> each.contains("`takes knot`"));
        String less = text.replace("length 300", "length 195.1");
        assertThat(Projects.compile(less).cutting().unplaced()).containsExactly("a");
        assertThat(Projects.compile(text.replace("from plank", "from plank; takes knot")).cutting().unplaced())
                .isEmpty();
    }

    @Test
    void onlyTheFlawThatStandsInTheWayIsNamed() {
        String text = head(BARE) + board("plank", "800 x 100 x 12",
                "sapwood { at 0, 0; size 100 x 100 }; check { from 300, 50; to 400, 50 }")
                + "part a { length 600; width 90; thickness 12; from plank }\n";
        Finding finding = findings(text).getFirst();
        assertThat(finding.found()).startsWith("On `plank` a check stands in the way.");
        assertThat(finding.related()).extracting(each -> each.at().text())
                .singleElement().asString().startsWith("check");
    }

    @Test
    void flawsThatOnlyTogetherStandInTheWayAreSaidSo() {
        String text = head(BARE) + board("plank", "400 x 100 x 12",
                "knot { at 150, 50; radius 5 }; knot { at 250, 50; radius 5 }")
                + "part a { length 300; width 90; thickness 12; from plank }\n";
        assertThat(findings(text).getFirst().found()).startsWith("On `plank` flaws stand in the way together.");
    }

    /** Two parts of 300 and a kerf of 2 need 602; there are 600. */
    @Test
    void besideOthersItTellsTheNearestChangeToo() {
        Finding finding = everyEditHelps(head(BARE.replace("kerf 0", "kerf 2")) + board("plank", "600 x 100 x 12", "")
                + "part a { length 300; width 100; thickness 12; from plank }\n"
                + "part b { length 300; width 100; thickness 12; from plank }\n", 1);
        assertThat(finding.found()).contains("It would fit if it were 2 mm shorter.");
    }

    @Test
    void inInchesItKeepsToTheMarksOfTheRule() {
        String text = "project \"Jars\" { units in; tools hand; allow { " + BARE.replace("kerf 0", "kerf 1/10in")
                + " } }\n"
                + board("plank", "24 x 4 x 1/2", "")
                + "part a { length 12; width 4; thickness 1/2; from plank }\n"
                + "part b { length 12; width 4; thickness 1/2; from plank }\n";
        assertThat(everyEditHelps(text, 1).found()).contains("1/8 in shorter");
    }

    @Test
    void anotherBoardThatHasRoomIsNamed() {
        String text = head(BARE) + board("plank", "400 x 100 x 12", "knot { at 200, 50; radius 5 }")
                + board("thin", "900 x 100 x 8", "") + board("short", "200 x 100 x 12", "")
                + board("spare", "400 x 100 x 12", "")
                + "part a { length 300; width 90; thickness 12; from plank }\n";
        Finding finding = findings(text).getFirst();
        assertThat(finding.remedies()).extracting(Remedy::text).anyMatch(each -> each.contains("`from spare`"))
                .noneMatch(each -> each.contains("thin") || each.contains("from short"));
        assertThat(Projects.compile(text.replace("from plank", "from spare")).cutting().unplaced()).isEmpty();
    }

    /** Three parts go on a board; of five left over, one more takes three and two take all. */
    @Test
    void tellsHowFarOneMoreBoardGoes() {
        StringBuilder text = new StringBuilder(head(BARE) + board("plank", "900 x 100 x 12", ""));
        for (int i = 0; i < 8; i++) {
            text.append("part a").append(i).append(" { length 300; width 100; thickness 12; from plank }\n");
        }
        List<Finding> findings = findings(text.toString());
        assertThat(findings).hasSize(5);
        assertThat(findings.getFirst().found())
                .contains("of the 5 parts without room it takes 3, and 2 such boards take all");
        String one = text + board("more", "900 x 100 x 12", "");
        assertThat(Projects.compile(one.replace("; from plank", "")).cutting().unplaced()).hasSize(2);
    }

    @Test
    void aSharedFigureIsNotWrittenAnew() {
        String text = head(BARE) + board("plank", "400 x 100 x 12", "knot { at 200, 50; radius 5 }")
                + board("other", "400 x 100 x 12", "")
                + "part a { length 300; width 90; thickness 12; from plank }\npart b like a { from other }\n";
        Finding finding = findings(text).getFirst();
        assertThat(finding.found()).contains("105 mm shorter");
        assertThat(finding.remedies()).allMatch(each -> each.edits().isEmpty());
    }

    @Test
    void aRunTellsTheChangeThatLetsItIn() {
        String text = head(BARE.replace("kerf 0", "kerf 1")) + board("plank", "600 x 100 x 12", "")
                + "part a { length 300; width 100; thickness 12; from plank }\n"
                + "part b { length 306; width 100; thickness 12; from plank }\nrun a, b\n";
        List<Finding> findings = findings(text);
        assertThat(findings).hasSize(2);
        assertThat(findings.getFirst().found()).contains("It would fit if it were 7 mm shorter");
    }

    /** The knot is 20 from the edge of the part, and so nearer than its 10 and half its radius: taking it does not help. */
    @Test
    void aFlawIsOnlyOfferedWhereTakingItHelps() {
        String text = head(BARE) + board("plank", "300 x 100 x 12", "knot { at 150, 8; radius 6 }")
                + "part a { length 300; width 100; thickness 12; from plank }\n";
        assertThat(findings(text).getFirst().remedies()).extracting(Remedy::text)
                .noneMatch(each -> each.contains("takes"));
        assertThat(findings(text.replace("at 150, 8", "at 150, 50")).getFirst().remedies()).extracting(Remedy::text)
                .anyMatch(each -> each.contains("`takes knot`") && each.endsWith("it has room then"));
    }

    @Test
    void aBoardThatIsAllFlawsSaysSo() {
        String text = head(BARE) + board("plank", "300 x 100 x 12", "worm { at 150, 50; radius 400 }")
                + "part a { length 200; width 90; thickness 12; from plank }\n";
        assertThat(findings(text).getFirst().found())
                .isEqualTo("On `plank` a worm stands in the way. No place on it is clear of flaws.");
    }

    /** 150 wide of boards of 100 are two staves of 75; in boards of 12 there is no room for two of them. */
    @Test
    void whatIsTooWideIsOfferedStavesWhereTheyHaveRoom() {
        String text = head(BARE) + board("plank", "620 x 100 x 12", "")
                + "part a { length 300; width 150; thickness 12 }\n";
        assertThat(findings(text).getFirst().remedies()).extracting(Remedy::text)
                .anyMatch(each -> each.contains("`glue_up { }`"));
        assertThat(Projects.compile(text.replace("12 }\n", "12; glue_up { } }\n")).cutting().unplaced()).isEmpty();
        assertThat(findings(text.replace("620", "420")).getFirst().remedies()).extracting(Remedy::text)
                .noneMatch(each -> each.contains("glue_up"));
    }
}

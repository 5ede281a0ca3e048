package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Severity;
import dev.treen.joinery.GrainRing;
import dev.treen.page.Labels;
import dev.treen.plan.Compilation;
import dev.treen.plan.LayoutSvg;
import dev.treen.plan.Plan;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where a run of grain round a box begins and ends. The grain goes round the corners but one: Noyes, Handwork in Wood (1910),
 * ch. IX; that the odd corner belongs at the back is common practice, no source. The boxes are invented.
 */
class GrainBreaksTest {
    private static final String CODE = "grain-breaks-in-view";

    private static final String BOX = """
            project "Recipe box" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board plank { species black_cherry; size 1200 x 140 x 20; rings flat; moisture 9% }
            part front { length 160; width 60; thickness 9; from plank; place { length right; width up; at 0, -9, 0 } }
            part back like front { place { at 0, 80, 0 } }
            part left { length 80; width 60; thickness 9; from plank; place { length back; width up; at -9, 0, 0 } }
            part right like left { place { at 160, 0, 0 } }
            joint mitre front to left, left to back, back to right, right to front
            run front, right, back, left
            """;

    /** The same walls, the ends between the long ones, their faces an odd size apart. */
    private static final String BUTTED = """
            project "Crate" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board plank { species black_cherry; size 1200 x 140 x 20; rings flat; moisture 9% }
            part front { length 178; width 60; thickness 9; from plank; place { length right; width up; at 0, 0, 0 } }
            part back like front { place { at 0, 89, 0 } }
            part left { length 80; width 60; thickness 9; from plank; place { length back; width up; at 0, 9, 0 } }
            part right like left { place { at 169, 9, 0 } }
            run front, right, back, left
            """;

    private static Bench bench(String text, String run) {
        return Bench.of(text.replaceFirst("run [a-z, ]+\n", "run " + run + "\n"));
    }

    private static List<GrainRing> rings(Bench bench) {
        return GrainRing.of(bench.joined());
    }

    private static Plan plan(String text) {
        return Compilation.of(new SourceFile("kitchen.treen", text), (path, from) -> Optional.empty()).plan();
    }

    /** All four turns, both ways round. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            front, right, back, left | at the front left corner  | true
            right, back, left, front | at the front right corner | true
            back, left, front, right | at the back right corner  | false
            left, front, right, back | at the back left corner   | false
            front, left, back, right | at the front right corner | true
            left, back, right, front | at the front left corner  | true
            back, right, front, left | at the back left corner   | false
            right, front, left, back | at the back right corner  | false
            """)
    void theOddCornerIsKnownAndToldWhereItIsInView(String run, String place, boolean inView) {
        for (String text : List.of(BOX, BUTTED)) {
            Bench bench = bench(text, run);
            assertThat(rings(bench)).singleElement().satisfies(ring -> {
                assertThat(ring.odd().place()).isEqualTo(place);
                assertThat(ring.odd().one()).isEqualTo(run.substring(run.lastIndexOf(' ') + 1));
                assertThat(ring.odd().other()).isEqualTo(run.substring(0, run.indexOf(',')));
                assertThat(ring.corners()).extracting(GrainRing.Corner::place).doesNotHaveDuplicates();
            });
            assertThat(bench.codes().contains(CODE)).as(run).isEqualTo(inView);
        }
    }

    /** The fix turns the ring and keeps the way round; the order as written stays otherwise. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            front, right, back, left | left, front, right, back
            right, back, left, front | left, front, right, back
            front, left, back, right | back, right, front, left
            left, back, right, front | back, right, front, left
            """)
    void theFixTurnsTheRunToTheBackLeft(String run, String turned) {
        Bench bench = bench(BOX, run);
        Finding finding = bench.finding(CODE);
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.remedies().getFirst().text()).contains("`run " + turned + "`").contains("back left");
        Bench mended = bench.applied(finding.remedies().getFirst());
        assertThat(mended.text()).contains("run " + turned + "\n");
        assertThat(mended.codes()).doesNotContain(CODE);
        assertThat(rings(mended).getFirst().odd().place()).isEqualTo("at the back left corner");
    }

    @Test
    void theFixKeepsWhatStandsBetweenTheNames() {
        Bench bench = bench(BOX, "front,  right , back,left");
        assertThat(Edit.applied(bench.text(), bench.finding(CODE).remedies().getFirst().edits()))
                .contains("run left,  front , right,back\n");
    }

    @Test
    void theAuthorMayMeanIt() {
        assertThat(
                Bench.of(BOX + "accept grain-breaks-in-view on front because \"it stands with its back to the room\"\n")
                        .codes())
                .doesNotContain(CODE, "accept-matches-nothing");
    }

    @ParameterizedTest
    @ValueSource(strings = {"front, right, back", "front, back, left, right", "front, right", "left, right, front"})
    void whatDoesNotGoRoundIsNoRing(String run) {
        Bench bench = bench(BOX, run);
        assertThat(rings(bench)).isEmpty();
        assertThat(bench.codes()).doesNotContain(CODE);
    }

    /** One wall stands off by 1 mm; one has its grain upright; two are glued from staves; none has a place. */
    @Test
    void wallsThatDoNotMeetEndToEndAreNoRing() {
        assertThat(rings(Bench.of(BUTTED.replace("at 0, 9, 0", "at 0, 10, 0").replace("length 80", "length 78"))))
                .isEmpty();
        assertThat(rings(Bench.of(BUTTED.replace(
                "part left { length 80; width 60; thickness 9; from plank; place { length back; width up; at 0, 9, 0 } }",
                "part left { length 60; width 80; thickness 9; from plank; place { length up; width back; at 0, 9, 0 } }"))))
                .isEmpty();
        assertThat(rings(Bench.of(BUTTED.replace("part front { ", "part front { glue_up { staves 2 }; ")))).isEmpty();
        assertThat(rings(
                Bench.of(BUTTED.replaceAll("; place \\{[^}]*} }", " }").replaceAll("\\{ place \\{[^}]*} }", "{ }"))))
                .isEmpty();
    }

    /** A frame's members lie flat in the ring: their grain turns at each mitre, and nothing goes on round it. */
    @Test
    void aFrameIsNoRing() {
        assertThat(rings(Bench.of("""
                project "Frame" { units mm }
                board plank { species black_cherry; size 2400 x 140 x 20; rings flat; moisture 9% }
                part top { length 300; width 40; thickness 15; from plank; place { length right; width up; at 0, 0, 360 } }
                part foot like top { place { at 0, 0, 0 } }
                part left { length 320; width 40; thickness 15; from plank; place { length up; width right; at 0, 0, 40 } }
                part right like left { place { at 260, 0, 40 } }
                run top, right, foot, left
                """))).isEmpty();
    }

    /** An upright case has no corner at the back: its odd corner is told, and nothing is asked for. */
    @Test
    void aCaseWhoseGrainGoesRoundOverTheTopIsToldAndLeftAlone() {
        Bench bench = Bench.of("""
                project "Case" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 2400 x 140 x 20; rings flat; moisture 9% }
                part left { length 300; width 100; thickness 15; from plank; place { length up; width back; at 0, 0, 0 } }
                part right like left { place { at 385, 0, 0 } }
                part foot { length 370; width 100; thickness 15; from plank; place { length right; width back; at 15, 0, 0 } }
                part top like foot { place { at 15, 0, 285 } }
                run foot, left, top, right
                """);
        assertThat(rings(bench).getFirst().odd().place()).isEqualTo("at the bottom right corner");
        assertThat(bench.codes()).doesNotContain(CODE);
    }

    /** The long walls of a trough are two boards each: the ring has six parts, and two of its breaks lie in no corner. */
    @Test
    void aRingOfSixPartsMayBreakInTheMiddleOfAWall() {
        Bench bench = Bench.of("""
                project "Trough" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 3000 x 140 x 20; rings flat; moisture 9% }
                part front_a { length 300; width 60; thickness 15; from plank; place { length right; width up; at 0, 0, 0 } }
                part front_b like front_a { place { at 300, 0, 0 } }
                part back_a like front_a { place { at 0, 200, 0 } }
                part back_b like front_a { place { at 300, 200, 0 } }
                part left { length 185; width 60; thickness 15; from plank; place { length back; width up; at 0, 15, 0 } }
                part right like left { place { at 585, 15, 0 } }
                run front_b, right, back_b, back_a, left, front_a
                """);
        assertThat(rings(bench).getFirst().odd().place()).isEqualTo("at the front");
        assertThat(bench.finding(CODE).found()).contains("5 places");
        assertThat(bench.finding(CODE).remedies().getFirst().text())
                .contains("`run left, front_a, front_b, right, back_b, back_a`");
    }

    /** The front is that of the project, not that of the thing as its pattern has it. */
    @ParameterizedTest
    @CsvSource({"front,at the front left corner", "right,at the front right corner", "back,at the back right corner",
            "left,at the back left corner"})
    void aTurnedBoxBreaksWhereItStands(String facing, String place) {
        Bench bench = Bench.of("""
                project "Crates" { units mm; climate { humidity 35%%..65%%; temperature 18degC..24degC } }
                board plank { species black_cherry; size 1200 x 140 x 20; rings flat; moisture 9%% }
                pattern crate {
                  part front { length 178; width 60; thickness 9; place { length right; width up; at 0, 0, 0 } }
                  part back like front { place { at 0, 89, 0 } }
                  part left { length 80; width 60; thickness 9; place { length back; width up; at 0, 9, 0 } }
                  part right like left { place { at 169, 9, 0 } }
                }
                crate tub { from plank; run front, right, back, left; place { at 0, 0, 0; facing %s } }
                """.formatted(facing));
        GrainRing ring = rings(bench).getFirst();
        assertThat(ring.odd().place()).isEqualTo(place);
        assertThat(ring.odd().one()).isEqualTo("tub.left");
        assertThat(bench.codes().contains(CODE)).isEqualTo(place.contains("front"));
        bench.checked().findings().stream()
                .filter(finding -> finding.code().equals(CODE))
                .forEach(finding -> assertThat(bench.applied(finding.remedies().getFirst()).codes())
                        .doesNotContain(CODE));
    }

    /** Marking out, layout and labels tell the corner; a run that is no ring says nothing of one. */
    @Test
    void thePlanTellsTheCorner() {
        Plan plan = plan(BOX.replaceFirst("run [a-z, ]+\n", "run left, front, right, back\n"));
        assertThat(plan.findings()).extracting(Finding::kind).extracting(FindingKind::code).doesNotContain(CODE);
        String told = "the grain runs on through `left`, `front`, `right`, `back`: it meets at 3 corners, and does not at the"
                + " back left corner, between `back` and `left`; lay all outer faces up, ends that meet side by side";
        assertThat(plan.order().steps().stream().flatMap(step -> step.operation().how().stream()))
                .containsOnlyOnce(told);
        assertThat(LayoutSvg.of(plan.joined(), plan.cutting().boards().getFirst()).replaceAll("\\s+", " "))
                .contains("it meets at 3 corners, and does not at the back left corner, between back and left.");
        assertThat(Jsoup.parse(Labels.of(plan)).select(".ring").eachText()).containsExactly(
                "grain meets left, right", "grain meets right, not left", "grain meets front, not back",
                "grain meets front, back");
        Plan open = plan(BOX.replaceFirst("run [a-z, ]+\n", "run front, right, back\n"));
        assertThat(open.order().steps().stream().flatMap(step -> step.operation().how().stream()))
                .noneMatch(how -> how.contains("corners"));
        assertThat(Labels.of(open)).doesNotContain("grain meets");
    }
}

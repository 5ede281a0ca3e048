package dev.treen.check;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.FindingPage;
import dev.treen.finding.Remedy;
import dev.treen.joinery.JoineryFindings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every rule of movement, fit and strength: the right project is silent, the wrong one caught, and where there is a fix to
 * apply, it makes the project pass. The table goes to {@code target/rules.md}. The projects are invented.
 */
class EveryRuleTest {
    private static final List<String> TABLE = new ArrayList<>();

    /**
     * One rule on one project.
     *
     * @param source of the threshold
     * @param right a project that is silent
     * @param from what is changed in it
     * @param to into the mistake
     */
    record Rule(String number, String code, String source, String right, String from, String to) {
        Bench wrong() {
            return Bench.of(right).with(from, to);
        }

        /** The two projects of the finding's own page. */
        static Rule ofPage(String number, FindingKind kind, String source) {
            FindingPage page = FindingPage.of(kind).orElseThrow();
            String right = project(page.text(FindingPage.Section.GOOD));
            return new Rule(number, kind.code(), source, right, right, project(page.text(FindingPage.Section.BAD)));
        }

        private static String project(String section) {
            return section.substring(section.indexOf('\n') + 1, section.lastIndexOf("```"));
        }

        @Override
        public String toString() {
            return number + " " + code;
        }
    }

    private static final String CLIMATE = "climate { humidity 35%..65%; temperature 18degC..24degC }";

    private static final String PANEL = """
            project "Cupboard door" { %s }
            board oak { species white_oak_commercial_group; size 2000 x 400 x 40; rings flat; moisture 8%% }
            part low   { length 500; width 40; thickness 30; from oak; place { length right; width back; at 0, 0, -30 } }
            part high  like low { place { at 0, 0, 300 } }
            part panel { length 500; width 300; thickness 8; from oak; place { length right; width up; at 0, 16, 0 } }
            joint groove panel into low, high { wide 6; deep 10; gap 3; shoulder_gap 3 }
            """.formatted(CLIMATE);

    private static final String BOX = Bench.caddy().text();

    private static final String LID = """
            project "Bread box" { %s }
            board cherry { species black_cherry; size 2000 x 300 x 40; rings flat; moisture 9%% }
            part lid    { length 400; width 280; thickness 15; from cherry; place { length right; width back; at 0, 0, 0 } }
            part batten { length 60; width 40; thickness 15; from cherry; place { length back; width right; at 50, 0, -15 } }
            joint butt batten to lid
            """.formatted(CLIMATE);

    private static final String TOP = """
            project "Hall table" { %s }
            board ash { species white_ash; size 2000 x 450 x 40; rings flat; moisture 8%% }
            part top   { length 900; width 400; thickness 20; from ash; place { length right; width back; at 0, 0, 0 } }
            part front { length 800; width 80; thickness 20; from ash; place { length right; width up; at 50, 20, -80 } }
            part back  like front { place { at 50, 360, -80 } }
            part side  { length 320; width 80; thickness 20; from ash; place { length back; width up; at 50, 40, -80 } }
            joint butt front to side, back to side
            joint butt top to front
            """.formatted(CLIMATE);

    private static final String CASE = """
            project "Spice case" { %s }
            board cherry { species black_cherry; size 2000 x 420 x 40; rings flat; moisture 9%% }
            board oak    { species red_oak_commercial_group; size 2000 x 420 x 40; rings flat; moisture 9%% }
            part side  { length 500; width 400; thickness 20; from cherry; place { length up; width back; at -20, 0, 0 } }
            part shelf { length 300; width 400; thickness 20; from cherry; place { length right; width back; at 0, 0, 100 } }
            joint housing shelf into side { deep 5 }
            """.formatted(CLIMATE);

    private static final String BACK = """
            project "Case back" { %s }
            board pine { species eastern_white_pine; size 2000 x 120 x 20; rings flat; moisture 8%% }
            part one   { length 800; width 90; thickness 12; from pine; place { length up; width right; at 0, 0, 0 } }
            part two   like one { place { at 90, 0, 0 } }
            part three like one { place { at 180, 0, 0 } }
            joint groove one into two, two into three { wide 4; deep 6; gap 1.2; shoulder_gap 1.2 }
            """.formatted(CLIMATE);

    private static final String DRAWER = """
            project "Drawer" { %s }
            board pine { species eastern_white_pine; size 2000 x 420 x 40; rings flat; moisture 9%% }
            part front  { length 400; width 100; thickness 20; from pine; place { length right; width up; at 0, -20, 0 } }
            part side   { length 380; width 100; thickness 12; from pine; place { length back; width up; at -12, 0, 0 } }
            part back   { length 400; width 70; thickness 12; from pine; place { length right; width up; at 0, 362, 18 } }
            part bottom { length 400; width 380; thickness 6; from pine; place { length right; width back; at 0, 0, 12 } }
            joint groove bottom into front, side { wide 6; deep 4; gap auto }
            joint housing back into side { deep 3 }
            """.formatted(CLIMATE);

    private static final String SHELF = Bench.shelf().text();

    private static final String DOOR = """
            project "Kitchen cupboard" { %s }
            board cherry { species black_cherry; size 2400 x 450 x 40; rings flat; moisture 8%% }
            part left   { length 700; width 60; thickness 20; from cherry; place { length up; width right; at -60, 0, 0 } }
            part right  like left { place { at 400, 0, 0 } }
            part door   { length 700; width 400; thickness 20; from cherry; place { length up; width right; at 0, 0, 0 } }
            joint inset door into left, right { gap 5.2; hinge left }
            """.formatted(CLIMATE);

    private static final String STICK = """
            project "Stool" { %s }
            board ash { species american_beech; size 2000 x 120 x 60; moisture 8%% }
            part leg  { length 400; width 40; thickness 40; from ash; rings 10deg; place { length up; width right; at 0, 0, 0 } }
            part rail { length 300; width 20; thickness 20; from ash; place { length right; width up; at 40, 0, 100 } }
            joint butt rail to leg
            """.formatted(CLIMATE);

    private static final String FRAME = """
            project "Picture frame" { %s }
            board cherry { species black_cherry; size 2000 x 100 x 30; rings quarter; moisture 9%% }
            let wide = 15
            part foot { length 200; width wide; thickness 12; from cherry; place { length right; width up; at 0, 0, -wide } }
            part head like foot { place { at 0, 0, 200 } }
            part near { length 200; width wide; thickness 12; from cherry; place { length up; width right; at -wide, 0, 0 } }
            part far like near { place { at 200, 0, 0 } }
            joint mitre foot to near, near to head, head to far, far to foot
            """.formatted(CLIMATE);

    private static final String RACK = """
            project "Spice rack" { %s }
            board cherry { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9%% }
            part shelf   { length 300; width 80; thickness 12; from cherry; place { length right; width back; at 0, 0, 100 } }
            part upright { length 100; width 80; thickness 12; from cherry; place { length up; width back; at 140, 0, 0 } }
            """.formatted(CLIMATE);

    private static final String PEG = """
            project "Tray" { %s }
            board cherry { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9%% }
            part side  { length 300; width 60; thickness 18; from cherry; place { length right; width up; at 0, -18, 0 } }
            part panel { length 200; width 100; thickness 8; from cherry; place { length right; width back; at 0, 0, 20 } }
            part peg   { length 40; width 30; thickness 6; from cherry; place { length back; width right; at 240, 0, 32 } }
            joint groove panel into side { wide 8; deep 6; gap auto; stop 6 from right }
            joint butt peg to side
            """.formatted(CLIMATE);

    private static final String STAND = """
            project "Stand" { %s }
            board ash { species white_ash; size 1200 x 140 x 30; rings flat; moisture 9%% }
            part side { length 200; width 100; thickness 20; from ash; place { length back; width up; at -20, 0, 0 } }
            part post { length 200; width 100; thickness 20; from ash; place { length up; width right; at -20, 200, 20 } }
            part foot { length 200; width 80; thickness 20; from ash; place { length right; width back; at 0, 140, 0 } }
            joint mortise_tenon side into post { shoulder 25; haunch 0 }
            joint mortise_tenon post into foot { shoulder 25; haunch 0 }
            """.formatted(CLIMATE);

    private static final String SLIDING = """
            project "Pencil box" { %s }
            board ash { species white_ash; size 1200 x 140 x 30; rings flat; moisture 9%% }
            part left { length 100; width 30; thickness 10; from ash; place { length back; width up; at -10, 0, 0 } }
            part right { length 100; width 30; thickness 10; from ash; place { length back; width up; at 60, 0, 0 } }
            part lid { length 60; width 100; thickness 6; from ash; place { length right; width back; at 0, 0, 12 } }
            part stop { length 60; width 12; thickness 10; from ash; place { length right; width up; at 0, -10, 0 } }
            joint groove lid into left, right { wide 6; deep 3; gap auto; slide front }
            """.formatted(CLIMATE);

    private static final String CARRIER = """
            project "Jar carrier" { %s }
            board ash { species white_ash; size 2400 x 180 x 22; rings rift; moisture 9%% }
            part base { length 360; width 140; thickness 16; from ash; place { length right; width back; at 0, 0, 0 } }
            part lip { length 360; width 20; thickness 16; from ash; place { length right; width back; at 0, -20, 0 } }
            part partition { length 80; width 140; thickness 16; from ash; place { length up; width back; at 172, 0, 16 } }
            joint dowel lip to base { count 4 }
            joint dowel partition to base { count 3; thick 6 }
            """.formatted(CLIMATE);

    private static final String TRAYS = """
            project "Two trays" { %s }
            board cherry { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9%% }
            part wall { length 120; width 60; thickness 12; from cherry; place { length back; width up; at 0, 0, 0 } }
            part near { length 100; width 120; thickness 6; from cherry; place { length right; width back; at -100, 0, 20 } }
            part far like near { place { at 12, 0, 20 } }
            joint groove near into wall { wide 6; deep 4; gap 0.5 }
            joint groove far into wall { wide 6; deep 4; gap 0.5 }
            """.formatted(CLIMATE);

    static Stream<Rule> rules() {
        return Stream.of(
                new Rule("M-01", "climate-out-of-range", "Wood Handbook ch. 4, printed range", BOX, "35%..65%",
                        "2%..65%"),
                new Rule("M-01", "climate-assumed", "Wood Handbook ch. 13; common practice, no source", BOX,
                        "climate  { humidity 35%..65%; temperature 18degC..24degC }", ""),
                new Rule("M-01", "moisture-out-of-range", "Wood Handbook ch. 4", BOX, "moisture 9%", "moisture 60%"),
                new Rule("M-02", "unknown-species", "Wood Handbook Table 13-5", BOX, "black_cherry", "blak_cherry"),
                new Rule("M-03", "rings-contradict", "common practice, no source", BOX, "thickness 7; from plank",
                        "thickness 7; from plank; rings quarter"),
                new Rule("M-04", "leg-diamonds", "derived; common practice, no source", STICK, "rings 10deg",
                        "rings 45deg"),
                new Rule("M-05", "panel-tight", "derived; common practice, no source", PANEL, "gap 3;", "gap 1;"),
                new Rule("M-06", "panel-loose", "derived; common practice, no source", PANEL, "gap 3;", "gap 4.9;"),
                new Rule("M-07", "shoulder-tight", "derived; common practice, no source", PANEL, "shoulder_gap 3",
                        "shoulder_gap 1"),
                new Rule("M-10", "drawer-bottom-short", "derived; common practice, no source", DRAWER, "width 380",
                        "width 365"),
                new Rule("M-11", "drawer-sticks", "derived; common practice, no source",
                        DOOR.replace("hinge left", "runs front"),
                        "gap 5.2", "gap 1"),
                new Rule("M-12", "cross-grain-glue", "Fairham; common practice, no source", LID, "length 60; width 40",
                        "length 280; width 40"),
                new Rule("M-13", "door-binds", "derived; common practice, no source", DOOR, "gap 5.2", "gap 2"),
                new Rule("M-14", "lid-jams", "derived; common practice, no source", DOOR.replace("; hinge left", ""),
                        "gap 5.2", "gap 1"),
                new Rule("M-15", "mitre-opens", "derived; common practice, no source", FRAME, "let wide = 15",
                        "let wide = 90"),
                new Rule("J-02", "mitre-unequal", "derived", BOX, "length inside.width; width 84; thickness wall",
                        "length inside.width; width 84; thickness 8"),
                new Rule("M-17", "cups", "Fairham; derived; common practice, no source",
                        "project \"Board\" { " + CLIMATE + " }\nboard wide { species black_cherry; size 900 x 320 x 45;"
                                + " rings flat; moisture 9%; heart 500 }\npart seat { length 800; width 300; thickness 40;"
                                + " from wide }\n",
                        "heart 500", "heart 80"),
                new Rule("M-18", "resaw-moves", "derived", BOX.replace("moisture 9%", "moisture 9%; core 10%"),
                        "core 10%",
                        "core 14%"),
                new Rule("M-20", "back-buckles", "derived; common practice, no source", BACK,
                        "wide 4; deep 6; gap 1.2; shoulder_gap 1.2", "wide 4; deep 6; gap 1.2; shoulder_gap 0.4"),
                new Rule("M-21", "carcase-fights", "derived; common practice, no source", CASE,
                        "thickness 20; from cherry; place { length right",
                        "thickness 20; from oak; place { length right"),
                new Rule("J-03", "rebate-too-deep", "common practice, no source",
                        BOX.replace("joint mitre front to left, left to back, back to right, right to front",
                                "joint rebate left into front, back { lip 4.5 }\njoint rebate right into front, back { lip 4.5 }"),
                        "lip 4.5", "lip 1"),
                new Rule("M-23", "not-acclimatised", "common practice, no source; Franklin gluing guide", BOX,
                        "moisture 9%", "moisture 14%"),
                new Rule("M-24", "one-face-finished", "common practice, no source",
                        BOX.replace("thickness 7; from plank", "thickness 7; from plank; finish both"),
                        "finish both", "finish one"),
                new Rule("M-25", "two-fixed-lines", "derived; common practice, no source", TOP,
                        "joint butt top to front\n",
                        "joint butt top to front, top to back\n"),
                new Rule("Y-08", "staves-step", "derived; Architectural Woodwork Standards 2009",
                        "project \"Board\" { " + CLIMATE + " }\nboard glued { species sugar_maple; size 900 x 320 x 80;"
                                + " rings flat, flat; moisture 9% }\npart top { length 800; width 300; thickness 75;"
                                + " from glued }\n",
                        "rings flat, flat", "rings flat, 90deg"),
                new Rule("F-03", "mitre-needs-care", "derived; Architectural Woodwork Standards 2009",
                        FRAME.replace("rings quarter", "rings 90deg").replace("9% }", "9% }").replace("35%..65%",
                                "45%..52%"),
                        "let wide = 15", "let wide = 80"),
                new Rule("F-05", "square-needed", "derived; common practice, no source", PANEL, "length 500",
                        "length 1200"),
                new Rule("S-01", "shelf-sags", "Wood Handbook ch. 9; Architectural Woodwork Standards 2009",
                        SHELF.replace("thickness 5/8; from oak", "thickness 5/8; from oak; carries 4kg"), "carries 4kg",
                        "carries 60kg"),
                new Rule("S-01", "end-grain-carries", "Wood Handbook ch. 10",
                        SHELF.replace(
                                "joint housing shelf into side_left, side_right { deep auto; stop 3/8 from front }",
                                "joint housing shelf into side_left, side_right { deep auto }"),
                        "joint housing shelf into side_left, side_right { deep auto }",
                        "joint butt shelf to side_left, shelf to side_right"),
                new Rule("solids", "parts-clash", "derived", RACK, "part upright { length 100",
                        "part upright { length 200"),
                new Rule("solids", "joint-touches-nothing", "derived", PEG, "at 240, 0, 32", "at 240, 0, 21"),
                new Rule("solids", "cannot-go-together", "derived", STAND,
                        "joint mortise_tenon post into foot { shoulder 25; haunch 0 }",
                        "joint mortise_tenon post into foot, foot into side { shoulder 25; haunch 0 }"),
                new Rule("solids", "cannot-slide-out", "derived", SLIDING, "width 12; thickness 10",
                        "width 30; thickness 10"),
                Rule.ofPage("M-09", joinery("button-lets-go"), "derived; common practice, no source"),
                Rule.ofPage("S-04", joinery("fastener-pulls-out"), "Wood Handbook ch. 8"),
                Rule.ofPage("S-05", joinery("will-split"), "common practice, no source"),
                Rule.ofPage("S-07", new LidGrip().kinds().getFirst(), "common practice, no source"),
                Rule.ofPage("F-08", new ContentsFit().kinds().getFirst(), "derived; common practice, no source"),
                Rule.ofPage("F-08", new ContentsFit().kinds().getLast(), "derived; common practice, no source"),
                new Rule("J-05c", "groove-shows", "derived; common practice, no source", BOX,
                        "joint mitre front to left, left to back, back to right, right to front",
                        "joint butt front to left, front to right, back to left, back to right"),
                new Rule("solids", "cuts-meet", "derived", CARRIER, "count 4", "count 3"),
                new Rule("J-a", "wall-too-thin", "common practice, no source", TRAYS, "deep 4", "deep 5"),
                new Rule("S-06", "needs-anchor", "common practice, no source; ASTM F2057-23 by 16 CFR 1261", SHELF,
                        "length 24; width 6; thickness 3/4", "length 40; width 6; thickness 3/4"));
    }

    private static FindingKind joinery(String code) {
        return Stream.concat(JoineryFindings.all().stream(), Checks.kinds().stream())
                .filter(kind -> kind.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theRightProjectIsSilentTheWrongOneCaughtAndItsFixPasses(Rule rule) {
        assertThat(Bench.of(rule.right()).codes()).as("the right project").isEmpty();
        Bench wrong = rule.wrong();
        assertThat(wrong.codes()).as("the wrong project").contains(rule.code());
        Finding finding = wrong.finding(rule.code());
        assertThat(finding.found() + finding.because()).isNotBlank();
        Optional<Remedy> fix = finding.remedies().stream().filter(r -> !r.edits().isEmpty()).findFirst();
        fix.ifPresent(remedy -> assertThat(wrong.applied(remedy).codes()).as("mended").doesNotContain(rule.code()));
        TABLE.add("| " + rule.number() + " | `" + rule.code() + "` | " + rule.source() + " | yes | yes | "
                + (fix.isPresent() ? "yes" : "no fix to apply") + " |");
    }

    /** No code of the rules of movement, fit and strength is without a row. */
    @Test
    void everyCodeOfTheseRulesHasARow() {
        List<Check> ofTheseRules = List.of(new KnownSpecies(), new RingsContradict(), new TooWet(), new PanelTight(),
                new PanelLoose(), new ShoulderTight(), new DrawerBottomShort(), new OpeningTight(),
                new CrossGrainGlue(),
                new MitreOpens(), new Cups(), new ResawMoves(), new BackBuckles(), new CarcaseFights(),
                new LegDiamonds(),
                new NotAcclimatised(), new OneFaceFinished(), new TwoFixedLines(), new StavesStep(), new MakingErrors(),
                new ShelfSags(), new EndGrainCarries(), new NeedsAnchor());
        List<BodyCheck> ofBodies = List.of(new PartsClash(), new JointTouches(), new SlidesOut(), new GrooveShows(),
                new CutsMeet(), new WallThin());
        List<String> rows = rules().map(Rule::code).toList();
        assertThat(Stream.concat(
                ofTheseRules.stream().flatMap(check -> check.kinds().stream()),
                ofBodies.stream().flatMap(check -> check.kinds().stream())).map(FindingKind::code))
                .allMatch(rows::contains);
    }

    @AfterAll
    static void writeTheTable() throws IOException {
        List<String> lines = new ArrayList<>(List.of(
                "| rule | code | source of the threshold | right one silent | wrong one caught | fix makes it pass |",
                "| --- | --- | --- | --- | --- | --- |"));
        lines.addAll(TABLE.stream().sorted().toList());
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target", "rules.md"), lines);
    }
}

package dev.treen.joinery;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Finding;
import dev.treen.model.FileLoader;
import dev.treen.order.Step;
import dev.treen.plan.Compilation;
import dev.treen.quantity.Length;
import dev.treen.solid.Overlap;
import dev.treen.solid.Solid;
import dev.treen.source.SourceFile;
import java.util.List;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mortise and tenon, buttons and breadboard ends. Proportions: Noyes, Handwork in Wood, nos. 42 and 48; Fairham, Woodwork
 * Joints; Port Townsend School of Woodworking by report. Volumes are reckoned by hand.
 */
final class TenonedJointsTest {
    private static final String PROJECT = """
            project "Frame" { units mm; climate { humidity 35%..60%; temperature 18degC..24degC } }
            board oak { species white_oak; size 3000 x 420 x 30; rings quarter; moisture 9% }
            """;

    private static Compilation compile(String text) {
        return Compilation.of(new SourceFile("test.treen", PROJECT + text), FileLoader.NONE);
    }

    private static String frame(long wide, long thick, String joint) {
        return """
                part stile { length 600; width 60; thickness %2$d; from oak
                  place { length up; width right; at -60, 0, 0 } }
                part rail { length 300; width %1$d; thickness %2$d; from oak
                  place { length right; width up; at 0, 0, 200 } }
                joint mortise_tenon rail into stile { %3$s }
                """.formatted(wide, thick, joint);
    }

    private static List<String> codes(Compilation compilation) {
        return compilation.checked().findings().stream().map(Finding::code).toList();
    }

    private static FinishedPart part(Compilation compilation, String name) {
        return compilation.joined().part(name).orElseThrow();
    }

    private static BigFraction volume(Compilation compilation, String name) {
        return part(compilation, name).solid().orElseThrow().volume();
    }

    @Test
    void aTenonIsAThirdThickAndTwoThirdsLong() {
        Compilation made = compile(frame(50, 24, ""));
        assertThat(codes(made)).isEmpty();
        // 24 / 3 = 8, a usual chisel; two thirds of 60 are 40.
        assertThat(part(made, "rail").length().value()).isEqualTo(Length.ofMm(340));
        MadeJoint joint = made.joined().joints().getFirst();
        assertThat(joint.figure("thick").orElseThrow().measure().value()).isEqualTo(Length.ofMm(8));
        assertThat(joint.figure("long").orElseThrow().measure().value()).isEqualTo(Length.ofMm(40));
        // Rail 300 x 50 x 24 and a tenon 40 x (50 - 6) x 8; the mortise is 3 mm deeper.
        assertThat(volume(made, "rail")).isEqualTo(BigFraction.of(300 * 50 * 24 + 40 * 44 * 8));
        assertThat(volume(made, "stile")).isEqualTo(BigFraction.of(600 * 60 * 24 - 43 * 44 * 8));
    }

    @Test
    void atTheEndOfTheStileAHaunchFillsTheSetBack() {
        Compilation made = compile(frame(60, 24, "").replace("at 0, 0, 200", "at 0, 0, 540"));
        assertThat(codes(made)).isEmpty();
        // A third of 60 set back at the top, 3 below: 37 wide; the haunch 20 x 8 x 8 fills the rest.
        assertThat(volume(made, "rail")).isEqualTo(BigFraction.of(300 * 60 * 24 + 40 * 37 * 8 + 8 * 20 * 8));
        Compilation bare = compile(frame(60, 24, "haunch 0").replace("at 0, 0, 200", "at 0, 0, 540"));
        assertThat(volume(bare, "rail")).isEqualTo(BigFraction.of(300 * 60 * 24 + 40 * 37 * 8));
    }

    @Test
    void aThroughTenonShowsItsEnd() {
        Compilation made = compile(frame(50, 24, "kind through"));
        assertThat(part(made, "rail").length().value()).isEqualTo(Length.ofMm(360));
        assertThat(volume(made, "stile")).isEqualTo(BigFraction.of(600 * 60 * 24 - 60 * 44 * 8));
    }

    @Test
    void aWideTenonIsMadeAsTwo() {
        Compilation made = compile(frame(120, 24, ""));
        // 114 is more than 6 x 8: two of (114 - 8) / 2 = 53.
        assertThat(volume(made, "rail")).isEqualTo(BigFraction.of(300 * 120 * 24 + 40 * 106 * 8));
        Compilation one = compile(frame(120, 24, "split none"));
        assertThat(volume(one, "rail")).isEqualTo(BigFraction.of(300 * 120 * 24 + 40 * 114 * 8));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            long 61        | setting-does-not-fit
            long 0         | setting-does-not-fit
            thick 25       | setting-does-not-fit
            thick 0        | setting-does-not-fit
            shoulder 25    | setting-does-not-fit
            thick 14       | tenon-proportions
            long 12        | tenon-proportions
            """)
    void whatIsWrongIsSaid(String setting, String code) {
        assertThat(codes(compile(frame(50, 24, setting)))).contains(code);
    }

    @Test
    void anEdgeIsNoEnd() {
        assertThat(codes(compile("""
                part stile { length 600; width 60; thickness 24; from oak
                  place { length up; width right; at -60, 0, 0 } }
                part rail { length 300; width 50; thickness 24; from oak
                  place { length up; width right; at 0, 0, 0 } }
                joint mortise_tenon rail into stile
                """))).contains("meets-wrongly");
    }

    /** Whatever the sizes: nothing fills the same space, and the tenon is as large as its mortise where they touch. */
    @Test
    void tenonAndMortiseFillEachOther() {
        Random random = new Random(20261126);
        for (int i = 0; i < 60; i++) {
            int wide = 25 + random.nextInt(120);
            int thick = 12 + random.nextInt(30);
            int up = random.nextInt(600 - wide);
            Compilation made = compile(frame(wide, thick, "").replace("at 0, 0, 200", "at 0, 0, " + up));
            Solid rail = part(made, "rail").solid().orElseThrow();
            Solid stile = part(made, "stile").solid().orElseThrow();
            assertThat(overlaps(rail, stile)).as(wide + " " + thick + " " + up).isEmpty();
        }
    }

    private static List<Overlap> overlaps(Solid one, Solid other) {
        return Overlap.among(List.of(
                new dev.treen.solid.Placed("one", one), new dev.treen.solid.Placed("other", other)));
    }

    @Test
    void buttonsLetATopMove() {
        String table = """
                part apron { length 600; width 80; thickness 21; from oak
                  place { length right; width up; at 0, 0, 0 } }
                part top { length 700; width 380; thickness 20; from oak
                  place { length right; width back; at -50, -20, 80 } }
                joint button top into apron { %s }
                """;
        Compilation made = compile(table.formatted(""));
        assertThat(codes(made)).isEmpty();
        // A groove 7 deep and 6 wide along the whole apron.
        assertThat(volume(made, "apron")).isEqualTo(BigFraction.of(600 * (80 * 21 - 7 * 6)));
        assertThat(made.joined().joints().getFirst().figure("travel").orElseThrow().measure().value().signum())
                .isPositive();
        assertThat(codes(compile(table.formatted("deep 1")))).contains("button-lets-go");
    }

    @Test
    void aBreadboardEndLeavesRoomBesideTheOuterTenons() {
        String top = """
                part top { length 700; width 400; thickness 24; from oak
                  place { length right; width back; at 0, 0, 0 } }
                part end { length 400; width 80; thickness 24; from oak
                  place { length back; width right; at 700, 0, 0 } }
                joint breadboard top into end { %s }
                """;
        Compilation made = compile(top.formatted(""));
        assertThat(codes(made)).isEmpty();
        assertThat(part(made, "top").length().value()).isEqualTo(Length.ofMm(753));
        MadeJoint joint = made.joined().joints().getFirst();
        Length room = joint.figure("end_room").orElseThrow().measure().value();
        assertThat(room.signum()).isPositive();
        assertThat(overlaps(
                part(made, "top").solid().orElseThrow(), part(made, "end").solid().orElseThrow())).isEmpty();
        // Pegs hold the outer tenons: their holes can be marked out, and are there before any glue is.
        assertThat(joint.pieces()).singleElement().satisfies(piece -> {
            assertThat(piece.kind()).isEqualTo(LoosePiece.Kind.PEG);
            assertThat(piece.count()).isEqualTo(2);
            assertThat(piece.size().width()).isEqualTo(Length.ofMm(6));
        });
        assertThat(part(made, "end").solid()).isNotEqualTo(part(made, "end").bare());
        List<Step> steps = made.order().steps();
        int bored = step(steps, "Bore the end boards");
        int slotted = step(steps, "Push the end boards on");
        assertThat(bored).isLessThan(slotted);
        assertThat(slotted).isLessThan(step(steps, "Glue"));
        assertThat(codes(compile(top.formatted("long 80")))).contains("setting-does-not-fit");
    }

    private static int step(List<Step> steps, String begins) {
        return steps.stream().filter(step -> step.operation().action().startsWith(begins)).findFirst().orElseThrow()
                .number();
    }
}

package dev.treen.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.joinery.Joined;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each mistake is caught where it is, the right project is silent, and a safe fix makes the finding go away. */
class ChecksTest {
    private static final Path CADDY = Path.of("..", "examples", "tea-caddy", "tea-caddy.treen");

    private static Compilation compile(String text) {
        return Compilation.of(new SourceFile("test.treen", text), FileLoader.NONE);
    }

    private static List<String> codes(String text) {
        return compile(text).checked().findings().stream().map(Finding::code).toList();
    }

    private static String caddy() throws IOException {
        return Files.readString(CADDY);
    }

    private static String spoilt(String from, String to) throws IOException {
        String text = caddy();
        assertTrue(text.contains(from), from);
        int at = text.indexOf(from);
        return text.substring(0, at) + to + text.substring(at + from.length());
    }

    @Test
    void theCaddyIsSilent() throws IOException {
        assertEquals(List.of(), codes(caddy()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "gap auto            | gap 0.2             | panel-tight",
            "gap auto            | gap 2.9             | panel-loose",
            "wide 5; deep 4; gap auto | wide 5; deep 7; gap 1 | groove-too-deep",
            "at 0, 0, 5          | at 0, 0, 2          | edge-too-near",
            "wide 5              | wide 8              | tongue-against-groove",
            "at 0, 0, 5          | at 0, 1, 5          | parts-do-not-meet",
            "at 0, 0, 5          | at 0, -1, 5         | parts-overlap",
            "size      900 x     | size      190 x     | board-too-short",
            "x 140 x 27          | x 90 x 27           | board-too-narrow",
            "x 140 x 27          | x 140 x 9           | board-too-thin",
            "black_cherry        | black_chery         | unknown-species",
            "let wall   = 9      | let wall   = wall   | goes-in-circles",
            "width      high     | width      hihg     | unknown-name",
            "moisture  9%        | moisture  9mm       | wrong-kind",
            "moisture  9%        | moisure   9%        | unknown-property",
            "thickness  wall     | thickness  -9       | absurd-size",
            "joint mitre         | joint mitred        | unknown-joint",
            "let wall   = 9      | use \"nowhere\"      | file-not-found",
            "inside.length + wall | inside.length + 9deg | do-not-add-up",
            ">= 70mm             | >= 700mm            | requirement-not-met"
    })
    void eachMistakeIsCaught(String right, String wrong, String code) throws IOException {
        List<String> codes = codes(spoilt(right.strip(), wrong.strip()));
        assertTrue(codes.contains(code), code + " in " + codes);
    }

    @Test
    void theFixOfATightPanelMakesItGoAway() throws IOException {
        String text = spoilt("gap auto", "gap 0.2");
        Finding tight = compile(text).checked().findings().getFirst();
        assertEquals("panel-tight", tight.code());
        assertEquals("0.2", tight.at().text());
        Edit edit = tight.safeRemedy().orElseThrow().edits().getFirst();
        String mended = text.substring(0, edit.at().start())
                + edit.text()
                + text.substring(edit.at().end());
        assertEquals(List.of(), codes(mended));
    }

    /**
     * The base of the language page: 80 between the walls, grooves 4 deep, flat-sawn black cherry 0.00248 per 1 %
     * (Wood Handbook FPL-GTR-190, Table 13-5), 9 % to 12.06 % moisture: gap 0.83, 86.34 wide.
     */
    @Test
    void theBaseIsAsWideAsTheHandbookLetsItBe() throws IOException {
        Joined joined = compile(caddy()).checked().joined();
        assertEquals(
                86.34, joined.part("base").orElseThrow().width().value().toDoubleMm(), 1e-9);
        assertEquals(
                178, joined.part("front").orElseThrow().length().value().toDoubleMm(), 1e-9);
    }

    /**
     * Common practice, no source: a small base with 65 mm between the walls and grooves 4 deep has 73 mm to live in and
     * is made about 70 wide, 1.5 a side. What is computed stays on the safe side of that rule and near it.
     */
    @Test
    void theRuleOfTheBenchForASmallBaseHolds() throws IOException {
        String text = caddy().replace("160 x 80 x 70", "160 x 65 x 70");
        Joined joined = compile(text).checked().joined();
        double width = joined.part("base").orElseThrow().width().value().toDoubleMm();
        assertTrue(width > 70 && width < 73 - 1, "made " + width);
        assertEquals(List.of(), codes(text.replace("gap auto", "gap 1.5")));
    }

    @Test
    void anAcceptedWarningIsSilentAndAnErrorCannotBeAccepted() throws IOException {
        String warned = spoilt("at 0, 0, 5", "at 0, 0, 4.5");
        assertEquals(List.of("edge-too-near"), codes(warned).stream().distinct().toList());
        assertEquals(List.of(), codes(warned + "\naccept edge-too-near on base because \"a test piece held\"\n"));
        assertTrue(codes(spoilt("gap auto", "gap 0.2") + "\naccept panel-tight on base because \"no\"\n")
                .contains("accept-of-an-error"));
        assertTrue(codes(caddy() + "\naccept panel-tight on base because \"dry room\"\n")
                .contains("accept-matches-nothing"));
        assertTrue(codes(warned + "\naccept edge-too-near on base\n").contains("accept-without-reason"));
    }

    @Test
    void badTextGetsFindingsAndNeverThrows() throws IOException {
        String text = caddy();
        for (int at = 0; at < text.length(); at += 7) {
            codes(text.substring(0, at));
            codes(text.substring(0, at) + "{" + text.substring(at));
        }
        assertTrue(codes("").contains("empty-project"));
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 10_000; i++) {
            many.append("part p").append(i).append(" { length 10; width 5; thickness 2 }\n");
        }
        assertEquals(List.of(), codes(many.toString()));
    }

    @Test
    void aLongChainOfValuesIsBounded() {
        StringBuilder chain = new StringBuilder();
        for (int i = 0; i < 5_000; i++) {
            chain.append("let a").append(i).append(" = a").append(i + 1).append(" + 1\n");
        }
        chain.append("let a5000 = 1\n");
        assertTrue(codes(chain.toString()).contains("too-many"));
    }
}

package dev.treen.rewrite;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.finding.Edit;
import dev.treen.finding.FindingKind;
import dev.treen.finding.FindingPage;
import dev.treen.model.FileLoader;
import dev.treen.plan.Compilation;
import dev.treen.plan.ModelText;
import dev.treen.plan.TreenFiles;
import dev.treen.source.SourceFile;
import dev.treen.syntax.Formatter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A project whose rack goes into a file of its own is the same project. The projects are invented. */
class RackSplitTest {
    private static final Pattern EXAMPLE = Pattern.compile("```treen\n(.*?)\n```", Pattern.DOTALL);

    static List<Path> examples() {
        return TreenFiles.examples();
    }

    private static Compilation compiled(String text) {
        return Compilation.of(new SourceFile("jars.treen", text), FileLoader.NONE);
    }

    private static Optional<RackSplit.Written> split(String text) {
        return RackSplit.of(compiled(text), FileLoader.NONE, "rack");
    }

    private static String left(String text) {
        return Edit.applied(text, split(text).orElseThrow().edits());
    }

    private static Compilation after(SourceFile file, FileLoader loader, RackSplit.Written written) {
        return Compilation.of(new SourceFile(file.name(), Edit.applied(file.text(), written.edits())),
                RackSplit.beside(file, loader, "fresh-rack", written.rack()));
    }

    private static void isTheSame(Compilation before, Compilation after) {
        assertThat(new WrittenSizes().of(after.evaluation().project()))
                .isEqualTo(new WrittenSizes().of(before.evaluation().project()));
        assertThat(ModelText.of(after)).isEqualTo(ModelText.of(before));
        assertThat(ModelText.findings(after)).containsExactlyInAnyOrderElementsOf(ModelText.findings(before));
    }

    private static boolean hasARackInside(Path path) {
        return !path.toString().contains("spice-cabinet") && !path.endsWith("rack.treen");
    }

    /** All have a board of their own but those that have it in a file already, or are a rack themselves. */
    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleStaysTheSameProject(Path path) {
        SourceFile file = TreenFiles.file(path);
        Compilation before = TreenFiles.compile(path, file.text());
        Optional<RackSplit.Written> written = RackSplit.of(before, TreenFiles.LOADER, "fresh-rack");
        assertThat(written.isPresent()).as(path.toString()).isEqualTo(hasARackInside(path));
        written.ifPresent(each -> {
            Compilation after = after(file, TreenFiles.LOADER, each);
            isTheSame(before, after);
            assertThat(after.tree().statements()).noneMatch(RackSplit::isOfTheShop);
            assertThat(each.rack()).startsWith("// The rack").contains("\nboard ");
            assertThat(Formatter.format(after.tree())).as("what is left is in the one style")
                    .isEqualTo(after.file().text());
        });
    }

    /** The projects on the pages of findings have something to say; it is said as before. */
    @Test
    void whatIsSaidOfAProjectIsSaidOfItSplit() {
        int split = 0;
        for (FindingKind kind : Compilation.kinds()) {
            for (String text : examplesOf(kind)) {
                SourceFile file = new SourceFile("jars.treen", text);
                Compilation before = Compilation.of(file, FileLoader.NONE);
                Optional<RackSplit.Written> written = RackSplit.of(before, FileLoader.NONE, "fresh-rack");
                if (written.isPresent()) {
                    split++;
                    isTheSame(before, after(file, FileLoader.NONE, written.get()));
                }
            }
        }
        assertThat(split).isGreaterThan(200);
    }

    private static List<String> examplesOf(FindingKind kind) {
        List<String> texts = new ArrayList<>();
        FindingPage.of(kind).ifPresent(page -> {
            Matcher found = EXAMPLE.matcher(page.markdown());
            while (found.find()) {
                texts.add(found.group(1) + "\n");
            }
        });
        return texts;
    }

    @Test
    void boardsGoWithTheirCommentsAndTheValuesTheyRestOn() {
        String text = """
                // Pegs for the hall.
                project "Pegs" { units in; saw fine; climate { humidity 35%..65%; temperature 18degC..24degC } }

                let wide = 5 1/2         // of all my ash
                let peg  = 4

                // From the yard behind the church.
                /// The longer one.
                board ash {              // measured twice
                  species black_pear
                  size 40 x wide x 1; moisture 9% }  /* dry
                  since spring */

                saw fine { kerf 1/32 }
                species black_pear { shrinkage 9.1%, 4.6%; gravity 0.7 }

                part rail { length 20; width wide / 2; thickness 3/4; from ash }
                part peg_1 { length peg; width 1; thickness 3/4; from ash }
                """;
        assertThat(left(text)).isEqualTo("""
                // Pegs for the hall.
                project "Pegs" { units in; saw fine; climate { humidity 35%..65%; temperature 18degC..24degC } }

                use "rack"
                let peg  = 4

                part rail { length 20; width wide / 2; thickness 3/4; from ash }
                part peg_1 { length peg; width 1; thickness 3/4; from ash }
                """);
        assertThat(split(text).orElseThrow().rack()).isEqualTo("""
                // The rack: boards and what else the shop has.

                project "Rack" { units in }

                let wide = 5 1/2  // of all my ash

                // From the yard behind the church.
                /// The longer one.
                board ash {  // measured twice
                  species   black_pear
                  size      40 x wide x 1
                  moisture  9%
                }            /* dry
                  since spring */

                saw      fine       { kerf 1/32 }
                species  black_pear { shrinkage 9.1%, 4.6%; gravity 0.7 }
                """);
    }

    @Test
    void whatRestsOnThePieceStays() {
        String text = """
                project "Peg" { units mm }
                let peg = lid.length
                board ash { species white_ash; size 400 x 100 x 20; moisture 9% }
                board cut { species white_ash; size peg + 40 x 100 x 20; moisture 9% }
                part lid { length 100; width 40; thickness 9; from ash }
                """;
        assertThat(left(text)).isEqualTo("""
                project "Peg" { units mm }
                let peg = lid.length
                use "rack"
                board cut { species white_ash; size peg + 40 x 100 x 20; moisture 9% }
                part lid { length 100; width 40; thickness 9; from ash }
                """);
    }

    @Test
    void aBoardThatSharesItsLineLeavesIt() {
        String text = "project \"Peg\" { units mm }\r\nboard ash { species white_ash; size 400 x 100 x 20; moisture 9% };"
                + " part lid { length 100; width 40; thickness 9; from ash }\r\n";
        assertThat(left(text)).isEqualTo("project \"Peg\" { units mm }\r\nuse \"rack\"; "
                + "part lid { length 100; width 40; thickness 9; from ash }\r\n");
        assertThat(split(text).orElseThrow().rack()).contains("}\r\n\r\nboard ash {").doesNotContain("\n\n");
    }

    @Test
    void whatTheRackNeedsFromAnotherFileItTakesInItself() {
        FileLoader loader = (path, from) -> path.equals("woods")
                ? Optional.of(new SourceFile("woods.treen", "species pear { shrinkage 9.1%, 4.6%; gravity 0.7 }\n"))
                : Optional.empty();
        SourceFile file = new SourceFile("jars.treen", """
                project "Peg" { units mm }
                use "woods"
                use "treen/box"
                board ash { species pear; size 400 x 100 x 20; moisture 9% }
                part lid { length 100; width 40; thickness 9; from ash }
                """);
        Compilation before = Compilation.of(file, loader);
        RackSplit.Written written = RackSplit.of(before, loader, "fresh-rack").orElseThrow();
        assertThat(written.rack()).contains("use \"woods\"\n\nboard ash").doesNotContain("box");
        isTheSame(before, after(file, loader, written));
    }

    @Test
    void nothingIsHandedOutForAFileWithErrorsOrWithNothingToSplit() {
        assertThat(split("board ash { species white_ash; size 400 x 100 x 20; moisture 9% }\n")).isEmpty();
        assertThat(split("part lid { length 100; width 40; thickness 9 }\n")).isEmpty();
        assertThat(split("""
                board ash { species white_ash; size 400 x 100 x; moisture 9% }
                part lid { length 100; width 40; thickness 9; from ash }
                """)).isEmpty();
    }
}

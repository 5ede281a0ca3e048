package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.TypeDefinitionParams;
import org.junit.jupiter.api.Test;

/** A species that stands where a board could, in the editor. The project is invented. */
class WishedSpeciesTest {
    private static final String SHELF = """
            project "Shelf for jars" { units mm; tools hand }
            board long { species black_cherry; size 900 x 140 x 22; rings flat; moisture 9% }
            board short { species black_cherry; size 500 x 140 x 22; rings quarter; moisture 9% }
            board pale { species sugar_maple; size 500 x 140 x 22; rings flat; moisture 9% }
            pattern ledge {
              wood : board = any
              part rail { length 300; width 40; thickness 18; from wood }
            }
            part shelf { length 400; width 100; thickness 18; from black_cherry }
            ledge upper { wood sugar_maple }
            """;

    @Test
    void theBoardsAreFoundFromTheSpeciesAndThePartsFromEachBoard() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(SHELF);
            assertThat(get(editor.document().definition(
                    new DefinitionParams(file(uri), editor.at(uri, "from black_cherry", 8)))).getLeft())
                    .extracting(Location::getRange).extracting(range -> editor.read(uri, range))
                    .containsExactly("long", "short");
            assertThat(get(editor.document().definition(
                    new DefinitionParams(file(uri), editor.at(uri, "wood sugar_maple", 8)))).getLeft())
                    .as("where a pattern is used")
                    .extracting(Location::getRange).extracting(range -> editor.read(uri, range))
                    .containsExactly("pale");
            assertThat(get(editor.document().typeDefinition(
                    new TypeDefinitionParams(file(uri), editor.at(uri, "part shelf", 6)))).getLeft())
                    .extracting(Location::getRange).extracting(range -> editor.read(uri, range))
                    .containsExactly("long", "short");
            assertThat(get(editor.document().implementation(
                    new ImplementationParams(file(uri), editor.at(uri, "board short", 7)))).getLeft())
                    .extracting(Location::getRange).extracting(range -> editor.read(uri, range))
                    .containsExactly("shelf");
        }
    }

    @Test
    void aHoverNamesTheBoardsAndTheirSizes() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(SHELF);
            String hover = get(editor.document().hover(
                    new HoverParams(file(uri), editor.at(uri, "from black_cherry", 8)))).getContents().getRight()
                    .getValue();
            assertThat(hover)
                    .contains("Any board or sheet of black cherry", "`long` 900 mm × 140 mm × 22 mm", "`short`")
                    .doesNotContain("pale");
        }
    }

    @Test
    void theSpeciesOfTheRackAreOfferedWhereABoardIs() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(SHELF);
            assertThat(get(editor.document().completion(
                    new CompletionParams(file(uri), editor.at(uri, "from black_cherry", 5)))).getLeft())
                    .extracting(CompletionItem::getLabel)
                    .contains("long", "black_cherry", "sugar_maple")
                    .doesNotContain("white_oak", "shelf")
                    .doesNotHaveDuplicates();
        }
    }
}

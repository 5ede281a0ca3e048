package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.treen.lsp.Editor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.LinkedEditingRangeParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.TypeDefinitionParams;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names over one file and over several: found, marked, changed. */
class NamesTest {
    private static final String TRAY = """
            project "Tray" { units mm }
            board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9% }
            let wall = 9
            pattern rim {
              param high : length = 40
              part edge { length 200; width high; thickness wall; from plank }
            }
            part front { length 160; width 40; thickness wall; from plank }
            part back like front
            rim upper { high front.width }
            """;

    @TempDir
    private Path folder = Path.of("");

    private static List<? extends Location> references(Editor editor, String uri, Position at) throws Exception {
        return get(editor.document().references(new ReferenceParams(file(uri), at, new ReferenceContext(true))));
    }

    @Test
    void everyPlaceThatSaysAName() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(references(editor, uri, editor.at(uri, "wall = 9", 1)))
                    .extracting(Location::getRange)
                    .extracting(range -> editor.read(uri, range))
                    .containsExactly("wall", "wall", "wall");
            assertThat(references(editor, uri, editor.at(uri, "width high", 7))).hasSize(3);
            assertThat(references(editor, uri, editor.at(uri, "units", 1))).isEmpty();
            List<? extends DocumentHighlight> marks = get(editor.document().documentHighlight(
                    new DocumentHighlightParams(file(uri), editor.at(uri, "like front", 6))));
            assertThat(marks.stream().map(DocumentHighlight::getKind))
                    .containsExactly(DocumentHighlightKind.Write, DocumentHighlightKind.Read,
                            DocumentHighlightKind.Read);
        }
    }

    @Test
    void aNewNameInAllPlacesAtOnce() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            Position at = editor.at(uri, "thickness wall", 12);
            var prepared = get(editor.document().prepareRename(new PrepareRenameParams(file(uri), at))).getSecond();
            assertThat(prepared.getPlaceholder()).isEqualTo("wall");
            var edit = get(editor.document().rename(new RenameParams(file(uri), at, "thick_side")));
            assertThat(applied(TRAY, edit.getChanges().get(uri))).isEqualTo(TRAY.replace("wall", "thick_side"));
            assertThat(get(editor.document().prepareRename(
                    new PrepareRenameParams(file(uri), editor.at(uri, "units", 1))))).isNull();
        }
    }

    @Test
    void aNameThatIsTakenOrIsNoneIsRefusedWithTheReason() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            Position at = editor.at(uri, "wall = 9", 1);
            for (Map.Entry<String, String> each : Map.of("front", "something else, line 8", "2nd", "cannot be a name",
                    "when", "reserved word", "", "cannot be a name").entrySet()) {
                assertThatThrownBy(() -> get(editor.document().rename(
                        new RenameParams(file(uri), at, each.getKey())))).hasMessageContaining(each.getValue());
            }
            assertThatThrownBy(() -> get(editor.document().rename(
                    new RenameParams(file(uri), editor.at(uri, "units", 1), "x"))))
                    .hasMessageContaining("no name here");
        }
    }

    /** Names in the way that is not taken change too, or the file would break on the day the condition turns. */
    @Test
    void aNameIsRenamedWhereItIsNotAskedForToo() throws Exception {
        String text = """
                let deep = true
                let low = 40
                let high = 70
                let tall = when deep then high + low else max(low, 2 * high)
                part side { length 200; width when deep then tall else low; thickness 9 }
                part lid { length 200; width when deep then low else side.width; thickness 9 }
                """;
        try (Editor editor = new Editor()) {
            String uri = editor.open(text);
            for (String name : List.of("low", "high", "side")) {
                var edit = get(editor.document().rename(
                        new RenameParams(file(uri), editor.at(uri, name + (name.equals("side") ? " {" : " ="), 1),
                                "other")));
                assertThat(applied(text, edit.getChanges().get(uri)))
                        .isEqualTo(text.replaceAll("\\b" + name + "\\b", "other"));
            }
            var hover = get(editor.document().hover(new HoverParams(file(uri), editor.at(uri, "low, 2", 1))));
            assertThat(hover.getContents().getRight().getValue()).contains("low = 40");
        }
    }

    @Test
    void placesThatChangeWhileTheNameIsTyped() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            var linked = get(editor.document().linkedEditingRange(
                    new LinkedEditingRangeParams(file(uri), editor.at(uri, "wall = 9", 1))));
            assertThat(linked.getRanges()).hasSize(3);
            assertThat(get(editor.document().linkedEditingRange(
                    new LinkedEditingRangeParams(file(uri), editor.at(uri, "units", 1))))).isNull();
        }
    }

    @Test
    void allFilesOfAFolderAndNoneOfAnother() throws Exception {
        Path kitchen = Files.createDirectory(folder.resolve("kitchen"));
        Path shed = Files.createDirectory(folder.resolve("shed"));
        String rack = "board plank { species black_cherry; size 900 x 140 x 27; rings flat; moisture 9% }\n";
        String tray = "use \"rack\"\npart base { length 100; width 50; thickness 9; from plank }\n";
        for (Path each : List.of(kitchen, shed)) {
            Files.writeString(each.resolve("rack.treen"), rack);
            Files.writeString(each.resolve("tray.treen"), tray);
        }
        try (Editor editor = new Editor(new ClientCapabilities(), kitchen, shed)) {
            String uri = editor.open(kitchen.resolve("rack.treen"));
            Position at = editor.at(uri, "plank", 1);
            assertThat(references(editor, uri, at)).hasSize(2)
                    .allSatisfy(each -> assertThat(each.getUri()).contains("kitchen"));
            Map<String, List<TextEdit>> edits = get(editor.document()
                    .rename(new RenameParams(file(uri), at, "slab"))).getChanges();
            assertThat(edits).hasSize(2);
            assertThat(applied(rack, edits.get(uri))).isEqualTo(rack.replace("plank", "slab"));
            assertThat(applied(tray, edits.get(kitchen.resolve("tray.treen").toUri().toString())))
                    .isEqualTo(tray.replace("plank", "slab"));
            var symbols = get(editor.server().getWorkspaceService().symbol(new WorkspaceSymbolParams("bse")));
            assertThat(symbols.getRight()).extracting(WorkspaceSymbol::getName).containsExactly("base", "base");
        }
    }

    @Test
    void fromAThingToWhatItIsMadeFromAndBack() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(get(editor.document().typeDefinition(
                    new TypeDefinitionParams(file(uri), editor.at(uri, "rim upper", 5)))).getLeft())
                    .extracting(Location::getRange).containsExactly(editor.range(uri, "rim"));
            assertThat(get(editor.document().typeDefinition(
                    new TypeDefinitionParams(file(uri), editor.at(uri, "part front", 6)))).getLeft())
                    .extracting(Location::getRange).containsExactly(editor.range(uri, "plank"));
            assertThat(get(editor.document().implementation(
                    new ImplementationParams(file(uri), editor.at(uri, "pattern rim", 9)))).getLeft())
                    .extracting(Location::getRange).extracting(range -> editor.read(uri, range))
                    .containsExactly("upper");
            assertThat(get(editor.document().implementation(
                    new ImplementationParams(file(uri), editor.at(uri, "board plank", 7)))).getLeft())
                    .extracting(Location::getRange).extracting(range -> editor.read(uri, range))
                    .contains("front", "back");
        }
    }

    /** A published species stands in no file of the project: its page can be read, and is gone with the session. */
    @Test
    void fromABoardToItsSpecies() throws Exception {
        Path page;
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            for (Position at : List.of(editor.at(uri, "board plank", 7), editor.at(uri, "black_cherry", 3),
                    editor.at(uri, "from plank", 6))) {
                List<? extends Location> found = get(editor.document().typeDefinition(
                        new TypeDefinitionParams(file(uri), at))).getLeft();
                assertThat(found).hasSize(1);
                assertThat(Path.of(java.net.URI.create(found.getFirst().getUri()))).content()
                        .startsWith("# black cherry").contains("For each 1 % of moisture its width moves by");
            }
            page = Path.of(java.net.URI.create(get(editor.document().typeDefinition(new TypeDefinitionParams(
                    file(uri), editor.at(uri, "black_cherry", 3)))).getLeft().getFirst().getUri()));
            assertThat(page.toFile().canWrite() && !"root".equals(System.getProperty("user.name"))).isFalse();
            String own = editor.open("""
                    species shed_pear { common "pear from the shed"; tangential 0.3%; radial 0.15% }
                    board slab { species shed_pear; size 900 x 140 x 27; rings flat; moisture 9% }
                    board odd { species no_such_wood; size 900 x 140 x 27; rings flat; moisture 9% }
                    """);
            assertThat(get(editor.document().typeDefinition(
                    new TypeDefinitionParams(file(own), editor.at(own, "board slab", 7)))).getLeft())
                    .extracting(Location::getRange).containsExactly(editor.range(own, "shed_pear"));
            assertThat(get(editor.document().typeDefinition(
                    new TypeDefinitionParams(file(own), editor.at(own, "board odd", 7)))).getLeft()).isEmpty();
        }
        assertThat(page).doesNotExist();
    }

    /**
     * What comes with Treen lies in no folder of the maker's: it is shown as a file of the session, and never edited.
     */
    @Test
    void aPatternThatComesWithTreenCanBeReadAndKeepsItsNames() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("use \"treen/box\"\nbox caddy { inside 160 x 80 x 70 }\n");
            var word = editor.at(uri, "box caddy", 1);
            var path = editor.at(uri, "treen/box", 3);
            for (var at : List.of(word, path)) {
                var found = get(editor.document().definition(
                        new org.eclipse.lsp4j.DefinitionParams(file(uri), at))).getLeft();
                assertThat(found).hasSize(1);
                java.nio.file.Path shown = java.nio.file.Path.of(java.net.URI.create(found.getFirst().getUri()));
                assertThat(java.nio.file.Files.readString(shown)).contains("pattern box");
            }
            assertThat(get(editor.document().prepareRename(
                    new org.eclipse.lsp4j.PrepareRenameParams(file(uri), word)))).isNull();
            assertThatThrownBy(() -> get(editor.document().rename(
                    new org.eclipse.lsp4j.RenameParams(file(uri), word, "chest"))))
                    .hasMessageContaining("comes with Treen");
            assertThat(get(editor.document().documentLink(
                    new org.eclipse.lsp4j.DocumentLinkParams(file(uri))))).hasSize(1);
            String hover = get(editor.document().hover(
                    new org.eclipse.lsp4j.HoverParams(file(uri), editor.at(uri, "caddy", 1)))).getContents().getRight()
                    .getValue();
            assertThat(hover).contains("made by pattern `box`").contains("front  ");
        }
    }
}

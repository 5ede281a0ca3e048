package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.TextEdit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that get another name or folder. The projects are invented. */
class MovesTest {
    private static final String BOX = """
            use "rack"
            project "Box" { units mm }
            part front { length 160; width 40; thickness 9; from plank }
            """;

    @TempDir
    private Path folder = Path.of("");

    private static Map<String, List<TextEdit>> edits(Editor editor, Path from, Path to) throws Exception {
        return get(editor.server().getWorkspaceService().willRenameFiles(new RenameFilesParams(
                List.of(new FileRename(from.toUri().toString(), to.toUri().toString()))))).getChanges();
    }

    private Path rack() throws Exception {
        return Files.writeString(folder.resolve("rack.treen"),
                "board plank { species black_cherry; size 900 x 140 x 27; moisture 9% }\n");
    }

    @Test
    void theUsesOfAFileFollowIt() throws Exception {
        Path rack = rack();
        Path box = Files.writeString(folder.resolve("box.treen"), BOX);
        try (Editor editor = new Editor(new ClientCapabilities(), folder)) {
            String uri = editor.open(box);
            assertThat(applied(BOX, edits(editor, rack, folder.resolve("shed.treen")).get(uri)))
                    .startsWith("use \"shed\"\n");
            assertThat(applied(BOX, edits(editor, rack, folder.resolve("wood/rack.treen")).get(uri)))
                    .startsWith("use \"wood/rack\"\n");
        }
    }

    @Test
    void aFileThatMovesKeepsWhatItUses() throws Exception {
        rack();
        Path box = Files.writeString(folder.resolve("box.treen"), BOX);
        try (Editor editor = new Editor(new ClientCapabilities(), folder)) {
            String uri = editor.open(box);
            assertThat(applied(BOX, edits(editor, box, folder.resolve("kitchen/box.treen")).get(uri)))
                    .startsWith("use \"../rack\"\n");
            assertThat(edits(editor, box, folder.resolve("caddy.treen"))).isEmpty();
        }
    }

    @Test
    void whatMovesTogetherStaysAsItIs() throws Exception {
        Path inner = Files.createDirectory(folder.resolve("kitchen"));
        Files.move(rack(), inner.resolve("rack.treen"));
        Path box = Files.writeString(inner.resolve("box.treen"), BOX);
        Path bench = Files.writeString(folder.resolve("bench.treen"), "use \"kitchen/rack.treen\"\n");
        try (Editor editor = new Editor(new ClientCapabilities(), folder)) {
            editor.open(box);
            String other = editor.open(bench);
            Map<String, List<TextEdit>> edits = edits(editor, inner, folder.resolve("house"));
            assertThat(edits).containsOnlyKeys(other);
            assertThat(applied(editor.text(other), edits.get(other))).isEqualTo("use \"house/rack.treen\"\n");
        }
    }
}

package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.Test;

class RefactoringsTest {
    private static final String TRAY = """
            let wall = 4 + 5
            part front { length 160; width 2 * wall; thickness wall }
            part back { length 160 + 2 * 8; width 40; thickness 9 }
            """;

    private static Optional<String> after(Editor editor, String uri, Range range, String kind) throws Exception {
        List<CodeAction> actions = get(editor.document().codeAction(
                new CodeActionParams(file(uri), range, new CodeActionContext(List.of(), List.of(kind))))).stream()
                .map(each -> each.getRight())
                .toList();
        assertThat(actions).allMatch(each -> each.getKind().startsWith(kind));
        return actions.stream().findFirst()
                .map(each -> applied(editor.text(uri), each.getEdit().getChanges().get(uri)));
    }

    @Test
    void aValueGetsAName() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(after(editor, uri, editor.range(uri, "160 + 2 * 8"), "refactor.extract")).contains("""
                    let wall = 4 + 5
                    part front { length 160; width 2 * wall; thickness wall }
                    let measure = 160 + 2 * 8
                    part back { length measure; width 40; thickness 9 }
                    """);
            assertThat(after(editor, uri, editor.range(uri, "part"), "refactor.extract")).isEmpty();
        }
    }

    @Test
    void aNameGetsItsValueBack() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TRAY);
            assertThat(after(editor, uri, editor.range(uri, "wall"), "refactor.inline")).contains("""
                    part front { length 160; width 2 * (4 + 5); thickness (4 + 5) }
                    part back { length 160 + 2 * 8; width 40; thickness 9 }
                    """);
            assertThat(after(editor, uri, editor.range(uri, "front"), "refactor.inline")).isEmpty();
        }
    }
}

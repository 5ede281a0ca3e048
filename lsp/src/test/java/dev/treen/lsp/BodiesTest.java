package dev.treen.lsp;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticWorkspaceCapabilities;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.junit.jupiter.api.Test;

/** What finished bodies show comes when typing rests, and stands until the next is known. The project is invented. */
class BodiesTest {
    private static final String TWO_IN_ONE_PLACE = """
            project "Spoon rack" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board plank { species black_cherry; size 2000 x 140 x 18; rings rift; moisture 9% }
            part rail { length 300; width 60; thickness 12; from plank; place { length right; width up; at 0, 0, 0 } }
            part shelf { length 300; width 60; thickness 12; from plank; place { length right; width up; at 0, 6, 0 } }
            part apart { length 90; width 60; thickness 12; from plank; place { length right; width up; at 0, 400, 0 } }
            """;

    @Test
    void theyComeByThemselvesAndStandWhileSomethingElseIsTyped() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(TWO_IN_ONE_PLACE);
            untilClash(editor);
            editor.type(uri, editor.range(uri, "length 90"), "length 80");
            assertThat(codes(editor.diagnostics(uri))).contains("parts-clash");
            editor.type(uri, editor.range(uri, "project"), "// a comment\nproject");
            List<Diagnostic> moved = editor.diagnostics(uri);
            assertThat(moved).filteredOn(each -> each.getCode().getLeft().equals("parts-clash"))
                    .extracting(each -> each.getRange().getStart().getLine()).containsExactly(4);
            editor.type(uri, editor.range(uri, "at 0, 6, 0"), "at 0, 600, 0");
            assertThat(codes(editor.diagnostics(uri))).doesNotContain("parts-clash");
        }
    }

    @Test
    void aClientThatAsksIsToldToAskAgain() throws Exception {
        ClientCapabilities can = new ClientCapabilities();
        WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
        workspace.setDiagnostics(new DiagnosticWorkspaceCapabilities(true));
        can.setWorkspace(workspace);
        try (Editor editor = new Editor(can)) {
            String uri = editor.open(TWO_IN_ONE_PLACE.replace("at 0, 6, 0", "at 0, 600, 0"));
            DocumentDiagnosticParams ask = new DocumentDiagnosticParams(file(uri));
            assertThat(get(editor.document().diagnostic(ask)).isRelatedFullDocumentDiagnosticReport()).isTrue();
            editor.type(uri, editor.range(uri, "at 0, 600, 0"), "at 0, 6, 0");
            assertThat(EditorClient.next(editor.client().refreshed)).isEqualTo("diagnostics");
            assertThat(
                    codes(get(editor.document().diagnostic(ask)).getRelatedFullDocumentDiagnosticReport().getItems()))
                    .contains("parts-clash");
        }
    }

    @Test
    void anEditLeavesTextsAloneThatHaveNothingToDoWithIt() throws Exception {
        try (Editor editor = new Editor()) {
            String one = editor.open(TWO_IN_ONE_PLACE);
            untilClash(editor);
            String other = editor.open("part lid { length 9; width 9; thickness 9 }\n");
            editor.type(other, editor.range(other, "length 9"), "length 8");
            editor.diagnostics(other);
            editor.type(other, editor.range(other, "width 9"), "width");
            PublishDiagnosticsParams next = editor.client().nextPublished();
            while (next.getVersion() != 3) {
                assertThat(next.getUri()).isEqualTo(other);
                next = editor.client().nextPublished();
            }
            assertThat(next.getUri()).isNotEqualTo(one);
        }
    }

    private static void untilClash(Editor editor) throws InterruptedException {
        while (!codes(editor.client().nextPublished().getDiagnostics()).contains("parts-clash")) {
            // Before it comes what can be said at once.
        }
    }

    private static List<String> codes(List<Diagnostic> diagnostics) {
        return diagnostics.stream().map(each -> each.getCode().getLeft()).toList();
    }
}

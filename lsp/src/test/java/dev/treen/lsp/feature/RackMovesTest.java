package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.treen.lsp.Editor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeActionResolveSupportCapabilities;
import org.eclipse.lsp4j.CreateFile;
import org.eclipse.lsp4j.ResourceOperationKind;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Boards go to a file of their own, which the client makes. The project is invented. */
class RackMovesTest {
    private static final String PEG = """
            project "Peg" { units mm }

            board ash { species white_ash; size 400 x 100 x 20; moisture 9% }

            part lid { length 100; width 40; thickness 9; from ash }
            """;
    private static final String LEFT = """
            project "Peg" { units mm }

            use "rack"

            part lid { length 100; width 40; thickness 9; from ash }
            """;

    @TempDir
    private Path folder;
    private Path peg = Path.of("");

    @BeforeEach
    void write() throws IOException {
        peg = Files.writeString(folder.resolve("peg.treen"), PEG);
    }

    private static ClientCapabilities makesFiles(boolean later) {
        ClientCapabilities can = new ClientCapabilities();
        WorkspaceEditCapabilities edits = new WorkspaceEditCapabilities();
        edits.setDocumentChanges(true);
        edits.setResourceOperations(List.of(ResourceOperationKind.Create));
        WorkspaceClientCapabilities everywhere = new WorkspaceClientCapabilities();
        everywhere.setWorkspaceEdit(edits);
        can.setWorkspace(everywhere);
        if (later) {
            CodeActionCapabilities actions = new CodeActionCapabilities();
            actions.setDataSupport(true);
            actions.setResolveSupport(new CodeActionResolveSupportCapabilities(List.of("edit")));
            TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
            text.setCodeAction(actions);
            can.setTextDocument(text);
        }
        return can;
    }

    private static List<CodeAction> offered(Editor editor, String uri, String where) throws Exception {
        return get(editor.document().codeAction(new CodeActionParams(file(uri), editor.range(uri, where),
                new CodeActionContext(List.of(), List.of(CodeActionKind.RefactorMove))))).stream()
                .map(each -> each.getRight())
                .toList();
    }

    private static String after(String text, Either<TextDocumentEdit, ?> edit) {
        List<TextEdit> edits = edit.getLeft().getEdits().stream().map(each -> each.getLeft()).toList();
        return applied(text, edits);
    }

    @Test
    void theClientMakesTheFileAndTheProjectUsesIt() throws Exception {
        try (Editor editor = new Editor(makesFiles(false))) {
            String uri = editor.open(peg);
            CodeAction action = offered(editor, uri, "board ash").getFirst();
            var changes = action.getEdit().getDocumentChanges();
            CreateFile made = (CreateFile) changes.get(0).getRight();
            assertThat(made.getUri()).isEqualTo(folder.resolve("rack.treen").toUri().toString());
            assertThat(made.getOptions().getOverwrite()).isFalse();
            assertThat(made.getOptions().getIgnoreIfExists()).isFalse();
            assertThat(changes.get(1).getLeft().getTextDocument().getUri()).isEqualTo(made.getUri());
            assertThat(after("", changes.get(1))).isEqualTo("""
                    // The rack: boards and what else the shop has.

                    project "Rack" { units mm }

                    board ash { species white_ash; size 400 x 100 x 20; moisture 9% }
                    """);
            assertThat(changes.get(2).getLeft().getTextDocument().getVersion()).isEqualTo(1);
            assertThat(after(PEG, changes.get(2))).isEqualTo(LEFT);
            assertThat(offered(editor, uri, "part lid")).as("only where something can move").isEmpty();
            // As the client does it: the new file is open and unsaved, and the project finds it.
            editor.open(made.getUri(), after("", changes.get(1)));
            assertThat(editor.retype(uri, LEFT).toString()).doesNotContain("not there", "rack");
        }
    }

    @Test
    void noFileThatIsThereIsEverTaken() throws Exception {
        Files.writeString(folder.resolve("rack.treen"), "// mine\n");
        try (Editor editor = new Editor(makesFiles(false))) {
            String uri = editor.open(peg);
            assertThat(offered(editor, uri, "board ash").getFirst().getTitle()).contains("peg-rack.treen");
            editor.open(folder.resolve("peg-rack.treen").toUri().toString(), "// not saved yet\n");
            CodeAction action = offered(editor, uri, "board ash").getFirst();
            assertThat(action.getTitle()).contains("peg-rack-2.treen");
            assertThat(after(PEG, action.getEdit().getDocumentChanges().get(2))).contains("use \"peg-rack-2\"");
        }
        assertThat(folder.resolve("rack.treen")).hasContent("// mine\n");
    }

    @Test
    void itIsOnlyOfferedWhereFilesCanBeMade() throws Exception {
        try (Editor editor = new Editor()) {
            assertThat(offered(editor, editor.open(peg), "board ash")).isEmpty();
        }
        try (Editor editor = new Editor(makesFiles(false))) {
            String nowhere = editor.open("untitled:Untitled-1", PEG);
            assertThat(offered(editor, nowhere, "board ash")).isEmpty();
        }
    }

    @Test
    void theEditsComeWhenTheMoveIsChosen() throws Exception {
        try (Editor editor = new Editor(makesFiles(true))) {
            String uri = editor.open(peg);
            CodeAction action = offered(editor, uri, "board ash").getFirst();
            assertThat(action.getEdit()).isNull();
            CodeAction whole = get(editor.document().resolveCodeAction(action));
            assertThat(after(PEG, whole.getEdit().getDocumentChanges().get(2))).isEqualTo(LEFT);
            editor.type(uri, editor.range(uri, "400"), "500");
            assertThatThrownBy(() -> get(editor.document().resolveCodeAction(action)))
                    .hasMessageContaining("The text has changed");
        }
    }
}

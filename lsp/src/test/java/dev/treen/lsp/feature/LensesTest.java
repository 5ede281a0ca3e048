package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static dev.treen.lsp.EditorClient.next;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import dev.treen.lsp.Editor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.CodeLensWorkspaceCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ShowDocumentCapabilities;
import org.eclipse.lsp4j.WindowClientCapabilities;
import org.eclipse.lsp4j.WorkDoneProgressBegin;
import org.eclipse.lsp4j.WorkDoneProgressEnd;
import org.eclipse.lsp4j.WorkDoneProgressNotification;
import org.eclipse.lsp4j.WorkDoneProgressReport;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the server works out beside the editing, and what it does when asked to. */
class LensesTest {
    private static final Path CADDY = Path.of("..", "examples", "tea-caddy", "tea-caddy.treen");

    @TempDir
    private Path folder = Path.of("");

    private static ClientCapabilities able() {
        ClientCapabilities can = new ClientCapabilities();
        WindowClientCapabilities window = new WindowClientCapabilities();
        window.setWorkDoneProgress(true);
        window.setShowDocument(new ShowDocumentCapabilities(true));
        can.setWindow(window);
        WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
        workspace.setCodeLens(new CodeLensWorkspaceCapabilities(true));
        can.setWorkspace(workspace);
        return can;
    }

    private static List<String> titles(Editor editor, String uri) throws Exception {
        return get(editor.document().codeLens(new CodeLensParams(file(uri)))).stream()
                .map(CodeLens::getCommand)
                .map(command -> command.getTitle())
                .toList();
    }

    @Test
    void aBoardSaysWhatItYieldsOnceItsLayoutIsKnown() throws Exception {
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(CADDY);
            assertThat(next(editor.client().refreshed)).isEqualTo("lenses");
            List<String> titles = titles(editor, uri);
            assertThat(titles).contains("Build the plan").anyMatch(title -> title.matches(
                    "6 parts, \\d+ % of it in 2 leaves; largest offcut .* x .*; (proved best|within \\d+ % .*)"));
            assertThat(titles).anyMatch(title -> title.startsWith("room on each side "));
            // A comment changes nothing that the layout depends on: it is known at once for the new text.
            editor.type(uri, editor.range(uri, "// A tea caddy"), "// The tea caddy");
            assertThat(editor.diagnostics(uri)).isEmpty();
            assertThat(titles(editor, uri)).isEqualTo(titles);
            // Another length is another layout.
            editor.type(uri, editor.range(uri, "160 x 80 x 70"), "150 x 80 x 70");
            assertThat(editor.diagnostics(uri)).isEmpty();
            assertThat(next(editor.client().refreshed)).isEqualTo("lenses");
            assertThat(titles(editor, uri)).hasSameSizeAs(titles).isNotEqualTo(titles);
        }
    }

    /** One line above what a pattern makes, though its parts are written in a file of Treen. */
    @Test
    void whatAPatternMakesSaysTheLeastRoomOfItsParts() throws Exception {
        try (Editor editor = new Editor(able())) {
            String uri = editor.open("""
                    use "treen/box"
                    project { units mm }
                    board plank { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9% }
                    box caddy { inside 160 x 80 x 70; wall 9 }
                    """);
            List<CodeLens> lenses = get(editor.document().codeLens(new CodeLensParams(file(uri)))).stream()
                    .filter(each -> each.getCommand().getTitle().contains("room on each side"))
                    .map(CodeLens.class::cast)
                    .toList();
            assertThat(lenses).hasSize(1);
            assertThat(lenses.getFirst().getCommand().getTitle())
                    .matches("(least )?room on each side,? of caddy\\.\\w+, .* mm to .* mm through the year");
            assertThat(editor.read(uri, lenses.getFirst().getRange())).isEqualTo("caddy");
        }
    }

    @Test
    void aPartWithoutRoomIsToldWhenTheLayoutIsKnown() throws Exception {
        try (Editor editor = new Editor(able())) {
            String text = Files.readString(CADDY).replace("900 x 140 x 27", "420 x 140 x 27");
            String uri = editor.open(text);
            var told = editor.client().nextPublished();
            assertThat(told.getUri()).isEqualTo(uri);
            assertThat(told.getDiagnostics())
                    .extracting(each -> each.getCode().getLeft())
                    .contains("part-fits-no-board");
        }
    }

    @Test
    void theCommandBuildsThePlanBesideTheFileAndShowsIt() throws Exception {
        Path project = folder.resolve("caddy.treen");
        Files.copy(CADDY, project);
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(project);
            assertThat(get(editor.server().getWorkspaceService().executeCommand(
                    new ExecuteCommandParams(Commands.BUILD, List.of(uri))))).isNull();
            assertThat(next(editor.client().shown).getUri()).contains("caddy-plan");
            assertThat(folder.resolve("caddy-plan").resolve("cut-list.csv")).exists();
            editor.type(uri, editor.range(uri, "wall   = 9"), "wall   = 10");
            get(editor.server().getWorkspaceService().executeCommand(
                    new ExecuteCommandParams(Commands.BUILD, List.of(uri))));
            assertThat(next(editor.client().messages).getMessage()).contains("Save the project first");
        }
    }

    @Test
    void thePlanIsBuiltWithThePaperThatIsWantedOrWithout() throws Exception {
        Path project = folder.resolve("caddy.treen");
        Files.copy(CADDY, project);
        Path plan = folder.resolve("caddy-plan");
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(project);
            run(editor, Commands.BUILD, uri, "none");
            assertThat(next(editor.client().shown).getUri()).contains("caddy-plan");
            assertThat(plan.resolve("plan.html")).exists();
            assertThat(plan.resolve("plan.pdf")).doesNotExist();
            JsonObject treen = new JsonObject();
            treen.addProperty("paper", "papyrus");
            editor.server().getWorkspaceService().didChangeConfiguration(new DidChangeConfigurationParams(treen));
            run(editor, Commands.BUILD, uri);
            assertThat(next(editor.client().messages).getMessage()).contains("no paper is called papyrus", "a4");
            run(editor, Commands.BUILD, uri, "a4");
            assertThat(next(editor.client().shown).getUri()).contains("caddy-plan");
            assertThat(plan.resolve("plan.pdf")).exists();
        }
    }

    /** A line that changes nothing of the boards while they are laid out does not cost what the layout has to say. */
    @Test
    void aPartWithoutRoomIsToldThoughALineIsTypedMeanwhile() throws Exception {
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(many(100) + "part beam { length 2600; width 40; thickness 15 }\n// a note\n");
            assertThat(next(editor.client().progress).getValue().getLeft()).isInstanceOf(WorkDoneProgressBegin.class);
            editor.type(uri, editor.range(uri, "a note"), "another note");
            PublishDiagnosticsParams told;
            do {
                told = editor.client().nextPublished();
            } while (told.getDiagnostics().stream()
                    .noneMatch(each -> each.getCode().getLeft().equals("part-fits-no-board")));
            assertThat(told.getVersion()).isEqualTo(2);
        }
    }

    @Test
    void commandsShowLayoutsAndPagesAndRefuseWhatTheyDoNotKnow() throws Exception {
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(CADDY);
            run(editor, Commands.LAYOUT, uri, "plank");
            assertThat(next(editor.client().shown).getUri()).endsWith("layout-plank-leaf-1.svg");
            assertThat(next(editor.client().shown).getUri()).endsWith("layout-plank-leaf-2.svg");
            run(editor, Commands.EXPLAIN, "panel-tight");
            assertThat(next(editor.client().shown).getUri()).endsWith("panel-tight.md");
            run(editor, Commands.EXPLAIN, "no-such");
            assertThat(next(editor.client().messages).getType()).isEqualTo(MessageType.Error);
            run(editor, "treen.unknown");
            assertThat(next(editor.client().messages).getMessage()).contains("has no command `treen.unknown`");
        }
    }

    @Test
    void allSafeFixesAreOneAction() throws Exception {
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(Files.readString(CADDY)
                    .replace("species   black_cherry", "specie   black_chery").replace("gap auto }", "gap 0.1 }"));
            CodeActionContext context = new CodeActionContext(List.<Diagnostic>of(),
                    List.of(CodeActionKind.SourceFixAll));
            List<CodeAction> all = get(editor.document().codeAction(
                    new CodeActionParams(file(uri), editor.whole(uri), context))).stream()
                    .map(each -> each.getRight())
                    .toList();
            assertThat(all).hasSize(1);
            String mended = Editor.applied(editor.text(uri), all.getFirst().getEdit().getChanges().get(uri));
            assertThat(mended).contains("species   black_chery");
        }
    }

    private static void run(Editor editor, String command, Object... arguments) throws Exception {
        assertThat(get(editor.server().getWorkspaceService().executeCommand(
                new ExecuteCommandParams(command, List.of(arguments))))).isNull();
    }

    /** So many parts of so many sizes that the search for their layout lasts. */
    private static String many(int parts) {
        StringBuilder text = new StringBuilder("project \"Pegs\" { units mm }\n");
        for (int i = 0; i < 40; i++) {
            text.append("board plank_%d { species black_cherry; size 2400 x 200 x 20; moisture 9%% }%n".formatted(i));
        }
        for (int i = 0; i < parts; i++) {
            text.append("part p%d { length %d; width %d; thickness 15 }%n".formatted(
                    i, 180 + 37 * i % 331, 31 + 11 * i % 59));
        }
        return text.toString();
    }

    /** A layout that lasts is told of from its beginning to its end, and the end comes at once when it is cancelled. */
    @Test
    void aLongLayoutTellsHowItGoesAndStopsWhenToldTo() throws Exception {
        try (Editor editor = new Editor(able())) {
            editor.open(many(600));
            ProgressParams begun = next(editor.client().progress);
            WorkDoneProgressBegin begin = (WorkDoneProgressBegin) begun.getValue().getLeft();
            assertThat(begin.getTitle()).startsWith("Laying out the boards of ");
            assertThat(begin.getCancellable()).isTrue();
            assertThat(begin.getPercentage()).isBetween(0, 100);
            editor.cancelProgress(begun.getToken());
            WorkDoneProgressNotification told;
            do {
                ProgressParams each = next(editor.client().progress);
                assertThat(each.getToken()).isEqualTo(begun.getToken());
                told = each.getValue().getLeft();
            } while (told instanceof WorkDoneProgressReport);
            assertThat(told).isInstanceOf(WorkDoneProgressEnd.class);
        }
    }

    /** A plan that is being built tells how it goes, and when it is to stop writes nothing. */
    @Test
    void aPlanThatIsBuiltTellsHowItGoesAndStopsWhenToldTo() throws Exception {
        Path project = folder.resolve("pegs.treen");
        Files.writeString(project, many(600));
        try (Editor editor = new Editor(able())) {
            var _ = editor.server().getWorkspaceService().executeCommand(
                    new ExecuteCommandParams(Commands.BUILD, List.of(project.toUri().toString(), "none")));
            ProgressParams begun = next(editor.client().progress);
            WorkDoneProgressBegin begin = (WorkDoneProgressBegin) begun.getValue().getLeft();
            assertThat(begin.getTitle()).isEqualTo("Building the plan of pegs.treen");
            assertThat(begin.getMessage()).isEqualTo("checking the project");
            assertThat(begin.getCancellable()).isTrue();
            editor.cancelProgress(begun.getToken());
            WorkDoneProgressNotification told;
            do {
                ProgressParams each = next(editor.client().progress);
                assertThat(each.getToken()).isEqualTo(begun.getToken());
                told = each.getValue().getLeft();
            } while (told instanceof WorkDoneProgressReport);
            assertThat(told).isInstanceOf(WorkDoneProgressEnd.class);
            assertThat(folder.resolve("pegs-plan")).doesNotExist();
            assertThat(editor.client().messages).isEmpty();
        }
    }

    /** An edit that changes what a layout depends on ends it; the next one begins under a name of its own. */
    @Test
    void anEditOfItsPartsEndsALayout() throws Exception {
        try (Editor editor = new Editor(able())) {
            String uri = editor.open(many(600));
            ProgressParams begun = next(editor.client().progress);
            editor.type(uri, editor.range(uri, "length 180"), "length 181");
            WorkDoneProgressNotification told;
            ProgressParams each;
            do {
                each = next(editor.client().progress);
                told = each.getValue().getLeft();
            } while (told instanceof WorkDoneProgressReport);
            assertThat(told).isInstanceOf(WorkDoneProgressEnd.class);
            ProgressParams after = next(editor.client().progress);
            assertThat(after.getValue().getLeft()).isInstanceOf(WorkDoneProgressBegin.class);
            assertThat(after.getToken()).isNotEqualTo(begun.getToken());
            editor.cancelProgress(after.getToken());
        }
    }
}

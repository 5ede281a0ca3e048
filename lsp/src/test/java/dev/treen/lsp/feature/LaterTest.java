package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.applied;
import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.gson.JsonObject;
import dev.treen.lsp.Editor;
import dev.treen.lsp.EditorClient;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeActionResolveSupportCapabilities;
import org.eclipse.lsp4j.DidChangeConfigurationCapabilities;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.HoverCapabilities;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.InlayHintWorkspaceCapabilities;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.junit.jupiter.api.Test;

/** What is only worked out once it is asked for, and what the user has set. The project is invented. */
class LaterTest {
    private static final String RAIL = """
            project "Spoon rack" { units mm; climate { humidity 35%..65%; temperature 18degC..24degC } }
            board plank { species black_cherry; size 2000 x 140 x 18; rings rift; moisture 9% }
            part rail { lenght 300; widht 60; thickness 12; from plank }
            """;

    private static List<CodeAction> fixAll(Editor editor, String uri) throws Exception {
        return get(editor.document().codeAction(new CodeActionParams(file(uri), new Range(editor.at(uri, "lenght", 0),
                editor.at(uri, "lenght", 0)), new CodeActionContext(List.of(), List.of(CodeActionKind.SourceFixAll)))))
                .stream().map(each -> each.getRight()).toList();
    }

    private static ClientCapabilities later() {
        ClientCapabilities can = new ClientCapabilities();
        CodeActionCapabilities actions = new CodeActionCapabilities();
        actions.setDataSupport(true);
        actions.setResolveSupport(new CodeActionResolveSupportCapabilities(List.of("edit")));
        TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
        text.setCodeAction(actions);
        text.setHover(new HoverCapabilities(List.of(MarkupKind.MARKDOWN), false));
        can.setTextDocument(text);
        return can;
    }

    @Test
    void theEditsOfAllFixesComeWhenTheyAreChosen() throws Exception {
        String mended = RAIL.replace("lenght", "length").replace("widht", "width");
        try (Editor editor = new Editor(later())) {
            String uri = editor.open(RAIL);
            CodeAction offered = fixAll(editor, uri).getFirst();
            assertThat(offered.getEdit()).isNull();
            CodeAction whole = get(editor.document().resolveCodeAction(offered));
            assertThat(applied(RAIL, whole.getEdit().getChanges().get(uri))).isEqualTo(mended);
            editor.type(uri, editor.range(uri, "60"), "70");
            assertThatThrownBy(() -> get(editor.document().resolveCodeAction(offered)))
                    .hasMessageContaining("The text has changed");
        }
        try (Editor editor = new Editor()) {
            String uri = editor.open(RAIL);
            CodeAction offered = fixAll(editor, uri).getFirst();
            assertThat(applied(RAIL, offered.getEdit().getChanges().get(uri))).isEqualTo(mended);
            assertThat(get(editor.document().resolveCodeAction(offered)).getEdit()).isEqualTo(offered.getEdit());
        }
    }

    private static List<InlayHint> hints(Editor editor, String uri) throws Exception {
        return get(editor.document().inlayHint(new InlayHintParams(file(uri), editor.whole(uri))));
    }

    @Test
    void aHintSaysMoreWhenItIsPointedAt() throws Exception {
        try (Editor editor = new Editor(later())) {
            String uri = editor.open(RAIL.replace("lenght", "length").replace("widht", "width"));
            InlayHint size = hints(editor, uri).stream()
                    .filter(each -> each.getLabel().getLeft().contains("300"))
                    .findFirst().orElseThrow();
            assertThat(size.getTooltip()).isNull();
            assertThat(get(editor.document().resolveInlayHint(size)).getTooltip().getRight().getValue())
                    .contains("rail");
            editor.type(uri, editor.range(uri, "60"), "70");
            assertThat(get(editor.document().resolveInlayHint(size)).getTooltip()).isNull();
        }
    }

    private static Object wanted(String kind) {
        JsonObject kinds = new JsonObject();
        kinds.addProperty(kind, false);
        JsonObject treen = new JsonObject();
        treen.add("inlayHints", kinds);
        return treen;
    }

    private static boolean some(List<InlayHint> hints, String label) {
        return hints.stream().anyMatch(each -> each.getLabel().getLeft().contains(label));
    }

    @Test
    void hintsAreOfTheKindsThatTheUserHasSet() throws Exception {
        ClientCapabilities can = new ClientCapabilities();
        WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
        workspace.setConfiguration(true);
        workspace.setDidChangeConfiguration(new DidChangeConfigurationCapabilities(true));
        workspace.setInlayHint(new InlayHintWorkspaceCapabilities(true));
        can.setWorkspace(workspace);
        try (Editor editor = new Editor(can)) {
            String uri = editor.open(RAIL.replace("lenght", "length").replace("widht", "width"));
            assertThat(EditorClient.next(editor.client().registrations).getRegistrations())
                    .extracting(each -> each.getMethod()).containsExactly("workspace/didChangeConfiguration");
            assertThat(some(hints(editor, uri), "300")).isTrue();
            assertThat(some(hints(editor, uri), "mm")).isTrue();
            editor.client().settings = wanted("sizes");
            editor.server().getWorkspaceService().didChangeConfiguration(
                    new DidChangeConfigurationParams(new JsonObject()));
            assertThat(EditorClient.next(editor.client().refreshed)).isEqualTo("hints");
            assertThat(some(hints(editor, uri), "300")).isFalse();
            editor.client().settings = wanted("units");
            editor.server().getWorkspaceService().didChangeConfiguration(
                    new DidChangeConfigurationParams(new JsonObject()));
            assertThat(EditorClient.next(editor.client().refreshed)).isEqualTo("hints");
            assertThat(hints(editor, uri)).noneMatch(each -> each.getLabel().getLeft().equals("mm"));
            assertThat(some(hints(editor, uri), "300")).isTrue();
        }
    }

    @Test
    void aSumSaysWhatItComesToUnlessItComesToMoreThanOne() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    let wall = 9
                    part shelf { length 300 - 2 * wall; width 90; thickness wall }
                    repeat i in 1..3 {
                      part slat[i] { length 300; width wall * i; thickness wall }
                    }
                    """);
            assertThat(editor.diagnostics(uri)).isEmpty();
            List<String> labels = hints(editor, uri).stream().map(each -> each.getLabel().getLeft()).toList();
            assertThat(labels).contains("= 282 mm", "= 9 mm", "mm").doesNotContain("= 18 mm", "= 27 mm");
            assertThat(labels).filteredOn("= 9 mm"::equals).as("the two thicknesses, and no width of a slat")
                    .hasSize(2);
        }
    }

    /** One hint behind the name of what a pattern makes, whose parts are written in another file. */
    @Test
    void whatAPatternMakesSaysItsSizeOverAll() throws Exception {
        try (Editor editor = new Editor()) {
            String caddy = """
                    use "treen/box"
                    project { units mm }
                    board plank { species black_cherry; size 1200 x 140 x 27; rings flat; moisture 9% }
                    box caddy { inside 160 x 80 x 70; wall 9 }
                    """;
            String uri = editor.open(caddy);
            List<InlayHint> over = hints(editor, uri).stream()
                    .filter(each -> each.getLabel().getLeft().endsWith("over all"))
                    .toList();
            assertThat(over).hasSize(1);
            assertThat(over.getFirst().getPosition()).isEqualTo(editor.at(uri, "caddy", 5));
            // The inside with a wall of 9 at both ends of its length and its width.
            assertThat(over.getFirst().getLabel().getLeft()).matches("\\d+ parts, 178 x 98 x \\S+ mm over all");
            JsonObject all = new JsonObject();
            all.add("treen", (JsonObject) wanted("sizes"));
            editor.server().getWorkspaceService().didChangeConfiguration(new DidChangeConfigurationParams(all));
            assertThat(some(hints(editor, uri), "over all")).isFalse();
        }
    }

    @Test
    void thingsOfOneLineThatDifferAndPartsWithoutPlacesHaveNoSizeOverAll() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open("""
                    pattern rack {
                      param high : length = 40
                      part side { length high; width 30; thickness 9; place { length up; width back; at 0, 0, 0 } }
                      part back like side { place { at 20, 0, 0 } }
                    }
                    pattern pair { part a { length 40; width 30; thickness 9 }; part b like a }
                    rack first { high 90 }
                    pair loose
                    repeat i in 1..2 { rack row[i] { high 100 * i } }
                    """);
            List<String> labels = hints(editor, uri).stream().map(each -> each.getLabel().getLeft()).toList();
            assertThat(labels).filteredOn(label -> label.contains("part")).hasSize(2)
                    .contains("2 parts", "2 parts, 29 x 30 x 90 mm over all");
        }
    }

    @Test
    void aClientThatCannotBeAskedTellsItsSettings() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(RAIL.replace("lenght", "length").replace("widht", "width"));
            JsonObject all = new JsonObject();
            all.add("treen", (JsonObject) wanted("units"));
            editor.server().getWorkspaceService().didChangeConfiguration(new DidChangeConfigurationParams(all));
            assertThat(hints(editor, uri)).noneMatch(each -> each.getLabel().getLeft().equals("mm"));
            editor.server().getWorkspaceService().didChangeConfiguration(
                    new DidChangeConfigurationParams("nonsense"));
            assertThat(hints(editor, uri)).anyMatch(each -> each.getLabel().getLeft().equals("mm"));
        }
    }

    /** What others show of a file follows it: an editor asks again only for the text that is typed in. */
    @Test
    void whatOthersShowIsAskedForAgainWhenAFileThatTheyUseChanges() throws Exception {
        var workspace = new org.eclipse.lsp4j.WorkspaceClientCapabilities();
        workspace.setInlayHint(new org.eclipse.lsp4j.InlayHintWorkspaceCapabilities(true));
        workspace.setCodeLens(new org.eclipse.lsp4j.CodeLensWorkspaceCapabilities(true));
        workspace.setSemanticTokens(new org.eclipse.lsp4j.SemanticTokensWorkspaceCapabilities(true));
        var can = new org.eclipse.lsp4j.ClientCapabilities();
        can.setWorkspace(workspace);
        try (Editor editor = new Editor(can)) {
            String rack = editor.open("file:///bench/rack.treen", "let wall = 9\n");
            editor.open("file:///bench/one.treen",
                    "use \"rack\"\npart side { length 300; width 80; thickness wall }\n");
            editor.type(rack, editor.range(rack, "9"), "11");
            java.util.Set<String> asked = new java.util.HashSet<>();
            while (!asked.containsAll(java.util.Set.of("hints", "tokens", "lenses"))) {
                String next = editor.client().refreshed.poll(30, java.util.concurrent.TimeUnit.SECONDS);
                assertThat(next).as("after %s", asked).isNotNull();
                asked.add(next);
            }
        }
    }

    /** A client that takes its time is told once of each kind, and once more when it has answered. */
    @Test
    void aClientThatIsSlowToAnswerIsNotFlooded() throws Exception {
        var workspace = new WorkspaceClientCapabilities();
        workspace.setInlayHint(new InlayHintWorkspaceCapabilities(true));
        workspace.setCodeLens(new org.eclipse.lsp4j.CodeLensWorkspaceCapabilities(true));
        workspace.setSemanticTokens(new org.eclipse.lsp4j.SemanticTokensWorkspaceCapabilities(true));
        workspace.setDiagnostics(new org.eclipse.lsp4j.DiagnosticWorkspaceCapabilities(true));
        var can = new ClientCapabilities();
        can.setWorkspace(workspace);
        var held = new java.util.concurrent.CompletableFuture<Void>();
        try (Editor editor = new Editor(can)) {
            String rack = editor.open("file:///bench/rack.treen", "let wall = 9\n");
            String user = editor.open("file:///bench/one.treen",
                    "use \"rack\"\npart side { length 300; width 80; thickness wall }\n");
            get(editor.document().diagnostic(new org.eclipse.lsp4j.DocumentDiagnosticParams(file(user))));
            editor.client().refreshAnswer = held;
            for (int i = 0; i < 20; i++) {
                editor.type(rack, editor.whole(rack), i % 2 == 0 ? "let hall = 9\n" : "let wall = 9\n");
                // Requests are worked on in their order: with this answer all that the edit calls for has been sent.
                hints(editor, user);
            }
            assertThat(List.copyOf(editor.client().refreshed))
                    .containsExactlyInAnyOrder("diagnostics", "hints", "lenses", "tokens");
            editor.client().refreshed.clear();
            editor.client().refreshAnswer = java.util.concurrent.CompletableFuture.completedFuture(null);
            held.complete(null);
            java.util.Set<String> again = new java.util.HashSet<>();
            for (int i = 0; i < 4; i++) {
                again.add(EditorClient.next(editor.client().refreshed));
            }
            assertThat(again).containsExactlyInAnyOrder("diagnostics", "hints", "lenses", "tokens");
            hints(editor, user);
            assertThat(editor.client().refreshed).isEmpty();
            editor.type(rack, editor.whole(rack), "let wall = 11\n");
            hints(editor, user);
            assertThat(editor.client().refreshed).contains("hints", "lenses", "tokens");
        }
    }
}

package dev.treen.lsp.feature;

import static dev.treen.lsp.Editor.file;
import static dev.treen.lsp.Editor.get;
import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.Editor;
import dev.treen.lsp.EditorClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DiagnosticWorkspaceCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.PreviousResultId;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Diagnostics that are asked for, and files that change behind the editor's back. */
class PullsTest {
    private static final String WRONG = "part shelf { lenght 300; width 90; thickness 9 }\n";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatIsKnownIsNotSentAgain() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(WRONG);
            DocumentDiagnosticParams ask = new DocumentDiagnosticParams(file(uri));
            var full = get(editor.document().diagnostic(ask)).getRelatedFullDocumentDiagnosticReport();
            assertThat(full.getItems()).isEqualTo(editor.diagnostics(uri));
            assertThat(full.getItems()).extracting(d -> d.getCode().getLeft()).contains("unknown-property");
            ask.setPreviousResultId(full.getResultId());
            assertThat(get(editor.document().diagnostic(ask)).getRelatedUnchangedDocumentDiagnosticReport()
                    .getResultId()).isEqualTo(full.getResultId());
            editor.retype(uri, WRONG.replace("lenght", "length"));
            assertThat(get(editor.document().diagnostic(ask)).getRelatedFullDocumentDiagnosticReport().getItems())
                    .isEmpty();
        }
    }

    @Test
    void allFilesOfTheWorkspace() throws Exception {
        Files.writeString(folder.resolve("closed.treen"), WRONG);
        try (Editor editor = new Editor(new ClientCapabilities(), folder)) {
            String uri = editor.open(folder.resolve("open.treen").toUri().toString(), WRONG);
            var service = editor.server().getWorkspaceService();
            var first = get(service.diagnostic(new WorkspaceDiagnosticParams(List.of()))).getItems();
            assertThat(first).extracting(each -> each.getWorkspaceFullDocumentDiagnosticReport().getUri())
                    .containsExactlyInAnyOrder(uri, folder.resolve("closed.treen").toUri().toString());
            List<PreviousResultId> known = first.stream()
                    .map(each -> each.getWorkspaceFullDocumentDiagnosticReport())
                    .map(each -> new PreviousResultId(each.getUri(), each.getResultId()))
                    .toList();
            assertThat(get(service.diagnostic(new WorkspaceDiagnosticParams(known))).getItems())
                    .allMatch(each -> each.isWorkspaceUnchangedDocumentDiagnosticReport());
        }
    }

    @Test
    void whatIsAskedForIsNotSentAsWell() throws Exception {
        Path rack = Files.writeString(folder.resolve("rack.treen"), "let wall = 9\n");
        Path tray = Files.writeString(folder.resolve("tray.treen"),
                "use \"rack\"\npart shelf { lenght 300; width 90; thickness wall }\n");
        try (Editor editor = new Editor(asksAgain(), folder)) {
            String uri = editor.open(tray);
            assertThat(editor.diagnostics(uri)).isNotEmpty();
            DocumentDiagnosticParams ask = new DocumentDiagnosticParams(file(uri));
            assertThat(get(editor.document().diagnostic(ask)).getRelatedFullDocumentDiagnosticReport().getItems())
                    .as("asked for").isNotEmpty();
            assertThat(editor.client().nextPublished().getDiagnostics()).as("taken back").isEmpty();

            Files.writeString(rack, "let walls = 9\n");
            editor.server().getWorkspaceService().didChangeWatchedFiles(new DidChangeWatchedFilesParams(
                    List.of(new FileEvent(rack.toUri().toString(), FileChangeType.Changed))));
            assertThat(EditorClient.next(editor.client().refreshed)).isEqualTo("diagnostics");
            assertThat(get(editor.document().diagnostic(ask)).getRelatedFullDocumentDiagnosticReport().getItems())
                    .extracting(d -> d.getCode().getLeft()).contains("unknown-name");

            editor.type(uri, editor.whole(uri), "part shelf { lenght 300; width 90; thickness 9 }\n");
            assertThat(get(editor.document().diagnostic(ask)).getRelatedFullDocumentDiagnosticReport().getItems())
                    .extracting(d -> d.getCode().getLeft()).contains("unknown-property");
            assertThat(editor.client().hasPublished()).as("anything sent beside").isFalse();
        }
    }

    @Test
    void whoCannotBeToldToAskAgainIsSentAllTheSame() throws Exception {
        try (Editor editor = new Editor()) {
            String uri = editor.open(WRONG);
            assertThat(get(editor.document().diagnostic(new DocumentDiagnosticParams(file(uri))))
                    .getRelatedFullDocumentDiagnosticReport().getItems()).isNotEmpty();
            assertThat(editor.retype(uri, WRONG.replace("300", "301"))).isNotEmpty();
        }
    }

    private static ClientCapabilities asksAgain() {
        ClientCapabilities can = new ClientCapabilities();
        can.setWorkspace(new WorkspaceClientCapabilities());
        can.getWorkspace().setDiagnostics(new DiagnosticWorkspaceCapabilities(true));
        return can;
    }

    @Test
    void aChangeOnTheDiskIsNoticed() throws Exception {
        Path rack = Files.writeString(folder.resolve("rack.treen"), "let wall = 9\n");
        Path tray = Files.writeString(folder.resolve("tray.treen"),
                "use \"rack\"\npart shelf { length 300; width 90; thickness wall }\n");
        ClientCapabilities can = new ClientCapabilities();
        can.setWorkspace(new WorkspaceClientCapabilities());
        can.getWorkspace().setDidChangeWatchedFiles(new DidChangeWatchedFilesCapabilities(true));
        try (Editor editor = new Editor(can, folder)) {
            assertThat(editor.client().registrations.take().getRegistrations().getFirst().getMethod())
                    .isEqualTo("workspace/didChangeWatchedFiles");
            String uri = editor.open(tray);
            assertThat(editor.diagnostics(uri)).isEmpty();
            Files.writeString(rack, "let walls = 9\n");
            editor.server().getWorkspaceService().didChangeWatchedFiles(new DidChangeWatchedFilesParams(
                    List.of(new FileEvent(rack.toUri().toString(), FileChangeType.Changed))));
            assertThat(editor.client().nextPublished().getDiagnostics())
                    .extracting(d -> d.getCode().getLeft()).containsExactly("unknown-name");
        }
    }
}

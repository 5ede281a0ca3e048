package dev.treen.lsp;

import dev.treen.lsp.feature.Moves;
import dev.treen.lsp.feature.Pulls;
import dev.treen.lsp.feature.WorkspaceSymbols;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.eclipse.lsp4j.WorkspaceDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What concerns files outside the open ones, and all of them together. */
final class WorkspaceFiles implements WorkspaceService {
    private final Desk desk;

    WorkspaceFiles(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void didChangeConfiguration(DidChangeConfigurationParams params) {
        desk.settings(params.getSettings());
    }

    @Override
    public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        desk.allAfresh();
    }

    @Override
    public void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
        params.getEvent().getRemoved().forEach(folder -> desk.workspace().remove(folder.getUri()));
        params.getEvent().getAdded().forEach(folder -> desk.workspace().add(folder.getUri()));
    }

    @Override
    public CompletableFuture<Either<List<? extends SymbolInformation>, List<? extends WorkspaceSymbol>>> symbol(
            WorkspaceSymbolParams params) {
        return desk.answer(() -> Either.forRight(
                new WorkspaceSymbols(desk.encoding()).find(desk.workspace().all(), params.getQuery())));
    }

    // The protocol answers null; its Java form cannot say so.
    @SuppressWarnings("NullAway")
    @Override
    public CompletableFuture<Object> executeCommand(ExecuteCommandParams params) {
        return desk.commands().run(params).thenApply(done -> null);
    }

    @Override
    public CompletableFuture<WorkspaceEdit> willRenameFiles(RenameFilesParams params) {
        return desk.answer(() -> new Moves(desk.encoding()).before(desk.workspace().all(), params.getFiles()));
    }

    @Override
    public CompletableFuture<WorkspaceDiagnosticReport> diagnostic(WorkspaceDiagnosticParams params) {
        Map<String, String> known = new HashMap<>();
        params.getPreviousResultIds().forEach(each -> known.put(each.getUri(), each.getValue()));
        return desk.answer(() -> {
            desk.asked();
            return new Pulls(desk.diagnostics()).of(desk.workspace().all(), known);
        });
    }
}

package dev.treen.lsp;

import dev.treen.lsp.position.PositionEncoding;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.DidChangeWatchedFilesRegistrationOptions;
import org.eclipse.lsp4j.FileSystemWatcher;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/** The language server: says what it can do, and hands each request to the feature that answers it. */
public final class TreenServer implements LanguageServer, LanguageClientAware {
    private final Desk desk = new Desk();
    private volatile boolean watch;
    private volatile boolean hearsOfSettings;
    private final TextService text = new TextService(desk);
    private final WorkspaceFiles workspace = new WorkspaceFiles(desk);

    /** A server that has not met its client yet. */
    public TreenServer() {
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
        PositionEncoding encoding = PositionEncoding.negotiate(params.getCapabilities());
        desk.encoding(encoding);
        desk.client(params.getCapabilities());
        if (params.getWorkspaceFolders() != null) {
            params.getWorkspaceFolders().forEach(folder -> desk.workspace().add(folder.getUri()));
        }
        watch = watches(params.getCapabilities());
        hearsOfSettings = hearsOfSettings(params.getCapabilities());
        return CompletableFuture.completedFuture(new InitializeResult(Abilities.in(encoding), new ServerInfo("treen")));
    }

    @Override
    public void initialized(InitializedParams params) {
        if (desk.tellsSettings()) {
            desk.settings(null);
        }
        if (hearsOfSettings) {
            register(
                    new Registration("treen-settings", "workspace/didChangeConfiguration", Map.of("section", "treen")));
        }
        if (watch) {
            Registration files = new Registration("treen-files", "workspace/didChangeWatchedFiles",
                    new DidChangeWatchedFilesRegistrationOptions(
                            List.of(new FileSystemWatcher(Either.forLeft("**/*.treen")))));
            register(files);
            desk.workspace().watched();
        }
    }

    private void register(Registration ability) {
        desk.client().ifPresent(client -> {
            var _ = client.registerCapability(new RegistrationParams(List.of(ability)));
        });
    }

    private static boolean hearsOfSettings(ClientCapabilities can) {
        return can != null && can.getWorkspace() != null && can.getWorkspace().getDidChangeConfiguration() != null
                && Boolean.TRUE.equals(can.getWorkspace().getDidChangeConfiguration().getDynamicRegistration());
    }

    private static boolean watches(ClientCapabilities can) {
        return can != null && can.getWorkspace() != null && can.getWorkspace().getDidChangeWatchedFiles() != null
                && Boolean.TRUE.equals(can.getWorkspace().getDidChangeWatchedFiles().getDynamicRegistration());
    }

    // The protocol answers null; its Java form cannot say so.
    @SuppressWarnings("NullAway")
    @Override
    public CompletableFuture<Object> shutdown() {
        desk.stop();
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void exit() {
        // The streams' own lifecycle ends the process.
    }

    @Override
    public void cancelProgress(WorkDoneProgressCancelParams params) {
        desk.progressing().cancel(params.getToken().isLeft() ? params.getToken().getLeft()
                : String.valueOf(params.getToken().getRight()));
    }

    @Override
    public TextDocumentService getTextDocumentService() {
        return text;
    }

    @Override
    public WorkspaceService getWorkspaceService() {
        return workspace;
    }

    @Override
    public void connect(LanguageClient client) {
        desk.connect(client);
    }
}

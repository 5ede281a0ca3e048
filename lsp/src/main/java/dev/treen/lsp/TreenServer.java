package dev.treen.lsp;

import dev.treen.lsp.feature.Formatting;
import dev.treen.lsp.position.PositionEncoding;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.DocumentOnTypeFormattingOptions;
import org.eclipse.lsp4j.DocumentRangeFormattingOptions;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/** The language server: says what it can do, and hands each request to the feature that answers it. */
public final class TreenServer implements LanguageServer, LanguageClientAware {
    private final Desk desk = new Desk();
    private final TextService text = new TextService(desk);
    private final WorkspaceFiles workspace = new WorkspaceFiles(desk);

    /** A server that has not met its client yet. */
    public TreenServer() {
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
        PositionEncoding encoding = PositionEncoding.negotiate(params.getCapabilities());
        desk.encoding(encoding);
        ServerCapabilities can = new ServerCapabilities();
        can.setPositionEncoding(encoding.wireName());
        can.setTextDocumentSync(TextDocumentSyncKind.Incremental);
        can.setHoverProvider(true);
        can.setDefinitionProvider(true);
        can.setDocumentSymbolProvider(true);
        can.setInlayHintProvider(true);
        can.setCompletionProvider(new CompletionOptions(false, java.util.List.of(".", " ")));
        can.setCodeActionProvider(new CodeActionOptions(java.util.List.of(CodeActionKind.QuickFix)));
        can.setDocumentFormattingProvider(true);
        DocumentRangeFormattingOptions ranges = new DocumentRangeFormattingOptions();
        ranges.setRangesSupport(true);
        can.setDocumentRangeFormattingProvider(ranges);
        can.setDocumentOnTypeFormattingProvider(new DocumentOnTypeFormattingOptions(
                Formatting.TRIGGERS.getFirst(), Formatting.TRIGGERS.subList(1, Formatting.TRIGGERS.size())));
        return CompletableFuture.completedFuture(new InitializeResult(can, new ServerInfo("treen")));
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

package dev.treen.lsp.stdio;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/** A server that answers hovers, keeps what it was told, and fails in every way when it is asked to. */
final class TestServer implements LanguageServer, LanguageClientAware {

    final List<String> heard = new CopyOnWriteArrayList<>();
    private LanguageClient client;

    @Override
    public void connect(LanguageClient given) {
        client = given;
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
        return CompletableFuture.completedFuture(new InitializeResult(new ServerCapabilities()));
    }

    @Override
    public CompletableFuture<Object> shutdown() {
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void exit() {
        heard.add("exit");
    }

    @Override
    public TextDocumentService getTextDocumentService() {
        return new Documents();
    }

    @Override
    public WorkspaceService getWorkspaceService() {
        return new Commands();
    }

    private static int dig(int depth) {
        return depth < 0 ? 0 : 1 + dig(depth + 1);
    }

    private final class Documents implements TextDocumentService {

        @Override
        public CompletableFuture<Hover> hover(HoverParams params) {
            int line = params.getPosition().getLine();
            return CompletableFuture.completedFuture(new Hover(new MarkupContent("plaintext", "line " + line)));
        }

        @Override
        public void didOpen(DidOpenTextDocumentParams params) {
            heard.add(params.getTextDocument().getText());
        }

        @Override
        public void didChange(DidChangeTextDocumentParams params) {
            switch (params.getContentChanges().getFirst().getText()) {
                case "overflow" -> dig(0);
                case "throw" -> throw new IllegalStateException("asked to");
                default -> heard.add(params.getContentChanges().getFirst().getText());
            }
        }

        @Override
        public void didClose(DidCloseTextDocumentParams params) {
            heard.add("closed");
        }

        @Override
        public void didSave(DidSaveTextDocumentParams params) {
            heard.add("saved");
        }
    }

    private final class Commands implements WorkspaceService {

        @Override
        public CompletableFuture<Object> executeCommand(ExecuteCommandParams params) {
            return switch (params.getCommand()) {
                case "overflow" -> CompletableFuture.completedFuture(dig(0));
                case "throw" -> throw new IllegalStateException("asked to");
                case "throw later" -> CompletableFuture.supplyAsync(() -> {
                    throw new IllegalStateException("asked to");
                });
                case "overflow later" -> CompletableFuture.supplyAsync(() -> dig(0));
                case "null" -> null;
                case "print" -> {
                    System.out.println("a stray line\r\nContent-Length: 5\r\n\r\n");
                    client.logMessage(new MessageParams(MessageType.Log, "after the stray line"));
                    yield CompletableFuture.completedFuture("printed");
                }
                case "much" -> CompletableFuture.completedFuture("x".repeat(100_000));
                default -> CompletableFuture.completedFuture(params.getCommand());
            };
        }

        @Override
        public void didChangeConfiguration(DidChangeConfigurationParams params) {
            heard.add("configured");
        }

        @Override
        public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
            heard.add("watched");
        }
    }
}

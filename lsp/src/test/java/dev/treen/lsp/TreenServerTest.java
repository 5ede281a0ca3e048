package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.stdio.StdioServer;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The server over its real streams, as an editor would drive it. Waits are for answers, never for time to pass. */
class TreenServerTest {
    private static final String URI = Path.of("..", "examples", "tea-caddy", "tea-caddy.treen")
            .toAbsolutePath()
            .normalize()
            .toUri()
            .toString();

    private final Client client = new Client();
    private LanguageServer server;
    private String text;

    /** Keeps what the server publishes. */
    private static final class Client implements LanguageClient {
        private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();

        @Override
        public void telemetryEvent(Object object) {
            // Treen sends none.
        }

        @Override
        public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
            published.add(diagnostics);
        }

        @Override
        public void showMessage(MessageParams message) {
            // Not looked at here.
        }

        @Override
        public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
            return CompletableFuture.failedFuture(new UnsupportedOperationException("nobody to ask"));
        }

        @Override
        public void logMessage(MessageParams message) {
            // Not looked at here.
        }

        List<Diagnostic> next(int version) throws InterruptedException {
            while (true) {
                PublishDiagnosticsParams got = published.poll(60, TimeUnit.SECONDS);
                assertThat(got).as("diagnostics of version " + version).isNotNull();
                if (got.getVersion() != null && got.getVersion() == version) {
                    return got.getDiagnostics();
                }
            }
        }
    }

    @BeforeEach
    void open() throws Exception {
        // Both pipes are joined before anybody reads: a reader that is early takes a loose end for the end.
        PipedInputStream toServer = new PipedInputStream(1 << 16);
        PipedOutputStream fromClient = new PipedOutputStream(toServer);
        PipedInputStream toClient = new PipedInputStream(1 << 16);
        PipedOutputStream fromServer = new PipedOutputStream(toClient);
        StdioServer.launch(new TreenServer(), toServer, fromServer);
        Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(client, toClient, fromClient);
        var listening = launcher.startListening();
        assertThat(listening.isCancelled()).isFalse();
        server = launcher.getRemoteProxy();
        InitializeParams params = new InitializeParams();
        params.setCapabilities(new ClientCapabilities());
        server.initialize(params).get(60, TimeUnit.SECONDS);
        text = Files.readString(Path.of(java.net.URI.create(URI)));
        server.getTextDocumentService()
                .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(URI, "treen", 1, text)));
        assertThat(client.next(1)).isEmpty();
    }

    private Position at(String needle, int plus) {
        int offset = text.indexOf(needle) + plus;
        String before = text.substring(0, offset);
        int line = (int) before.chars().filter(c -> c == '\n').count();
        return new Position(line, offset - (before.lastIndexOf('\n') + 1));
    }

    private void change(int version, Range range, String with) {
        server.getTextDocumentService()
                .didChange(new DidChangeTextDocumentParams(
                        new VersionedTextDocumentIdentifier(URI, version),
                        List.of(new TextDocumentContentChangeEvent(range, with))));
    }

    @Test
    void aTightPanelIsToldAndItsFixMakesItGoAway() throws Exception {
        Range auto = new Range(at("gap auto", 4), at("gap auto", 8));
        change(2, auto, "0.2");
        List<Diagnostic> told = client.next(2);
        assertThat(told).hasSize(1);
        Diagnostic tight = told.getFirst();
        assertThat(tight.getCode().getLeft()).isEqualTo("panel-tight");
        assertThat(tight.getRelatedInformation()).isNotEmpty();
        var actions = server.getTextDocumentService()
                .codeAction(new CodeActionParams(
                        new TextDocumentIdentifier(URI), tight.getRange(), new CodeActionContext(told)))
                .get(60, TimeUnit.SECONDS);
        TextEdit edit = actions.getFirst()
                .getRight()
                .getEdit()
                .getChanges()
                .get(URI)
                .getFirst();
        change(3, edit.getRange(), edit.getNewText());
        assertThat(client.next(3)).isEmpty();
    }

    @Test
    void hintsHoverCompletionOutlineAndDefinitionAnswer() throws Exception {
        TextDocumentIdentifier file = new TextDocumentIdentifier(URI);
        var text_ = server.getTextDocumentService();
        var hints = text_.inlayHint(new InlayHintParams(file, new Range(new Position(0, 0), new Position(999, 0))))
                .get(60, TimeUnit.SECONDS);
        assertThat(hints.toString()).contains("178 x 94").contains("= 0.8 mm")
                .contains("mm through the year");
        var hover = text_.hover(new HoverParams(file, at("part base", 6))).get(60, TimeUnit.SECONDS);
        assertThat(hover.getContents().getRight().getValue()).contains("groove").contains("swelling")
                .contains("room of base on each side through the year").contains("tightest");
        var board = text_.hover(new HoverParams(file, at("board plank", 7))).get(60, TimeUnit.SECONDS);
        assertThat(board.getContents().getRight().getValue()).contains("of black cherry").contains("Caution: ");
        var symbols = text_.documentSymbol(new DocumentSymbolParams(file)).get(60, TimeUnit.SECONDS);
        assertThat(symbols.toString()).contains("base").contains("plank");
        var completions = text_.completion(new CompletionParams(file, at("species   black", 10)))
                .get(60, TimeUnit.SECONDS)
                .getLeft();
        assertThat(completions).extracting(item -> item.getLabel()).contains("black_cherry");
        var definitions = text_.definition(new org.eclipse.lsp4j.DefinitionParams(file, at("inside.length", 2)))
                .get(60, TimeUnit.SECONDS)
                .getLeft();
        assertThat(definitions.getFirst().getRange().getStart()).isEqualTo(at("inside = 160", 0));
    }

    @Test
    void anErrorInOneLineLeavesTheOthersAlive() throws Exception {
        change(2, new Range(at("part lid", 9), at("part lid", 9)), " length ) (\n");
        assertThat(client.next(2)).isNotEmpty();
        var hints = server.getTextDocumentService()
                .inlayHint(new InlayHintParams(
                        new TextDocumentIdentifier(URI), new Range(new Position(0, 0), new Position(999, 0))))
                .get(60, TimeUnit.SECONDS);
        assertThat(hints.toString()).contains("178 x 94");
    }

    /** A session that is over holds on to no thread, and so to nothing that was said in it. */
    @Test
    void noThreadOutlivesItsSession() throws Exception {
        java.util.Set<Thread> before = Thread.getAllStackTraces().keySet();
        try (Editor editor = new Editor()) {
            editor.open("let a = 1\n");
        }
        for (Thread thread : Thread.getAllStackTraces().keySet()) {
            if (!before.contains(thread) && thread.getName().startsWith("treen-lsp")) {
                assertThat(thread.join(java.time.Duration.ofSeconds(30))).as(thread.getName()).isTrue();
            }
        }
    }

    @Test
    void everyWordOfTheLanguageSaysWhatItDoes() throws Exception {
        String text = """
                use "treen/box"
                let wall = 9
                part left { length 80; width 84; thickness wall }
                part right like left
                joint mitre left to right
                require wall <= 9 because "it is so"
                """;
        try (Editor editor = new Editor()) {
            String uri = editor.open(text);
            for (String word : java.util.List.of("use", "let", "part", "like", "joint", "to", "require", "because")) {
                var hover = Editor.get(editor.document().hover(new org.eclipse.lsp4j.HoverParams(
                        Editor.file(uri),
                        editor.at(uri, word.equals("to") ? " to " : word, word.equals("to") ? 2 : 1))));
                assertThat(hover).as(word).isNotNull();
            }
        }
    }
}

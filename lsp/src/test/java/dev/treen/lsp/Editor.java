package dev.treen.lsp;

import static org.assertj.core.api.Assertions.assertThat;

import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import dev.treen.lsp.stdio.StdioServer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;

/**
 * An editor for tests: talks to the server over its real streams, keeps its own copy of each text, and waits for
 * answers, never for time to pass.
 */
public final class Editor implements AutoCloseable {
    private static final int PATIENCE_SECONDS = 60;

    private final EditorClient client = new EditorClient();
    private final Map<String, String> texts = new HashMap<>();
    private final Map<String, Integer> versions = new HashMap<>();
    private final Tape said;
    private final Tape heard;
    private final LanguageServer server;
    private final InitializeResult greeting;

    /** Keeps what goes through a stream. */
    private static final class Tape extends OutputStream {
        private final OutputStream to;
        private final ByteArrayOutputStream copy = new ByteArrayOutputStream();

        Tape(OutputStream to) {
            this.to = to;
        }

        @Override
        public synchronized void write(int value) throws IOException {
            copy.write(value);
            to.write(value);
        }

        @Override
        public synchronized void write(byte[] bytes, int from, int count) throws IOException {
            copy.write(bytes, from, count);
            to.write(bytes, from, count);
        }

        @Override
        public void flush() throws IOException {
            to.flush();
        }

        @Override
        public void close() throws IOException {
            to.close();
        }

        synchronized byte[] played() {
            return copy.toByteArray();
        }
    }

    /** An editor that can do little. */
    public Editor() throws Exception {
        this(new ClientCapabilities());
    }

    /** An editor with {@code capabilities} that has {@code folders} open. */
    public Editor(ClientCapabilities capabilities, Path... folders) throws Exception {
        // Both pipes are joined before anybody reads: a reader that is early takes a loose end for the end.
        PipedInputStream toServer = new PipedInputStream(1 << 20);
        said = new Tape(new PipedOutputStream(toServer));
        PipedInputStream toClient = new PipedInputStream(1 << 20);
        heard = new Tape(new PipedOutputStream(toClient));
        StdioServer.launch(new TreenServer(), toServer, heard);
        Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(client, toClient, said);
        var listening = launcher.startListening();
        assertThat(listening.isCancelled()).isFalse();
        server = launcher.getRemoteProxy();
        InitializeParams params = new InitializeParams();
        params.setCapabilities(capabilities);
        params.setWorkspaceFolders(List.of(folders).stream()
                .map(folder -> new WorkspaceFolder(folder.toUri().toString(), folder.getFileName().toString()))
                .toList());
        greeting = get(server.initialize(params));
        server.initialized(new InitializedParams());
    }

    /** Opens a text that lies nowhere on the disk, and gives its address. */
    public String open(String text) throws InterruptedException {
        return open("file:///bench/" + (texts.size() + 1) + ".treen", text);
    }

    /** Opens a file as it is on the disk. */
    public String open(Path file) throws IOException, InterruptedException {
        return open(file.toAbsolutePath().normalize().toUri().toString(), Files.readString(file));
    }

    /** Opens {@code text} under an address, and waits until the server has looked at it. */
    public String open(String uri, String text) throws InterruptedException {
        texts.put(uri, text);
        versions.put(uri, 1);
        document().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "treen", 1, text)));
        client.published(uri, 1);
        return uri;
    }

    /** Types {@code with} in the place of {@code range}. */
    public void type(String uri, Range range, String with) {
        texts.put(uri, applied(texts.get(uri), List.of(new TextEdit(range, with))));
        int version = versions.merge(uri, 1, Integer::sum);
        document().didChange(new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(uri, version),
                List.of(new TextDocumentContentChangeEvent(range, with))));
    }

    /** Makes the whole text another, and gives what the server says of it. */
    public List<Diagnostic> retype(String uri, String text) throws InterruptedException {
        type(uri, whole(uri), text);
        return diagnostics(uri);
    }

    /** The user has had enough of what goes on under a token. */
    public void cancelProgress(Either<String, Integer> token) {
        server.cancelProgress(new WorkDoneProgressCancelParams(token));
    }

    /** Closes a file. */
    public void shut(String uri) {
        texts.remove(uri);
        document().didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(uri)));
    }

    /** What the server says of the newest version. */
    public List<Diagnostic> diagnostics(String uri) throws InterruptedException {
        return client.published(uri, versions.get(uri));
    }

    /** The text as the editor has it. */
    public String text(String uri) {
        return texts.get(uri);
    }

    /** The place {@code plus} characters behind the first of {@code needle}. */
    public Position at(String uri, String needle, int plus) {
        int found = texts.get(uri).indexOf(needle);
        assertThat(found).as(needle).isNotNegative();
        return Positions.of(texts.get(uri), PositionEncoding.UTF16).position(found + plus);
    }

    /** The first of {@code needle}. */
    public Range range(String uri, String needle) {
        return new Range(at(uri, needle, 0), at(uri, needle, needle.length()));
    }

    /** The whole text. */
    public Range whole(String uri) {
        return Positions.of(texts.get(uri), PositionEncoding.UTF16).range(0, texts.get(uri).length());
    }

    /** What stands in a range. */
    public String read(String uri, Range range) {
        Positions.Span span = Positions.of(texts.get(uri), PositionEncoding.UTF16).span(range);
        return texts.get(uri).substring(span.start(), span.end());
    }

    /** The text after edits that do not overlap, as the protocol has them: all meant for the text before. */
    public static String applied(String text, List<? extends TextEdit> edits) {
        Positions positions = Positions.of(text, PositionEncoding.UTF16);
        List<TextEdit> sorted = new ArrayList<>(edits);
        sorted.sort(Comparator.comparingInt((TextEdit e) -> positions.span(e.getRange()).start()));
        StringBuilder result = new StringBuilder();
        int done = 0;
        for (TextEdit edit : sorted) {
            Positions.Span span = positions.span(edit.getRange());
            assertThat(span.start()).as("edits do not overlap").isGreaterThanOrEqualTo(done);
            result.append(text, done, span.start()).append(edit.getNewText());
            done = span.end();
        }
        return result.append(text, done, text.length()).toString();
    }

    /** The answer to a request. */
    public static <T> T get(CompletableFuture<T> answer) throws InterruptedException, ExecutionException {
        try {
            return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException late) {
            throw new AssertionError("no answer within a minute", late);
        }
    }

    /** The file as requests name it. */
    public static TextDocumentIdentifier file(String uri) {
        return new TextDocumentIdentifier(uri);
    }

    /** Requests about one file. */
    public TextDocumentService document() {
        return server.getTextDocumentService();
    }

    /** The server. */
    public LanguageServer server() {
        return server;
    }

    /** What the server said it can do. */
    public InitializeResult greeting() {
        return greeting;
    }

    /** What the server asks of the editor. */
    public EditorClient client() {
        return client;
    }

    /** Ends the session, and holds every message of it against the protocol. */
    @Override
    public void close() throws IOException {
        try {
            get(server.shutdown());
        } catch (ExecutionException failed) {
            throw new AssertionError(failed);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        server.exit();
        // Both ends hear that the other is gone, so that no thread waits on with all that was said in its hands.
        said.close();
        heard.close();
        ProtocolSchema.check(said.played(), heard.played());
    }
}

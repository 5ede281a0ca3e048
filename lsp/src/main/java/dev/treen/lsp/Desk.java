package dev.treen.lsp;

import dev.treen.lsp.feature.Diagnostics;
import dev.treen.lsp.position.PositionEncoding;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.CancelChecker;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/**
 * Where the work of a session is done. Texts change on the thread that reads messages; all else is worked out on one
 * worker, in the order of arrival, each answer from the version it was asked about. A version that a newer one has
 * overtaken is not analysed for its own sake.
 */
final class Desk {
    private static final Logger LOG = Logger.getLogger(Desk.class.getName());

    private final Documents documents = new Documents();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("treen-analysis").stackSize(16L << 20).factory());
    private final Workspace workspace = new Workspace(documents);
    private volatile PositionEncoding encoding = PositionEncoding.UTF16;
    private volatile Diagnostics diagnostics = new Diagnostics(PositionEncoding.UTF16);
    private volatile @Nullable LanguageClient client;

    void encoding(PositionEncoding agreed) {
        encoding = agreed;
        documents.encoding(agreed);
        diagnostics = new Diagnostics(agreed);
    }

    void connect(LanguageClient toClient) {
        client = toClient;
    }

    void stop() {
        worker.shutdown();
    }

    Documents documents() {
        return documents;
    }

    Workspace workspace() {
        return workspace;
    }

    PositionEncoding encoding() {
        return encoding;
    }

    /** The client, once there is one. */
    Optional<LanguageClient> client() {
        return Optional.ofNullable(client);
    }

    Diagnostics diagnostics() {
        return diagnostics;
    }

    /** A text has changed: it is looked at afresh, and so is every other that may use it. */
    void changed(Document document) {
        documents.othersAfresh(document.uri());
        workspace.afresh();
        publishSoon(document);
        documents.all().stream().filter(d -> !d.uri().equals(document.uri())).forEach(this::publishSoon);
    }

    /** Files on the disk have changed: everything is looked at afresh. */
    void allAfresh() {
        documents.othersAfresh("");
        workspace.afresh();
        documents.all().forEach(this::publishSoon);
    }

    /** Takes back what was said of a file. */
    void clear(String uri) {
        LanguageClient to = client;
        if (to != null) {
            to.publishDiagnostics(new PublishDiagnosticsParams(uri, List.of()));
        }
    }

    void publishSoon(Document document) {
        worker.execute(() -> {
            LanguageClient to = client;
            boolean newest = documents.find(document.uri()).filter(document::equals).isPresent();
            if (to == null || !newest) {
                return;
            }
            try {
                to.publishDiagnostics(
                        new PublishDiagnosticsParams(document.uri(), diagnostics.of(document), document.version()));
            } catch (RuntimeException | StackOverflowError fault) {
                LOG.log(Level.SEVERE, "A fault in Treen while checking " + document.uri(), fault);
            }
        });
    }

    /** What {@code feature} makes of a file, {@code nothing} where the file is not open. */
    <T> CompletableFuture<T> answer(TextDocumentIdentifier file, T nothing, Function<Document, T> feature) {
        Optional<Document> document = documents.find(file.getUri());
        if (document.isEmpty()) {
            return CompletableFuture.completedFuture(nothing);
        }
        return CompletableFutures.computeAsync(worker, (CancelChecker cancel) -> {
            cancel.checkCanceled();
            return feature.apply(document.get());
        });
    }

    /** What {@code work} makes of all files. */
    <T> CompletableFuture<T> answer(Supplier<T> work) {
        return CompletableFutures.computeAsync(worker, (CancelChecker cancel) -> {
            cancel.checkCanceled();
            return work.get();
        });
    }

    /** The same where the protocol answers null for nothing; its Java form cannot say so. */
    @SuppressWarnings("NullAway")
    <T> CompletableFuture<T> maybe(TextDocumentIdentifier file, Function<Document, Optional<T>> feature) {
        return answer(file, Optional.<T>empty(), feature).thenApply(found -> found.orElse(null));
    }
}

package dev.treen.lsp;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.services.LanguageClient;

/**
 * Tells the client what is to be said of its texts. It is sent, until the client asks for it: an editor shows what it
 * was sent beside what it asked for, and so would show everything twice. From then on a client is only told when to ask
 * again. A client that cannot be told so is sent it all the same.
 */
final class Publisher {
    private final Supplier<Optional<LanguageClient>> client;
    private final Refreshes refreshes;
    private final Function<Document, List<Diagnostic>> diagnostics;
    private final Map<String, PublishDiagnosticsParams> last = new ConcurrentHashMap<>();
    private volatile boolean asks;

    Publisher(
            Supplier<Optional<LanguageClient>> client,
            Refreshes refreshes,
            Function<Document, List<Diagnostic>> diagnostics) {
        this.client = client;
        this.refreshes = refreshes;
        this.diagnostics = diagnostics;
    }

    /** The client has asked: what it was sent is taken back. */
    void asked() {
        if (!refreshes.tellsDiagnostics() || asks) {
            return;
        }
        asks = true;
        last.values().stream()
                .filter(sent -> !sent.getDiagnostics().isEmpty())
                .forEach(sent -> send(new PublishDiagnosticsParams(sent.getUri(), List.of(), sent.getVersion())));
    }

    /** What is to be said of a text that the client has just changed itself, and so asks about where it asks. */
    void typed(Document document) {
        PublishDiagnosticsParams now = now(document);
        if (isNews(now) && !asks) {
            send(now);
        }
    }

    /** What is to be said of a text has changed without the client's doing. */
    void found(Document document) {
        PublishDiagnosticsParams now = now(document);
        if (isNews(now)) {
            if (asks) {
                refreshes.diagnostics();
            } else {
                send(now);
            }
        }
    }

    /** Takes back what was said of a file. */
    void forget(String uri) {
        last.remove(uri);
        send(new PublishDiagnosticsParams(uri, List.of()));
    }

    private PublishDiagnosticsParams now(Document document) {
        return new PublishDiagnosticsParams(document.uri(), diagnostics.apply(document), document.version());
    }

    private boolean isNews(PublishDiagnosticsParams now) {
        return !now.equals(last.put(now.getUri(), now));
    }

    private void send(PublishDiagnosticsParams what) {
        client.get().ifPresent(to -> to.publishDiagnostics(what));
    }
}

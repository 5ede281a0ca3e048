package dev.treen.lsp;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.lsp4j.CodeLensWorkspaceCapabilities;
import org.eclipse.lsp4j.DiagnosticWorkspaceCapabilities;
import org.eclipse.lsp4j.InlayHintWorkspaceCapabilities;
import org.eclipse.lsp4j.SemanticTokensWorkspaceCapabilities;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.services.LanguageClient;

/**
 * Tells the client to ask again for what it shows of texts that it did not change itself. Of each kind one request is
 * under way at a time: what changes before it is answered is told together, by one more after the answer. So whoever
 * types in a file that others use sends no more than the client can take.
 */
final class Refreshes {
    private final Supplier<Optional<LanguageClient>> client;
    private final Kind hints = new Kind(LanguageClient::refreshInlayHints);
    private final Kind lenses = new Kind(LanguageClient::refreshCodeLenses);
    private final Kind colours = new Kind(LanguageClient::refreshSemanticTokens);
    private final Kind diagnostics = new Kind(LanguageClient::refreshDiagnostics);

    Refreshes(Supplier<Optional<LanguageClient>> client) {
        this.client = client;
    }

    /** What the client can be told to ask again for. */
    void client(Optional<WorkspaceClientCapabilities> can) {
        hints.wanted = can.map(WorkspaceClientCapabilities::getInlayHint)
                .map(InlayHintWorkspaceCapabilities::getRefreshSupport).orElse(false);
        lenses.wanted = can.map(WorkspaceClientCapabilities::getCodeLens)
                .map(CodeLensWorkspaceCapabilities::getRefreshSupport).orElse(false);
        colours.wanted = can.map(WorkspaceClientCapabilities::getSemanticTokens)
                .map(SemanticTokensWorkspaceCapabilities::getRefreshSupport).orElse(false);
        diagnostics.wanted = can.map(WorkspaceClientCapabilities::getDiagnostics)
                .map(DiagnosticWorkspaceCapabilities::getRefreshSupport).orElse(false);
    }

    /** Hints are others now. */
    void hints() {
        hints.ask();
    }

    /** Lenses are others now. */
    void lenses() {
        lenses.ask();
    }

    /** Colours are others now. */
    void colours() {
        colours.ask();
    }

    /** Whether the client can be told that diagnostics are others now. */
    boolean tellsDiagnostics() {
        return diagnostics.wanted;
    }

    /** Diagnostics are others now. */
    void diagnostics() {
        diagnostics.ask();
    }

    /** One kind of what is shown. */
    private final class Kind {
        private final Function<LanguageClient, CompletableFuture<Void>> request;
        private volatile boolean wanted;
        private boolean underWay;
        private boolean again;

        Kind(Function<LanguageClient, CompletableFuture<Void>> request) {
            this.request = request;
        }

        void ask() {
            Optional<LanguageClient> to = client.get();
            if (!wanted || to.isEmpty()) {
                return;
            }
            synchronized (this) {
                if (underWay) {
                    again = true;
                    return;
                }
                underWay = true;
            }
            // A client that refuses has answered too.
            var _ = request.apply(to.get()).whenComplete((done, fault) -> answered());
        }

        private void answered() {
            boolean once;
            synchronized (this) {
                underWay = false;
                once = again;
                again = false;
            }
            if (once) {
                ask();
            }
        }
    }
}

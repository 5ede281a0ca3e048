package dev.treen.lsp;

import dev.treen.lsp.feature.Completions;
import dev.treen.lsp.feature.Definitions;
import dev.treen.lsp.feature.Diagnostics;
import dev.treen.lsp.feature.Hovers;
import dev.treen.lsp.feature.InlayHints;
import dev.treen.lsp.feature.Outline;
import dev.treen.lsp.feature.QuickFixes;
import dev.treen.lsp.position.PositionEncoding;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.CancelChecker;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the open files and answers about them. Texts change on the thread that reads messages; all else is worked out on
 * one worker, in the order of arrival, each answer from the version it was asked about. A version that a newer one has
 * overtaken is not analysed for its own sake.
 */
final class TextService implements TextDocumentService {
    private static final Logger LOG = Logger.getLogger(TextService.class.getName());

    private final Documents documents = new Documents();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(
            Thread.ofPlatform().daemon().name("treen-analysis").stackSize(16L << 20).factory());
    private volatile Diagnostics diagnostics = new Diagnostics(PositionEncoding.UTF16);
    private volatile @Nullable LanguageClient client;

    void encoding(PositionEncoding agreed) {
        documents.encoding(agreed);
        diagnostics = new Diagnostics(agreed);
    }

    void connect(LanguageClient toClient) {
        client = toClient;
    }

    void stop() {
        worker.shutdown();
    }

    void allAfresh() {
        documents.othersAfresh("");
        documents.all().forEach(this::publishSoon);
    }

    @Override
    public void didOpen(DidOpenTextDocumentParams params) {
        publishSoon(documents.open(params.getTextDocument()));
    }

    @Override
    public void didChange(DidChangeTextDocumentParams params) {
        documents.change(params).ifPresent(changed -> {
            documents.othersAfresh(changed.uri());
            publishSoon(changed);
            documents.all().stream().filter(d -> !d.uri().equals(changed.uri())).forEach(this::publishSoon);
        });
    }

    @Override
    public void didClose(DidCloseTextDocumentParams params) {
        documents.close(params.getTextDocument().getUri());
        LanguageClient to = client;
        if (to != null) {
            to.publishDiagnostics(
                    new PublishDiagnosticsParams(params.getTextDocument().getUri(), List.of()));
        }
    }

    @Override
    public void didSave(DidSaveTextDocumentParams params) {
        // The open text is the truth already.
    }

    private void publishSoon(Document document) {
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

    private <T> CompletableFuture<T> answer(TextDocumentIdentifier file, T nothing, Function<Document, T> feature) {
        Optional<Document> document = documents.find(file.getUri());
        if (document.isEmpty()) {
            return CompletableFuture.completedFuture(nothing);
        }
        return CompletableFutures.computeAsync(worker, (CancelChecker cancel) -> {
            cancel.checkCanceled();
            return feature.apply(document.get());
        });
    }

    @Override
    public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(CompletionParams params) {
        return answer(
                params.getTextDocument(),
                Either.forLeft(List.of()),
                d -> Either.forLeft(new Completions().at(d, d.positions().offset(params.getPosition()))));
    }

    // The protocol answers null where there is nothing to show; its Java form cannot say so.
    @SuppressWarnings("NullAway")
    @Override
    public CompletableFuture<Hover> hover(HoverParams params) {
        Optional<Document> document = documents.find(params.getTextDocument().getUri());
        if (document.isEmpty()) {
            return CompletableFuture.completedFuture(null);
        }
        return CompletableFutures.computeAsync(worker, cancel -> new Hovers()
                .at(document.get(), document.get().positions().offset(params.getPosition()))
                .orElse(null));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> definition(
            DefinitionParams params) {
        return answer(
                params.getTextDocument(),
                Either.forLeft(List.of()),
                d -> Either.forLeft(
                        new Definitions(diagnostics).at(d, d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
            DocumentSymbolParams params) {
        return answer(params.getTextDocument(), List.of(), d -> new Outline().of(d));
    }

    @Override
    public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
        return answer(params.getTextDocument(), List.of(), d -> new InlayHints().in(d, params.getRange()));
    }

    @Override
    public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
        return answer(
                params.getTextDocument(),
                List.of(),
                d -> new QuickFixes(diagnostics).at(d, params.getRange()));
    }
}

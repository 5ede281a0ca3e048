package dev.treen.lsp;

import dev.treen.lsp.feature.Completions;
import dev.treen.lsp.feature.Definitions;
import dev.treen.lsp.feature.Formatting;
import dev.treen.lsp.feature.Hovers;
import dev.treen.lsp.feature.InlayHints;
import dev.treen.lsp.feature.Outline;
import dev.treen.lsp.feature.QuickFixes;
import java.util.List;
import java.util.concurrent.CompletableFuture;
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
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentRangesFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.TextDocumentService;

/** The requests about one file, each handed to its feature. */
final class TextService implements TextDocumentService {
    private final Desk desk;

    TextService(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void didOpen(DidOpenTextDocumentParams params) {
        desk.publishSoon(desk.documents().open(params.getTextDocument()));
    }

    @Override
    public void didChange(DidChangeTextDocumentParams params) {
        desk.documents().change(params).ifPresent(desk::changed);
    }

    @Override
    public void didClose(DidCloseTextDocumentParams params) {
        desk.documents().close(params.getTextDocument().getUri());
        desk.clear(params.getTextDocument().getUri());
    }

    @Override
    public void didSave(DidSaveTextDocumentParams params) {
        // The open text is the truth already.
    }

    @Override
    public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(CompletionParams params) {
        return desk.answer(
                params.getTextDocument(),
                Either.forLeft(List.of()),
                d -> Either.forLeft(new Completions().at(d, d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<Hover> hover(HoverParams params) {
        return desk.maybe(
                params.getTextDocument(), d -> new Hovers().at(d, d.positions().offset(params.getPosition())));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> definition(
            DefinitionParams params) {
        return desk.answer(
                params.getTextDocument(),
                Either.forLeft(List.of()),
                d -> Either.forLeft(
                        new Definitions(desk.diagnostics()).at(d, d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
            DocumentSymbolParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Outline().of(d));
    }

    @Override
    public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new InlayHints().in(d, params.getRange()));
    }

    @Override
    public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
        return desk.answer(
                params.getTextDocument(),
                List.of(),
                d -> new QuickFixes(desk.diagnostics()).at(d, params.getRange()));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Formatting().whole(d));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> rangeFormatting(DocumentRangeFormattingParams params) {
        return desk.answer(
                params.getTextDocument(), List.of(), d -> new Formatting().lines(d, List.of(params.getRange())));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> rangesFormatting(DocumentRangesFormattingParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Formatting().lines(d, params.getRanges()));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> onTypeFormatting(DocumentOnTypeFormattingParams params) {
        return desk.answer(
                params.getTextDocument(),
                List.of(),
                d -> new Formatting().typed(d, params.getCh(), params.getPosition()));
    }
}

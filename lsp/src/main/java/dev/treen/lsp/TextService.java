package dev.treen.lsp;

import dev.treen.lsp.feature.Calls;
import dev.treen.lsp.feature.CodeActions;
import dev.treen.lsp.feature.Colours;
import dev.treen.lsp.feature.Completions;
import dev.treen.lsp.feature.Definitions;
import dev.treen.lsp.feature.Folds;
import dev.treen.lsp.feature.Formatting;
import dev.treen.lsp.feature.Hovers;
import dev.treen.lsp.feature.InlayHints;
import dev.treen.lsp.feature.Kinships;
import dev.treen.lsp.feature.Lenses;
import dev.treen.lsp.feature.Links;
import dev.treen.lsp.feature.Outline;
import dev.treen.lsp.feature.PatternUses;
import dev.treen.lsp.feature.Pulls;
import dev.treen.lsp.feature.References;
import dev.treen.lsp.feature.Renames;
import dev.treen.lsp.feature.Selections;
import dev.treen.lsp.feature.Signatures;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CallHierarchyIncomingCall;
import org.eclipse.lsp4j.CallHierarchyIncomingCallsParams;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCall;
import org.eclipse.lsp4j.CallHierarchyOutgoingCallsParams;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DeclarationParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentDiagnosticReport;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentLink;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentRangesFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.LinkedEditingRangeParams;
import org.eclipse.lsp4j.LinkedEditingRanges;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RelatedFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SelectionRange;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.SemanticTokens;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.TypeDefinitionParams;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.services.TextDocumentService;

/** The requests about one file, each handed to its feature. */
final class TextService implements TextDocumentService {
    private final Desk desk;
    private final Colours colours = new Colours();
    private final PatternUses patterns = new PatternUses();

    TextService(Desk desk) {
        this.desk = desk;
    }

    @Override
    public void didOpen(DidOpenTextDocumentParams params) {
        desk.workspace().lookAgain();
        desk.opened(desk.documents().open(params.getTextDocument()));
    }

    @Override
    public void didChange(DidChangeTextDocumentParams params) {
        desk.documents().change(params).ifPresent(desk::changed);
    }

    @Override
    public void didClose(DidCloseTextDocumentParams params) {
        desk.documents().close(params.getTextDocument().getUri());
        desk.workspace().lookAgain();
        colours.forget(params.getTextDocument().getUri());
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
                d -> Either
                        .forLeft(new Completions(desk.snippets()).at(d, d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<CompletionItem> resolveCompletionItem(CompletionItem item) {
        return desk.answer(() -> new Completions(desk.snippets()).resolved(item));
    }

    @Override
    public CompletableFuture<Hover> hover(HoverParams params) {
        return desk.maybe(
                params.getTextDocument(),
                d -> new Hovers(desk.pictures()).at(d, d.positions().offset(params.getPosition())));
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
    public CompletableFuture<List<? extends CodeLens>> codeLens(CodeLensParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Lenses().of(d, desk.layout(d)));
    }

    @Override
    public CompletableFuture<List<InlayHint>> inlayHint(InlayHintParams params) {
        return desk.answer(params.getTextDocument(), List.of(),
                d -> new InlayHints(desk.hints()).in(d, params.getRange()));
    }

    @Override
    public CompletableFuture<InlayHint> resolveInlayHint(InlayHint hint) {
        return InlayHints.file(hint)
                .map(uri -> desk.answer(new TextDocumentIdentifier(uri), hint,
                        d -> InlayHints.resolved(hint, d, desk.pictures())))
                .orElseGet(() -> CompletableFuture.completedFuture(hint));
    }

    @Override
    public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
        return desk.answerLater(
                params.getTextDocument(),
                List.of(),
                d -> actions().at(d, () -> around(d), params.getRange(), params.getContext().getOnly(), desk::beside));
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

    @Override
    public CompletableFuture<CodeAction> resolveCodeAction(CodeAction action) {
        return CodeActions.file(action)
                .map(uri -> desk.answer(new TextDocumentIdentifier(uri), Optional.<CodeAction>empty(),
                        d -> Optional.of(actions().resolved(action, d)))
                        .thenApply(found -> found.orElseThrow(CodeActions::overtaken)))
                .orElseGet(() -> CompletableFuture.completedFuture(action));
    }

    private CodeActions actions() {
        return new CodeActions(
                desk.diagnostics(), desk.actions(), uri -> desk.documents().find(uri).isPresent(), patterns);
    }

    private Kinships kinships() {
        return new Kinships(desk.encoding(), desk.files()::species);
    }

    private List<Document> around(Document document) {
        return desk.workspace().around(document);
    }

    @Override
    public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new References(desk.encoding()).at(
                d, around(d), d.positions().offset(params.getPosition()), params.getContext().isIncludeDeclaration()));
    }

    @Override
    public CompletableFuture<List<? extends DocumentHighlight>> documentHighlight(DocumentHighlightParams params) {
        return desk.answer(params.getTextDocument(), List.of(),
                d -> new References(desk.encoding()).marks(d, d.positions().offset(params.getPosition())));
    }

    @Override
    public CompletableFuture<LinkedEditingRanges> linkedEditingRange(LinkedEditingRangeParams params) {
        return desk.maybe(params.getTextDocument(), d -> new References(desk.encoding())
                .linked(d, around(d), d.positions().offset(params.getPosition())));
    }

    @Override
    public CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>> prepareRename(
            PrepareRenameParams params) {
        return desk.maybe(params.getTextDocument(), d -> new Renames(desk.encoding())
                .prepare(d, d.positions().offset(params.getPosition()))
                .map(Either3::forSecond));
    }

    @Override
    public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
        return desk.maybe(params.getTextDocument(), d -> Optional.of(new Renames(desk.encoding())
                .to(d, desk.workspace().aroundNow(d), d.positions().offset(params.getPosition()),
                        params.getNewName())));
    }

    @Override
    public CompletableFuture<List<FoldingRange>> foldingRange(FoldingRangeRequestParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Folds().of(d));
    }

    @Override
    public CompletableFuture<List<SelectionRange>> selectionRange(SelectionRangeParams params) {
        return desk.answer(
                params.getTextDocument(), List.of(), d -> new Selections().at(d, params.getPositions()));
    }

    @Override
    public CompletableFuture<SemanticTokens> semanticTokensFull(SemanticTokensParams params) {
        return desk.maybe(params.getTextDocument(), d -> Optional.of(colours.whole(d)));
    }

    @Override
    public CompletableFuture<Either<SemanticTokens, SemanticTokensDelta>> semanticTokensFullDelta(
            SemanticTokensDeltaParams params) {
        return desk.maybe(params.getTextDocument(),
                d -> Optional.of(colours.since(d, params.getPreviousResultId())));
    }

    @Override
    public CompletableFuture<SemanticTokens> semanticTokensRange(SemanticTokensRangeParams params) {
        return desk.maybe(params.getTextDocument(), d -> Optional.of(colours.in(d, params.getRange())));
    }

    @Override
    public CompletableFuture<List<DocumentLink>> documentLink(DocumentLinkParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Links().of(d));
    }

    @Override
    public CompletableFuture<DocumentDiagnosticReport> diagnostic(DocumentDiagnosticParams params) {
        String known = Optional.ofNullable(params.getPreviousResultId()).orElse("");
        return desk.answer(params.getTextDocument(),
                new DocumentDiagnosticReport(new RelatedFullDocumentDiagnosticReport(List.of())),
                d -> {
                    desk.asked();
                    return new Pulls(desk.diagnostics()).of(d, known);
                });
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> declaration(
            DeclarationParams params) {
        return desk.answer(params.getTextDocument(), Either.forLeft(List.of()), d -> Either.forLeft(
                new Definitions(desk.diagnostics()).at(d, d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> typeDefinition(
            TypeDefinitionParams params) {
        return desk.answer(params.getTextDocument(), Either.forLeft(List.of()), d -> Either.forLeft(
                kinships().source(d, around(d), d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> implementation(
            ImplementationParams params) {
        return desk.answer(params.getTextDocument(), Either.forLeft(List.of()), d -> Either.forLeft(
                kinships().made(d, around(d), d.positions().offset(params.getPosition()))));
    }

    @Override
    public CompletableFuture<SignatureHelp> signatureHelp(SignatureHelpParams params) {
        return desk.maybe(params.getTextDocument(),
                d -> new Signatures().at(d, d.positions().offset(params.getPosition())));
    }

    @Override
    public CompletableFuture<List<CallHierarchyItem>> prepareCallHierarchy(CallHierarchyPrepareParams params) {
        return desk.answer(params.getTextDocument(), List.of(), d -> new Calls(desk.encoding())
                .prepare(d, around(d), d.positions().offset(params.getPosition())));
    }

    @Override
    public CompletableFuture<List<CallHierarchyIncomingCall>> callHierarchyIncomingCalls(
            CallHierarchyIncomingCallsParams params) {
        return desk.answer(() -> new Calls(desk.encoding()).incoming(desk.workspace().all(), params.getItem()));
    }

    @Override
    public CompletableFuture<List<CallHierarchyOutgoingCall>> callHierarchyOutgoingCalls(
            CallHierarchyOutgoingCallsParams params) {
        return desk.answer(() -> new Calls(desk.encoding()).outgoing(desk.workspace().all(), params.getItem()));
    }
}

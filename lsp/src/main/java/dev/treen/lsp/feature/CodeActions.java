package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.jspecify.annotations.Nullable;

/** Everything that can be done at a place: fixes first, then what changes the text and not the project. */
public final class CodeActions {
    private final QuickFixes fixes;
    private final RackMoves racks;
    private final PatternUses patterns;
    private final boolean createsFiles;

    /**
     * What a client can be given.
     *
     * @param later whether it asks for edits once an action is chosen
     * @param createsFiles whether it can make files as part of an edit
     */
    public record Client(boolean later, boolean createsFiles) {}

    /**
     * Actions for {@code client}; {@code isOpen} tells by its address whether it has a file open, {@code patterns} keeps
     * what it has found from one request to the next.
     */
    public CodeActions(Diagnostics diagnostics, Client client, Predicate<String> isOpen, PatternUses patterns) {
        this.patterns = patterns;
        fixes = new QuickFixes(diagnostics, client.later());
        racks = new RackMoves(isOpen, client.later());
        createsFiles = client.createsFiles();
    }

    /** Where work is done that takes longer than an edit may wait. */
    public interface Beside {
        /** What comes of {@code search} for this text; nothing once it has been overtaken. */
        CompletableFuture<List<CodeAction>> found(Document document, Supplier<List<CodeAction>> search);
    }

    /**
     * The actions at {@code range}.
     *
     * @param among all files that may use this one, found only when they are asked for
     * @param only the kinds that are wanted; a kind holds those below it
     * @param beside where patterns are looked for
     */
    public CompletableFuture<List<Either<Command, CodeAction>>> at(
            Document document, Supplier<List<Document>> among, Range range, @Nullable List<String> only,
            Beside beside) {
        List<CodeAction> all = new ArrayList<>(fixes.at(document, range));
        all.addAll(new Refactorings().at(document, among, range));
        all.addAll(new UnitChange().at(document, range));
        if (createsFiles) {
            racks.at(document, range).ifPresent(all::add);
        }
        boolean rewrites = only == null || only.stream().anyMatch(CodeActionKind.RefactorRewrite::startsWith);
        Optional<Integer> place = rewrites ? patterns.place(document, range) : Optional.empty();
        return place.map(from -> beside.found(document, () -> patterns.at(document, from)))
                .orElseGet(() -> CompletableFuture.completedFuture(List.of()))
                .thenApply(more -> Stream.concat(all.stream(), more.stream())
                        .filter(each -> isWanted(each, only))
                        .map(Either::<Command, CodeAction>forRight)
                        .toList());
    }

    private static boolean isWanted(CodeAction action, @Nullable List<String> only) {
        return only == null || only.stream().anyMatch(kind -> action.getKind().startsWith(kind));
    }

    /** The address of the file that an action is of whose edits are still to come. */
    public static Optional<String> file(CodeAction action) {
        return Offer.in(action.getData()).map(Offer::uri);
    }

    /**
     * The action with its edits.
     *
     * @throws ResponseErrorException where it was offered for another version of the text, or cannot be carried out
     */
    public CodeAction resolved(CodeAction action, Document document) {
        if (Offer.in(action.getData()).filter(offer -> offer.isOf(document)).isEmpty()) {
            throw overtaken();
        }
        return CodeActionKind.RefactorMove.equals(action.getKind())
                ? racks.resolved(action, document).orElseThrow(() -> failed("Without its rack in it, the project would"
                        + " not mean the same: a name may be meant for another file, or stand for two things."))
                : fixes.resolved(action, document);
    }

    /** What is answered where the text is no longer the one that an action was offered for. */
    public static ResponseErrorException overtaken() {
        return new ResponseErrorException(new ResponseError(ResponseErrorCode.ContentModified,
                "The text has changed since this was offered.", null));
    }

    private static ResponseErrorException failed(String why) {
        return new ResponseErrorException(new ResponseError(ResponseErrorCode.RequestFailed, why, null));
    }
}

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.Documents;
import dev.treen.plan.Compilation;
import dev.treen.rewrite.RackSplit;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CreateFile;
import org.eclipse.lsp4j.CreateFileOptions;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Moves the boards of a project, and what else belongs to the shop, to a file of their own beside it. It is offered where
 * one of them stands, to a client that can make files, under a name that no file has.
 */
public final class RackMoves {
    private static final String FIRST = "rack";
    private static final int MOST_NAMES = 100;

    private final Predicate<String> isOpen;
    private final boolean later;

    /**
     * A mover.
     *
     * @param isOpen whether the client has a file open, by its address; it may not have been saved yet
     * @param later whether the client asks for the edits once the move is chosen: they are only worked out then
     */
    public RackMoves(Predicate<String> isOpen, boolean later) {
        this.isOpen = isOpen;
        this.later = later;
    }

    /** What is offered at a place. */
    public Optional<CodeAction> at(Document document, Range range) {
        int asked = document.positions().span(range).start();
        boolean here = document.analysis().tree().statements().stream()
                .anyMatch(each -> RackSplit.isOfTheShop(each) && each.span().touches(asked));
        if (!here || !RackSplit.mayBeSplit(document.analysis().tree())
                || Compilation.hasErrors(document.analysis().evaluation().project().findings())) {
            return Optional.empty();
        }
        return freeName(document).flatMap(name -> {
            CodeAction action = new CodeAction("Move boards, woods and saws to a new file " + name + ".treen");
            action.setKind(CodeActionKind.RefactorMove);
            if (later) {
                action.setData(Offer.of(document, asked).json());
                return Optional.of(action);
            }
            return moved(action, document, name);
        });
    }

    /** The action with its edits; nothing where the project would not mean the same without its rack. */
    public Optional<CodeAction> resolved(CodeAction action, Document document) {
        return freeName(document).flatMap(name -> moved(action, document, name));
    }

    private Optional<CodeAction> moved(CodeAction action, Document document, String name) {
        Compilation apart = Compilation.of(document.file(), document::used);
        return RackSplit.of(apart, document::used, name).map(written -> {
            action.setEdit(edit(document, name, written));
            return action;
        });
    }

    private static WorkspaceEdit edit(Document document, String name, RackSplit.Written written) {
        String rack = beside(document, name).orElseThrow().toUri().toString();
        TextEdit whole = new TextEdit(new Range(new Position(0, 0), new Position(0, 0)), written.rack());
        List<Either<TextEdit, org.eclipse.lsp4j.SnippetTextEdit>> left = written.edits().stream()
                .map(each -> new TextEdit(
                        document.positions().range(each.at().start(), each.at().end()), each.text()))
                .map(Either::<TextEdit, org.eclipse.lsp4j.SnippetTextEdit>forLeft)
                .toList();
        return new WorkspaceEdit(List.of(
                Either.forRight(new CreateFile(rack, new CreateFileOptions(false, false))),
                Either.forLeft(new TextDocumentEdit(
                        new VersionedTextDocumentIdentifier(rack, null), List.of(Either.forLeft(whole)))),
                Either.forLeft(new TextDocumentEdit(
                        new VersionedTextDocumentIdentifier(document.uri(), document.version()), left))));
    }

    /** A name that no file beside the document has, on the disk or open and unsaved. */
    private Optional<String> freeName(Document document) {
        String own = document.file().name().replaceAll(".*[/\\\\]", "").replaceFirst("\\.treen$", "");
        return Stream.concat(
                Stream.of(FIRST, own + "-" + FIRST),
                IntStream.range(2, MOST_NAMES).mapToObj(i -> own + "-" + FIRST + "-" + i))
                .filter(name -> name.chars().noneMatch(c -> c == '"' || c == '\\' || c < ' '))
                .filter(name -> beside(document, name).filter(this::isFree).isPresent())
                .findFirst();
    }

    private boolean isFree(Path path) {
        return !Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !isOpen.test(path.toUri().toString());
    }

    private static Optional<Path> beside(Document document, String name) {
        try {
            return document.uri().startsWith("file:")
                    ? Optional.of(Path.of(Documents.nameOf(document.uri())).resolveSibling(name + ".treen"))
                    : Optional.empty();
        } catch (InvalidPathException impossible) {
            return Optional.empty();
        }
    }
}

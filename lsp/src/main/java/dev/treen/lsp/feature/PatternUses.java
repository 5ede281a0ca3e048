package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.plan.Compilation;
import dev.treen.rewrite.PatternUse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;

/**
 * Puts a use of a pattern in the place of parts and joints that come to the same. It is offered where one of them stands,
 * once that has been made sure of; what was found is kept for as long as the text and the thing stay the same.
 */
public final class PatternUses {
    /** In a larger project the search, which makes and compares the whole of it, takes longer than anybody waits for it. */
    private static final int MOST_PARTS = 1_000;

    private Optional<Found> kept = Optional.empty();

    /** What was found for one version of a text, at its statement that begins at {@code from}. */
    private record Found(Document document, int from, List<PatternUse.Written> written) {}

    /** Nothing found yet. */
    public PatternUses() {
    }

    /** Where the statement at a place begins, if a use may come to the same; quickly told. */
    Optional<Integer> place(Document document, Range range) {
        int offset = document.positions().span(range).start();
        return document.analysis().evaluation().project().parts().size() > MOST_PARTS
                ? Optional.empty()
                : document.analysis().tree().statements().stream()
                        .filter(each -> each.span().touches(offset))
                        .map(each -> each.span().start())
                        .findFirst()
                        .filter(from -> PatternUse.mayBe(document.analysis(), from));
    }

    /** What is offered for the statement that begins at {@code from}; it takes a second or more. */
    List<CodeAction> at(Document document, int from) {
        return found(document, from).stream().map(each -> action(document, each)).toList();
    }

    private synchronized List<PatternUse.Written> found(Document document, int from) {
        Optional<Found> known = kept.filter(each -> each.document().equals(document) && each.from() == from);
        if (known.isPresent()) {
            return known.get().written();
        }
        List<PatternUse.Written> written = PatternUse.of(
                Compilation.of(document.file(), document::used), document::used, from);
        kept = Optional.of(new Found(document, from, written));
        return written;
    }

    private static CodeAction action(Document document, PatternUse.Written written) {
        CodeAction action = new CodeAction(
                "Write these parts as `" + written.pattern() + " " + written.name() + "`; nothing made changes");
        action.setKind(CodeActionKind.RefactorRewrite);
        action.setEdit(new WorkspaceEdit(Map.of(document.uri(), written.edits().stream()
                .map(each -> new TextEdit(
                        document.positions().range(each.at().start(), each.at().end()), each.text()))
                .toList())));
        return action;
    }
}

package dev.treen.lsp.feature;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.lsp.Document;
import dev.treen.lsp.Documents;
import dev.treen.lsp.position.Positions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** The remedies of findings as quick-fixes: each changes only what its finding says. */
public final class QuickFixes {
    private final Diagnostics diagnostics;

    /** Ranges as {@code diagnostics} gives them. */
    public QuickFixes(Diagnostics diagnostics) {
        this.diagnostics = diagnostics;
    }

    /** The fixes for findings that {@code range} touches. */
    public List<Either<Command, CodeAction>> at(Document document, Range range) {
        Positions.Span asked = document.positions().span(range);
        List<Either<Command, CodeAction>> actions = new ArrayList<>();
        for (Finding finding : document.analysis().checked().findings()) {
            boolean here = finding.at().file().equals(document.file())
                    && finding.at().start() <= asked.end()
                    && asked.start() <= finding.at().end();
            if (here) {
                finding.remedies().stream()
                        .filter(remedy -> !remedy.edits().isEmpty())
                        .forEach(remedy -> actions.add(Either.forRight(action(document, finding, remedy))));
            }
        }
        return actions;
    }

    private CodeAction action(Document document, Finding finding, Remedy remedy) {
        Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
        for (Edit edit : remedy.edits()) {
            String uri = edit.at().file().name().equals(document.file().name())
                    ? document.uri()
                    : Documents.uriOf(edit.at().file().name());
            edits.computeIfAbsent(uri, u -> new ArrayList<>())
                    .add(new TextEdit(diagnostics.range(document, edit.at()), edit.text()));
        }
        String title = Character.toUpperCase(remedy.text().charAt(0)) + remedy.text().substring(1);
        CodeAction action = new CodeAction(title.replace("`", ""));
        action.setKind(CodeActionKind.QuickFix);
        action.setDiagnostics(List.of(diagnostics.diagnostic(document, finding)));
        action.setEdit(new WorkspaceEdit(edits));
        action.setIsPreferred(remedy.grade() == Remedy.Grade.SAFE);
        return action;
    }
}

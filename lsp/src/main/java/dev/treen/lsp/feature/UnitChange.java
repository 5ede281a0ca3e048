package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.quantity.Unit;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;

/**
 * Writes the whole file in inches, or in millimetres, without changing a size. It is offered at the head of the project and
 * at its `units`, and worked out only there.
 */
public final class UnitChange {
    /** Makes the change. */
    public UnitChange() {
    }

    /** What is offered at a place. */
    public List<CodeAction> at(Document document, Range range) {
        int asked = document.positions().span(range).start();
        boolean here = document.analysis().tree().statements().stream().anyMatch(each -> isAsked(each, asked));
        if (!here) {
            return List.of();
        }
        boolean inches = document.analysis().evaluation().project().settings().units() == Unit.IN;
        return changed(document, inches ? Unit.MM : Unit.IN, inches ? "millimetres" : "inches").stream().toList();
    }

    private static boolean isAsked(Statement statement, int at) {
        return statement instanceof Statement.Project project
                && (project.head().touches(at) || project.body().stream()
                        .flatMap(block -> block.statements().stream())
                        .anyMatch(each -> each instanceof Statement.Property property
                                && property.name().text().equals("units") && property.span().touches(at)));
    }

    private static Optional<CodeAction> changed(Document document, Unit unit, String word) {
        Positions positions = document.positions();
        return document.inUnits(unit).map(edits -> {
            CodeAction action = new CodeAction("Write this file in " + word + "; no size changes");
            action.setKind(CodeActionKind.RefactorRewrite);
            action.setEdit(new WorkspaceEdit(Map.of(document.uri(), edits.stream()
                    .map(edit -> new TextEdit(
                            positions.range(edit.at().start(), edit.at().end()), edit.text()))
                    .toList())));
            return action;
        });
    }
}

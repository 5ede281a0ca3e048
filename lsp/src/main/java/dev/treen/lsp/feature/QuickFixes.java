package dev.treen.lsp.feature;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.Remedy;
import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;

/** The remedies of findings as quick-fixes: each changes only what its finding says. */
public final class QuickFixes {
    private final Diagnostics diagnostics;
    private final boolean later;

    /**
     * Ranges as {@code diagnostics} gives them.
     *
     * @param later whether the client asks for the edits of an action once it is chosen: those over the whole file are only
     *     worked out then
     */
    public QuickFixes(Diagnostics diagnostics, boolean later) {
        this.diagnostics = diagnostics;
        this.later = later;
    }

    /** The action that applies all that is safe, with its edits. */
    public CodeAction resolved(CodeAction action, Document document) {
        action.setEdit(new WorkspaceEdit(byFile(document, safe(document))));
        return action;
    }

    /** The fixes for findings that {@code range} touches. */
    public List<CodeAction> at(Document document, Range range) {
        Positions.Span asked = document.positions().span(range);
        List<CodeAction> actions = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (Finding finding : diagnostics.findings(document)) {
            boolean here = finding.at().file().equals(document.file())
                    && finding.at().start() <= asked.end()
                    && asked.start() <= finding.at().end();
            if (here) {
                finding.remedies().stream()
                        .filter(remedy -> !remedy.edits().isEmpty())
                        .forEach(remedy -> actions.add(action(document, finding, remedy)));
                told.add(finding.code());
            }
        }
        allSafe(document).ifPresent(actions::add);
        told.forEach(code -> actions.add(page(code)));
        return actions;
    }

    /** Everything at once that is safe to apply, where there is any. */
    private Optional<CodeAction> allSafe(Document document) {
        boolean any = diagnostics.findings(document).stream().anyMatch(each -> safe(each).findAny().isPresent());
        if (!any) {
            return Optional.empty();
        }
        CodeAction action = new CodeAction("Apply all fixes that are safe");
        action.setKind(CodeActionKind.SourceFixAll);
        if (later) {
            action.setData(Offer.of(document, 0).json());
        } else {
            action.setEdit(new WorkspaceEdit(byFile(document, safe(document))));
        }
        return Optional.of(action);
    }

    /** The edits of all safe fixes; of two that touch, the first. */
    private List<Edit> safe(Document document) {
        List<Edit> edits = new ArrayList<>();
        for (Finding finding : diagnostics.findings(document)) {
            safe(finding)
                    .filter(remedy -> remedy.edits().stream().noneMatch(edit -> edits.stream().anyMatch(
                            other -> touch(edit.at(), other.at()))))
                    .findFirst()
                    .ifPresent(remedy -> edits.addAll(remedy.edits()));
        }
        return edits;
    }

    private static Stream<Remedy> safe(Finding finding) {
        return finding.remedies().stream()
                .filter(remedy -> remedy.grade() == Remedy.Grade.SAFE && !remedy.edits().isEmpty());
    }

    private static boolean touch(Span one, Span other) {
        return one.file().equals(other.file()) && one.start() <= other.end() && other.start() <= one.end();
    }

    private static CodeAction page(String code) {
        CodeAction action = new CodeAction("What " + code + " means, with examples");
        action.setKind(CodeActionKind.Empty);
        action.setCommand(new Command(action.getTitle(), Commands.EXPLAIN, List.of(code)));
        return action;
    }

    private CodeAction action(Document document, Finding finding, Remedy remedy) {
        String title = Character.toUpperCase(remedy.text().charAt(0)) + remedy.text().substring(1);
        CodeAction action = new CodeAction(title.replace("`", ""));
        action.setKind(CodeActionKind.QuickFix);
        action.setDiagnostics(List.of(diagnostics.diagnostic(document, finding)));
        action.setEdit(new WorkspaceEdit(byFile(document, remedy.edits())));
        action.setIsPreferred(remedy.grade() == Remedy.Grade.SAFE);
        return action;
    }

    private Map<String, List<TextEdit>> byFile(Document document, List<Edit> edits) {
        Map<String, List<TextEdit>> byFile = new LinkedHashMap<>();
        for (Edit edit : edits) {
            byFile.computeIfAbsent(document.address(edit.at().file().name()), u -> new ArrayList<>())
                    .add(new TextEdit(diagnostics.range(document, edit.at()), edit.text()));
        }
        return byFile;
    }
}

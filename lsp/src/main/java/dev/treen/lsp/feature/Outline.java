package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.Symbol;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * What a file declares, for the editor's outline: the project, its values, boards, parts and joints, under a pattern
 * what is written in it, and under what a pattern makes the parts that it makes.
 */
public final class Outline {
    private static final int LONGEST = 80;

    /** Makes the outline. */
    public Outline() {
    }

    /** All of the document, in the order of the text. */
    public List<Either<SymbolInformation, DocumentSymbol>> of(Document document) {
        List<Statement> statements = document.analysis().tree().statements();
        Makers makers = new Makers(document);
        List<DocumentSymbol> found = new ArrayList<>();
        Map<String, DocumentSymbol> named = new HashMap<>();
        Map<Integer, DocumentSymbol> patterns = new HashMap<>();
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            if (Names.isIn(symbol.nameAt(), document) && !makers.inPattern(symbol.span())) {
                DocumentSymbol entry = entry(
                        document, symbol.name(), symbol.kind(), symbol.kind(), symbol.span(), symbol.nameAt());
                found.add(entry);
                named.put(symbol.name(), entry);
                if (symbol.kind().equals("pattern")) {
                    patterns.put(symbol.span().start(), entry);
                }
            }
        }
        parts(document, makers, named);
        for (Statement statement : statements) {
            DocumentSymbol pattern = patterns.get(statement.span().start());
            if (pattern == null) {
                told(document, statement, found);
            } else {
                within(document, statement, pattern);
            }
        }
        found.sort(byPlace());
        return found.stream().map(Either::<SymbolInformation, DocumentSymbol>forRight).toList();
    }

    /**
     * The parts of what patterns make stand where these are used: the pattern's text is another file's or several's.
     */
    private static void parts(Document document, Makers makers, Map<String, DocumentSymbol> named) {
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            if (symbol.kind().equals("part")) {
                makers.of(symbol.name()).ifPresent(maker -> {
                    DocumentSymbol instance = named.get(maker.path());
                    if (instance != null) {
                        add(instance, new DocumentSymbol(
                                symbol.name().substring(maker.path().length() + 1), kind("part"),
                                instance.getSelectionRange(), instance.getSelectionRange(), "part"));
                    }
                });
            }
        }
    }

    /** What has no name of its own that another line could say, and what is written in a pattern. */
    private static void told(Document document, Statement statement, List<DocumentSymbol> into) {
        switch (statement) {
            case Statement.Project project -> into.add(entry(
                    document,
                    project.title().map(title -> title.value().strip()).filter(title -> !title.isEmpty())
                            .orElse("project"),
                    "project", "project", project.span(), project.head()));
            case Statement.Joint joint -> joint(document, joint, into);
            case Statement.Repeat repeat -> inner(document, repeat, into);
            case Statement.When when -> {
                inner(document, when, into);
                when.otherwise().ifPresent(
                        block -> block.statements().forEach(each -> told(document, each, into)));
            }
            case Statement other -> {
            }
        }
    }

    private static void inner(Document document, Statement around, List<DocumentSymbol> into) {
        around.body().ifPresent(block -> block.statements().forEach(each -> told(document, each, into)));
    }

    /**
     * A joint by its kind and the parts that it joins, as it is said at the bench: {@code mortise_tenon rail to stile}.
     */
    private static void joint(Document document, Statement.Joint joint, List<DocumentSymbol> into) {
        if (joint.pairs().isEmpty() || joint.kind().text().isEmpty()) {
            return;
        }
        String pairs = joint.pairs().stream()
                .map(pair -> pair.span().text().replaceAll("\\s+", " ").strip())
                .filter(pair -> !pair.isEmpty())
                .collect(Collectors.joining(", "));
        String detail = joint.alias().map(alias -> "joint " + alias.text()).orElse("joint");
        into.add(entry(
                document, shortened((joint.kind().text() + " " + pairs).strip()), "joint", detail, joint.span(),
                joint.head()));
    }

    /** The parts and joints that a pattern is written of, once each, however often it is used. */
    private static void within(Document document, Statement pattern, DocumentSymbol entry) {
        List<DocumentSymbol> written = new ArrayList<>();
        pattern.body().ifPresent(block -> block.statements().forEach(each -> written(document, each, written)));
        written.forEach(each -> add(entry, each));
    }

    private static void written(Document document, Statement statement, List<DocumentSymbol> into) {
        if (statement instanceof Statement.Part part && !part.name().text().isEmpty()) {
            String number = part.index().map(index -> "[" + index.span().text() + "]").orElse("");
            into.add(entry(document, part.name().text() + number, "part", "part", part.span(), part.name().span()));
        } else if (statement instanceof Statement.Joint joint) {
            joint(document, joint, into);
        } else if (statement instanceof Statement.Repeat || statement instanceof Statement.When) {
            statement.body().ifPresent(block -> block.statements().forEach(each -> written(document, each, into)));
            if (statement instanceof Statement.When when) {
                when.otherwise().ifPresent(
                        block -> block.statements().forEach(each -> written(document, each, into)));
            }
        }
    }

    private static DocumentSymbol entry(
            Document document, String name, String kind, String detail, Span whole, Span named) {
        return new DocumentSymbol(name, kind(kind), range(document, whole), range(document, named), detail);
    }

    private static void add(DocumentSymbol to, DocumentSymbol child) {
        if (to.getChildren() == null) {
            to.setChildren(new ArrayList<>());
        }
        to.getChildren().add(child);
    }

    private static Range range(Document document, Span span) {
        return document.positions().range(span.start(), span.end());
    }

    private static Comparator<DocumentSymbol> byPlace() {
        return Comparator.<DocumentSymbol>comparingInt(each -> each.getRange().getStart().getLine())
                .thenComparingInt(each -> each.getRange().getStart().getCharacter());
    }

    private static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST
                ? name
                : name.substring(0, name.offsetByCodePoints(0, LONGEST - 1)) + "…";
    }

    static SymbolKind kind(String kind) {
        return switch (kind) {
            case "project" -> SymbolKind.Module;
            case "joint" -> SymbolKind.Interface;
            case "let" -> SymbolKind.Constant;
            case "board", "sheet" -> SymbolKind.Object;
            default -> SymbolKind.Class;
        };
    }
}

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.Positions;
import dev.treen.source.Span;
import dev.treen.syntax.Expr;
import dev.treen.syntax.Operator;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;

/** A value is given a name of its own, or a name its value back; no size changes. */
public final class Refactorings {
    /** Makes the refactorings. */
    public Refactorings() {
    }

    /** What can be done at {@code range}, where {@code among} finds all files that may use it. */
    public List<CodeAction> at(Document document, Supplier<List<Document>> among, Range range) {
        Positions.Span asked = trimmed(document.file().text(), document.positions().span(range));
        return Stream.concat(
                extract(document, asked).stream(), inline(document, among, asked).stream()).toList();
    }

    /** Without the blanks at both ends of a selection, which nobody means to have selected. */
    private static Positions.Span trimmed(String text, Positions.Span asked) {
        int start = asked.start();
        int end = asked.end();
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (start < end && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return start < end ? new Positions.Span(start, end) : asked;
    }

    /** Names the value under the cursor, above the statement at the top. */
    private static Optional<CodeAction> extract(Document document, Positions.Span asked) {
        for (Statement statement : document.analysis().tree().statements()) {
            if (statement.span().touches(asked.start()) && !(statement instanceof Statement.Pattern)
                    && !(statement instanceof Statement.Repeat) && !(statement instanceof Statement.Let)
                    && !(statement instanceof Statement.Project)) {
                return value(statement, asked).map(value -> {
                    String name = fresh(document);
                    Span top = statement.span();
                    int line = document.file().lineStart(document.file().lineOf(top.start()));
                    return action(document, "Give " + shortened(value) + " a name", CodeActionKind.RefactorExtract,
                            List.of(
                                    new TextEdit(document.positions().range(line, line),
                                            "let " + name + " = " + value.text() + "\n"),
                                    new TextEdit(document.positions().range(value.start(), value.end()), name)));
                });
            }
        }
        return Optional.empty();
    }

    /** A figure or a sum that a property has for its value; sizes and words keep their forms. */
    private static Optional<Span> value(Statement statement, Positions.Span asked) {
        if (statement instanceof Statement.Property property) {
            for (Value value : property.values()) {
                if (value.span().touches(asked.start()) && value.span().touches(asked.end())) {
                    return switch (value.expr()) {
                        case Expr.Figure figure -> Optional.of(figure.span());
                        case Expr.Infix sum -> Optional.of(sum.span());
                        case Expr.Sizes sizes -> Optional.of(sizes.span());
                        case Expr other -> Optional.empty();
                    };
                }
            }
        }
        if (statement instanceof Statement.Require require) {
            return reckoned(require.condition(), asked);
        }
        return statement.body().stream()
                .flatMap(block -> block.statements().stream())
                .filter(inner -> inner.span().touches(asked.start()))
                .findFirst()
                .flatMap(inner -> value(inner, asked));
    }

    /** A figure or a sum in a condition: the least that holds a selection, the whole sum where a cursor stands. */
    private static Optional<Span> reckoned(Expr expr, Positions.Span asked) {
        if (!expr.span().touches(asked.start()) || !expr.span().touches(asked.end())) {
            return Optional.empty();
        }
        boolean sum = expr instanceof Expr.Figure || (expr instanceof Expr.Infix infix && reckons(infix.operator()));
        Optional<Span> inner = parts(expr).stream()
                .flatMap(part -> reckoned(part, asked).stream())
                .findFirst();
        return sum && (asked.start() == asked.end() || inner.isEmpty()) ? Optional.of(expr.span()) : inner;
    }

    private static List<Expr> parts(Expr expr) {
        return switch (expr) {
            case Expr.Prefix prefix -> List.of(prefix.operand());
            case Expr.Infix infix -> List.of(infix.left(), infix.right());
            case Expr.Between range -> List.of(range.low(), range.high());
            case Expr.Choice choice -> List.of(choice.condition(), choice.yes(), choice.no());
            case Expr.Call call -> call.arguments();
            case Expr other -> List.of();
        };
    }

    private static boolean reckons(Operator operator) {
        return switch (operator) {
            case PLUS, MINUS, TIMES, OVER -> true;
            case LESS, AT_MOST, MORE, AT_LEAST, EQUAL, UNEQUAL, AND, OR, NOT -> false;
        };
    }

    private static String fresh(Document document) {
        Set<String> taken = document.analysis().evaluation().symbols().stream()
                .map(symbol -> symbol.nameAt().text())
                .collect(Collectors.toSet());
        String name = "measure";
        for (int i = 2; taken.contains(name); i++) {
            name = "measure" + i;
        }
        return name;
    }

    private static String shortened(Span value) {
        String text = value.text().replaceAll("\\s+", " ");
        return text.length() > 30 ? text.substring(0, 30) + "…" : text;
    }

    /** Puts the value of a `let` wherever its name stands, and takes the `let` out. */
    private static Optional<CodeAction> inline(
            Document document, Supplier<List<Document>> among, Positions.Span asked) {
        Optional<Span> declared = Names.declared(document, asked.start());
        if (declared.isEmpty()) {
            return Optional.empty();
        }
        for (Statement statement : document.analysis().tree().statements()) {
            if (statement instanceof Statement.Let let && Names.same(let.name().span(), declared.get())) {
                List<Span> places = new ArrayList<>(Names.places(among.get(), declared.get()));
                places.removeIf(each -> Names.same(each, declared.get()));
                boolean here = places.stream().allMatch(each -> Names.isIn(each, document));
                boolean whole = !(let.value() instanceof Expr.Sizes || let.value() instanceof Expr.Missing)
                        || places.stream().noneMatch(each -> document.file().text().startsWith(".", each.end()));
                return here && whole && !places.isEmpty()
                        ? Optional.of(inlined(document, let, places))
                        : Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static CodeAction inlined(Document document, Statement.Let let, List<Span> places) {
        boolean plain = let.value() instanceof Expr.Figure || let.value() instanceof Expr.Word
                || let.value() instanceof Expr.Call || let.value() instanceof Expr.Sizes;
        String value = let.value().span().text();
        List<TextEdit> edits = new ArrayList<>();
        places.forEach(place -> edits.add(new TextEdit(
                document.positions().range(place.start(), place.end()), plain ? value : "(" + value + ")")));
        int line = document.file().lineOf(let.span().start());
        int next = line + 1 < document.file().lineCount()
                ? document.file().lineStart(line + 1)
                : document.file().text().length();
        boolean alone = document.file().lineText(line).strip().equals(let.span().text().strip());
        edits.add(new TextEdit(
                alone
                        ? document.positions().range(document.file().lineStart(line), next)
                        : document.positions().range(let.span().start(), let.span().end()),
                ""));
        return action(document, "Put the value in the place of " + let.name().text(), CodeActionKind.RefactorInline,
                edits);
    }

    private static CodeAction action(Document document, String title, String kind, List<TextEdit> edits) {
        CodeAction action = new CodeAction(title);
        action.setKind(kind);
        action.setEdit(new WorkspaceEdit(java.util.Map.of(document.uri(), edits)));
        return action;
    }
}

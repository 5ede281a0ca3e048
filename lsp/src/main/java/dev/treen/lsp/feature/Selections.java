package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.source.Span;
import dev.treen.syntax.Block;
import dev.treen.syntax.Statement;
import dev.treen.syntax.Token;
import dev.treen.syntax.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.SelectionRange;

/** From the word at the cursor outwards: the value, the statement, its block, and so on to the whole file. */
public final class Selections {
    /** Makes the selections. */
    public Selections() {
    }

    /** The selections round each of {@code positions}. */
    public List<SelectionRange> at(Document document, List<Position> positions) {
        return positions.stream().map(each -> around(document, document.positions().offset(each))).toList();
    }

    private static SelectionRange around(Document document, int offset) {
        List<Span> spans = new ArrayList<>();
        spans.add(document.file().span(0, document.file().text().length()));
        collect(document.analysis().tree().statements(), offset, spans);
        document.analysis().tree().tokens().stream()
                .filter(token -> token.kind() != Token.Kind.NEW_LINE)
                .filter(token -> token.start() <= offset && offset <= token.end())
                .max(Comparator.comparingInt(Token::start))
                .ifPresent(token -> spans.add(document.file().span(token.start(), token.end())));
        SelectionRange outer = new SelectionRange();
        outer.setRange(document.positions().range(spans.getFirst().start(), spans.getFirst().end()));
        for (Span span : spans.subList(1, spans.size())) {
            SelectionRange inner = new SelectionRange();
            inner.setRange(document.positions().range(span.start(), span.end()));
            inner.setParent(outer);
            outer = inner;
        }
        return outer;
    }

    private static void collect(List<Statement> statements, int offset, List<Span> into) {
        for (Statement statement : statements) {
            if (statement.span().touches(offset)) {
                add(statement.span(), into);
                values(statement, offset, into);
                statement.body().ifPresent(block -> inside(block, offset, into));
                if (statement instanceof Statement.When when) {
                    when.otherwise().ifPresent(block -> inside(block, offset, into));
                }
                return;
            }
        }
    }

    private static void values(Statement statement, int offset, List<Span> into) {
        Optional<Span> value = switch (statement) {
            case Statement.Property property -> property.values().stream()
                    .map(Value::span)
                    .filter(span -> span.touches(offset))
                    .findFirst();
            case Statement.Let let -> Optional.of(let.value().span()).filter(span -> span.touches(offset));
            case Statement.Require require ->
                Optional.of(require.condition().span()).filter(span -> span.touches(offset));
            case Statement other -> Optional.empty();
        };
        value.ifPresent(span -> add(span, into));
    }

    private static void inside(Block block, int offset, List<Span> into) {
        if (block.span().start() < offset && offset < block.span().end()) {
            add(block.span(), into);
            collect(block.statements(), offset, into);
        }
    }

    private static void add(Span span, List<Span> into) {
        Span outer = into.getLast();
        if (outer.start() <= span.start() && span.end() <= outer.end() && !outer.equals(span)) {
            into.add(span);
        }
    }
}

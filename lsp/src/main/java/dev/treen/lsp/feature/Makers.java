package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.Instance;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What patterns make in a file, each at the name that it has there. What a pattern makes inside another belongs to the
 * outer one: the text of a pattern is several things' or another file's, and no place to tell of one of them.
 */
final class Makers {
    private final Map<String, Instance> here = new HashMap<>();
    private final NavigableMap<Integer, Span> patterns = new TreeMap<>();

    /** Those of {@code document}. */
    Makers(Document document) {
        document.analysis().tree().statements().stream()
                .filter(Statement.Pattern.class::isInstance)
                .map(Statement::span)
                .forEach(span -> patterns.put(span.start(), span));
        for (Instance each : document.analysis().evaluation().project().instances()) {
            if (Names.isIn(each.usedAt(), document) && !inPattern(each.statement())) {
                here.put(each.path(), each);
            }
        }
    }

    /** Whether {@code statement} of the document is written inside a pattern. */
    boolean inPattern(Span statement) {
        Map.Entry<Integer, Span> before = patterns.lowerEntry(statement.start());
        return before != null && statement.end() <= before.getValue().end();
    }

    /** What made the thing of that dotted name. */
    Optional<Instance> of(String name) {
        if (here.isEmpty()) {
            return Optional.empty();
        }
        for (int dot = name.indexOf('.'); dot > 0; dot = name.indexOf('.', dot + 1)) {
            Instance made = here.get(name.substring(0, dot));
            if (made != null) {
                return Optional.of(made);
            }
        }
        return Optional.empty();
    }
}

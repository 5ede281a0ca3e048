package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.Documents;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.lsp.position.Positions;
import dev.treen.source.Span;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;

/** Spans as the client counts them, in whatever file they are. */
final class Places {
    private final Map<String, Document> known = new HashMap<>();
    private final Map<String, Positions> others = new HashMap<>();
    private final PositionEncoding encoding;

    /** Places in {@code documents}, and in the files that these use. */
    Places(Collection<Document> documents, PositionEncoding encoding) {
        this.encoding = encoding;
        documents.forEach(each -> known.put(each.file().name(), each));
    }

    String uri(Span span) {
        Document document = known.get(span.file().name());
        if (document != null) {
            return document.uri();
        }
        return known.values().stream().findAny()
                .map(each -> each.address(span.file().name()))
                .orElseGet(() -> Documents.uriOf(span.file().name()));
    }

    Range range(Span span) {
        Document document = known.get(span.file().name());
        Positions positions = document == null
                ? others.computeIfAbsent(span.file().name(), name -> Positions.of(span.file().text(), encoding))
                : document.positions();
        return positions.range(span.start(), span.end());
    }

    Location location(Span span) {
        return new Location(uri(span), range(span));
    }
}

package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.Documents;
import dev.treen.model.Usage;
import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Location;

/** From a name to the place that declares it. */
public final class Definitions {
    private final Diagnostics ranges;

    /** Ranges as {@code ranges} gives them. */
    public Definitions(Diagnostics ranges) {
        this.ranges = ranges;
    }

    /** Where the name at {@code offset} is declared; of a species that stands for a board, all its boards. */
    public List<Location> at(Document document, int offset) {
        return usage(document, offset)
                .map(usage -> List.of(location(document, usage.declaredAt())))
                .orElseGet(() -> WishedSpecies.at(document, offset).stream()
                        .flatMap(any -> any.boards().stream())
                        .map(board -> location(document, board.nameAt()))
                        .toList());
    }

    /** The smallest use of a name that touches {@code offset}. */
    static Optional<Usage> usage(Document document, int offset) {
        return document.analysis().evaluation().usages().stream()
                .filter(u -> u.at().file().equals(document.file()) && u.at().touches(offset))
                .min(java.util.Comparator.comparingInt(u -> u.at().end() - u.at().start()));
    }

    private Location location(Document document, Span span) {
        String uri = span.file().name().equals(document.file().name())
                ? document.uri()
                : Documents.uriOf(span.file().name());
        return new Location(uri, ranges.range(document, span));
    }
}

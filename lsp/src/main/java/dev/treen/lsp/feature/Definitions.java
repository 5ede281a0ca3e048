package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.Usage;
import dev.treen.source.SourceFile;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
                .map(Usage::declaredAt)
                .or(() -> usedFile(document, offset).map(file -> file.span(0, 0)))
                .map(declared -> List.of(location(document, declared)))
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

    /** The file that is named by the path at {@code offset}. */
    static Optional<SourceFile> usedFile(Document document, int offset) {
        return document.analysis().tree().statements().stream()
                .filter(statement -> statement.span().touches(offset))
                .flatMap(statement -> statement instanceof Statement.Use(var _, var path, var _)
                        ? path.stream()
                        : Stream.empty())
                .filter(path -> path.span().touches(offset))
                .findFirst()
                .flatMap(path -> document.used(path.value(), document.file()));
    }

    private Location location(Document document, Span span) {
        return new Location(document.address(span.file().name()), ranges.range(document, span));
    }
}

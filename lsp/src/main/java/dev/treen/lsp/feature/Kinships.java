package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.model.Part;
import dev.treen.model.Symbol;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.lsp4j.Location;

/**
 * From a thing to what it is made from, and back: an instance and its pattern, a part and the boards it may be cut from.
 */
public final class Kinships {
    private final PositionEncoding encoding;

    /** Places as {@code encoding} counts them. */
    public Kinships(PositionEncoding encoding) {
        this.encoding = encoding;
    }

    /** What the thing at {@code offset} is made from. */
    public List<Location> source(Document document, List<Document> among, int offset) {
        Places places = new Places(among, encoding);
        return Names.declared(document, offset).stream()
                .flatMap(declared -> patternOf(document, declared)
                        .or(() -> around(document, declared))
                        .map(Stream::of)
                        .orElseGet(() -> boardsOf(document, declared)))
                .map(places::location)
                .distinct()
                .toList();
    }

    /** What is made from the thing at {@code offset}. */
    public List<Location> made(Document document, List<Document> among, int offset) {
        Places places = new Places(among, encoding);
        Optional<Span> declared = Names.declared(document, offset);
        return among.stream()
                .flatMap(each -> declared.stream().flatMap(span -> made(each, span)))
                .map(places::location)
                .distinct()
                .toList();
    }

    private static Stream<Span> made(Document document, Span declared) {
        Stream<Span> instances = document.analysis().evaluation().symbols().stream()
                .filter(symbol -> patternOf(document, symbol.nameAt()).filter(at -> Names.same(at, declared))
                        .isPresent())
                .map(Symbol::nameAt);
        Stream<Span> parts = document.analysis().evaluation().project().parts().stream()
                .filter(part -> part.sources().stream().anyMatch(board -> Names.same(board.nameAt(), declared)))
                .map(Part::nameAt);
        return Stream.concat(instances, parts);
    }

    /** An instance is a symbol whose kind is the name of its pattern. */
    private static Optional<Span> patternOf(Document document, Span declared) {
        List<Symbol> symbols = document.analysis().evaluation().symbols();
        return symbols.stream()
                .filter(symbol -> Names.same(symbol.nameAt(), declared))
                .flatMap(instance -> symbols.stream()
                        .filter(symbol -> symbol.kind().equals("pattern") && symbol.name().equals(instance.kind())))
                .map(Symbol::nameAt)
                .findFirst();
    }

    /** The pattern in whose body a part is written. */
    private static Optional<Span> around(Document document, Span declared) {
        return document.analysis().tree().statements().stream()
                .filter(statement -> Names.isIn(declared, document))
                .filter(statement -> statement instanceof Statement.Pattern)
                .map(Statement.Pattern.class::cast)
                .filter(pattern -> pattern.body()
                        .filter(body -> body.span().start() < declared.start() && declared.end() < body.span().end())
                        .isPresent())
                .map(pattern -> pattern.name().span())
                .findFirst();
    }

    private static Stream<Span> boardsOf(Document document, Span declared) {
        return document.analysis().evaluation().project().parts().stream()
                .filter(part -> Names.same(part.nameAt(), declared))
                .flatMap(part -> part.sources().stream())
                .map(board -> board.nameAt());
    }
}

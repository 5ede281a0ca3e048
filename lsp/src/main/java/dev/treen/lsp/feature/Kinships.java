package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.model.Symbol;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * From a thing to what it is made from, and back: an instance and its pattern, a part and the boards it may be cut from, a
 * board and its species.
 */
public final class Kinships {
    private final PositionEncoding encoding;

    private final Function<String, Optional<Path>> pages;

    /** Places as {@code encoding} counts them; {@code pages} has what is to be read of a published species. */
    public Kinships(PositionEncoding encoding, Function<String, Optional<Path>> pages) {
        this.encoding = encoding;
        this.pages = pages;
    }

    /** What the thing at {@code offset} is made from. */
    public List<Location> source(Document document, List<Document> among, int offset) {
        Places places = new Places(among, encoding);
        Optional<Board> board = board(document, offset);
        if (board.isPresent()) {
            return species(document, board.get(), places);
        }
        return Names.declared(document, offset).stream()
                .flatMap(declared -> patternOf(document, declared)
                        .or(() -> around(document, declared))
                        .map(Stream::of)
                        .orElseGet(() -> boardsOf(document, declared)))
                .map(places::location)
                .distinct()
                .toList();
    }

    /** The board whose name, or the name of whose species, is at {@code offset}. */
    private static Optional<Board> board(Document document, int offset) {
        Optional<Span> declared = Names.declared(document, offset);
        return document.analysis().evaluation().project().boards().stream()
                .filter(board -> declared.filter(at -> Names.same(at, board.nameAt())).isPresent()
                        || (Names.isIn(board.speciesAt(), document) && board.speciesAt().touches(offset)))
                .findFirst();
    }

    /**
     * Where the project declares the species, or the page of a published one, which stands in no file of the project.
     */
    private List<Location> species(Document document, Board board, Places places) {
        String name = board.species().orElse("");
        List<Location> own = document.analysis().evaluation().symbols().stream()
                .filter(symbol -> symbol.kind().equals("species") && symbol.name().equals(name))
                .map(symbol -> places.location(symbol.nameAt()))
                .toList();
        return own.isEmpty()
                ? pages.apply(name).stream()
                        .map(page -> new Location(
                                page.toUri().toString(), new Range(new Position(0, 0), new Position(0, 0))))
                        .toList()
                : own;
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

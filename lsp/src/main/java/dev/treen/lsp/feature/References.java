package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.LinkedEditingRanges;
import org.eclipse.lsp4j.Location;

/** Every place that says a name: over all files, or marked in the one that is looked at. */
public final class References {
    private static final String NAME = "[\\p{L}_][\\p{L}\\p{N}_]*";

    private final PositionEncoding encoding;

    /** Places as {@code encoding} counts them. */
    public References(PositionEncoding encoding) {
        this.encoding = encoding;
    }

    /** Where {@code among} says the name at {@code offset}. */
    public List<Location> at(Document document, List<Document> among, int offset, boolean declaration) {
        Optional<Span> declared = Names.declared(document, offset);
        Places places = new Places(among, encoding);
        List<Location> found = new ArrayList<>();
        declared.ifPresent(name -> Names.places(among, name).stream()
                .filter(each -> declaration || !Names.same(each, name))
                .map(places::location)
                .forEach(found::add));
        return found;
    }

    /** The same in one file, the declaration marked as where it is written. */
    public List<DocumentHighlight> marks(Document document, int offset) {
        return Names.declared(document, offset).map(declared -> here(document, declared).stream()
                .map(each -> new DocumentHighlight(
                        document.positions().range(each.start(), each.end()),
                        Names.same(each, declared) ? DocumentHighlightKind.Write : DocumentHighlightKind.Read))
                .toList()).orElse(List.of());
    }

    /** The places that change together while a name is typed over; only where no other file says it. */
    public Optional<LinkedEditingRanges> linked(Document document, List<Document> among, int offset) {
        Optional<Span> declared = Names.declared(document, offset);
        if (declared.isEmpty()) {
            return Optional.empty();
        }
        List<Span> all = Names.places(among, declared.get());
        return all.stream().allMatch(each -> Names.isIn(each, document)) && all.size() > 1
                ? Optional.of(new LinkedEditingRanges(
                        all.stream().map(each -> document.positions().range(each.start(), each.end())).toList(), NAME))
                : Optional.empty();
    }

    private static List<Span> here(Document document, Span declared) {
        return Names.places(List.of(document), declared).stream().filter(each -> Names.isIn(each, document)).toList();
    }
}

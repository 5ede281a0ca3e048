package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.lsp.position.PositionEncoding;
import dev.treen.model.Symbol;
import dev.treen.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What the files of all folders declare, by a few letters of its name. */
public final class WorkspaceSymbols {
    private static final int MOST = 500;

    private final PositionEncoding encoding;

    /** Places as {@code encoding} counts them. */
    public WorkspaceSymbols(PositionEncoding encoding) {
        this.encoding = encoding;
    }

    /** The symbols whose names have the letters of {@code query} in that order; at most five hundred. */
    public List<WorkspaceSymbol> find(List<Document> documents, String query) {
        Places places = new Places(documents, encoding);
        List<WorkspaceSymbol> found = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Document document : documents) {
            for (Symbol symbol : document.analysis().evaluation().symbols()) {
                Span at = here(document, symbol);
                String place = at.file().name() + at.start() + symbol.name();
                if (found.size() < MOST && matches(symbol.name(), query) && seen.add(place)) {
                    found.add(new WorkspaceSymbol(
                            symbol.name(), Outline.kind(symbol.kind()),
                            Either.forLeft(places.location(at)),
                            symbol.kind()));
                }
            }
        }
        return found;
    }

    /**
     * Where the project says it: what a pattern made, at the instance, and not in the pattern, which makes it elsewhere
     * too.
     */
    private static Span here(Document document, Symbol symbol) {
        if (Names.isIn(symbol.nameAt(), document)) {
            return symbol.nameAt();
        }
        return document.analysis().evaluation().symbols().stream()
                .filter(each -> Names.isIn(each.nameAt(), document) && symbol.name().startsWith(each.name() + "."))
                .max(Comparator.comparingInt((Symbol each) -> each.name().length()))
                .map(Symbol::nameAt)
                .orElse(symbol.nameAt());
    }

    private static boolean matches(String name, String query) {
        String low = name.toLowerCase(Locale.ROOT);
        int at = 0;
        for (char c : query.toLowerCase(Locale.ROOT).toCharArray()) {
            at = low.indexOf(c, at) + 1;
            if (at == 0) {
                return false;
            }
        }
        return true;
    }
}

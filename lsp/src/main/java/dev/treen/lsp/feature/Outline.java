package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.Symbol;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What a file declares, for the editor's outline. */
public final class Outline {
    /** Makes the outline. */
    public Outline() {
    }

    /** The lets, boards and parts of the document, in the order of the text. */
    public List<Either<SymbolInformation, DocumentSymbol>> of(Document document) {
        List<Either<SymbolInformation, DocumentSymbol>> symbols = new ArrayList<>();
        for (Symbol symbol : document.analysis().evaluation().symbols()) {
            if (symbol.span().file().equals(document.file())) {
                Range whole = document.positions().range(symbol.span().start(), symbol.span().end());
                Range name = document.positions().range(symbol.nameAt().start(), symbol.nameAt().end());
                symbols.add(Either.forRight(
                        new DocumentSymbol(symbol.name(), kind(symbol.kind()), whole, name, symbol.kind())));
            }
        }
        return symbols;
    }

    static SymbolKind kind(String kind) {
        return switch (kind) {
            case "let" -> SymbolKind.Constant;
            case "board", "sheet" -> SymbolKind.Object;
            default -> SymbolKind.Class;
        };
    }
}

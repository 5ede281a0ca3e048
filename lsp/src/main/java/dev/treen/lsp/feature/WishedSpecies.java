package dev.treen.lsp.feature;

import dev.treen.lsp.Document;
import dev.treen.model.AnyOf;
import dev.treen.model.Board;
import dev.treen.model.Part;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A species that stands where a board could: {@code from black_cherry}. */
final class WishedSpecies {
    private WishedSpecies() {
    }

    /** The boards of the species that is wished for at {@code offset}. */
    static Optional<AnyOf> at(Document document, int offset) {
        return document.analysis().evaluation().project().parts().stream()
                .map(Part::anyOf)
                .flatMap(Optional::stream)
                .filter(any -> Names.isIn(any.at(), document) && any.at().touches(offset))
                .findFirst();
    }

    /** What a hover says of it: the boards that it may come from. */
    static List<String> hover(Document document, int offset, LengthFormat format) {
        return at(document, offset).map(any -> {
            List<String> lines = new ArrayList<>();
            lines.add("Any board or sheet of " + any.species().replace('_', ' ') + "; the layout chooses among these:");
            for (Board board : any.boards()) {
                lines.add("- `" + board.name() + "` " + format.text(board.length().value()) + " × "
                        + format.text(board.width().value()) + " × " + format.text(board.thickness().value()));
            }
            return lines;
        }).orElse(List.of());
    }
}

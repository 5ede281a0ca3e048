package dev.treen.lsp.feature;

import dev.treen.joinery.Joined;
import dev.treen.joinery.ProjectCautions;
import dev.treen.lsp.Document;
import dev.treen.model.Board;
import dev.treen.plan.YearText;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import dev.treen.wood.SpeciesTable;
import java.util.ArrayList;
import java.util.List;

/** What hovers say of wood: the room of a part through the year, and the cautions that a board or part calls for. */
final class WoodNotes {
    private WoodNotes() {
    }

    /** The year of a part's room, and its cautions. */
    static List<String> ofPart(Document document, String part, LengthFormat format) {
        List<String> lines = new ArrayList<>(years(document, part, format));
        cautions(document.analysis().joined(), part, lines);
        return lines;
    }

    /** The curve of a part's room through the year. */
    static List<String> years(Document document, String part, LengthFormat format) {
        return document.analysis().quick().facts().year(part).stream()
                .map(year -> "```text\n" + YearText.of(year, format) + "\n```")
                .toList();
    }

    /** What there is to say of a board or its species at this place. */
    static List<String> ofBoards(Document document, Span at, LengthFormat format) {
        List<String> lines = new ArrayList<>();
        Joined joined = document.analysis().joined();
        for (Board board : joined.project().boards()) {
            if (Names.same(board.nameAt(), at) || Names.same(board.speciesAt(), at)) {
                lines.add((board.sheet() ? "sheet `" : "board `") + board.name() + "`"
                        + board.species().map(species -> " of " + species.replace('_', ' ')).orElse("")
                        + ", " + new Size(board.length().value(), board.width().value(), board.thickness().value())
                                .text(format)
                        + board.moisture().map(percent -> ", " + DecimalText.write(percent, 1) + " % moisture")
                                .orElse(""));
                if (board.declared().isEmpty()) {
                    board.species().flatMap(SpeciesTable.published()::get)
                            .ifPresent(wood -> lines.addAll(SpeciesNotes.fully(wood)));
                }
                cautions(joined, board.name(), lines);
            }
        }
        return lines;
    }

    private static void cautions(Joined joined, String name, List<String> lines) {
        ProjectCautions.about(name, joined).forEach(called -> lines.add("Caution: " + called.text()));
    }
}

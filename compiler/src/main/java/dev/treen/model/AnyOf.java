package dev.treen.model;

import dev.treen.source.Span;
import java.util.Comparator;
import java.util.List;

/**
 * Boards and sheets of one species: a part may come from any of them, and the layout chooses.
 *
 * @param species as the boards write it
 * @param at where it is wished for
 * @param boards all of that species, in the order of the project; never empty
 */
public record AnyOf(String species, Span at, List<Board> boards) {
    /** Keeps its own copy. */
    public AnyOf {
        boards = List.copyOf(boards);
    }

    /**
     * The board whose wood a part is taken to have until the layout has chosen: of those as thick and as long as the part,
     * where there are any, the one whose width moves most. That is solid wood before a sheet, rings that lie flattest, and
     * among alike the driest: what swells bursts joints, what shrinks only opens them.
     */
    Board liveliest(Measure length, Measure thickness) {
        List<Board> large = boards.stream()
                .filter(board -> board.length().value().compareTo(length.value()) >= 0)
                .filter(board -> board.thickness().value().compareTo(thickness.value()) >= 0)
                .toList();
        return (large.isEmpty() ? boards : large).stream()
                .min(Comparator.comparing(Board::sheet)
                        .thenComparingDouble(board -> board.rings().degrees())
                        .thenComparingDouble(board -> board.moisture().orElse(Double.MAX_VALUE)))
                .orElseThrow();
    }

    /** Whether it matters to how the wood moves from which board it comes. */
    public boolean differs() {
        return boards.stream()
                .map(board -> List.of(board.sheet(), board.rings(), board.moisture()))
                .distinct()
                .count() > 1;
    }
}

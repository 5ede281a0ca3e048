package dev.treen.yield;

import java.util.List;

/**
 * Boards, parts and how to cut: everything the solver knows.
 *
 * @param stocks what there is
 * @param pieces what is wanted
 * @param runs which parts follow each other along one strip
 * @param settings saw, waste, search
 */
public record YieldProblem(List<Stock> stocks, List<Piece> pieces, List<Run> runs, Settings settings) {

    /** Keeps its own copies of the lists. */
    public YieldProblem {
        stocks = List.copyOf(stocks);
        pieces = List.copyOf(pieces);
        runs = List.copyOf(runs);
    }
}

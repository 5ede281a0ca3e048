package dev.treen.cutting;

import dev.treen.finding.Finding;
import java.util.List;

/**
 * Every part on a board.
 *
 * @param boards the boards that are cut, in the order of the project
 * @param unplaced parts for which there is no room
 * @param partsMm2 area of the parts at their rough size, in square millimetres
 * @param boardsMm2 area of the boards and leaves that are cut
 * @param gap how far the layout may be from the best possible, as a share
 * @param proved whether nothing better is possible
 * @param bound how the best possible was bounded
 * @param findings what there is to say
 */
public record Cutting(
        List<BoardCut> boards,
        List<String> unplaced,
        double partsMm2,
        double boardsMm2,
        double gap,
        boolean proved,
        String bound,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public Cutting {
        boards = List.copyOf(boards);
        unplaced = List.copyOf(unplaced);
        findings = List.copyOf(findings);
    }

    /** The share of the boards that becomes parts, in percent. */
    public double yieldPercent() {
        return boardsMm2 == 0 ? 0 : 100 * partsMm2 / boardsMm2;
    }
}

package dev.treen.yield;

import java.util.List;

/**
 * How boards were sawn in a layout that was given out before, as far as it is still known.
 *
 * @param boards each with its cuts; whether they still suit the problem is another question
 */
public record Earlier(List<Board> boards) {
    /** Keeps its own copy. */
    public Earlier {
        boards = List.copyOf(boards);
    }

    /**
     * One board.
     *
     * @param stockId which stock
     * @param tree its cuts, with one copy of each part
     */
    public record Board(String stockId, CutTree tree) {
        /** The parts on it. */
        public List<BoardLayout.Placement> placements() {
            return new BoardLayout(stockId, 0, tree).placements();
        }
    }
}

package dev.treen.cutting;

import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.List;

/**
 * One board, or one leaf of a board that is resawn, and how it is cut.
 *
 * @param board the board
 * @param leaf which of its leaves, from 1
 * @param leaves how many leaves it is sawn into; 1 where it is not resawn
 * @param thickness of the leaf once its faces are flat
 * @param parts the parts on it
 * @param cuts saw cuts in their order
 * @param offcuts what is worth keeping
 */
public record BoardCut(
        Board board,
        int leaf,
        int leaves,
        Length thickness,
        List<OnBoard> parts,
        List<SawCut> cuts,
        List<Rectangle> offcuts) {
    /** Keeps its own copies. */
    public BoardCut {
        parts = List.copyOf(parts);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
    }

    /** A part at its rough size. */
    public record OnBoard(String part, Rectangle area) {}

    /**
     * A cut from edge to edge of what is left.
     *
     * @param along with the grain; otherwise a crosscut
     * @param at where it begins: y for a rip, x for a crosscut
     * @param piece what is cut through
     */
    public record SawCut(int number, boolean along, Length at, Rectangle piece) {}

    /** {@code plank}, or {@code plank leaf 2} where it is resawn. */
    public String name() {
        return leaves == 1 ? board.name() : board.name() + " leaf " + leaf;
    }
}

package dev.treen.yield;

/** What is left of a board as it is sawn: each cut goes from edge to edge of the piece in hand and parts it in two. */
public sealed interface CutTree permits CutTree.Cut, CutTree.PieceLeaf, CutTree.OffcutLeaf, CutTree.WasteLeaf {

    /** The piece in hand, on the board's own coordinates. */
    Rect area();

    /** Which way a saw cut runs. */
    enum Direction {
        /** A crosscut: the line of the saw lies across the grain, at one x. */
        ACROSS,
        /** A rip: the line of the saw lies along the grain, at one y. */
        ALONG
    }

    /**
     * A cut. The saw takes from {@code position} to {@code position + kerf}; where that reaches past the edge of the piece
     * in hand, that side is all dust and stands as a waste leaf of no size.
     *
     * @param area the piece in hand
     * @param direction which way
     * @param position where the first part ends
     * @param first what lies before the cut
     * @param second what lies behind the kerf
     */
    record Cut(Rect area, Direction direction, long position, CutTree first, CutTree second) implements CutTree {}

    /**
     * A part, at its size.
     *
     * @param area where it lies
     * @param pieceId which piece
     * @param copy which copy, from 0
     * @param turned whether its length lies across the grain
     */
    record PieceLeaf(Rect area, String pieceId, int copy, boolean turned) implements CutTree {}

    /**
     * A clear leftover worth keeping.
     *
     * @param area where it lies
     */
    record OffcutLeaf(Rect area) implements CutTree {}

    /**
     * What goes to the stove.
     *
     * @param area where it lies; either size may be 0
     */
    record WasteLeaf(Rect area) implements CutTree {}
}

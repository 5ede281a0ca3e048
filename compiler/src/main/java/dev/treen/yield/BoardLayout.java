package dev.treen.yield;

import java.util.ArrayList;
import java.util.List;

/**
 * How one board is sawn.
 *
 * @param stockId which stock
 * @param index which of the boards alike, from 0
 * @param tree the cuts, each inside what the cut before it left
 */
public record BoardLayout(String stockId, int index, CutTree tree) {

    /**
     * A part on a board.
     *
     * @param pieceId which piece
     * @param copy which copy, from 0
     * @param area where it lies
     * @param turned whether its length lies across the grain
     */
    public record Placement(String pieceId, int copy, Rect area, boolean turned) {}

    /**
     * One cut in the order of the work.
     *
     * @param number from 1
     * @param from the piece in hand
     * @param direction which way
     * @param position where the first part ends and the kerf begins
     */
    public record Step(int number, Rect from, CutTree.Direction direction, long position) {}

    /** The parts, in the order in which they come free. */
    public List<Placement> placements() {
        var found = new ArrayList<Placement>();
        walk(tree, found, new ArrayList<>(), new ArrayList<>());
        return List.copyOf(found);
    }

    /** The leftovers worth keeping. */
    public List<Rect> offcuts() {
        var found = new ArrayList<Rect>();
        walk(tree, new ArrayList<>(), found, new ArrayList<>());
        return List.copyOf(found);
    }

    /** The cuts in order. */
    public List<Step> steps() {
        var found = new ArrayList<Step>();
        walk(tree, new ArrayList<>(), new ArrayList<>(), found);
        return List.copyOf(found);
    }

    // Rows of many parts make the tree as deep as the row is long, so the second half of a cut is a loop, not a call.
    private static void walk(CutTree from, List<Placement> parts, List<Rect> offcuts, List<Step> steps) {
        CutTree node = from;
        while (true) {
            switch (node) {
                case CutTree.Cut cut -> {
                    steps.add(new Step(steps.size() + 1, cut.area(), cut.direction(), cut.position()));
                    walk(cut.first(), parts, offcuts, steps);
                    node = cut.second();
                }
                case CutTree.PieceLeaf leaf -> {
                    parts.add(new Placement(leaf.pieceId(), leaf.copy(), leaf.area(), leaf.turned()));
                    return;
                }
                case CutTree.OffcutLeaf leaf -> {
                    offcuts.add(leaf.area());
                    return;
                }
                case CutTree.WasteLeaf ignored -> {
                    return;
                }
            }
        }
    }
}

package dev.treen.cutting;

import dev.treen.joinery.GrainRing;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.List;

/**
 * One board, or one leaf of a board that is resawn, and how it is cut.
 *
 * @param source the board as it lies on the rack
 * @param board what is laid out: the same, or a piece of it where it is ripped before its faces are planed
 * @param leaf which of its leaves, from 1
 * @param leaves how many leaves it is sawn into; 1 where it is not resawn
 * @param thickness of the leaf once its faces are flat
 * @param parts the parts on it
 * @param strips what is kept whole until the work along it is done: planing, grooves
 * @param cuts saw cuts in their order; those that cut strips apart come last
 * @param offcuts what is worth keeping
 */
public record BoardCut(
        Board source,
        Board board,
        int leaf,
        int leaves,
        Length thickness,
        List<OnBoard> parts,
        List<Strip> strips,
        List<SawCut> cuts,
        List<Rectangle> offcuts) {
    /** Keeps its own copies. */
    public BoardCut {
        parts = List.copyOf(parts);
        strips = List.copyOf(strips);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
    }

    /**
     * A part at its rough size, or what becomes one: a stave, a blank that is resawn.
     *
     * @param blank what it is
     * @param flaws what it has in it, by kind: only what the project says it may have
     * @param lay how it lies so that no joint touches a flaw, {@code top up, left end to the left}, or {@link #ACROSS}; empty
     *     where any way will do
     */
    public record OnBoard(Blank blank, Rectangle area, List<String> flaws, String lay) {
        /** How a part lies on a sheet whose length is not along it. */
        public static final String ACROSS = "across the face grain";

        /** Keeps its own copy. */
        public OnBoard {
            flaws = List.copyOf(flaws);
        }

        /** What it is called. */
        public String name() {
            return blank.name();
        }

        /** What to mind of its flaws, {@code has a knot in it; lay it top up}; empty where it has none. */
        public String note() {
            return flaws.isEmpty() ? lay.isEmpty() ? "" : "lies " + lay
                    : "has " + String.join(" and ", flaws.stream().map(OnBoard::counted).toList()) + " in it"
                            + (lay.isEmpty() ? "" : "; lay it " + lay);
        }

        private static String counted(String kind) {
            return kind.equals("knot") || kind.equals("check") ? "a " + kind
                    : kind.equals("worm") ? "worm holes" : kind;
        }
    }

    /**
     * A cut from edge to edge of what is left.
     *
     * @param number in the order of the work, from 1
     * @param along with the grain; otherwise a crosscut
     * @param at where it begins: y for a rip, x for a crosscut
     * @param kerf what it takes, from there on
     * @param piece what is cut through
     * @param strip the strip that it cuts apart, or {@link #NO_STRIP}
     */
    public record SawCut(int number, boolean along, Length at, Length kerf, Rectangle piece, int strip) {
        /** The cut frees strips and single parts from the board. */
        public static final int NO_STRIP = 0;
    }

    /** {@code plank}, or {@code plank leaf 2} where it is resawn. */
    public String name() {
        return leafName(board, leaf, leaves);
    }

    /** The runs of grain on it that close a ring. */
    public List<GrainRing> rings(Joined joined) {
        return GrainRing.among(
                parts.stream().flatMap(part -> part.blank().parts().stream()).toList(), joined);
    }

    /** What a leaf of {@code board} is called. */
    static String leafName(Board board, int leaf, int leaves) {
        return leaves == 1 ? board.name() : board.name() + " leaf " + leaf;
    }
}

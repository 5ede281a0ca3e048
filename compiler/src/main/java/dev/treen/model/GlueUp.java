package dev.treen.model;

import dev.treen.source.Span;
import java.util.Optional;

/**
 * That a part is glued up edge to edge from staves, and what is asked of them.
 *
 * @param staves how many; empty where the layout chooses
 * @param widest no stave is wider than this when its edges are shot; empty where the boards decide
 * @param order how the heart sides of neighbours lie
 * @param match what the staves have in common
 * @param at where it is written
 */
public record GlueUp(Optional<Integer> staves, Optional<Measure> widest, Order order, Match match, Span at) {
    /** Wider than anything that is glued up by hand; more are a slip of the pen. */
    public static final int MOST_STAVES = 60;

    /** How the heart sides of neighbours lie (rules of the trade Y-08: Fairham; Noyes no. 70). */
    public enum Order {
        /** Up and down by turns: the whole stays flat, each stave hollows by itself. */
        ALTERNATE,
        /** All one way: the whole takes one hollow, which battens or a frame hold flat. */
        ALIKE
    }

    /** What the staves of one part have in common. */
    public enum Match {
        /** Nothing beyond the part's own wood. */
        NONE,
        /** They come from one board. */
        BOARD,
        /** They are two leaves of one piece, opened like a book (Y-07: common practice, no source). */
        BOOK
    }
}

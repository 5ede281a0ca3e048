package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * What the author wants of the cutting layout, beyond that every part comes out of the boards.
 *
 * @param matched parts that come from one board, for their colour and figure
 * @param bookmatched pairs of parts that are two leaves of one piece
 * @param resaw whether boards are resawn where that saves wood; else only where a board says so
 * @param labour what a resaw cut counts for, as a share of its board
 * @param offcutsFirst whether boards that are offcuts are taken before whole ones
 * @param steady what an earlier layout may cost more than one made anew before parts are moved, as a share
 * @param plain how much smaller the largest leftover may be for fewer saw cuts, as a share of it
 * @param takes the flaws that parts may have in them that say nothing of it
 * @param keep the least leftover worth keeping, length and width; empty for the usual
 */
public record LayoutWishes(List<Group> matched, List<Group> bookmatched, boolean resaw, double labour,
        boolean offcutsFirst,
        Optional<List<Measure>> keep, double steady, double plain, Takes takes) {
    /** A fiftieth of the wood is little against marking out anew; the figure is our own. */
    static final double STEADY = 0.02;

    /** A tenth of a board for the labour of sawing it through; the figure is our own. */
    static final double LABOUR = 0.1;

    /** Nothing special. */
    public static final LayoutWishes NONE = new LayoutWishes(
            List.of(), List.of(), true, LABOUR, false, Optional.empty(), STEADY, 0, Takes.NONE);

    /** Keeps its own copies. */
    public LayoutWishes {
        matched = List.copyOf(matched);
        bookmatched = List.copyOf(bookmatched);
    }

    /**
     * Parts named together.
     *
     * @param parts their names, in order
     * @param at where they are named
     */
    public record Group(List<String> parts, Span at) {
        /** Keeps its own copy. */
        public Group {
            parts = List.copyOf(parts);
        }
    }
}

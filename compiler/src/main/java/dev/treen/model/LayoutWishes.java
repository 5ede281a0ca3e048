package dev.treen.model;

import dev.treen.source.Span;
import java.util.List;
import java.util.Optional;

/**
 * What the author wants of the cutting layout, beyond that every part comes out of the boards.
 *
 * @param matched parts that come from one board, for their colour and figure
 * @param offcutsFirst whether boards that are offcuts are taken before whole ones
 * @param steady what an earlier layout may cost more than one made anew before parts are moved, as a share
 * @param takes the flaws that parts may have in them that say nothing of it
 * @param keep the least leftover worth keeping, length and width; empty for the usual
 */
public record LayoutWishes(List<Group> matched, boolean offcutsFirst, Optional<List<Measure>> keep, double steady,
        Takes takes) {
    /** A fiftieth of the wood is little against marking out anew; the figure is our own. */
    static final double STEADY = 0.02;

    /** Nothing special. */
    public static final LayoutWishes NONE = new LayoutWishes(List.of(), false, Optional.empty(), STEADY, Takes.NONE);

    /** Keeps its own copies. */
    public LayoutWishes {
        matched = List.copyOf(matched);
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

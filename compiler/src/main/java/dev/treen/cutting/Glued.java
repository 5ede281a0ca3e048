package dev.treen.cutting;

import dev.treen.model.GlueUp;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * A part that is glued up, as it is divided.
 *
 * @param part its name
 * @param asked what the project says of it
 * @param staves their widths once their edges are shot, from the edge where the part's width begins; they add up to the rough
 *     width of the part
 * @param roughLength of each stave
 * @param edges what is planed off each stave, both edges together
 * @param thickness of each stave once it is flat, so that the glued part can be planed again
 * @param clear whether every glue line keeps clear of what is cut into the part
 */
public record Glued(
        String part,
        GlueUp asked,
        List<Length> staves,
        Length roughLength,
        Length edges,
        Length thickness,
        boolean clear) {
    /** Keeps its own copy. */
    public Glued {
        staves = List.copyOf(staves);
    }

    /** Where the glue lines lie, from the edge where the rough part's width begins. */
    public List<Length> lines() {
        List<Length> lines = new ArrayList<>();
        Length at = Length.ZERO;
        for (Length stave : staves.subList(0, staves.size() - 1)) {
            at = at.plus(stave);
            lines.add(at);
        }
        return lines;
    }

    /** How wide a stave is sawn, from 1. */
    public Length roughWidth(int stave) {
        return staves.get(stave - 1).plus(edges);
    }

    /** Which way the heart side of a stave looks. */
    public enum Heart {
        /** To the face that looks up while the staves are laid out. */
        UP,
        /** To the other face. */
        DOWN;

        /** As it is said. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The heart sides of the staves, as they are laid; none where they are the leaves of a book. */
    public List<Heart> hearts() {
        if (asked.match() == GlueUp.Match.BOOK) {
            return List.of();
        }
        boolean turns = asked.order() == GlueUp.Order.ALTERNATE;
        return IntStream.range(0, staves.size()).mapToObj(i -> turns && i % 2 == 1 ? Heart.DOWN : Heart.UP).toList();
    }

    List<Blank> blanks() {
        return Blank.staves(part, staves.size(), asked.match());
    }
}

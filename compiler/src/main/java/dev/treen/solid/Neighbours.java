package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds which of many parts may reach into a place. Asking once for each part of a piece of furniture takes near linear
 * time in all.
 */
public final class Neighbours {
    private final List<Placed> parts;
    private final BoxTree tree;

    /** The neighbours among {@code parts}; those without material are left out. */
    public Neighbours(List<Placed> parts) {
        this.parts = parts.stream().filter(part -> !part.solid().isEmpty()).toList();
        this.tree = new BoxTree(this.parts.stream().map(part -> part.solid().span()).toList());
    }

    /** The parts whose extents share at least a point with {@code place}, or nearly; in the order they were given in. */
    public List<Placed> near(Box place) {
        List<Integer> found = new ArrayList<>();
        tree.near(Span.of(place.min(), place.max()), found::add);
        return found.stream().sorted().map(parts::get).toList();
    }
}

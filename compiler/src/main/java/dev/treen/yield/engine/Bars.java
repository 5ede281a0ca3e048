package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Between layouts and bars told by how many of each part they give. */
final class Bars {
    private final Folded f;
    private final int[] types;

    /** @param types the parts in the order in which bars count them */
    Bars(Folded f, int[] types) {
        this.f = f;
        this.types = types;
    }

    /** The boards of a layout as patterns. */
    List<Patterns.Pattern> patterns(State state) {
        return counted(state).stream().map(counts -> Patterns.Pattern.of(counts, 1)).toList();
    }

    /** The boards of a layout by how many of each part they give. */
    List<int[]> counted(State state) {
        var row = new int[f.types];
        Arrays.fill(row, -1);
        for (int i = 0; i < types.length; i++) {
            row[types[i]] = i;
        }
        List<int[]> found = new ArrayList<>();
        for (int slot = 0; slot < state.open; slot++) {
            var counts = new int[types.length];
            BoardTree tree = state.slot[slot];
            for (int n = 0; n < tree.nodes(); n++) {
                if (tree.kind(n) == BoardTree.ITEM) {
                    counts[row[tree.type(n)]]++;
                }
            }
            found.add(counts);
        }
        return found;
    }

    /** Offers bars as a layout, if there are boards enough. */
    void offer(List<int[]> cut, Improver improver) {
        if (cut.size() > f.count[0]) {
            return;
        }
        var state = new State(f);
        for (int[] bar : cut) {
            int slot = state.open(0, 1);
            int leaf = 0;
            for (int i = 0; i < bar.length; i++) {
                for (int k = 0; k < bar[i]; k++) {
                    leaf = place(state, slot, leaf, types[i]);
                }
            }
        }
        improver.take(state, 1);
    }

    private int place(State state, int slot, int leaf, int t) {
        BoardTree tree = state.slot[slot];
        int rest = -1;
        int here = leaf;
        if (tree.length(leaf) > f.length[t]) {
            rest = tree.cut(leaf, BoardTree.ROW, f.length[t]);
            here = tree.before(rest);
        }
        state.place(slot, here, t, tree.x(here), tree.y(here), f.length[t], f.width[t], true, 1);
        return rest;
    }
}

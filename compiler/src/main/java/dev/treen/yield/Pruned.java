package dev.treen.yield;

import dev.treen.yield.CutTree.Cut;
import dev.treen.yield.CutTree.OffcutLeaf;
import dev.treen.yield.CutTree.PieceLeaf;
import dev.treen.yield.CutTree.WasteLeaf;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/** A board's tree of cuts with some of its parts taken out: cuts that lead to no part that stays are taken back. */
final class Pruned {
    private final Predicate<String> stays;
    private final Rect usable;
    private final Set<Rect> emptied = new HashSet<>();
    private final Map<Rect, CutTree> before = new HashMap<>();
    private final CutTree tree;

    /**
     * Takes out of {@code tree} the parts that do not stay.
     *
     * @param usable the board without what is lost at its ends and edges
     */
    Pruned(CutTree tree, Rect usable, Predicate<String> stays) {
        this.stays = stays;
        this.usable = usable;
        this.tree = Rebuilt.of(tree, this::withoutPart, this::joined);
    }

    /** The places in which a part may be put. */
    List<Rect> places() {
        List<Rect> places = new ArrayList<>();
        collect(tree, places);
        return places;
    }

    private void collect(CutTree from, List<Rect> places) {
        CutTree node = from;
        while (node instanceof Cut cut) {
            collect(cut.first(), places);
            node = cut.second();
        }
        Rect area = node.area();
        if (free(node) && area.length() > 0 && area.width() > 0 && usable.holds(area)) {
            places.add(area);
        }
    }

    /** The tree with the places in {@code filled} sawn so; others as they were, or as {@code leftover} says. */
    CutTree filled(Map<Rect, CutTree> filled, Function<Rect, CutTree> leftover) {
        return Rebuilt.of(tree, leaf -> leaf(leaf, filled, leftover), Rebuilt.Join.SAME);
    }

    private CutTree leaf(CutTree leaf, Map<Rect, CutTree> filled, Function<Rect, CutTree> leftover) {
        if (!free(leaf)) {
            return leaf;
        }
        CutTree sawn = filled.get(leaf.area());
        if (sawn != null) {
            return sawn;
        }
        return emptied.contains(leaf.area())
                ? leftover.apply(leaf.area())
                : before.getOrDefault(leaf.area(), leaf);
    }

    private CutTree withoutPart(CutTree leaf) {
        if (leaf instanceof PieceLeaf piece && !stays.test(piece.pieceId())) {
            emptied.add(leaf.area());
            return new WasteLeaf(leaf.area());
        }
        return leaf;
    }

    private CutTree joined(Cut cut, CutTree first, CutTree second) {
        if (!free(first) || !free(second) || !usable.holds(cut.area())) {
            return Rebuilt.Join.SAME.of(cut, first, second);
        }
        if (emptied.contains(first.area()) || emptied.contains(second.area())) {
            emptied.add(cut.area());
        } else {
            before.put(cut.area(), cut);
        }
        return new WasteLeaf(cut.area());
    }

    private static boolean free(CutTree leaf) {
        return leaf instanceof WasteLeaf || leaf instanceof OffcutLeaf;
    }
}

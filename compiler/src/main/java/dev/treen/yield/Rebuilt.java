package dev.treen.yield;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A tree of cuts made anew of another, from the leaves up. Rows of many parts make a tree as deep as the row is long, so the
 * second half of a cut is a loop here, not a call.
 */
final class Rebuilt {
    private Rebuilt() {
    }

    /** What becomes of a cut whose halves have been made anew. */
    interface Join {
        /** The same cut with other halves. */
        Join SAME = (cut, first, second) -> new CutTree.Cut(cut.area(), cut.direction(), cut.position(), first, second);

        CutTree of(CutTree.Cut cut, CutTree first, CutTree second);
    }

    static CutTree of(CutTree from, UnaryOperator<CutTree> leaf, Join join) {
        List<CutTree.Cut> chain = new ArrayList<>();
        CutTree node = from;
        while (node instanceof CutTree.Cut cut) {
            chain.add(cut);
            node = cut.second();
        }
        CutTree done = leaf.apply(node);
        for (CutTree.Cut cut : chain.reversed()) {
            done = join.of(cut, of(cut.first(), leaf, join), done);
        }
        return done;
    }
}

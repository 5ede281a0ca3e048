package dev.treen.cutting;

import dev.treen.yield.CutTree;
import dev.treen.yield.CutTree.Cut;
import dev.treen.yield.CutTree.Direction;
import dev.treen.yield.CutTree.OffcutLeaf;
import dev.treen.yield.CutTree.PieceLeaf;
import dev.treen.yield.CutTree.WasteLeaf;
import dev.treen.yield.Rect;
import java.util.ArrayList;
import java.util.List;

/**
 * Neighbours that would be crosscut first and then ripped at the same height are ripped once and crosscut after
 * (rules of the trade Y-10; Noyes, Handwork in Wood, ch. IX rule 3): parts lie where they lay, and a strip comes of them.
 * Whole parts side by side in a row of crosscuts are left together as well.
 * Not beyond a length at which crook costs more than it saves (Y-13).
 */
final class RipOnce {
    private final long longest;

    private RipOnce(long longest) {
        this.longest = longest;
    }

    /** {@code tree} with strips of at most {@code longest}. */
    static CutTree of(CutTree tree, long longest) {
        return new RipOnce(longest).joined(tree);
    }

    private CutTree joined(CutTree tree) {
        if (!(tree instanceof Cut cut)) {
            return tree;
        }
        if (cut.direction() == Direction.ALONG) {
            return new Cut(cut.area(), cut.direction(), cut.position(), joined(cut.first()), joined(cut.second()));
        }
        List<CutTree> segments = new ArrayList<>();
        List<Long> positions = new ArrayList<>();
        flatten(cut, segments, positions);
        List<CutTree> whole = new ArrayList<>();
        List<Long> between = new ArrayList<>();
        int from = 0;
        while (from < segments.size()) {
            int to = from + 1;
            while (to < segments.size() && goesOn(segments.get(from), segments.get(to))) {
                to++;
            }
            whole.add(to - from == 1 ? segments.get(from) : ripped(segments.subList(from, to), positions, from));
            if (to < segments.size()) {
                between.add(positions.get(to - 1));
            }
            from = to;
        }
        return row(whole, between);
    }

    /** Parts that lie side by side come off a row in one piece, so that what runs along it is done before they part. */
    private CutTree row(List<CutTree> segments, List<Long> between) {
        List<CutTree> whole = new ArrayList<>();
        List<Long> cuts = new ArrayList<>();
        int from = 0;
        while (from < segments.size()) {
            int to = endOfStrip(segments, from);
            whole.add(across(segments.subList(from, to), between.subList(from, to - 1), 0));
            if (to < segments.size()) {
                cuts.add(between.get(to - 1));
            }
            from = to;
        }
        return across(whole, cuts, 0);
    }

    /** One past the last part that only waste lies before, when one starts at {@code from}. */
    private int endOfStrip(List<CutTree> segments, int from) {
        int end = from + 1;
        if (segments.get(from) instanceof PieceLeaf) {
            for (int i = from + 1; i < segments.size() && goesInStrip(segments.get(from), segments.get(i)); i++) {
                end = segments.get(i) instanceof PieceLeaf ? i + 1 : end;
            }
        }
        return end;
    }

    private boolean goesInStrip(CutTree first, CutTree next) {
        return (next instanceof PieceLeaf || next instanceof WasteLeaf)
                && next.area().x() + next.area().length() - first.area().x() <= longest;
    }

    /** A row of crosscuts as the pieces between them; rows may be long, so the second half of a cut is a loop. */
    private void flatten(Cut cut, List<CutTree> segments, List<Long> positions) {
        CutTree node = cut;
        while (node instanceof Cut next && next.direction() == Direction.ACROSS) {
            if (next.first() instanceof Cut first && first.direction() == Direction.ACROSS) {
                flatten(first, segments, positions);
            } else {
                segments.add(joined(next.first()));
            }
            positions.add(next.position());
            node = next.second();
        }
        segments.add(joined(node));
    }

    private boolean goesOn(CutTree first, CutTree next) {
        return first instanceof Cut a
                && next instanceof Cut b
                && a.direction() == Direction.ALONG
                && b.direction() == Direction.ALONG
                && a.position() == b.position()
                && b.area().x() + b.area().length() - a.area().x() <= longest;
    }

    /** One rip through neighbours, then their crosscuts on either side of it. */
    private CutTree ripped(List<CutTree> row, List<Long> positions, int from) {
        List<CutTree> lower = new ArrayList<>();
        List<CutTree> upper = new ArrayList<>();
        for (CutTree each : row) {
            if (each instanceof Cut cut) {
                lower.add(cut.first());
                upper.add(cut.second());
            }
        }
        List<Long> between = positions.subList(from, from + row.size() - 1);
        Rect area = span(row);
        long position = ((Cut) row.getFirst()).position();
        return new Cut(area, Direction.ALONG, position, joined(side(lower, between)), joined(side(upper, between)));
    }

    /** Waste needs no cuts, and offcuts are worth more in one piece. */
    private static CutTree side(List<CutTree> row, List<Long> between) {
        if (row.stream().allMatch(WasteLeaf.class::isInstance)) {
            return new WasteLeaf(span(row));
        }
        boolean alike = row.stream().allMatch(each -> each.area().y() == row.getFirst().area().y()
                && each.area().width() == row.getFirst().area().width());
        if (alike && row.stream().allMatch(OffcutLeaf.class::isInstance)) {
            return new OffcutLeaf(span(row));
        }
        return across(row, between, 0);
    }

    private static Rect span(List<CutTree> row) {
        Rect first = row.getFirst().area();
        Rect last = row.getLast().area();
        return new Rect(first.x(), first.y(), last.x() + last.length() - first.x(), first.width());
    }

    private static CutTree across(List<CutTree> row, List<Long> between, int from) {
        CutTree tree = row.getLast();
        for (int i = row.size() - 2; i >= from; i--) {
            Rect area = span(row.subList(i, row.size()));
            tree = new Cut(area, Direction.ACROSS, between.get(i), row.get(i), tree);
        }
        return tree;
    }
}

package dev.treen.yield.engine;

import dev.treen.yield.BoardLayout;
import dev.treen.yield.CutTree;
import dev.treen.yield.CutTree.Direction;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Settings;
import dev.treen.yield.Stock;
import java.util.ArrayList;
import java.util.List;

/** Writes the trees of a search as cuts on true boards: the kerf comes out of the sizes again, runs fall into parts. */
final class TreeWriter {
    private final Folded f;
    private final long kerf;
    private final Settings settings;
    private final int[] handedOut;
    private final int[] endlessOut;
    private BoardTree tree;
    private int stock;
    private long offX;
    private long offY;

    TreeWriter(Folded f) {
        this.f = f;
        settings = f.problem.settings();
        kerf = f.kerf;
        handedOut = new int[f.types];
        endlessOut = new int[f.problem.pieces().size()];
        tree = new BoardTree(0, true, 0, 0);
    }

    /** All boards of a state that carry a part, in the order of the stocks. */
    List<BoardLayout> write(State state) {
        var boards = new ArrayList<BoardLayout>();
        for (int b = 0; b < f.stocks; b++) {
            int index = 0;
            for (int i = 0; i < state.open; i++) {
                if (state.slot[i].stock == b && state.slot[i].items() > 0) {
                    boards.add(board(state.slot[i].copy(), index++));
                }
            }
        }
        return boards;
    }

    /** A free place of a board with the largest clear piece of it carved out. */
    CutTree leftover(String stockId, Rect place) {
        stock = f.problem.stocks().stream().map(Stock::id).toList().indexOf(stockId);
        offX = settings.endWaste();
        offY = settings.edgeWaste();
        return leftover(place);
    }

    private BoardLayout board(BoardTree from, int index) {
        tree = from;
        if (tree.clear) {
            tree.settle();
        }
        stock = tree.stock;
        Stock board = f.problem.stocks().get(stock);
        offX = settings.endWaste();
        offY = settings.edgeWaste();
        CutTree inner = node(0);
        var whole = new Rect(0, 0, board.length(), board.width());
        return new BoardLayout(board.id(), index, trim(whole, inner));
    }

    // The four sides that are lost come off first, one cut each.
    private CutTree trim(Rect whole, CutTree inner) {
        Rect keep = inner.area();
        var sides = new ArrayList<CutTree.Cut>();
        Rect now = whole;
        if (keep.x() > whole.x()) {
            now = side(sides, now, Direction.ACROSS, keep.x() - kerf, false);
        }
        if (keep.right() < whole.right()) {
            now = side(sides, now, Direction.ACROSS, keep.right(), true);
        }
        if (keep.y() > whole.y()) {
            now = side(sides, now, Direction.ALONG, keep.y() - kerf, false);
        }
        if (keep.top() < whole.top()) {
            side(sides, now, Direction.ALONG, keep.top(), true);
        }
        CutTree done = inner;
        for (int i = sides.size() - 1; i >= 0; i--) {
            CutTree.Cut cut = sides.get(i);
            done = cut.first().equals(KEEP)
                    ? new CutTree.Cut(cut.area(), cut.direction(), cut.position(), done, cut.second())
                    : new CutTree.Cut(cut.area(), cut.direction(), cut.position(), cut.first(), done);
        }
        return done;
    }

    private static final CutTree KEEP = new CutTree.WasteLeaf(new Rect(0, 0, 0, 0));

    private Rect side(List<CutTree.Cut> sides, Rect now, Direction direction, long position, boolean keepFirst) {
        Rect first = before(now, direction, position);
        Rect second = after(now, direction, position);
        sides.add(new CutTree.Cut(
                now,
                direction,
                position,
                keepFirst ? KEEP : new CutTree.WasteLeaf(first),
                keepFirst ? new CutTree.WasteLeaf(second) : KEEP));
        return keepFirst ? first : second;
    }

    private static Rect before(Rect r, Direction direction, long position) {
        return direction == Direction.ACROSS
                ? new Rect(r.x(), r.y(), Math.max(0, position - r.x()), r.width())
                : new Rect(r.x(), r.y(), r.length(), Math.max(0, position - r.y()));
    }

    private Rect after(Rect r, Direction direction, long position) {
        if (direction == Direction.ACROSS) {
            long from = Math.min(position + kerf, r.right());
            return new Rect(from, r.y(), r.right() - from, r.width());
        }
        long from = Math.min(position + kerf, r.top());
        return new Rect(r.x(), from, r.length(), r.top() - from);
    }

    private Rect rect(int n) {
        return new Rect(
                tree.x(n) + offX,
                tree.y(n) + offY,
                Math.max(0, tree.length(n) - kerf),
                Math.max(0, tree.width(n) - kerf));
    }

    private CutTree node(int n) {
        return switch (tree.kind(n)) {
            case BoardTree.FREE -> leftover(rect(n));
            case BoardTree.ITEM -> item(n);
            case BoardTree.ROW -> children(n, Direction.ACROSS);
            case BoardTree.STACK -> children(n, Direction.ALONG);
            default -> throw new IllegalStateException("a node that is gone");
        };
    }

    private CutTree children(int n, Direction direction) {
        var parts = new ArrayList<Integer>();
        for (int c = tree.first(n); c >= 0; c = tree.next(c)) {
            parts.add(c);
        }
        boolean across = direction == Direction.ACROSS;
        Rect whole = rect(n);
        CutTree done = last(parts.getLast(), whole, across);
        for (int i = parts.size() - 2; i >= 0; i--) {
            int c = parts.get(i);
            long start = across ? tree.x(c) + offX : tree.y(c) + offY;
            long position = start + (across ? tree.length(c) : tree.width(c)) - kerf;
            Rect area = across
                    ? new Rect(start, whole.y(), whole.right() - start, whole.width())
                    : new Rect(whole.x(), start, whole.length(), whole.top() - start);
            done = new CutTree.Cut(area, direction, position, node(c), done);
        }
        return done;
    }

    // What is thinner than the kerf goes to dust with the cut beside it.
    private CutTree last(int n, Rect whole, boolean across) {
        if ((across ? tree.length(n) : tree.width(n)) > kerf) {
            return node(n);
        }
        return new CutTree.WasteLeaf(
                across
                        ? new Rect(whole.right(), whole.y(), 0, whole.width())
                        : new Rect(whole.x(), whole.top(), whole.length(), 0));
    }

    private CutTree item(int n) {
        int t = tree.type(n);
        if (t == f.spare) {
            return leftover(rect(n));
        }
        if (f.endless[t] >= 0) {
            int p = f.endless[t];
            Piece piece = f.problem.pieces().get(p);
            boolean turned = tree.length(n) != piece.length() + kerf;
            return new CutTree.PieceLeaf(rect(n), piece.id(), endlessOut[p]++, turned);
        }
        List<Folded.Ref> parts = f.refs.get(t).get(handedOut[t]++);
        boolean turned = tree.length(n) != f.length[t];
        CutTree done = KEEP;
        long end = rect(n).right();
        Rect strip = rect(n);
        for (int i = parts.size() - 1; i >= 0; i--) {
            Folded.Ref ref = parts.get(i);
            Piece piece = f.problem.pieces().get(ref.piece());
            long length = turned ? piece.width() : piece.length();
            long width = turned ? piece.length() : piece.width();
            long start = end - length;
            CutTree leaf = new CutTree.PieceLeaf(
                    new Rect(start, strip.y(), length, width), piece.id(), ref.copy(), turned);
            var room = new Rect(start, strip.y(), length, strip.width());
            CutTree own = width == strip.width()
                    ? leaf
                    : new CutTree.Cut(
                            room,
                            Direction.ALONG,
                            strip.y() + width,
                            leaf,
                            leftover(after(room, Direction.ALONG, strip.y() + width)));
            done = done.equals(KEEP)
                    ? own
                    : new CutTree.Cut(
                            new Rect(start, strip.y(), strip.right() - start, strip.width()),
                            Direction.ACROSS,
                            end,
                            own,
                            done);
            end = start - kerf;
        }
        return done;
    }

    // A leftover with a defect in it gives its largest clear rectangle, where that is worth keeping.
    private CutTree leftover(Rect r) {
        if (r.length() == 0 || r.width() == 0) {
            return new CutTree.WasteLeaf(r);
        }
        Rect clear = Leftovers.largest(f, stock, r, offX, offY);
        if (clear == null) {
            return new CutTree.WasteLeaf(r);
        }
        return carve(r, clear);
    }

    private CutTree carve(Rect r, Rect keep) {
        if (r.equals(keep)) {
            return new CutTree.OffcutLeaf(r);
        }
        if (keep.x() > r.x()) {
            return peel(r, keep, Direction.ACROSS, keep.x() - kerf, false);
        }
        if (keep.right() < r.right()) {
            return peel(r, keep, Direction.ACROSS, keep.right(), true);
        }
        if (keep.y() > r.y()) {
            return peel(r, keep, Direction.ALONG, keep.y() - kerf, false);
        }
        return peel(r, keep, Direction.ALONG, keep.top(), true);
    }

    private CutTree peel(Rect r, Rect keep, Direction direction, long position, boolean keepFirst) {
        Rect first = before(r, direction, position);
        Rect second = after(r, direction, position);
        return keepFirst
                ? new CutTree.Cut(r, direction, position, carve(first, keep), new CutTree.WasteLeaf(second))
                : new CutTree.Cut(r, direction, position, new CutTree.WasteLeaf(first), carve(second, keep));
    }
}

package dev.treen.cutting;

import dev.treen.quantity.Length;
import dev.treen.yield.CutTree;
import dev.treen.yield.Earlier;
import dev.treen.yield.Rect;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The layout of an earlier plan of the same project: what a new one moves as little as it can.
 *
 * @param boards as they were cut
 */
public record EarlierLayout(List<Board> boards) {
    /** No earlier layout. */
    public static final EarlierLayout NONE = new EarlierLayout(List.of());

    /** Keeps its own copy. */
    public EarlierLayout {
        boards = List.copyOf(boards);
    }

    /**
     * A board or leaf.
     *
     * @param name of the board
     * @param leaf which leaf, from 1
     * @param leaves how many it was sawn into
     * @param parts by name, where they lay at their rough size
     * @param cuts in any order
     * @param offcuts what was kept
     */
    public record Board(
            String name, int leaf, int leaves, Map<String, Rectangle> parts, List<SawCut> cuts,
            List<Rectangle> offcuts) {
        /** Keeps its own copies. */
        public Board {
            parts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
            cuts = List.copyOf(cuts);
            offcuts = List.copyOf(offcuts);
        }

        /** {@code plank}, or {@code plank leaf 2}. */
        String leafName() {
            return leaves == 1 ? name : name + " leaf " + leaf;
        }
    }

    /** A cut through a piece in hand, as in {@link BoardCut.SawCut}. */
    public record SawCut(boolean along, Length at, Length kerf, Rectangle piece) {}

    /** Where a part lay. */
    record Spot(String board, Rectangle area) {}

    Map<String, Spot> spots() {
        Map<String, Spot> spots = new LinkedHashMap<>();
        for (Board board : boards) {
            board.parts().forEach((part, area) -> spots.putIfAbsent(part, new Spot(board.leafName(), area)));
        }
        return spots;
    }

    /** As the solver reads it, for boards that {@code problem} still has. */
    Earlier read(YieldProblem problem) {
        List<Earlier.Board> read = new ArrayList<>();
        for (Board board : boards) {
            problem.stocks().stream()
                    .filter(stock -> stock.id().equals(board.leafName()))
                    .findFirst()
                    .map(stock -> new Tree(board, problem.settings().kerf()).of(stock))
                    .ifPresent(read::add);
        }
        return new Earlier(read);
    }

    /** The cuts of a board as a tree; what does not fit together is left to the solver's own check. */
    private static final class Tree {
        private static final int DEEPEST = 500;

        private final long kerf;
        private final Map<Rect, SawCut> cuts = new HashMap<>();
        private final Map<Rect, String> parts = new HashMap<>();
        private final List<Rect> offcuts;

        Tree(Board board, long kerf) {
            this.kerf = kerf;
            board.cuts().forEach(cut -> cuts.put(rect(cut.piece()), cut));
            board.parts().forEach((part, area) -> parts.put(rect(area), part));
            offcuts = board.offcuts().stream().map(Tree::rect).toList();
        }

        Earlier.Board of(Stock stock) {
            return new Earlier.Board(stock.id(), tree(new Rect(0, 0, stock.length(), stock.width()), 0));
        }

        private CutTree tree(Rect whole, int depth) {
            List<CutTree.Cut> chain = new ArrayList<>();
            Rect area = whole;
            while (depth < DEEPEST && cuts.containsKey(area)) {
                SawCut cut = cuts.remove(area);
                if (cut == null) {
                    break;
                }
                CutTree.Direction way = cut.along() ? CutTree.Direction.ALONG : CutTree.Direction.ACROSS;
                long begin = cut.along() ? area.y() : area.x();
                long end = cut.along() ? area.top() : area.right();
                long from = Units.down(cut.at());
                // Where a saw only shaves an edge, it takes less than its kerf and hangs over.
                long over = from <= begin ? Math.max(0, kerf - Units.down(cut.kerf())) : 0;
                long position = from - over;
                long left = Math.clamp(position - begin, 0, end - begin);
                long right = Math.clamp(end - position - kerf, 0, end - begin);
                Rect first = cut.along() ? new Rect(area.x(), begin, area.length(), left)
                        : new Rect(begin, area.y(), left, area.width());
                Rect second = cut.along() ? new Rect(area.x(), end - right, area.length(), right)
                        : new Rect(end - right, area.y(), right, area.width());
                chain.add(new CutTree.Cut(area, way, position, tree(first, depth + 1), new CutTree.WasteLeaf(second)));
                area = second;
            }
            CutTree done = leaf(area);
            for (int i = chain.size() - 1; i >= 0; i--) {
                CutTree.Cut cut = chain.get(i);
                done = new CutTree.Cut(cut.area(), cut.direction(), cut.position(), cut.first(), done);
            }
            return done;
        }

        private CutTree leaf(Rect area) {
            String part = parts.get(area);
            return part != null ? new CutTree.PieceLeaf(area, part, 0, false)
                    : offcuts.contains(area) ? new CutTree.OffcutLeaf(area) : new CutTree.WasteLeaf(area);
        }

        private static Rect rect(Rectangle area) {
            return new Rect(Units.down(area.x()), Units.down(area.y()), Math.max(0, Units.down(area.length())),
                    Math.max(0, Units.down(area.width())));
        }
    }
}

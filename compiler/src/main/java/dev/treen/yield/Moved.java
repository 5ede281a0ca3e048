package dev.treen.yield;

import dev.treen.yield.CutTree.Cut;
import dev.treen.yield.CutTree.OffcutLeaf;
import dev.treen.yield.CutTree.PieceLeaf;
import dev.treen.yield.CutTree.WasteLeaf;

/** Shapes on a board, counted from another corner. */
final class Moved {
    private Moved() {
    }

    static Rect by(Rect rect, long dx, long dy) {
        return new Rect(rect.x() + dx, rect.y() + dy, rect.length(), rect.width());
    }

    /** A flaw of {@code stock}; a strip along a side becomes the rectangle that it is. */
    static Defect by(Defect defect, Stock stock, long dx, long dy) {
        return switch (defect) {
            case Defect.Box box -> new Defect.Box(by(box.area(), dx, dy));
            case Defect.Knot knot -> new Defect.Knot(by(knot.box(), dx, dy));
            case Defect.Split split -> new Defect.Split(
                    split.x1() + dx, split.y1() + dy, split.x2() + dx, split.y2() + dy, split.width());
            case Defect.Strip(Defect.Side side, long depth) -> new Defect.Box(by(switch (side) {
                case LEFT_END -> new Rect(0, 0, depth, stock.width());
                case RIGHT_END -> new Rect(stock.length() - depth, 0, depth, stock.width());
                case LOWER_EDGE -> new Rect(0, 0, stock.length(), depth);
                case UPPER_EDGE -> new Rect(0, stock.width() - depth, stock.length(), depth);
            }, dx, dy));
        };
    }

    static CutTree by(CutTree from, long dx, long dy) {
        return Rebuilt.of(from, leaf -> leaf(leaf, dx, dy), (cut, first, second) -> new Cut(
                by(cut.area(), dx, dy),
                cut.direction(),
                cut.position() + (cut.direction() == CutTree.Direction.ACROSS ? dx : dy),
                first,
                second));
    }

    private static CutTree leaf(CutTree leaf, long dx, long dy) {
        return switch (leaf) {
            case PieceLeaf part -> new PieceLeaf(by(part.area(), dx, dy), part.pieceId(), part.copy(), part.turned());
            case OffcutLeaf offcut -> new OffcutLeaf(by(offcut.area(), dx, dy));
            case WasteLeaf waste -> new WasteLeaf(by(waste.area(), dx, dy));
            case Cut _ -> throw new IllegalStateException("a cut is no leaf");
        };
    }
}

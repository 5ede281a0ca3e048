package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.quantity.Length;

/**
 * Where a place on a board lies in its drawing. The near edge is drawn below, as the board lies before its maker.
 *
 * @param scale units of the drawing to a millimetre, the same both ways
 * @param left where the board's left end is drawn
 * @param bottom where its near edge is drawn
 */
record DrawnBoard(double scale, double left, double bottom) {
    /** As wide and as high as a board is drawn at the most, so that letters have one size on all boards. */
    static final double WIDE = 900;

    private static final double HIGH = 215;

    /** A drawing of {@code board} that begins at {@code left}, {@code top}. */
    static DrawnBoard of(BoardCut board, double left, double top) {
        double length = board.board().length().value().toDoubleMm();
        double across = board.board().width().value().toDoubleMm();
        double scale = Math.min(WIDE / length, HIGH / across);
        return new DrawnBoard(scale, left, top + across * scale);
    }

    double x(Length x) {
        return left + x.toDoubleMm() * scale;
    }

    double y(Length y) {
        return bottom - y.toDoubleMm() * scale;
    }

    double size(Length length) {
        return length.toDoubleMm() * scale;
    }

    /** The upper edge of {@code area} in the drawing. */
    double top(Rectangle area) {
        return y(area.y().plus(area.width()));
    }

    double middleX(Rectangle area) {
        return x(area.x()) + size(area.length()) / 2;
    }

    double middleY(Rectangle area) {
        return y(area.y()) - size(area.width()) / 2;
    }
}

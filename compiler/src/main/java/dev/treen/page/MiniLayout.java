package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.drawing.Svg;
import dev.treen.order.Operation;
import dev.treen.order.Phase;
import dev.treen.quantity.Length;
import java.util.Optional;

/** A board as it is marked out and sawn, small: parts shaded with their marks, the cuts of the step in heavy lines. */
final class MiniLayout {
    private static final double WIDE = 92;
    private static final double LEAST = 16;

    private MiniLayout() {
    }

    /** The board that {@code operation} marks out or saws; nothing where none can be told. */
    static Optional<String> of(Page page, Operation operation, String title) {
        return Steps.board(page, operation).map(board -> drawn(page, operation, board, title));
    }

    private static String drawn(Page page, Operation operation, BoardCut board, String title) {
        double length = board.board().length().value().toDoubleMm();
        double across = board.board().width().value().toDoubleMm();
        double x = (WIDE - 1) / length;
        double y = Math.max(x, Math.min(2.5 * x, LEAST / across));
        Svg svg = new Svg();
        double high = across * y;
        svg.rect(0.5, 0.5, WIDE - 1, high, "fill", "#ffffff", "stroke", "#000000", "stroke-width", "0.4");
        for (BoardCut.OnBoard part : board.parts()) {
            boolean now = part.blank().parts().stream().anyMatch(operation.parts()::contains);
            Rectangle area = part.area();
            double w = mm(area.length()) * x;
            double h = mm(area.width()) * y;
            double left = 0.5 + mm(area.x()) * x;
            double top = 0.5 + high - (mm(area.y()) + mm(area.width())) * y;
            svg.rect(left, top, w, h, "fill", now ? "#d9d2c3" : "#ffffff", "stroke", "#000000", "stroke-width",
                    now ? "0.4" : "0.2");
            String mark = page.mark(part.blank());
            double letters = Math.min(4, Math.min(h * 0.8, w / Math.max(1, mark.length())));
            if (letters >= 1.5) {
                svg.text(left + w / 2, top + h / 2 + letters * 0.35, "middle", mark, "font-size", Svg.number(letters),
                        "font-weight", now ? "bold" : "normal");
            }
        }
        for (BoardCut.SawCut cut : board.cuts()) {
            boolean apart = cut.strip() != BoardCut.SawCut.NO_STRIP;
            if (operation.phase() != Phase.MARK && apart == (operation.phase() == Phase.APART)) {
                cut(svg, cut, x, y, high);
            }
        }
        String words = board.name() + ": " + String.join(", ",
                board.parts().stream().map(p -> page.mark(p.blank()) + " " + p.name()).toList());
        return svg.printed(WIDE, high + 1, title, words);
    }

    private static void cut(Svg svg, BoardCut.SawCut cut, double x, double y, double high) {
        Rectangle piece = cut.piece();
        double half = mm(cut.kerf()) / 2;
        if (cut.along()) {
            double at = 0.5 + high - (mm(cut.at()) + half) * y;
            svg.line(0.5 + mm(piece.x()) * x, at, 0.5 + (mm(piece.x()) + mm(piece.length())) * x, at, "stroke-width",
                    "0.9");
        } else {
            double at = 0.5 + (mm(cut.at()) + half) * x;
            svg.line(at, 0.5 + high - mm(piece.y()) * y, at, 0.5 + high - (mm(piece.y()) + mm(piece.width())) * y,
                    "stroke-width", "0.9");
        }
    }

    private static double mm(Length length) {
        return length.toDoubleMm();
    }
}

package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.drawing.Svg;
import dev.treen.model.Board;
import dev.treen.order.Operation;
import dev.treen.order.Phase;
import dev.treen.plan.Plan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Boards before they are cut up: each by its face, and, where it is resawn, by its end with the cuts. */
final class BoardPicture {
    private static final double WIDE = 92;
    private static final double LETTERS = 3.4;
    private static final double NAME = 6;
    private static final double GAP = 5;
    private static final int MOST = 4;

    private BoardPicture() {
    }

    /** The boards that {@code operation} works on; nothing where there are none. */
    static Optional<String> of(Plan plan, Operation operation, String title) {
        Map<String, Board> boards = new LinkedHashMap<>();
        Map<String, Integer> leaves = new LinkedHashMap<>();
        for (BoardCut cut : plan.cutting().boards()) {
            boolean whole = operation.phase() == Phase.REST || operation.phase() == Phase.RIP;
            Board board = whole ? cut.source() : cut.board();
            if (operation.parts().contains(board.name()) || operation.parts().contains(cut.name())) {
                boards.put(board.name(), board);
                leaves.put(board.name(), cut.leaves());
            }
        }
        if (boards.isEmpty()) {
            return Optional.empty();
        }
        List<String> shown = boards.keySet().stream().limit(MOST).toList();
        double longest = boards.values().stream().mapToDouble(b -> b.length().value().toDoubleMm()).max().orElse(1);
        Svg svg = new Svg();
        double y = 0;
        for (String name : shown) {
            Board board = boards.get(name);
            if (board != null) {
                int cuts = operation.phase() == Phase.RESAW ? leaves.getOrDefault(name, 1) : 1;
                y = board(svg, board, y, (WIDE - 1) / longest, cuts) + GAP;
            }
        }
        if (boards.size() > shown.size()) {
            svg.text(0, y + LETTERS, "start", "and " + (boards.size() - shown.size()) + " more", "font-size",
                    Svg.number(LETTERS));
            y += NAME;
        }
        return Optional.of(svg.printed(WIDE, y, title, String.join(", ", boards.keySet())));
    }

    private static double board(Svg svg, Board board, double top, double scale, int leaves) {
        double length = board.length().value().toDoubleMm() * scale;
        double width = Math.max(3, board.width().value().toDoubleMm() * scale);
        String name = board.name().codePointCount(0, board.name().length()) > 40
                ? board.name().substring(0, board.name().offsetByCodePoints(0, 39)) + "…"
                : board.name();
        svg.text(0.5, top + LETTERS, "start", name, "font-size", Svg.number(LETTERS), "font-weight", "bold");
        double y = top + NAME;
        svg.rect(0.5, y, length, width, "fill", "#ece6da", "stroke", "#000000", "stroke-width", "0.5");
        double middle = y + width / 2;
        svg.line(length * 0.3, middle, length * 0.7, middle, "stroke-width", "0.25");
        svg.path("M" + Svg.number(length * 0.7) + " " + Svg.number(middle) + "l-2 -0.8v1.6z", "fill", "#000000");
        svg.path("M" + Svg.number(length * 0.3) + " " + Svg.number(middle) + "l2 -0.8v1.6z", "fill", "#000000");
        y += width;
        if (leaves > 1) {
            double thick = Math.max(2.2 * leaves, board.thickness().value().toDoubleMm() * scale);
            y += 3;
            svg.rect(0.5, y, length, thick, "fill", "#ffffff", "stroke", "#000000", "stroke-width", "0.5");
            for (int i = 1; i < leaves; i++) {
                double cut = y + thick * i / leaves;
                svg.line(0.5, cut, length + 0.5, cut, "stroke-width", "0.5", "stroke-dasharray", "2.5 0.8");
            }
            y += thick;
        }
        return y + 1;
    }
}

package dev.treen.yield;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks a layout against its problem from the layout's own numbers. It shares nothing with the solver but the records of
 * the API, and it runs on every layout before that is given out.
 */
public final class LayoutChecker {

    /** What a layout must keep to. */
    public enum Rule {
        /** A board that does not exist, or is taken twice. */
        BOARD,
        /** A cut that is not from edge to edge of a piece in hand, or halves that do not match it. */
        CUT,
        /** A part of the wrong size, or turned against its grain. */
        SIZE,
        /** A part outside the board or in the waste of ends and edges. */
        INSIDE,
        /** A part or offcut on a defect, or a part on a blemish that it does not take or not there. */
        DEFECT,
        /** Two parts with less than a kerf between. */
        KERF,
        /** A run out of order, broken, or with more than a kerf between. */
        RUN,
        /** A copy cut twice, or parts neither cut nor listed as left out. */
        COUNT,
        /** A part from a board it does not accept. */
        STOCK,
        /** An offcut that is too small, or no piece of its own. */
        OFFCUT,
        /** A score that is not the sum of what was taken, or a bound on the wrong side of it. */
        SCORE
    }

    /**
     * One rule not kept.
     *
     * @param rule which
     * @param where board and part
     */
    public record Breach(Rule rule, String where) {}

    private record Spot(String stockId, int index, BoardLayout.Placement placement) {}

    private final YieldProblem problem;
    private final Layout layout;
    private final List<Breach> breaches = new ArrayList<>();
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, Map<Integer, Spot>> spots = new HashMap<>();

    private LayoutChecker(YieldProblem problem, Layout layout) {
        this.problem = problem;
        this.layout = layout;
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
    }

    /** Everything that is wrong with a layout; empty if it is right. */
    public static List<Breach> check(YieldProblem problem, Layout layout) {
        var checker = new LayoutChecker(problem, layout);
        checker.boards();
        checker.counts();
        checker.runs();
        checker.score();
        return List.copyOf(checker.breaches);
    }

    private void breach(Rule rule, String where) {
        breaches.add(new Breach(rule, where));
    }

    private void boards() {
        var stocks = new HashMap<String, Stock>();
        problem.stocks().forEach(stock -> stocks.put(stock.id(), stock));
        Set<String> seen = new HashSet<>();
        for (BoardLayout board : layout.boards()) {
            String name = board.stockId() + "#" + board.index();
            Stock stock = stocks.get(board.stockId());
            if (stock == null || board.index() < 0 || board.index() >= stock.count() || !seen.add(name)) {
                breach(Rule.BOARD, name);
                continue;
            }
            board(stock, board, name);
        }
    }

    private void board(Stock stock, BoardLayout board, String name) {
        Settings s = problem.settings();
        var inHand = SawnPieces.after(new Rect(0, 0, stock.length(), stock.width()), board.steps(), s.kerf());
        if (inHand.isEmpty() || !SawnPieces.matches(board.tree(), s.kerf())) {
            breach(Rule.CUT, name);
            return;
        }
        Set<Rect> loose = inHand.get();
        var usable = new long[]{
                s.endWaste(), s.edgeWaste(), stock.length() - s.endWaste(), stock.width() - s.edgeWaste()
        };
        List<BoardLayout.Placement> parts = board.placements();
        for (BoardLayout.Placement part : parts) {
            place(stock, board, part, name + " " + part.pieceId(), usable);
            if (!loose.remove(part.area())) {
                breach(Rule.CUT, name + " " + part.pieceId());
            }
        }
        for (Rect offcut : board.offcuts()) {
            if (offcut.length() < s.minOffcutLength()
                    || offcut.width() < s.minOffcutWidth()
                    || !loose.remove(offcut)) {
                breach(Rule.OFFCUT, name);
            }
            clear(stock, offcut, name + " offcut");
            if (!Lying.under(stock, offcut).isEmpty()) {
                breach(Rule.DEFECT, name + " offcut");
            }
        }
        kerfs(parts, s.kerf(), name);
    }

    private void place(Stock stock, BoardLayout board, BoardLayout.Placement part, String name, long[] usable) {
        Rect area = part.area();
        Piece piece = pieces.get(part.pieceId());
        if (piece == null) {
            breach(Rule.COUNT, name);
            return;
        }
        long along = part.turned() ? area.width() : area.length();
        long across = part.turned() ? area.length() : area.width();
        if (along != piece.length() || across != piece.width() || (part.turned() && !piece.mayTurn())) {
            breach(Rule.SIZE, name);
        }
        if (area.x() < usable[0] || area.y() < usable[1] || area.right() > usable[2] || area.top() > usable[3]) {
            breach(Rule.INSIDE, name);
        }
        boolean klass = piece.klasses().isEmpty() || piece.klasses().contains(stock.klass());
        boolean wished = piece.onlyFrom().isEmpty() || piece.onlyFrom().get().contains(stock.id());
        if (!klass || !wished) {
            breach(Rule.STOCK, name);
        }
        clear(stock, area, name);
        // Turned across the grain a part takes none.
        boolean blemished = !Lying.under(stock, area).isEmpty();
        if (blemished && (part.turned() || Lying.ways(stock, piece, area).isEmpty())) {
            breach(Rule.DEFECT, name);
        }
        var before = spots.computeIfAbsent(piece.id(), id -> new HashMap<>())
                .put(part.copy(), new Spot(board.stockId(), board.index(), part));
        if (before != null || part.copy() < 0 || part.copy() >= piece.copies()) {
            breach(Rule.COUNT, name);
        }
    }

    private void clear(Stock stock, Rect area, String name) {
        for (Defect defect : stock.defects()) {
            if (Touching.inside(defect, stock, area)) {
                breach(Rule.DEFECT, name);
            }
        }
    }

    private void kerfs(List<BoardLayout.Placement> parts, long kerf, String name) {
        var sorted = new ArrayList<>(parts);
        sorted.sort((a, b) -> Long.compare(a.area().x(), b.area().x()));
        for (int i = 0; i < sorted.size(); i++) {
            Rect a = sorted.get(i).area();
            for (int j = i + 1; j < sorted.size() && sorted.get(j).area().x() < a.right() + kerf; j++) {
                Rect b = sorted.get(j).area();
                if (b.y() < a.top() + kerf && a.y() < b.top() + kerf) {
                    breach(Rule.KERF, name + " " + sorted.get(i).pieceId() + " " + sorted.get(j).pieceId());
                }
            }
        }
    }

    private void counts() {
        var out = new HashMap<String, Integer>();
        layout.unplaced().forEach(left -> out.merge(left.pieceId(), left.copies(), Integer::sum));
        for (Piece piece : problem.pieces()) {
            int cut = spots.getOrDefault(piece.id(), Map.of()).size();
            int left = out.getOrDefault(piece.id(), 0);
            if (piece.copies() != Piece.UNLIMITED && cut + left != piece.copies()) {
                breach(Rule.COUNT, piece.id());
            }
        }
    }

    // The copies of a piece are numbered in the order in which runs and then single parts take them.
    private void runs() {
        var next = new HashMap<String, Integer>();
        for (Run run : problem.runs()) {
            var strip = new ArrayList<Spot>();
            int missing = 0;
            for (String id : run.pieceIds()) {
                int copy = next.merge(id, 1, Integer::sum) - 1;
                Spot spot = spots.getOrDefault(id, Map.of()).get(copy);
                if (spot == null) {
                    missing++;
                } else {
                    strip.add(spot);
                }
            }
            boolean whole = missing == 0 || strip.isEmpty();
            for (int i = 1; whole && i < strip.size(); i++) {
                whole = follows(strip.get(i - 1), strip.get(i));
            }
            if (!whole) {
                breach(Rule.RUN, String.join(" ", run.pieceIds()));
            }
        }
    }

    private boolean follows(Spot a, Spot b) {
        Rect left = a.placement().area();
        Rect right = b.placement().area();
        return a.stockId().equals(b.stockId())
                && a.index() == b.index()
                && left.y() == right.y()
                && right.x() == left.right() + problem.settings().kerf()
                && !a.placement().turned()
                && !b.placement().turned();
    }

    private void score() {
        long sum = switch (problem.settings().objective()) {
            case ALL_PARTS_LEAST_COST -> layout.boards().stream().mapToLong(this::weight).sum();
            case MOST_VALUE -> spots.entrySet().stream()
                    .mapToLong(e -> value(e.getKey()) * e.getValue().size())
                    .sum();
            case SHORTEST_BOARD -> layout.boards().stream()
                    .flatMap(board -> board.placements().stream())
                    .mapToLong(part -> part.area().right() + problem.settings().endWaste())
                    .max()
                    .orElse(0);
        };
        boolean most = problem.settings().objective() == Objective.MOST_VALUE;
        long bound = layout.bound().value();
        boolean side = most ? bound >= sum : bound <= sum || !layout.complete();
        if (sum != layout.score() || !side) {
            breach(Rule.SCORE, sum + " " + layout.score() + " " + bound);
        }
    }

    private long value(String pieceId) {
        Piece piece = pieces.get(pieceId);
        return piece == null ? 0 : piece.value();
    }

    private long weight(BoardLayout board) {
        for (Stock stock : problem.stocks()) {
            if (stock.id().equals(board.stockId())) {
                return stock.weight();
            }
        }
        return 0;
    }
}

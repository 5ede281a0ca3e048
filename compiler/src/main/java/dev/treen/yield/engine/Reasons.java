package dev.treen.yield.engine;

import dev.treen.yield.Bound;
import dev.treen.yield.Defect;
import dev.treen.yield.Piece;
import dev.treen.yield.Stock;
import dev.treen.yield.Unplaced;
import dev.treen.yield.Unplaced.Reason;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/** Says why a part has no place, and what would have to change. */
final class Reasons {
    private Reasons() {
    }

    /** Takes out every type that no board can hold even alone, and says why. */
    static List<Unplaced> neverPlaced(Folded f) {
        var found = new ArrayList<Unplaced>();
        for (int t = 0; t < f.types; t++) {
            if (f.copies[t] == 0 || fitsSomewhere(f, t)) {
                continue;
            }
            Reason reason = why(f, t);
            if (f.endless[t] >= 0) {
                f.copies[t] = 0;
                found.add(new Unplaced(f.problem.pieces().get(f.endless[t]).id(), 1, reason));
                continue;
            }
            var perPiece = new LinkedHashMap<Integer, Integer>();
            f.refs.get(t).forEach(parts -> parts.forEach(ref -> perPiece.merge(ref.piece(), 1, Integer::sum)));
            perPiece.forEach((p, n) -> found.add(new Unplaced(f.problem.pieces().get(p).id(), n, reason)));
            f.copies[t] = 0;
        }
        return found;
    }

    private static boolean fitsSomewhere(Folded f, int t) {
        for (int b = 0; b < f.stocks; b++) {
            if (f.ok[t][b] && f.count[b] > 0) {
                if (fits(f, b, t)) {
                    return true;
                }
                f.ok[t][b] = false;
            }
        }
        return false;
    }

    /** Whether an item of a type has a place on an empty board. */
    static boolean fits(Folded f, int b, int t) {
        return fitsAlone(f, b, f.length[t], f.width[t])
                || fitsWithBlemish(f, b, t)
                || (f.turns[t] && fitsAlone(f, b, f.width[t], f.length[t]));
    }

    static boolean fitsAlone(Folded f, int b, long l, long w) {
        return l <= f.boardLength[b]
                && w <= f.boardWidth[b]
                && Leftovers.largest(f, b, 0, 0, f.boardLength[b], f.boardWidth[b], l, w) != null;
    }

    // Somewhere an item lies as far to the left and as low as it can, and there it touches something on both sides.
    private static boolean fitsWithBlemish(Folded f, int b, int t) {
        if (!f.blemishes.taken(t) || f.length[t] > f.boardLength[b] || f.width[t] > f.boardWidth[b]) {
            return false;
        }
        for (long x : corners(f.flaws[b], 2, f.blemishes.placesX(t, b))) {
            for (long y : corners(f.flaws[b], 3, f.blemishes.placesY(t, b))) {
                if (x >= 0 && y >= 0 && x + f.length[t] <= f.boardLength[b] && y + f.width[t] <= f.boardWidth[b]
                        && !f.blocked(t, b, x, y, f.length[t], f.width[t])) {
                    return true;
                }
            }
        }
        return false;
    }

    private static long[] corners(long[] flaws, int side, long[] places) {
        var all = Arrays.copyOf(places, places.length + flaws.length / 4 + 1);
        for (int i = 0; i < flaws.length / 4; i++) {
            all[places.length + 1 + i] = flaws[4 * i + side];
        }
        return all;
    }

    private static Reason why(Folded f, int t) {
        String nearest = "";
        long least = Long.MAX_VALUE;
        long tooLong = 0;
        long tooWide = 0;
        boolean accepted = false;
        for (int b = 0; b < f.stocks; b++) {
            if (!accepts(f, t, b)) {
                continue;
            }
            accepted = true;
            long overL = Math.max(0, f.length[t] - f.boardLength[b]);
            long overW = Math.max(0, f.width[t] - f.boardWidth[b]);
            if (overL == 0 && overW == 0) {
                return defect(f, t, b);
            }
            if (overL + overW < least) {
                least = overL + overW;
                nearest = f.problem.stocks().get(b).id();
                tooLong = overL;
                tooWide = overW;
            }
        }
        return accepted ? new Reason.TooLarge(nearest, tooLong, tooWide, other(f, t)) : new Reason.NoStockAccepted();
    }

    private static boolean accepts(Folded f, int t, int b) {
        Stock stock = f.problem.stocks().get(b);
        if (stock.count() == 0) {
            return false;
        }
        if (f.endless[t] >= 0) {
            return f.problem.pieces().get(f.endless[t]).accepts(stock);
        }
        return f.refs.get(t).getFirst().stream()
                .allMatch(ref -> f.problem.pieces().get(ref.piece()).accepts(stock));
    }

    private static Optional<String> other(Folded f, int t) {
        for (int b = 0; b < f.stocks; b++) {
            if (f.count[b] > 0
                    && f.length[t] <= f.boardLength[b]
                    && f.width[t] <= f.boardWidth[b]
                    && fitsAlone(f, b, f.length[t], f.width[t])) {
                return Optional.of(f.problem.stocks().get(b).id());
            }
        }
        return Optional.empty();
    }

    private static Reason defect(Folded f, int t, int b) {
        long l = f.length[t];
        long w = f.width[t];
        Stock stock = f.problem.stocks().get(b);
        return new Reason.DefectInTheWay(
                stock.id(),
                greatest(stock),
                l - longest(f, b, w, false),
                w - longest(f, b, l, true));
    }

    // The longest (or widest) part of a given width (or length) that lies clear on a board, kerf folded in.
    private static long longest(Folded f, int b, long fixed, boolean widest) {
        long low = 0;
        long high = widest ? f.boardWidth[b] : f.boardLength[b];
        while (low < high) {
            long mid = (low + high + 1) >>> 1;
            boolean fits = widest ? fitsAlone(f, b, fixed, mid) : fitsAlone(f, b, mid, fixed);
            if (fits) {
                low = mid;
            } else {
                high = mid - 1;
            }
        }
        return low;
    }

    private static Defect greatest(Stock stock) {
        var all = new ArrayList<>(stock.defects());
        stock.blemishes().forEach(each -> all.add(each.shape()));
        Defect greatest = all.getFirst();
        double most = -1;
        for (Defect defect : all) {
            double area = Covers.of(defect, stock).stream()
                    .mapToDouble(r -> (double) r.length() * r.width())
                    .sum();
            if (area > most) {
                most = area;
                greatest = defect;
            }
        }
        return greatest;
    }

    /** What the search left out. */
    static List<Unplaced> left(Folded f, State best, boolean most, Bound bound) {
        long room = 0;
        for (int b = 0; b < f.stocks; b++) {
            room += f.count[b] == Stock.UNLIMITED ? 0 : f.count[b] * f.weight[b];
        }
        boolean certain = !most && bound.value() > room;
        var perPiece = new LinkedHashMap<Integer, Integer>();
        var typeOf = new LinkedHashMap<Integer, Integer>();
        for (int t = 0; t < f.types; t++) {
            if (f.endless[t] < 0) {
                List<List<Folded.Ref>> refs = f.refs.get(t);
                for (int i = f.copies[t] - best.left[t]; i < f.copies[t]; i++) {
                    for (Folded.Ref ref : refs.get(i)) {
                        perPiece.merge(ref.piece(), 1, Integer::sum);
                        typeOf.putIfAbsent(ref.piece(), t);
                    }
                }
            }
        }
        var found = new ArrayList<Unplaced>();
        perPiece.forEach((p, n) -> {
            Piece piece = f.problem.pieces().get(p);
            Reason reason = most
                    ? new Reason.NotWorthIt()
                    : new Reason.NoRoom(smallest(f, typeOf.getOrDefault(p, 0)), certain);
            found.add(new Unplaced(piece.id(), n, reason));
        });
        return found;
    }

    private static String smallest(Folded f, int t) {
        int pick = -1;
        for (int b = 0; b < f.stocks; b++) {
            if (f.ok[t][b] && f.count[b] > 0 && (pick < 0 || f.weight[b] < f.weight[pick])) {
                pick = b;
            }
        }
        return f.problem.stocks().get(pick).id();
    }
}

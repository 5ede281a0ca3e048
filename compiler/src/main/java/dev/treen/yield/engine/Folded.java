package dev.treen.yield.engine;

import dev.treen.yield.Blemish;
import dev.treen.yield.Defect;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Run;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The problem with the kerf folded in: every part is one kerf longer and wider, and so is the clear part of every board;
 * then saw cuts have no width. A defect loses one kerf on its left and lower side, for there the kerf of the part before it
 * may run inside it. A run is one item as long as its parts together. Items alike in size, value and accepted boards are
 * one type with several copies.
 */
final class Folded {
    /** One part: index of the piece and the copy. */
    record Ref(int piece, int copy) {}

    final YieldProblem problem;
    final long kerf;
    final int types;
    /** The last type stands for a leftover of some wished size; it has no copies but while one is looked for. */
    final int spare;
    final long[] length;
    final long[] width;
    final long[] area;
    final long[] value;
    final int[] copies;
    final boolean[] turns;
    /** The parts behind each copy of a type; a run has several parts a copy. Empty where copies have no limit. */
    final List<List<List<Ref>>> refs = new ArrayList<>();
    /** The piece of a type without limit on copies. */
    final int[] endless;

    final int stocks;
    final long[] boardLength;
    final long[] boardWidth;
    final long[] weight;
    final int[] count;
    /**
     * Covers of defects and blemishes, four numbers each: x1, y1, x2, y2, the lowest first; a part overlaps where x < x2 and
     * x + length > x1.
     */
    final long[][] flaws;
    /** Covers of the defects alone. */
    private final long[][] defects;
    final Blemishes blemishes;
    /** Whether a type may come from a stock: class, wish and size. */
    final boolean[][] ok;

    private record Kind(
            long l, long w, boolean turn, long value, List<Boolean> ok, int run, int endless, List<Piece.Way> ways) {}

    Folded(YieldProblem problem) {
        this.problem = problem;
        var settings = problem.settings();
        kerf = settings.kerf();
        stocks = problem.stocks().size();
        boardLength = new long[stocks];
        boardWidth = new long[stocks];
        weight = new long[stocks];
        count = new int[stocks];
        flaws = new long[stocks][];
        defects = new long[stocks][];
        for (int b = 0; b < stocks; b++) {
            Stock stock = problem.stocks().get(b);
            boardLength[b] = stock.length() - 2 * settings.endWaste() + kerf;
            boardWidth[b] = stock.width() - 2 * settings.edgeWaste() + kerf;
            weight[b] = stock.weight();
            count[b] = stock.count();
            defects[b] = covers(stock, stock.defects());
            flaws[b] = stock.blemishes().isEmpty() ? defects[b]
                    : covers(stock, Stream.concat(
                            stock.defects().stream(), stock.blemishes().stream().map(Blemish::shape)).toList());
        }
        var kinds = new LinkedHashMap<Kind, List<List<Ref>>>();
        var taken = new int[problem.pieces().size()];
        addRuns(kinds, taken);
        addPieces(kinds, taken);
        types = kinds.size() + 1;
        spare = types - 1;
        length = new long[types];
        width = new long[types];
        area = new long[types];
        value = new long[types];
        copies = new int[types];
        turns = new boolean[types];
        endless = new int[types];
        ok = new boolean[types][stocks];
        int t = 0;
        for (var entry : kinds.entrySet()) {
            Kind kind = entry.getKey();
            length[t] = kind.l;
            width[t] = kind.w;
            area[t] = kind.l * kind.w;
            value[t] = kind.value;
            turns[t] = kind.turn;
            endless[t] = kind.endless;
            copies[t] = kind.endless >= 0 ? Piece.UNLIMITED : entry.getValue().size();
            for (int b = 0; b < stocks; b++) {
                ok[t][b] = kind.ok.get(b);
            }
            refs.add(entry.getValue());
            t++;
        }
        endless[spare] = -1;
        refs.add(List.of());
        blemishes = new Blemishes(problem, refs);
    }

    private void addRuns(Map<Kind, List<List<Ref>>> kinds, int[] taken) {
        var index = new HashMap<String, Integer>();
        for (int p = 0; p < problem.pieces().size(); p++) {
            index.put(problem.pieces().get(p).id(), p);
        }
        int number = 0;
        for (Run run : problem.runs()) {
            long l = 0;
            long w = 0;
            long value = 0;
            var parts = new ArrayList<Ref>();
            for (String id : run.pieceIds()) {
                int p = index.getOrDefault(id, -1);
                Piece piece = problem.pieces().get(p);
                l += piece.length() + kerf;
                w = Math.max(w, piece.width() + kerf);
                value += piece.value();
                parts.add(new Ref(p, taken[p]++));
            }
            var fits = new ArrayList<Boolean>();
            for (int b = 0; b < stocks; b++) {
                boolean all = l <= boardLength[b] && w <= boardWidth[b];
                for (Ref ref : parts) {
                    all &= problem.pieces().get(ref.piece).accepts(problem.stocks().get(b));
                }
                fits.add(all);
            }
            kinds.put(new Kind(l, w, false, value, fits, number++, -1, List.of()), List.of(List.copyOf(parts)));
        }
    }

    private void addPieces(Map<Kind, List<List<Ref>>> kinds, int[] taken) {
        for (int p = 0; p < problem.pieces().size(); p++) {
            Piece piece = problem.pieces().get(p);
            long l = piece.length() + kerf;
            long w = piece.width() + kerf;
            boolean turn = piece.mayTurn() && l != w;
            var fits = new ArrayList<Boolean>();
            for (int b = 0; b < stocks; b++) {
                boolean size = (l <= boardLength[b] && w <= boardWidth[b])
                        || (turn && w <= boardLength[b] && l <= boardWidth[b]);
                fits.add(size && piece.accepts(problem.stocks().get(b)));
            }
            boolean unlimited = piece.copies() == Piece.UNLIMITED;
            var kind = new Kind(l, w, turn, piece.value(), fits, -1, unlimited ? p : -1, piece.ways());
            var list = kinds.computeIfAbsent(kind, k -> new ArrayList<>());
            for (int c = taken[p]; !unlimited && c < piece.copies(); c++) {
                list.add(List.of(new Ref(p, c)));
            }
        }
    }

    private long[] covers(Stock stock, List<Defect> shapes) {
        long endWaste = problem.settings().endWaste();
        long edgeWaste = problem.settings().edgeWaste();
        var boxes = new ArrayList<Rect>();
        for (Defect defect : shapes) {
            boxes.addAll(Covers.of(defect, stock));
        }
        var kept = new ArrayList<long[]>();
        for (Rect box : boxes) {
            long x1 = box.x() - endWaste + kerf;
            long y1 = box.y() - edgeWaste + kerf;
            long x2 = box.right() - endWaste;
            long y2 = box.top() - edgeWaste;
            boolean reaches = x2 > 0 && y2 > 0 && x1 < stock.length() - 2 * endWaste + kerf
                    && y1 < stock.width() - 2 * edgeWaste + kerf;
            if (reaches && box.length() > 0 && box.width() > 0) {
                kept.add(new long[]{x1, y1, x2, y2});
            }
        }
        kept.sort(Comparator.<long[]>comparingLong(box -> box[1]).thenComparingLong(box -> box[0]));
        var flat = new long[kept.size() * 4];
        for (int i = 0; i < kept.size(); i++) {
            System.arraycopy(kept.get(i), 0, flat, 4 * i, 4);
        }
        return flat;
    }

    /** Whether a rectangle overlaps a defect or blemish of a stock. */
    boolean blocked(int stock, long x, long y, long l, long w) {
        return overlaps(flaws[stock], x, y, l, w);
    }

    /** Whether an item of a type may not lie at a place of a stock; one that is turned takes no blemish. */
    boolean blocked(int type, int stock, long x, long y, long l, long w) {
        if (!blemishes.taken(type) || l != length[type]) {
            return blocked(stock, x, y, l, w);
        }
        return overlaps(defects[stock], x, y, l, w) || blemishes.blocked(type, stock, x, y);
    }

    private static boolean overlaps(long[] f, long x, long y, long l, long w) {
        for (int i = 0; i < f.length; i += 4) {
            if (x < f[i + 2] && x + l > f[i] && y < f[i + 3] && y + w > f[i + 1]) {
                return true;
            }
        }
        return false;
    }

    /** How many single items are wanted; items without limit count as one. */
    int items() {
        long sum = 0;
        for (int t = 0; t < types; t++) {
            sum += endless[t] >= 0 ? 1 : copies[t];
        }
        return (int) Math.min(sum, Integer.MAX_VALUE);
    }
}

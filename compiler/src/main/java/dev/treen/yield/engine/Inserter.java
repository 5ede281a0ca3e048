package dev.treen.yield.engine;

/**
 * Puts items into free places, one by one, each where a mixed measure of what is left over likes it best. The measures:
 * the loss of squared free area (keeps one large leftover), the area of the place (best fit), the narrower of the two
 * strips that remain. Some places are passed over at random ("blinks", Christiaens and Vanden Berghe 2020).
 */
final class Inserter {
    /** The order of items that is no order. */
    static final int AT_RANDOM = 6;

    private static final long[] NONE = {};

    /** How often a place beside a defect is passed over while a layout is changed. */
    private static final double PASSING = 0.25;

    private static final byte NOT_ASKED = 0;
    private static final byte FITS = 1;
    private static final byte FITS_NOT = 2;

    /** So many looks at a defect take about as long as a step without defects. */
    private static final long WORK_A_STEP = 100_000;

    private final Folded f;
    private final Dice dice;
    private final boolean value;

    double bySquares = 1;
    double byArea;
    double bySide;
    double blink;
    /** How often the first cut goes the other way than the squares say. */
    double flip;
    int openBy;
    /** Only this many of the boards opened last are looked at, so that ten thousand parts stay quick. */
    int reach = Integer.MAX_VALUE;

    private double bestScore;
    private int bestSlot;
    private int bestLeaf;
    private long bestX;
    private long bestY;
    private long bestL;
    private long bestW;
    private boolean bestAcross;
    private final int[] order;
    private final double[] key;
    private final FlawsOfPlace inPlace = new FlawsOfPlace();
    private final FlawsOfPlace inWay = new FlawsOfPlace();
    /** By type and stock, whether an empty board has a clear place. */
    private final byte[][] fits;

    private long work;

    Inserter(Folded f, Dice dice, boolean value) {
        this.f = f;
        this.dice = dice;
        this.value = value;
        order = new int[f.types];
        key = new double[f.types];
        fits = new byte[f.types][f.stocks];
    }

    /** Inserts all that is left, in an order of the given kind, opening boards while their weight stays in the limit. */
    void insertAll(State state, int orderKind, double noise, long limit, long stamp) {
        int n = 0;
        for (int t = 0; t < f.types; t++) {
            if (state.left[t] > 0) {
                double k = rank(t, orderKind);
                k *= 1 + noise * (dice.unit() - 0.5);
                // A wished leftover is the largest of all, but often has its place only beside parts that lie already.
                k *= t == f.spare && noise > 0 ? dice.unit() : 1;
                int at = n++;
                while (at > 0 && key[at - 1] < k) {
                    key[at] = key[at - 1];
                    order[at] = order[at - 1];
                    at--;
                }
                key[at] = k;
                order[at] = t;
            }
        }
        for (int i = 0; i < n; i++) {
            int t = order[i];
            while (state.left[t] > 0 && insert(state, t, limit, stamp)) {
                if (state.left[t] == 0) {
                    break;
                }
            }
        }
    }

    private double rank(int t, int kind) {
        double perArea = value ? (double) f.value[t] / f.area[t] : 1;
        return switch (kind) {
            case 0 -> f.area[t] * perArea;
            case 1 -> f.length[t] * perArea;
            case 2 -> f.width[t] * perArea;
            case 3 -> Math.max(f.length[t], f.width[t]) * perArea;
            case 4 -> (f.length[t] + f.width[t]) * perArea;
            case 5 -> perArea * perArea * perArea;
            default -> dice.unit();
        };
    }

    /** Inserts one item; false if there is no place. */
    boolean insert(State state, int t, long limit, long stamp) {
        bestScore = Double.POSITIVE_INFINITY;
        int from = reach < state.open ? state.open - reach : 0;
        for (int i = from; i < state.open; i++) {
            BoardTree tree = state.slot[i];
            if (f.ok[t][tree.stock] && tree.freeArea() >= f.area[t]) {
                scan(tree, i, t);
            }
        }
        if (bestScore == Double.POSITIVE_INFINITY && !openFor(state, t, limit, stamp)) {
            return false;
        }
        state.place(bestSlot, bestLeaf, t, bestX, bestY, bestL, bestW, bestAcross, stamp);
        return true;
    }

    private boolean openFor(State state, int t, long limit, long stamp) {
        int pick = -1;
        double best = Double.POSITIVE_INFINITY;
        for (int b = 0; b < f.stocks; b++) {
            if (f.ok[t][b] && state.openOf[b] < f.count[b] && state.weight + f.weight[b] <= limit) {
                double whole = (double) f.boardLength[b] * f.boardWidth[b];
                double k = switch (openBy) {
                    case 0 -> f.weight[b] / whole;
                    case 1 -> f.weight[b];
                    case 2 -> -whole;
                    default -> dice.unit();
                };
                if (k < best && fitsEmpty(t, b)) {
                    best = k;
                    pick = b;
                }
            }
        }
        if (pick < 0) {
            return false;
        }
        int i = state.open(pick, stamp);
        double keep = blink;
        blink = 0;
        scan(state.slot[i], i, t);
        blink = keep;
        return true;
    }

    private boolean fitsEmpty(int t, int b) {
        if (f.flaws[b].length == 0) {
            return true;
        }
        // The size of a wished leftover changes; whatever else fits once fits always.
        if (t == f.spare || fits[t][b] == NOT_ASKED) {
            work += f.flaws[b].length;
            fits[t][b] = Reasons.fits(f, b, t) ? FITS : FITS_NOT;
        }
        return fits[t][b] == FITS;
    }

    private void scan(BoardTree tree, int slot, int t) {
        long l = f.length[t];
        long w = f.width[t];
        int nodes = tree.nodes();
        boolean turn = f.turns[t];
        for (int n = 0; n < nodes; n++) {
            if (!tree.free(n)) {
                continue;
            }
            long bigL = tree.length(n);
            long bigW = tree.width(n);
            boolean straight = l <= bigL && w <= bigW;
            boolean turned = turn && w <= bigL && l <= bigW;
            if ((!straight && !turned) || (blink > 0 && dice.unit() < blink)) {
                continue;
            }
            boolean blocked = !tree.clear && f.blocked(tree.stock, tree.x(n), tree.y(n), bigL, bigW);
            if (straight) {
                offer(tree, slot, n, t, l, w, blocked);
            }
            if (turned) {
                offer(tree, slot, n, t, w, l, blocked);
            }
        }
    }

    private void offer(BoardTree tree, int slot, int n, int t, long l, long w, boolean blocked) {
        double board = (double) f.boardLength[tree.stock] * f.boardWidth[tree.stock];
        double bigL = tree.length(n);
        double bigW = tree.width(n);
        double fit = byArea * (bigL * bigW - (double) l * w) / board
                + bySide * Math.min((bigL - l) / f.boardLength[tree.stock], (bigW - w) / f.boardWidth[tree.stock]);
        if (blocked) {
            offerAround(tree, slot, n, t, l, w, board, fit);
            return;
        }
        double whole = bigL * bigW;
        double a = bigL - l;
        double b = bigW - w;
        double across = sq(a * bigW) + sq(l * b);
        double along = sq(bigL * b) + sq(a * w);
        if (flip > 0 && dice.unit() < flip) {
            double swap = across;
            across = along;
            along = swap;
        }
        double gain = Math.max(across, along);
        double score = fit + bySquares * (sq(whole) - gain) / sq(board);
        if (score < bestScore) {
            keep(score, slot, n, tree.x(n), tree.y(n), l, w, across >= along);
        }
    }

    // Beside defects the corners to lie in are those of the place and of every defect in it, from all four sides, and where
    // a part takes blemishes, all places in which something of it just clears one.
    private void offerAround(BoardTree tree, int slot, int n, int t, long l, long w, double board, double fit) {
        long x0 = tree.x(n);
        long y0 = tree.y(n);
        long x3 = x0 + tree.length(n);
        long y3 = y0 + tree.width(n);
        boolean taken = f.blemishes.taken(t);
        long[] moreX = taken ? f.blemishes.placesX(t, tree.stock) : NONE;
        long[] moreY = taken ? f.blemishes.placesY(t, tree.stock) : NONE;
        inPlace.keep(f.flaws[tree.stock], x0, y0, x3 - x0, y3 - y0);
        int marks = inPlace.marks();
        double passing = blink > 0 ? PASSING : 0;
        double whole = inPlace.free(x0, y0, x3 - x0, y3 - y0);
        for (int i = 0; i < marks + moreX.length; i++) {
            long x = i < marks ? inPlace.mark(i, 0, x0, x3, l) : moreX[i - marks];
            if (x < x0 || x + l > x3) {
                continue;
            }
            // Only what lies in the part's way up or down can be a reason to lie higher or lower.
            inWay.keep(inPlace, x, y0, l, y3 - y0);
            int ends = taken ? inWay.marks() + moreY.length : inWay.gaps(y0, y3, w);
            work += inPlace.count() + inWay.count();
            for (int j = 0; j < ends; j++) {
                long y = !taken ? inWay.gapEnd(j)
                        : j < inWay.marks() ? inWay.mark(j, 1, y0, y3, w)
                                : moreY[j - inWay.marks()];
                if (y < y0 || y + w > y3 || (passing > 0 && dice.unit() < passing)
                        || (taken && f.blocked(t, tree.stock, x, y, l, w))) {
                    continue;
                }
                work += 8L * inPlace.count();
                double across = sq(inPlace.free(x0, y0, x - x0, y3 - y0))
                        + sq(inPlace.free(x + l, y0, x3 - x - l, y3 - y0))
                        + sq(inPlace.free(x, y0, l, y - y0))
                        + sq(inPlace.free(x, y + w, l, y3 - y - w));
                double along = sq(inPlace.free(x0, y0, x3 - x0, y - y0))
                        + sq(inPlace.free(x0, y + w, x3 - x0, y3 - y - w))
                        + sq(inPlace.free(x0, y, x - x0, w))
                        + sq(inPlace.free(x + l, y, x3 - x - l, w));
                if (flip > 0 && dice.unit() < flip) {
                    double swap = across;
                    across = along;
                    along = swap * dice.unit();
                }
                double score = fit + bySquares * (sq(whole) - Math.max(across, along)) / sq(board);
                if (score < bestScore) {
                    keep(score, slot, n, x, y, l, w, across >= along);
                }
            }
        }
    }

    /** The steps that lying among many defects is worth since it was asked last; few defects cost none. */
    long steps() {
        long steps = work / WORK_A_STEP;
        work -= steps * WORK_A_STEP;
        return steps;
    }

    private void keep(double score, int slot, int n, long x, long y, long l, long w, boolean across) {
        bestScore = score;
        bestSlot = slot;
        bestLeaf = n;
        bestX = x;
        bestY = y;
        bestL = l;
        bestW = w;
        bestAcross = across;
    }

    private static double sq(double v) {
        return v * v;
    }
}

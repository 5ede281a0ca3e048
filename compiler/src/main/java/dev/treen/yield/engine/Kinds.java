package dev.treen.yield.engine;

import java.util.Arrays;

/** What may be cut from one clear board, each way that a type may lie on its own. */
final class Kinds {
    final long[] l;
    final long[] w;
    final int[] type;
    /** By type: how many copies the board has room for by their sizes alone. */
    final long[] room;
    /** By type: how many copies one board can take at most. */
    final int[] limit;

    private Kinds(long[] l, long[] w, int[] type, long[] room, int[] limit) {
        this.l = l;
        this.w = w;
        this.type = type;
        this.room = room;
        this.limit = limit;
    }

    /** The kinds of a stock. */
    static Kinds of(Folded f, int stock) {
        int n = 0;
        var l = new long[2 * f.types];
        var w = new long[2 * f.types];
        var type = new int[2 * f.types];
        var room = new long[f.types];
        var limit = new int[f.types];
        long sideL = f.boardLength[stock];
        long sideW = f.boardWidth[stock];
        for (int t = 0; t < f.spare; t++) {
            for (int turn = 0; turn < (f.turns[t] ? 2 : 1); turn++) {
                l[n] = turn == 0 ? f.length[t] : f.width[t];
                w[n] = turn == 0 ? f.width[t] : f.length[t];
                type[n] = t;
                if (f.ok[t][stock] && f.copies[t] > 0 && l[n] <= sideL && w[n] <= sideW) {
                    // Straight and turned parts may mix, so area is what limits them.
                    room[t] = f.turns[t] ? sideL * sideW / f.area[t] : (sideL / l[n]) * (sideW / w[n]);
                    limit[t] = (int) Math.min(f.copies[t], room[t]);
                    n++;
                }
            }
        }
        return new Kinds(Arrays.copyOf(l, n), Arrays.copyOf(w, n), Arrays.copyOf(type, n), room, limit);
    }

    /** The limits by kind. */
    int[] limits() {
        return Arrays.stream(type).map(t -> limit[t]).toArray();
    }

    /** Whether most types may be taken more than once. */
    boolean repeat() {
        return Arrays.stream(limits()).asLongStream().sum() >= 2L * type.length;
    }
}

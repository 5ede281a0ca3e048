package dev.treen.yield.engine;

/**
 * The best that can lie around a block of some size on a board, limits forgotten: the block grows along or across by a
 * strip as large as it likes, whose value the table knows, until it is the board.
 */
final class Surround {
    private final Endless table;

    Surround(Endless table) {
        this.table = table;
    }

    /** By size of the block, in marks along and across. */
    long[][] values() {
        long[] xs = table.xs;
        long[] ys = table.ys;
        int nx = xs.length;
        int ny = ys.length;
        var around = new long[nx][ny];
        var fits = new int[nx];
        for (int i = nx - 1; i >= 0; i--) {
            long[] now = around[i];
            for (int k = i + 1; k < nx; k++) {
                fits[k] = Raster.floor(xs, xs[k] - xs[i]);
                long[] strip = table.column(fits[k]);
                long[] then = around[k];
                for (int j = 0; j < ny; j++) {
                    now[j] = Math.max(now[j], strip[j] + then[j]);
                }
            }
            long[] own = table.column(i);
            for (int j = ny - 2; j >= 0; j--) {
                long most = now[j];
                int fit = 0;
                for (int k = j + 1; k < ny; k++) {
                    long room = ys[k] - ys[j];
                    while (fit + 1 < ny && ys[fit + 1] <= room) {
                        fit++;
                    }
                    most = Math.max(most, own[fit] + now[k]);
                }
                now[j] = most;
            }
        }
        return around;
    }
}

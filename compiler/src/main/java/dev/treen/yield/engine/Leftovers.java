package dev.treen.yield.engine;

import dev.treen.yield.Rect;
import dev.treen.yield.Settings;
import org.jspecify.annotations.Nullable;

/** Finds what is worth keeping in the free places of a layout. */
final class Leftovers {
    /** With more flaws than this, trying all pairs of sides takes too long. */
    private static final int MANY = 40;

    private Leftovers() {
    }

    /**
     * The largest clear rectangle of at least the least size in a place on the true board, or null. Its sides lie on
     * sides of the place or of defects (as in every largest empty rectangle), so all pairs of sides are tried.
     */
    static @Nullable Rect largest(Folded f, int stock, Rect r, long offX, long offY) {
        Settings s = f.problem.settings();
        long @Nullable [] best = largest(
                f,
                stock,
                r.x() - offX,
                r.y() - offY,
                r.length() + f.kerf,
                r.width() + f.kerf,
                s.minOffcutLength() + f.kerf,
                s.minOffcutWidth() + f.kerf);
        return best == null
                ? null
                : new Rect(best[0] + offX, best[1] + offY, best[2] - f.kerf, best[3] - f.kerf);
    }

    /** The same with the kerf folded in: x, y, length, width; or null. */
    static long @Nullable [] largest(Folded f, int stock, long x, long y, long l, long w, long leastL, long leastW) {
        if (l < leastL || w < leastW) {
            return null;
        }
        if (!f.blocked(stock, x, y, l, w)) {
            return new long[]{x, y, l, w};
        }
        long[] d = f.flaws[stock];
        if (d.length > 4 * MANY) {
            return EmptyRectangle.in(d, x, y, l, w, leastL, leastW, f.kerf);
        }
        long @Nullable [] best = null;
        double most = 0;
        for (int i = -1; i < d.length / 4; i++) {
            long x1 = i < 0 ? x : d[4 * i + 2];
            for (int j = -1; j < d.length / 4; j++) {
                long x2 = j < 0 ? x + l : d[4 * j];
                if (x1 < x || x2 > x + l || x2 - x1 < leastL
                        || (double) (x2 - x1 - f.kerf) * (w - f.kerf) <= most) {
                    continue;
                }
                for (int k = -1; k < d.length / 4; k++) {
                    long y1 = k < 0 ? y : d[4 * k + 3];
                    long y2 = y1 < y ? y1 : ceiling(d, x1, x2, y1, y + w);
                    double size = (double) (x2 - x1 - f.kerf) * (y2 - y1 - f.kerf);
                    if (y2 - y1 >= leastW && size > most) {
                        most = size;
                        best = new long[]{x1, y1, x2 - x1, y2 - y1};
                    }
                }
            }
        }
        return best;
    }

    // How far up a strip from y1 stays clear.
    private static long ceiling(long[] d, long x1, long x2, long y1, long top) {
        long y2 = top;
        for (int i = 0; i < d.length; i += 4) {
            if (x1 < d[i + 2] && x2 > d[i] && d[i + 3] > y1) {
                y2 = Math.min(y2, d[i + 1]);
            }
        }
        return y2;
    }
}

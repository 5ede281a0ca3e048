package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * The defects that reach into a place of a board, each as left, lower, right and upper side, in the order in which the board
 * has them; used again and again.
 */
final class FlawsOfPlace {
    private long[] sides = {};
    private long[] gapEnds = {};
    private int end;

    /** Keeps those of {@code all} that reach into a rectangle. */
    void keep(long[] all, long x, long y, long l, long w) {
        keep(all, all.length, x, y, l, w);
    }

    /** Keeps those of another place that reach into a rectangle. */
    void keep(FlawsOfPlace of, long x, long y, long l, long w) {
        keep(of.sides, of.end, x, y, l, w);
    }

    private void keep(long[] all, int length, long x, long y, long l, long w) {
        if (sides.length < length) {
            sides = Arrays.copyOf(sides, length);
        }
        end = 0;
        for (int i = 0; i < length; i += 4) {
            if (x < all[i + 2] && x + l > all[i] && y < all[i + 3] && y + w > all[i + 1]) {
                System.arraycopy(all, i, sides, end, 4);
                end += 4;
            }
        }
    }

    int count() {
        return end / 4;
    }

    /** How many marks there are along one axis: both ends of the place, both sides of every defect. */
    int marks() {
        return end / 2 + 2;
    }

    /** Where something of a size begins so that it ends or begins at a mark. */
    long mark(int i, int axis, long start, long stop, long size) {
        if (i == 0) {
            return start;
        }
        if (i == 1) {
            return stop - size;
        }
        int d = (i - 2) / 2;
        return (i & 1) == 0 ? sides[4 * d + axis + 2] : sides[4 * d + axis] - size;
    }

    /**
     * Looks upwards for what is clear between them, if they all lie one above the other in order of their lower sides; gives
     * how many places there are at an end of a gap for something so wide.
     */
    int gaps(long low, long high, long wide) {
        int places = 0;
        long clear = low;
        for (int i = 0; i <= end; i += 4) {
            long stop = i < end ? Math.min(high, sides[i + 1]) : high;
            if (stop - clear >= wide) {
                if (gapEnds.length < places + 2) {
                    gapEnds = Arrays.copyOf(gapEnds, 2 * places + 8);
                }
                gapEnds[places++] = clear;
                if (stop - clear > wide) {
                    gapEnds[places++] = stop - wide;
                }
            }
            clear = i < end ? Math.max(clear, sides[i + 3]) : clear;
        }
        return places;
    }

    /** One of the places that were found last. */
    long gapEnd(int i) {
        return gapEnds[i];
    }

    /** The free area of a rectangle, with what defects take counted double: a place cut up by a knot is worth less. */
    double free(long x, long y, long l, long w) {
        if (l <= 0 || w <= 0) {
            return 0;
        }
        double sum = (double) l * w;
        for (int i = 0; i < end; i += 4) {
            long a = Math.min(x + l, sides[i + 2]) - Math.max(x, sides[i]);
            long b = Math.min(y + w, sides[i + 3]) - Math.max(y, sides[i + 1]);
            if (a > 0 && b > 0) {
                sum -= 2.0 * a * b;
            }
        }
        return Math.max(sum, 0);
    }
}

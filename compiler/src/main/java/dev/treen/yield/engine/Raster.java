package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * The places along one side of a board where a cut can matter: sums of part sizes, thinned out to those that some sum from
 * the other end needs too (raster points: Terno, Lindemann and Scheithauer 1987).
 */
final class Raster {
    /** More marks than this are not worth a table. */
    static final int MOST = 6000;

    private Raster() {
    }

    /** The raster points of a side, ascending, with 0 and the side itself; empty if there are too many. */
    static long[] points(long side, long[] sizes) {
        return thinned(side, sums(side, sizes));
    }

    /** Those of ascending sums, with 0 the first, that some sum from the other end needs too, and the side itself. */
    static long[] thinned(long side, long[] sums) {
        if (sums.length == 0) {
            return sums;
        }
        var kept = new long[sums.length + 1];
        int n = 0;
        for (int i = sums.length - 1; i >= 0; i--) {
            long p = sums[floor(sums, side - sums[i])];
            if (n == 0 || kept[n - 1] != p) {
                kept[n++] = p;
            }
        }
        if (kept[n - 1] != side) {
            kept[n++] = side;
        }
        return Arrays.copyOf(kept, n);
    }

    /** All sums of sizes, each as often as wished, up to a side; empty if there are too many. */
    static long[] sums(long side, long[] sizes) {
        return sumsFrom(new long[]{0}, side, sizes, 40 * MOST);
    }

    /** All sums of a start and sizes, up to a side; empty if there are more than so many. */
    static long[] sumsFrom(long[] starts, long side, long[] sizes, int most) {
        long[] small = Arrays.stream(sizes).distinct().sorted().toArray();
        long unit = starts.length == 1 && starts[0] == 0 ? unit(sizes) : 1;
        if (unit > 1) {
            long[] fewer = Arrays.stream(small).map(s -> s / unit).toArray();
            return Arrays.stream(sumsFrom(starts, side / unit, fewer, most)).map(s -> s * unit).toArray();
        }
        if (side <= 50_000_000L / 64 * 64 && side < Integer.MAX_VALUE - 8) {
            return dense(starts, (int) side, small, most);
        }
        return sparse(starts, side, small, most);
    }

    /** What all sizes are whole multiples of. */
    private static long unit(long[] sizes) {
        long unit = 0;
        for (long size : sizes) {
            long a = unit;
            long b = size;
            while (b != 0) {
                long rest = a % b;
                a = b;
                b = rest;
            }
            unit = a;
        }
        return Math.max(1, unit);
    }

    private static long[] dense(long[] starts, int side, long[] sizes, int most) {
        var reached = new boolean[side + 1];
        for (long start : starts) {
            if (start >= 0 && start <= side) {
                reached[(int) start] = true;
            }
        }
        int count = 0;
        for (int p = 0; p <= side; p++) {
            if (reached[p]) {
                if (++count > most) {
                    return new long[0];
                }
                for (long size : sizes) {
                    if (p + size > side) {
                        break;
                    }
                    reached[(int) (p + size)] = true;
                }
            }
        }
        var found = new long[count];
        int n = 0;
        for (int p = 0; p <= side; p++) {
            if (reached[p]) {
                found[n++] = p;
            }
        }
        return found;
    }

    private static long[] sparse(long[] starts, long side, long[] sizes, int most) {
        var open = new java.util.TreeSet<Long>();
        for (long start : starts) {
            if (start >= 0 && start <= side) {
                open.add(start);
            }
        }
        var found = new long[Math.min(most, 1 << 20) + 1];
        int n = 0;
        while (!open.isEmpty()) {
            long p = open.removeFirst();
            if (n >= most || n >= found.length) {
                return new long[0];
            }
            found[n++] = p;
            for (long size : sizes) {
                if (p + size > side) {
                    break;
                }
                open.add(p + size);
            }
        }
        return Arrays.copyOf(found, n);
    }

    /**
     * All sums of sizes where each may be taken so often only, up to a side, with the side itself; empty if there are too
     * many or the side is too long for a table.
     */
    static long[] limitedSums(long side, long[] sizes, int[] limits) {
        long unit = unit(sizes);
        if (unit > 1) {
            long[] fewer = Arrays.stream(sizes).map(s -> s / unit).toArray();
            long[] sums = Arrays.stream(limitedSums(side / unit, fewer, limits)).map(s -> s * unit).toArray();
            if (sums.length > 0 && sums[sums.length - 1] < side) {
                sums = Arrays.copyOf(sums, sums.length + 1);
                sums[sums.length - 1] = side;
            }
            return sums;
        }
        if (side >= 50_000_000) {
            return new long[0];
        }
        int length = (int) side;
        var reached = new boolean[length + 1];
        reached[0] = true;
        var together = new java.util.TreeMap<Long, Long>();
        for (int i = 0; i < sizes.length; i++) {
            together.merge(sizes[i], (long) limits[i], Long::sum);
        }
        var used = new int[length + 1];
        for (var entry : together.entrySet()) {
            int size = (int) Math.min(entry.getKey(), side + 1);
            Arrays.fill(used, 0);
            for (int p = size; p <= length; p++) {
                if (!reached[p] && reached[p - size] && used[p - size] < entry.getValue()) {
                    reached[p] = true;
                    used[p] = used[p - size] + 1;
                }
            }
        }
        reached[length] = true;
        int count = 0;
        for (boolean each : reached) {
            count += each ? 1 : 0;
        }
        if (count > MOST) {
            return new long[0];
        }
        var found = new long[count];
        int n = 0;
        for (int p = 0; p <= length; p++) {
            if (reached[p]) {
                found[n++] = p;
            }
        }
        return found;
    }

    /** The index of the greatest mark at most v; the marks begin at 0 or below. */
    static int floor(long[] marks, long v) {
        int at = Arrays.binarySearch(marks, v);
        return at >= 0 ? at : -at - 2;
    }
}

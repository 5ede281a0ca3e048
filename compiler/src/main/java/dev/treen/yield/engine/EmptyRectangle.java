package dev.treen.yield.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The largest clear rectangle in a place with many flaws: from each left side a sweep to the right, in which flaws cut the free
 * stretches of the width; a stretch is as long as it can be when one of them cuts it. Takes the square of their number, times
 * its logarithm.
 */
final class EmptyRectangle {
    private final long y;
    private final long right;
    private final long top;
    private final long kerf;
    private final long leastL;
    private final long leastW;
    private final List<long[]> flaws = new ArrayList<>();
    private long @Nullable [] best;
    private double most;

    private EmptyRectangle(long[] d, long x, long y, long l, long w, long leastL, long leastW, long kerf) {
        this.y = y;
        this.right = x + l;
        this.top = y + w;
        this.kerf = kerf;
        this.leastL = leastL;
        this.leastW = leastW;
        for (int i = 0; i < d.length; i += 4) {
            if (d[i] < right && d[i + 2] > x && d[i + 1] < top && d[i + 3] > y) {
                flaws.add(new long[]{d[i], d[i + 1], d[i + 2], d[i + 3]});
            }
        }
        flaws.sort(Comparator.comparingLong((long[] each) -> each[0]));
    }

    /** As x, y, length and width with the kerf folded in; or null. Flaws are {@code left, lower, right, upper}, four each. */
    static long @Nullable [] in(long[] flaws, long x, long y, long l, long w, long leastL, long leastW, long kerf) {
        var place = new EmptyRectangle(flaws, x, y, l, w, leastL, leastW, kerf);
        place.from(x);
        place.flaws.stream().mapToLong(each -> each[2]).distinct().sorted().forEach(place::from);
        return place.best;
    }

    private void from(long left) {
        if (right - left < leastL || (double) (right - left - kerf) * (top - y - kerf) <= most) {
            return;
        }
        NavigableMap<Long, Long> free = new TreeMap<>(Map.of(y, top));
        for (long[] flaw : flaws) {
            if (free.isEmpty()) {
                return;
            }
            if (flaw[2] > left) {
                cut(free, flaw, left);
            }
        }
        free.forEach((low, high) -> seen(left, low, right, high));
    }

    /** Takes a flaw out of the free stretches; those that it cuts end where it begins. */
    private void cut(NavigableMap<Long, Long> free, long[] flaw, long left) {
        Map.Entry<Long, Long> stretch = free.lowerEntry(flaw[3]);
        while (stretch != null && stretch.getValue() > flaw[1]) {
            long low = stretch.getKey();
            long high = stretch.getValue();
            seen(left, low, Math.max(left, flaw[0]), high);
            free.remove(low);
            keep(free, low, flaw[1]);
            keep(free, flaw[3], high);
            stretch = free.lowerEntry(Math.min(low, flaw[3]));
        }
    }

    private void keep(NavigableMap<Long, Long> free, long low, long high) {
        if (high - low >= leastW) {
            free.put(low, high);
        }
    }

    private void seen(long left, long low, long end, long high) {
        if (end - left < leastL || high - low < leastW) {
            return;
        }
        double size = (double) (end - left - kerf) * (high - low - kerf);
        if (size > most) {
            most = size;
            best = new long[]{left, low, end - left, high - low};
        }
    }
}

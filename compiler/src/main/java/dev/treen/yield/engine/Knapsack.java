package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The most a bar can give at some prices when each length may be taken so often only. Lengths are taken up one by one,
 * dearest for their size first; of the fillings so far only those are kept that no shorter one beats (lists of Nemhauser
 * and Ullmann 1969) and that the best of what is still to come, cut to fit, could bring over what is known already.
 */
final class Knapsack {
    private static final int QUICK = 100_000;
    private static final int MOST = 4_000_000;

    private final int room;
    private final int[] size;
    private final int n;
    /** The copies of each in the best filling; none where no filling is worth more than the floor. */
    final int[] taken;
    /** What no filling can beat; the floor where nothing beats that. */
    long bound;
    /** Fillings looked at. */
    long looked;

    // Bundles of 1, 2, 4, ... copies, so that every number up to the limit can be made.
    private int bundles;
    private int[] bundleOf = new int[64];
    private int[] bundleCopies = new int[64];
    private long[] sizeUpTo = new long[65];
    private long[] priceUpTo = new long[65];
    // The fillings kept, by length, and those of the round before.
    private int[] length = new int[1 << 10];
    private long[] worth = new long[1 << 10];
    private int[] filling = new int[1 << 10];
    private int[] nextLength = new int[1 << 10];
    private long[] nextWorth = new long[1 << 10];
    private int[] nextFilling = new int[1 << 10];
    private int kept;
    // All fillings ever kept: which bundle came last, and what it was added to.
    private int[] last = new int[1 << 10];
    private int[] before = new int[1 << 10];
    private int made;
    private long best;
    private int winner;

    Knapsack(int room, int[] size) {
        this.room = room;
        this.size = size;
        n = size.length;
        taken = new int[n];
    }

    /**
     * Looks for a filling worth more than a floor. Unless it is to be thorough it gives up where there are too many
     * fillings to keep; the bound holds even then.
     */
    void fill(long[] price, int[] limits, long floor, boolean thorough) {
        order(price, limits);
        kept = 1;
        made = 1;
        length[0] = 0;
        worth[0] = 0;
        filling[0] = 0;
        best = floor;
        winner = -1;
        looked = n;
        bound = 0;
        int most = thorough ? MOST : QUICK;
        for (int b = 0; b < bundles && kept > 0; b++) {
            if (made + kept > most) {
                bound = loosest(b);
                break;
            }
            add(b);
        }
        bound = Math.max(bound, best);
        Arrays.fill(taken, 0);
        for (int at = winner; at > 0; at = before[at]) {
            taken[bundleOf[last[at]]] += bundleCopies[last[at]];
        }
    }

    private void order(long[] price, int[] limits) {
        int[] order = IntStream.range(0, n)
                .filter(i -> price[i] > 0 && limits[i] > 0 && size[i] <= room)
                .boxed()
                .sorted((a, b) -> Double.compare((double) price[b] / size[b], (double) price[a] / size[a]))
                .mapToInt(Integer::intValue)
                .toArray();
        bundles = 0;
        for (int i : order) {
            int left = Math.min(limits[i], room / size[i]);
            for (int k = 1; left > 0; k *= 2) {
                if (bundles == bundleOf.length) {
                    bundleOf = Arrays.copyOf(bundleOf, 2 * bundles);
                    bundleCopies = Arrays.copyOf(bundleCopies, 2 * bundles);
                    sizeUpTo = Arrays.copyOf(sizeUpTo, 2 * bundles + 1);
                    priceUpTo = Arrays.copyOf(priceUpTo, 2 * bundles + 1);
                }
                int copies = Math.min(k, left);
                bundleOf[bundles] = i;
                bundleCopies[bundles++] = copies;
                sizeUpTo[bundles] = sizeUpTo[bundles - 1] + (long) copies * size[i];
                priceUpTo[bundles] = priceUpTo[bundles - 1] + copies * price[i];
                left -= copies;
            }
        }
    }

    // With all bundles before b decided: the most that a filling can come to, the last bundle cut to fit.
    private long hope(int b, int to, long rest) {
        long sum = priceUpTo[to] - priceUpTo[b];
        if (to < bundles) {
            long left = rest - (sizeUpTo[to] - sizeUpTo[b]);
            double share = (double) left / (sizeUpTo[to + 1] - sizeUpTo[to]);
            sum += (long) (share * (priceUpTo[to + 1] - priceUpTo[to])) + 1;
        }
        return sum;
    }

    private long loosest(int b) {
        long most = 0;
        int to = bundles;
        for (int i = 0; i < kept; i++) {
            to = fits(b, to, room - length[i]);
            most = Math.max(most, worth[i] + hope(b, to, room - length[i]));
        }
        return most;
    }

    private int fits(int b, int from, long rest) {
        int to = from;
        while (sizeUpTo[to] - sizeUpTo[b] > rest) {
            to--;
        }
        return to;
    }

    // The list and the list with the bundle added, merged by length.
    private void add(int b) {
        int l = (int) (sizeUpTo[b + 1] - sizeUpTo[b]);
        long p = priceUpTo[b + 1] - priceUpTo[b];
        if (nextLength.length < 2 * kept) {
            nextLength = new int[4 * kept];
            nextWorth = new long[4 * kept];
            nextFilling = new int[4 * kept];
        }
        if (last.length < made + kept) {
            last = Arrays.copyOf(last, 2 * (made + kept));
            before = Arrays.copyOf(before, 2 * (made + kept));
        }
        looked += 2L * kept;
        int count = 0;
        int to = bundles;
        int i = 0;
        int j = 0;
        long top = -1;
        while (i < kept || j < kept) {
            boolean with = i == kept || (j < kept && length[j] + l < length[i]);
            int now = with ? length[j] + l : length[i];
            long value = with ? worth[j] + p : worth[i];
            int from = with ? filling[j++] : filling[i++];
            if (now > room) {
                break;
            }
            if (value <= top) {
                continue;
            }
            top = value;
            to = fits(b + 1, to, room - now);
            if (with && value > best) {
                best = value;
                winner = made;
            } else if (value + hope(b + 1, to, room - now) <= best) {
                continue;
            }
            if (with) {
                last[made] = b;
                before[made] = from;
                from = made++;
            }
            nextLength[count] = now;
            nextWorth[count] = value;
            nextFilling[count++] = from;
        }
        int[] swap = length;
        length = nextLength;
        nextLength = swap;
        swap = filling;
        filling = nextFilling;
        nextFilling = swap;
        long[] swapWorth = worth;
        worth = nextWorth;
        nextWorth = swapWorth;
        kept = count;
    }
}

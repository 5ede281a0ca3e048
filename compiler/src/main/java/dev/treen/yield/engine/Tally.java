package dev.treen.yield.engine;

/**
 * Counts of types packed side by side into whole words, so that two of them are added, and held against the limits, a word
 * at a time: the field of a type is one bit wider than its limit, and what is missing from the limit to the next power of
 * two lifts that bit exactly where a sum is too large.
 */
final class Tally {
    /** How many words one tally takes. */
    final int words;
    private final int[] word;
    private final int[] shift;
    private final int[] bits;
    private final long[] over;
    private final long[] lift;

    /** For the limits by type; a type with a limit of 0 or less is not counted. */
    Tally(int[] limit) {
        word = new int[limit.length];
        shift = new int[limit.length];
        bits = new int[limit.length];
        int w = 0;
        int used = 0;
        for (int t = 0; t < limit.length; t++) {
            if (limit[t] > 0) {
                bits[t] = 1 + 32 - Integer.numberOfLeadingZeros(limit[t]);
                if (used + bits[t] > Long.SIZE) {
                    w++;
                    used = 0;
                }
                word[t] = w;
                shift[t] = used;
                used += bits[t];
            }
        }
        words = w + 1;
        over = new long[words];
        lift = new long[words];
        for (int t = 0; t < limit.length; t++) {
            if (limit[t] > 0) {
                over[word[t]] |= 1L << (shift[t] + bits[t] - 1);
                lift[word[t]] |= ((1L << (bits[t] - 1)) - 1 - limit[t]) << shift[t];
            }
        }
    }

    /** Writes a single copy of a type as the tally that begins at a place; all its words are 0 before. */
    void one(int type, long[] at, int place) {
        if (bits[type] > 0) {
            at[place + word[type]] = 1L << shift[type];
        }
    }

    /** The copies of a type. */
    int count(long[] at, int place, int type) {
        return bits[type] == 0 ? 0 : (int) (at[place + word[type]] >>> shift[type] & ((1L << bits[type]) - 1));
    }

    /** Whether two tallies together keep to the limits. */
    boolean within(long[] a, int p, long[] b, int q) {
        for (int w = 0; w < words; w++) {
            if ((a[p + w] + b[q + w] + lift[w] & over[w]) != 0) {
                return false;
            }
        }
        return true;
    }

    /** Writes the sum of two tallies. */
    void add(long[] a, int p, long[] b, int q, long[] to, int r) {
        for (int w = 0; w < words; w++) {
            to[r + w] = a[p + w] + b[q + w];
        }
    }
}

package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/**
 * Blocks of parts, each with the counts it uses, kept so that a block is dropped when another of the same counts is no
 * larger. All fields lie in flat arrays by number of the block.
 */
final class Blocks {
    final int types;
    final Tally tally;
    int size;
    int[] x = new int[1024];
    int[] y = new int[1024];
    long[] value = new long[1024];
    /** Value less the prices of what is used, scaled. */
    long[] net = new long[1024];
    /** The two blocks joined, or -1 and the kind of a single part. */
    int[] first = new int[1024];
    int[] second = new int[1024];
    boolean[] side = new boolean[1024];
    private long[] counts;
    private long[] hash = new long[1024];
    private int[] chain = new int[1024];
    private int[] heads = new int[4096];
    private final long[] key;
    private final int[] type;
    private final long[] l;
    private final long[] w;

    /** No blocks yet, of parts with these limits by type, which may lie in ways of these types and sizes. */
    Blocks(int[] limit, int[] type, long[] l, long[] w) {
        this.type = type;
        this.l = l;
        this.w = w;
        types = limit.length;
        tally = new Tally(limit);
        counts = new long[1024 * tally.words];
        key = new long[types];
        var dice = new Dice(77);
        for (int t = 0; t < types; t++) {
            key[t] = ((long) dice.below(Integer.MAX_VALUE) << 32) ^ ((long) dice.below(Integer.MAX_VALUE) << 3) ^ 1;
        }
        Arrays.fill(heads, -1);
    }

    /** Forgets all blocks. */
    void clear() {
        size = 0;
        Arrays.fill(heads, -1);
    }

    /** Whether two blocks together keep to the limits. */
    boolean within(int a, int b) {
        return tally.within(counts, a * tally.words, counts, b * tally.words);
    }

    /** The copies of a type in a block. */
    int count(int n, int type) {
        return tally.count(counts, n * tally.words, type);
    }

    /** A single part of a type. */
    int single(int type, int kind, int atX, int atY, long worth, long netWorth) {
        grow();
        int n = size;
        Arrays.fill(counts, n * tally.words, (n + 1) * tally.words, 0);
        tally.one(type, counts, n * tally.words);
        return finish(n, key[type], atX, atY, worth, netWorth, -1, kind, false);
    }

    /** Two blocks as one, or -1 if that is no better than one that is there. */
    int join(int a, int b, int atX, int atY, boolean beside) {
        grow();
        int n = size;
        long sum = hash[a] + hash[b];
        int words = tally.words;
        int r = n * words;
        tally.add(counts, a * words, counts, b * words, counts, r);
        for (int i = heads[slot(sum)]; i >= 0; i = chain[i]) {
            if (hash[i] == sum && x[i] <= atX && y[i] <= atY
                    && Arrays.equals(counts, i * words, (i + 1) * words, counts, r, r + words)) {
                return -1;
            }
        }
        return finish(n, sum, atX, atY, value[a] + value[b], net[a] + net[b], a, b, beside);
    }

    private int slot(long sum) {
        return (int) ((sum * 0x9E3779B97F4A7C15L) >>> 32) & (heads.length - 1);
    }

    private int finish(int n, long sum, int atX, int atY, long worth, long netWorth, int a, int b, boolean beside) {
        x[n] = atX;
        y[n] = atY;
        value[n] = worth;
        net[n] = netWorth;
        first[n] = a;
        second[n] = b;
        side[n] = beside;
        hash[n] = sum;
        int s = slot(sum);
        chain[n] = heads[s];
        heads[s] = n;
        size++;
        return n;
    }

    private void grow() {
        if (size < x.length) {
            return;
        }
        int more = size * 2;
        x = Arrays.copyOf(x, more);
        y = Arrays.copyOf(y, more);
        value = Arrays.copyOf(value, more);
        net = Arrays.copyOf(net, more);
        first = Arrays.copyOf(first, more);
        second = Arrays.copyOf(second, more);
        side = Arrays.copyOf(side, more);
        hash = Arrays.copyOf(hash, more);
        chain = Arrays.copyOf(chain, more);
        counts = Arrays.copyOf(counts, more * tally.words);
        heads = new int[more * 4];
        Arrays.fill(heads, -1);
        for (int i = 0; i < size; i++) {
            int s = slot(hash[i]);
            chain[i] = heads[s];
            heads[s] = i;
        }
    }

    /** Lays a block into a free leaf of a board; {@code alongX} and {@code alongY} say how long its sides are. */
    void lay(
            State state, int slot, int leaf, int n, long stamp, IntToLongFunction alongX, IntToLongFunction alongY) {
        BoardTree tree = state.own(slot, stamp);
        if (first[n] < 0) {
            int kind = second[n];
            state.place(slot, leaf, type[kind], tree.x(leaf), tree.y(leaf), l[kind], w[kind], true, stamp);
            return;
        }
        int a = first[n];
        long size = side[n] ? alongX.applyAsLong(x[a]) : alongY.applyAsLong(y[a]);
        int rest = tree.cut(leaf, side[n] ? BoardTree.ROW : BoardTree.STACK, size);
        int before = tree.before(rest);
        lay(state, slot, before, a, stamp, alongX, alongY);
        lay(state, slot, rest, second[n], stamp, alongX, alongY);
    }
}

package dev.treen.yield.engine;

import java.util.Arrays;

/**
 * One board as a tree of saw-through cuts, kerf folded in, with free places as leaves. A row has its children side by side
 * along x, a stack along y; kinds alternate downwards. All nodes lie in one array so that a copy is one move.
 *
 * <p>On a board without defects the place of a child in its row does not matter, so a row or stack there has at most one
 * free child, and x and y are only right after {@link #settle()}.
 */
final class BoardTree {
    static final int FREE = 0;
    static final int ITEM = 1;
    static final int ROW = 2;
    static final int STACK = 3;
    private static final int GONE = 4;

    private static final int KIND = 0;
    private static final int X = 1;
    private static final int Y = 2;
    private static final int L = 3;
    private static final int W = 4;
    private static final int PARENT = 5;
    private static final int FIRST = 6;
    private static final int NEXT = 7;
    private static final int PREV = 8;
    private static final int TYPE = 9;
    private static final int SIZE = 10;

    final int stock;
    final boolean clear;
    private long[] t;
    private int used;
    private int holes;
    private long freeArea;
    private int items;
    long stamp;

    BoardTree(int stock, boolean clear, long length, long width) {
        this.stock = stock;
        this.clear = clear;
        t = new long[16 * SIZE];
        used = 1;
        t[L] = length;
        t[W] = width;
        t[PARENT] = -1;
        t[FIRST] = -1;
        t[NEXT] = -1;
        t[PREV] = -1;
        freeArea = length * width;
    }

    private BoardTree(BoardTree other) {
        stock = other.stock;
        clear = other.clear;
        t = Arrays.copyOf(other.t, Math.min(other.t.length, (other.used + 8) * SIZE));
        used = other.used;
        holes = other.holes;
        freeArea = other.freeArea;
        items = other.items;
    }

    BoardTree copy() {
        return new BoardTree(this);
    }

    /** Nodes are numbered from 0 (the root) up to this; some numbers may be unused. */
    int nodes() {
        return used;
    }

    int kind(int n) {
        return (int) t[n * SIZE + KIND];
    }

    boolean free(int n) {
        return t[n * SIZE + KIND] == FREE;
    }

    boolean gone(int n) {
        return t[n * SIZE + KIND] == GONE;
    }

    long x(int n) {
        return t[n * SIZE + X];
    }

    long y(int n) {
        return t[n * SIZE + Y];
    }

    long length(int n) {
        return t[n * SIZE + L];
    }

    long width(int n) {
        return t[n * SIZE + W];
    }

    int type(int n) {
        return (int) t[n * SIZE + TYPE];
    }

    int parent(int n) {
        return (int) t[n * SIZE + PARENT];
    }

    int first(int n) {
        return (int) t[n * SIZE + FIRST];
    }

    int next(int n) {
        return (int) t[n * SIZE + NEXT];
    }

    long freeArea() {
        return freeArea;
    }

    int items() {
        return items;
    }

    private int fresh(int parent, long x, long y, long l, long w) {
        int n = -1;
        if (holes > 0) {
            for (int i = used - 1; i > 0; i--) {
                if (t[i * SIZE] == GONE) {
                    n = i;
                    holes--;
                    break;
                }
            }
        }
        if (n < 0) {
            n = used++;
            if (n * SIZE >= t.length) {
                t = Arrays.copyOf(t, t.length * 2);
            }
        }
        int o = n * SIZE;
        t[o + KIND] = FREE;
        t[o + X] = x;
        t[o + Y] = y;
        t[o + L] = l;
        t[o + W] = w;
        t[o + PARENT] = parent;
        t[o + FIRST] = -1;
        t[o + NEXT] = -1;
        t[o + PREV] = -1;
        return n;
    }

    private void drop(int n) {
        t[n * SIZE + KIND] = GONE;
        holes++;
    }

    private void linkAfter(int n, int fresh) {
        int next = next(n);
        t[fresh * SIZE + PREV] = n;
        t[fresh * SIZE + NEXT] = next;
        t[n * SIZE + NEXT] = fresh;
        if (next >= 0) {
            t[next * SIZE + PREV] = fresh;
        }
    }

    private void unlink(int n) {
        int o = n * SIZE;
        int prev = (int) t[o + PREV];
        int next = (int) t[o + NEXT];
        if (prev >= 0) {
            t[prev * SIZE + NEXT] = next;
        } else {
            t[(int) t[o + PARENT] * SIZE + FIRST] = next;
        }
        if (next >= 0) {
            t[next * SIZE + PREV] = prev;
        }
        drop(n);
    }

    /** Puts an item into a free leaf, cutting across first or along first; gives the item's node. */
    int place(int leaf, int type, long x, long y, long l, long w, boolean acrossFirst) {
        int mid = leaf;
        for (int pass = 0; pass < 2; pass++) {
            boolean row = acrossFirst == (pass == 0);
            mid = row
                    ? split(mid, ROW, x - x(mid), l, x(mid) + length(mid) - x - l)
                    : split(mid, STACK, y - y(mid), w, y(mid) + width(mid) - y - w);
        }
        t[mid * SIZE + KIND] = ITEM;
        t[mid * SIZE + TYPE] = type;
        freeArea -= l * w;
        items++;
        return mid;
    }

    /** Cuts a free leaf in two, the first of this size; gives the second, {@link #before} gives the first. */
    int cut(int leaf, int kind, long size) {
        return next(split(leaf, kind, 0, size, (kind == ROW ? length(leaf) : width(leaf)) - size));
    }

    /** The node before one in its row or stack. */
    int before(int n) {
        return (int) t[n * SIZE + PREV];
    }

    private int split(int leaf, int kind, long before, long size, long after) {
        if (before == 0 && after == 0) {
            return leaf;
        }
        int at = kind == ROW ? L : W;
        int pos = kind == ROW ? X : Y;
        int up = parent(leaf);
        int node = leaf;
        if (up < 0 || kind(up) != kind) {
            node = fresh(leaf, x(leaf), y(leaf), length(leaf), width(leaf));
            t[leaf * SIZE + KIND] = kind;
            t[leaf * SIZE + FIRST] = node;
            up = leaf;
        }
        if (before > 0) {
            int mid = fresh(up, x(node), y(node), length(node), width(node));
            linkAfter(node, mid);
            t[node * SIZE + at] = before;
            t[mid * SIZE + pos] += before;
            node = mid;
        }
        t[node * SIZE + at] = size;
        if (after > 0) {
            int rest = fresh(up, x(node), y(node), length(node), width(node));
            linkAfter(node, rest);
            t[rest * SIZE + at] = after;
            t[rest * SIZE + pos] += size;
        }
        return node;
    }

    /** Takes out a node with all below it; {@code removed} counts the items by type. */
    void clear(int n, int[] removed) {
        empty(n, removed);
        int node = n;
        t[node * SIZE + KIND] = FREE;
        t[node * SIZE + FIRST] = -1;
        while (true) {
            int up = parent(node);
            if (up < 0) {
                return;
            }
            boolean row = kind(up) == ROW;
            if (clear) {
                joinAnywhere(node, up, row ? L : W);
            } else {
                joinNeighbours(node, row ? L : W, row ? X : Y);
            }
            if (first(up) != node || next(node) >= 0) {
                return;
            }
            drop(node);
            node = up;
            t[node * SIZE + KIND] = FREE;
            t[node * SIZE + FIRST] = -1;
        }
    }

    private void joinAnywhere(int node, int up, int at) {
        for (int c = first(up); c >= 0; c = next(c)) {
            if (c != node && free(c)) {
                t[node * SIZE + at] += t[c * SIZE + at];
                unlink(c);
                return;
            }
        }
    }

    private void joinNeighbours(int node, int at, int pos) {
        int next = next(node);
        if (next >= 0 && free(next)) {
            t[node * SIZE + at] += t[next * SIZE + at];
            unlink(next);
        }
        int prev = (int) t[node * SIZE + PREV];
        if (prev >= 0 && free(prev)) {
            t[node * SIZE + at] += t[prev * SIZE + at];
            t[node * SIZE + pos] = t[prev * SIZE + pos];
            unlink(prev);
        }
    }

    private void empty(int n, int[] removed) {
        if (kind(n) == ITEM) {
            removed[type(n)]++;
            items--;
            freeArea += length(n) * width(n);
        } else {
            for (int c = first(n); c >= 0; c = next(c)) {
                empty(c, removed);
                drop(c);
            }
        }
    }

    /** Gives every node its true x and y. */
    void settle() {
        t[X] = 0;
        t[Y] = 0;
        settle(0);
    }

    private void settle(int n) {
        freeLast(n);
        long x = x(n);
        long y = y(n);
        for (int c = first(n); c >= 0; c = next(c)) {
            t[c * SIZE + X] = x;
            t[c * SIZE + Y] = y;
            if (kind(n) == ROW) {
                x += length(c);
            } else {
                y += width(c);
            }
            settle(c);
        }
    }

    private void freeLast(int n) {
        int last = -1;
        int free = -1;
        for (int c = first(n); c >= 0; c = next(c)) {
            last = c;
            free = free(c) ? c : free;
        }
        if (free < 0 || free == last) {
            return;
        }
        int prev = (int) t[free * SIZE + PREV];
        int next = next(free);
        if (prev >= 0) {
            t[prev * SIZE + NEXT] = next;
        } else {
            t[n * SIZE + FIRST] = next;
        }
        t[next * SIZE + PREV] = prev;
        t[last * SIZE + NEXT] = free;
        t[free * SIZE + PREV] = last;
        t[free * SIZE + NEXT] = -1;
    }

    /** How far the items of a clear, settled board reach along it. */
    long reach() {
        long reach = 0;
        for (int n = 0; n < used; n++) {
            if (kind(n) == ITEM) {
                reach = Math.max(reach, x(n) + length(n));
            }
        }
        return reach;
    }

    /** Takes {@code less} off the length of a clear board; what lies there must be free. */
    void shorten(int n, long less) {
        t[n * SIZE + L] -= less;
        if (free(n)) {
            freeArea -= less * width(n);
            return;
        }
        if (kind(n) == STACK) {
            for (int c = first(n); c >= 0; c = next(c)) {
                shorten(c, less);
            }
            return;
        }
        long rest = less;
        int crossing = -1;
        int c = first(n);
        while (c >= 0) {
            int next = next(c);
            if (free(c)) {
                long take = Math.min(rest, length(c));
                rest -= take;
                shorten(c, take);
                if (length(c) == 0) {
                    unlink(c);
                }
            } else {
                crossing = c;
            }
            c = next;
        }
        if (rest > 0) {
            shorten(crossing, rest);
        }
    }
}

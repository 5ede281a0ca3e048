package dev.treen.yield.engine;

import java.util.Arrays;

/** Boards in hand with what lies on them, and what is not placed yet. Trees are shared until they are written to. */
final class State {
    final Folded f;
    BoardTree[] slot = new BoardTree[4];
    int open;
    final int[] left;
    final int[] openOf;
    long weight;
    long leftArea;
    long value;

    State(Folded f) {
        this.f = f;
        left = f.copies.clone();
        openOf = new int[f.stocks];
        for (int t = 0; t < f.types; t++) {
            if (f.endless[t] < 0) {
                leftArea += f.area[t] * left[t];
            }
        }
    }

    /** Takes over everything of another state. */
    void become(State other) {
        if (slot.length < other.open) {
            slot = new BoardTree[other.slot.length];
        }
        System.arraycopy(other.slot, 0, slot, 0, other.open);
        open = other.open;
        System.arraycopy(other.left, 0, left, 0, left.length);
        System.arraycopy(other.openOf, 0, openOf, 0, openOf.length);
        weight = other.weight;
        leftArea = other.leftArea;
        value = other.value;
    }

    State copy() {
        var copy = new State(f);
        copy.become(this);
        return copy;
    }

    /** A copy that shares no tree with this one. */
    State apart() {
        State copy = copy();
        for (int i = 0; i < open; i++) {
            copy.slot[i] = copy.slot[i].copy();
        }
        return copy;
    }

    /** The tree of a slot, its own copy for the change numbered {@code stamp}. */
    BoardTree own(int i, long stamp) {
        BoardTree tree = slot[i];
        if (tree.stamp != stamp) {
            tree = tree.copy();
            tree.stamp = stamp;
            slot[i] = tree;
        }
        return tree;
    }

    int open(int stock, long stamp) {
        if (open == slot.length) {
            slot = Arrays.copyOf(slot, open * 2);
        }
        var tree = new BoardTree(stock, f.flaws[stock].length == 0, f.boardLength[stock], f.boardWidth[stock]);
        tree.stamp = stamp;
        slot[open] = tree;
        openOf[stock]++;
        weight += f.weight[stock];
        return open++;
    }

    void close(int i, long stamp, int[] removed) {
        BoardTree tree = own(i, stamp);
        if (tree.items() > 0) {
            clear(i, 0, stamp, removed);
        }
        openOf[tree.stock]--;
        weight -= f.weight[tree.stock];
        open--;
        slot[i] = slot[open];
        slot[open] = tree;
    }

    void place(int i, int leaf, int type, long x, long y, long l, long w, boolean acrossFirst, long stamp) {
        own(i, stamp).place(leaf, type, x, y, l, w, acrossFirst);
        value += f.value[type];
        if (f.endless[type] < 0) {
            left[type]--;
            leftArea -= f.area[type];
        }
    }

    /** Clears a node; gives how many items went; {@code scratch} is all zero before and after. */
    int clear(int i, int node, long stamp, int[] scratch) {
        own(i, stamp).clear(node, scratch);
        int gone = 0;
        for (int t = 0; t < f.types; t++) {
            int n = scratch[t];
            if (n > 0) {
                gone += n;
                value -= n * f.value[t];
                if (f.endless[t] < 0) {
                    left[t] += n;
                    leftArea += n * f.area[t];
                }
                scratch[t] = 0;
            }
        }
        return gone;
    }

    boolean complete() {
        return leftArea == 0;
    }
}

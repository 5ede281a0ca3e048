package dev.treen.yield.engine;

/** Takes parts out again: a few subtrees of a few boards, or all of one board (ruin, Schrimpf et al. 2000). */
final class Ruiner {
    private final Folded f;
    private final Dice dice;
    private final int[] scratch;
    /** Whether emptied boards are handed back. */
    boolean handBack = true;

    Ruiner(Folded f, Dice dice) {
        this.f = f;
        this.dice = dice;
        scratch = new int[f.types];
    }

    /** Takes out about this many items from at most so many boards. */
    void some(State state, int items, int boards, long stamp) {
        int gone = 0;
        int tries = 0;
        int[] picks = new int[Math.max(1, boards)];
        for (int i = 0; i < picks.length; i++) {
            picks[i] = dice.below(Math.max(1, state.open));
        }
        while (gone < items && state.open > 0 && tries++ < 4 * items + 8) {
            int i = picks[dice.below(picks.length)];
            if (i >= state.open || state.slot[i].items() == 0) {
                i = dice.below(state.open);
            }
            BoardTree tree = state.slot[i];
            if (tree.items() == 0) {
                continue;
            }
            int n = dice.below(tree.nodes());
            while (tree.gone(n) || tree.free(n)) {
                n = n + 1 == tree.nodes() ? 0 : n + 1;
            }
            gone += state.clear(i, n, stamp, scratch);
            if (handBack && state.slot[i].items() == 0) {
                state.close(i, stamp, scratch);
            }
        }
    }

    /** Hands back one board with all its parts. */
    void board(State state, int i, long stamp) {
        state.close(i, stamp, scratch);
    }

    /** Hands back the emptiest boards until the weight is within the limit. */
    void shrink(State state, long limit, long stamp) {
        while (state.open > 0 && state.weight > limit) {
            int worst = 0;
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < state.open; i++) {
                BoardTree tree = state.slot[i];
                double whole = (double) f.boardLength[tree.stock] * f.boardWidth[tree.stock];
                double k = (whole - tree.freeArea()) / Math.max(1, f.weight[tree.stock]) * (0.8 + 0.4 * dice.unit());
                if (k < least) {
                    least = k;
                    worst = i;
                }
            }
            board(state, worst, stamp);
        }
    }
}

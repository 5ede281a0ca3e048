package dev.treen.yield.engine;

import org.jspecify.annotations.Nullable;

/** Most value where no part has a limit on copies: then every board stands alone and is solved exactly by itself. */
final class EndlessBoards {
    private static final long MOST_WORK = 400_000_000_000L;
    private static final int MOST_BOARDS = 1000;

    private EndlessBoards() {
    }

    /** The best layout of all boards, or null where a limit on copies, a blemish that is taken, the size or the budget stands in the way. */
    static @Nullable State solve(Folded f, Budget budget) {
        long boards = 0;
        for (int b = 0; b < f.stocks; b++) {
            boards += f.count[b];
        }
        for (int t = 0; t < f.spare; t++) {
            if (f.copies[t] > 0 && f.endless[t] < 0) {
                return null;
            }
        }
        if (boards > MOST_BOARDS || f.blemishes.anyTaken()) {
            return null;
        }
        var state = new State(f);
        for (int b = 0; b < f.stocks; b++) {
            for (int i = 0; i < f.count[b]; i++) {
                if (!board(f, b, state, budget)) {
                    return null;
                }
            }
        }
        return state;
    }

    private static boolean board(Folded f, int b, State state, Budget budget) {
        boolean flawed = f.flaws[b].length > 0;
        Endless table = Endless.of(f, b, MOST_WORK, flawed);
        if (table == null || !budget.spend(table.work() / Endless.WORK_A_STEP) || !table.fill(f.value, budget)) {
            return false;
        }
        int slot = state.open(b, 1);
        if (!flawed) {
            table.lay(state, slot, 0, f.value, 1);
            return true;
        }
        Flawed programme = Flawed.of(f, b, table, budget);
        if (programme == null || programme.value() < 0) {
            return false;
        }
        programme.lay(state, slot, f.value, 1);
        return true;
    }
}

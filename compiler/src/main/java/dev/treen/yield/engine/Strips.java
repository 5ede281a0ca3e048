package dev.treen.yield.engine;

import java.util.Arrays;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * A {@link Puzzle} strip by strip: of the blocks that reach from side to side one is sawn off, and what remains is a smaller
 * puzzle of fewer parts. Strips of few large parts come first, so that many small ones are left for the end, where they have
 * the most ways to lie. Where the end does not work out, the last strips are drawn anew a few times.
 */
final class Strips {
    /** Searches for strips in one try, and for each place. */
    private static final int MOST_SEARCHES = 60;

    private static final int TURNS = 3;

    /** One of so many strips is drawn, the first ones more often. */
    private static final int CHOICE = 12;

    /** So few parts are a puzzle of their own, which no number of strips cuts short. */
    private static final int FEW = 14;

    private final Puzzle puzzle;
    private final int most;
    private final Consumer<State> close;
    private int searches = MOST_SEARCHES;
    private long stamp = 1L << 50;
    private long nearest = Long.MAX_VALUE;

    Strips(Puzzle puzzle, int mostBlocks, Consumer<State> close) {
        this.puzzle = puzzle;
        this.most = mostBlocks;
        this.close = close;
    }

    /** All parts within the limits on the empty board of a state, or null. */
    @Nullable
    State take(State state, int[] limit) {
        return rest(state, 0, puzzle.wholeX(), puzzle.wholeY(), limit);
    }

    private @Nullable State rest(State state, int leaf, int x, int y, int[] limit) {
        int items = Arrays.stream(limit).sum();
        for (int turn = 0; turn < TURNS && searches > 0 && !puzzle.budget.over(); turn++) {
            searches--;
            int enough = items <= FEW ? Integer.MAX_VALUE : 1 + puzzle.dice.below(CHOICE);
            int whole = puzzle.search(x, y, limit, most, enough, true);
            if (whole >= 0) {
                State made = state.copy();
                puzzle.lay(made, leaf, whole, ++stamp);
                return made;
            }
            if (puzzle.acrossCount == 0) {
                nearly(state, leaf);
                if (puzzle.exhausted()) {
                    return null;
                }
                continue;
            }
            int strip = puzzle.across[Math.min(puzzle.acrossCount - 1, puzzle.dice.below(CHOICE))];
            Blocks blocks = puzzle.blocks;
            boolean along = blocks.y[strip] == y;
            long size = along ? blocks.x[strip] : blocks.y[strip];
            int[] fewer = limit.clone();
            for (int t = 0; t < fewer.length; t++) {
                fewer[t] -= blocks.count(strip, t);
            }
            State made = state.copy();
            int rest = made.own(0, ++stamp).cut(leaf, along ? BoardTree.ROW : BoardTree.STACK, size);
            puzzle.lay(made, made.slot[0].before(rest), strip, stamp);
            State all = along
                    ? rest(made, rest, x - (int) size, y, fewer)
                    : rest(made, rest, x, y - (int) size, fewer);
            if (all != null) {
                return all;
            }
        }
        return null;
    }

    // The strips so far with the largest block that was found for the rest.
    private void nearly(State state, int leaf) {
        if (puzzle.largest < 0) {
            return;
        }
        long left = state.leftArea - puzzle.blocks.value[puzzle.largest];
        if (left < nearest) {
            nearest = left;
            State made = state.copy();
            int n = puzzle.largest;
            BoardTree tree = made.own(0, ++stamp);
            int at = leaf;
            if (puzzle.blocks.x[n] < tree.length(at)) {
                at = tree.before(tree.cut(at, BoardTree.ROW, puzzle.blocks.x[n]));
            }
            if (puzzle.blocks.y[n] < tree.width(at)) {
                at = tree.before(tree.cut(at, BoardTree.STACK, puzzle.blocks.y[n]));
            }
            puzzle.lay(made, at, n, stamp);
            close.accept(made);
        }
    }
}

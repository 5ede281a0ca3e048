package dev.treen.yield;

import java.util.List;

/**
 * Where every part comes from.
 *
 * @param boards the boards taken
 * @param unplaced what found no place, with the reason
 * @param objective what was looked for
 * @param score weight of the boards taken, value of the parts cut, or length used, by the objective
 * @param bound what no layout can beat
 * @param proved whether score and bound meet and nothing is left out that could have been cut
 * @param steps how many steps the search took
 */
public record Layout(
        List<BoardLayout> boards,
        List<Unplaced> unplaced,
        Objective objective,
        long score,
        Bound bound,
        boolean proved,
        long steps)
        implements Outcome {

    /** Keeps its own copies of the lists. */
    public Layout {
        boards = List.copyOf(boards);
        unplaced = List.copyOf(unplaced);
    }

    /** How far the score may be from the best possible, as a share of the score. */
    public double gap() {
        return score == 0 ? 0 : Math.abs((double) score - bound.value()) / Math.abs((double) score);
    }

    /** Whether every part has its place. */
    public boolean complete() {
        return unplaced.isEmpty();
    }
}

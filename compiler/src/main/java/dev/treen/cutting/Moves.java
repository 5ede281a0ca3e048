package dev.treen.cutting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What became of an earlier layout.
 *
 * @param moved parts that lie elsewhere now
 * @param resized parts that lie where they lay, at another size
 * @param added parts that had no place before
 * @param gone parts that have none any more
 * @param stayed how many lie where they lay
 * @param anew whether all is laid out anew, because no layout that moves less costs nearly as little
 * @param more what staying costs more than a layout made anew, as a share of that
 * @param cut parts that are cut already and stay where they were
 * @param lost parts that are cut already and whose place is not there any more
 */
public record Moves(
        List<Move> moved,
        List<String> resized,
        List<String> added,
        List<String> gone,
        int stayed,
        boolean anew,
        double more,
        List<String> cut,
        List<String> lost) {
    /** Where there was no earlier layout. */
    public static final Moves NONE = new Moves(
            List.of(), List.of(), List.of(), List.of(), 0, false, 0, List.of(), List.of());

    /** Keeps its own copies. */
    public Moves {
        moved = List.copyOf(moved);
        resized = List.copyOf(resized);
        added = List.copyOf(added);
        gone = List.copyOf(gone);
        cut = List.copyOf(cut);
        lost = List.copyOf(lost);
    }

    /** A part that lies elsewhere; the rectangles are at rough size. */
    public record Move(String part, String fromBoard, Rectangle from, String toBoard, Rectangle to) {}

    /** Whether there is nothing to say: all lies as it lay. */
    public boolean none() {
        return moved.isEmpty() && resized.isEmpty() && added.isEmpty() && gone.isEmpty() && lost.isEmpty();
    }

    static Moves of(EarlierLayout earlier, List<BoardCut> now, Set<String> made, boolean anew, double more) {
        Map<String, EarlierLayout.Spot> after = new HashMap<>();
        List<Move> moved = new ArrayList<>();
        List<String> resized = new ArrayList<>();
        List<String> added = new ArrayList<>();
        List<String> cut = new ArrayList<>();
        List<String> lost = new ArrayList<>();
        int stayed = 0;
        Map<String, EarlierLayout.Spot> before = earlier.spots();
        for (BoardCut board : now) {
            for (BoardCut.OnBoard part : board.parts()) {
                var is = new EarlierLayout.Spot(board.name(), part.area());
                EarlierLayout.Spot was = before.get(part.name());
                after.put(part.name(), is);
                if (was == null) {
                    added.add(part.name());
                    continue;
                }
                boolean here = was.board().equals(is.board()) && was.area().x().equals(is.area().x())
                        && was.area().y().equals(is.area().y());
                boolean same = here && was.equals(is);
                stayed += same ? 1 : 0;
                if (!here) {
                    moved.add(new Move(part.name(), was.board(), was.area(), is.board(), is.area()));
                } else if (!same) {
                    resized.add(part.name());
                }
                if (made.containsAll(part.blank().parts())) {
                    (same ? cut : lost).add(part.name());
                }
            }
        }
        List<String> gone = before.keySet().stream().filter(part -> !after.containsKey(part)).toList();
        return new Moves(moved, resized, added, gone, stayed, anew && !moved.isEmpty(), more, cut, lost);
    }
}

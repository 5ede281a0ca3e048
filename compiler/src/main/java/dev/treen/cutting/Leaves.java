package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.Comparator;
import java.util.Optional;

/**
 * Into how many leaves a board is resawn: as many as still give the thickest part that may come from it. A leaf is
 * {@code (T − 2·face − (n−1)·(kerf + 2·resaw))/n} (rules of the trade A-04). A sheet is used as it is.
 *
 * @param board the board
 * @param count how many leaves
 * @param thickness of each, once flat
 */
record Leaves(Board board, int count, Length thickness) {
    private static final int MOST = 6;

    static Leaves of(Board board, Joined joined) {
        if (board.sheet()) {
            return new Leaves(board, 1, board.thickness().value());
        }
        Length whole = leaf(board, 1);
        Optional<Length> thickest = joined.parts().stream()
                .filter(p -> mayComeFrom(p, board))
                .map(p -> p.thickness().value())
                .filter(t -> t.compareTo(whole) <= 0)
                .max(Comparator.naturalOrder());
        int count = 1;
        while (thickest.isPresent() && count < MOST && leaf(board, count + 1).compareTo(thickest.get()) >= 0) {
            count++;
        }
        return new Leaves(board, count, leaf(board, count));
    }

    /** A part that names a board comes from no other. */
    static boolean mayComeFrom(FinishedPart part, Board board) {
        return part.part().from().map(b -> b.name().equals(board.name())).orElse(true);
    }

    static Length leaf(Board board, int count) {
        Length faces = board.allow().planing().value().times(2);
        Length between = board.allow().kerf().value().plus(board.allow().resaw().value().times(2));
        return board.thickness()
                .value()
                .minus(faces)
                .minus(between.times(count - 1L))
                .dividedBy(count);
    }

    /** Whether a leaf gives the part's thickness: solid wood is planed down to it, a sheet has it. */
    boolean gives(FinishedPart part) {
        int over = thickness.compareTo(part.thickness().value());
        return board.sheet() ? over == 0 : over >= 0;
    }
}

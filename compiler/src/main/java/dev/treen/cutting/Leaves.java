package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.Comparator;
import java.util.Optional;

/**
 * Into how many leaves a board is resawn: as many as still give the thickest part that comes from it. A leaf is
 * {@code (T − 2·face − (n−1)·(kerf + 2·resaw))/n} (rules of the trade A-04).
 *
 * @param board the board
 * @param count how many leaves
 * @param thickness of each, once flat
 */
record Leaves(Board board, int count, Length thickness) {
    private static final int MOST = 6;

    static Leaves of(Board board, Joined joined) {
        Optional<Length> thickest = joined.parts().stream()
                .filter(p -> p.part().from().map(b -> b.name().equals(board.name())).orElse(false))
                .map(p -> p.thickness().value())
                .max(Comparator.naturalOrder());
        int count = 1;
        while (!board.sheet()
                && thickest.isPresent()
                && count < MOST
                && leaf(board, count + 1).compareTo(thickest.get()) >= 0) {
            count++;
        }
        return new Leaves(board, count, board.sheet() ? board.thickness().value() : leaf(board, count));
    }

    private static Length leaf(Board board, int count) {
        Length faces = board.allow().planing().value().times(2);
        Length between = board.allow().kerf().value().plus(board.allow().resaw().value().times(2));
        return board.thickness()
                .value()
                .minus(faces)
                .minus(between.times(count - 1L))
                .dividedBy(count);
    }

    boolean thickEnoughFor(FinishedPart part) {
        return thickness.compareTo(part.thickness().value()) >= 0;
    }
}

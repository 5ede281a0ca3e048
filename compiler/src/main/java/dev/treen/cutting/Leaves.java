package dev.treen.cutting;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Leaves of one thickness that a board, or a piece ripped from one, is resawn into. A leaf is
 * {@code (T − 2·face − (n−1)·(kerf + 2·resaw))/n} (rules of the trade A-04), T being what is left of the board once a hollow
 * is planed out of it. A sheet is used as it is.
 *
 * @param source the board as it lies on the rack
 * @param board what is laid out: the same, or a piece ripped from it
 * @param count how many leaves
 * @param thickness of each, once flat
 */
record Leaves(Board source, Board board, int count, Length thickness) {
    static final int MOST = 6;

    static Leaves of(Ripped ripped, int count) {
        Board board = ripped.piece();
        return new Leaves(
                ripped.source(), board, count, board.sheet() ? board.thickness().value() : leaf(board, count));
    }

    /**
     * Into how many leaves a board may be resawn, the likeliest first: as many as still give the thickest part that may come
     * from it, then fewer, then more as long as a leaf gives any part.
     *
     * @param thicknesses of the parts that may come from it
     */
    static List<Integer> counts(Ripped ripped, Set<Length> thicknesses, Joined joined) {
        Board board = ripped.piece();
        if (board.sheet()) {
            return List.of(1);
        }
        if (board.leaves().isPresent()) {
            return List.of(board.leaves().get());
        }
        if (!joined.project().settings().layout().resaw()) {
            return List.of(1);
        }
        Length whole = leaf(board, 1);
        List<Length> wanted = thicknesses.stream().filter(thick -> thick.compareTo(whole) <= 0).toList();
        if (wanted.isEmpty()) {
            return List.of(1);
        }
        int likeliest = most(board, wanted.stream().max(Comparator.naturalOrder()).orElseThrow());
        int last = most(board, wanted.stream().min(Comparator.naturalOrder()).orElseThrow());
        List<Integer> counts = new ArrayList<>();
        for (int count = likeliest; count >= 1; count--) {
            counts.add(count);
        }
        for (int count = likeliest + 1; count <= last; count++) {
            counts.add(count);
        }
        return counts;
    }

    private static int most(Board board, Length thick) {
        int count = 1;
        while (count < MOST && leaf(board, count + 1).compareTo(thick) >= 0) {
            count++;
        }
        return count;
    }

    /** A part that names a board or a species comes from no other. */
    static boolean mayComeFrom(FinishedPart part, Board source) {
        return part.part().mayComeFrom(source);
    }

    static Length leaf(Board board, int count) {
        Length faces = board.allow().planing().value().times(2);
        return board.thickness()
                .value()
                .minus(board.cup().map(cup -> cup.value()).orElse(Length.ZERO))
                .minus(faces)
                .minus(between(board).times(count - 1L))
                .dividedBy(count);
    }

    /** What a resaw cut takes, with both its faces planed. */
    static Length between(Board board) {
        return board.allow().kerf().value().plus(board.allow().resaw().value().times(2));
    }

    /** Whether a leaf gives pieces of a thickness, so many on each other: solid wood is planed down, a sheet has it. */
    boolean gives(Length wanted, int pieces) {
        Length all = wanted.times(pieces).plus(between(board).times(pieces - 1L));
        int over = thickness.compareTo(all);
        return board.sheet() ? over == 0 && pieces == 1 : over >= 0;
    }

    /** Whether a leaf gives the part, in one piece or as staves. */
    boolean gives(FinishedPart part) {
        Optional<?> glued = part.part().glueUp();
        return gives(Staving.thickness(part), 1) && (glued.isEmpty() || !board.sheet());
    }
}

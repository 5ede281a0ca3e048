package dev.treen.yield;

import java.util.Optional;
import java.util.Set;

/**
 * A part to be cut, at its rough size.
 *
 * @param id name, unique in the problem
 * @param length along the grain
 * @param width across the grain
 * @param copies how many are wanted; for {@link Objective#MOST_VALUE} at most so many
 * @param mayTurn whether it may lie with its length across the board's grain
 * @param klasses the classes of stock it accepts; none means any
 * @param onlyFrom the stocks it must come from, where that was asked
 * @param value what one copy is worth when the most value is looked for
 */
public record Piece(
        String id,
        long length,
        long width,
        int copies,
        boolean mayTurn,
        Set<String> klasses,
        Optional<Set<String>> onlyFrom,
        long value) {

    /** No limit on copies; only for {@link Objective#MOST_VALUE}. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    /** Keeps its own copies of the sets. */
    public Piece {
        klasses = Set.copyOf(klasses);
        onlyFrom = onlyFrom.map(Set::copyOf);
    }

    /** A part that may come from any board, grain along the board, worth its area. */
    public static Piece of(String id, long length, long width, int copies) {
        return new Piece(id, length, width, copies, false, Set.of(), Optional.empty(), length * width);
    }

    /** The same with another value. */
    public Piece worth(long amount) {
        return new Piece(id, length, width, copies, mayTurn, klasses, onlyFrom, amount);
    }

    /** The same, free to turn. */
    public Piece turning() {
        return new Piece(id, length, width, copies, true, klasses, onlyFrom, value);
    }

    /** The same, from these boards only. */
    public Piece from(Set<String> stocks) {
        return new Piece(id, length, width, copies, mayTurn, klasses, Optional.of(stocks), value);
    }

    /** Whether its class and its own wish let it come from a stock; size is another question. */
    public boolean accepts(Stock stock) {
        return (klasses.isEmpty() || klasses.contains(stock.klass()))
                && onlyFrom.map(wanted -> wanted.contains(stock.id())).orElse(true);
    }
}

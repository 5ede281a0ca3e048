package dev.treen.yield;

import java.util.List;
import java.util.Map;
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
 * @param ways the ways it may lie where it takes blemishes; none where it takes none
 */
public record Piece(
        String id,
        long length,
        long width,
        int copies,
        boolean mayTurn,
        Set<String> klasses,
        Optional<Set<String>> onlyFrom,
        long value,
        List<Way> ways) {

    /** No limit on copies; only for {@link Objective#MOST_VALUE}. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    /** Keeps its own copies of the sets. */
    public Piece {
        klasses = Set.copyOf(klasses);
        onlyFrom = onlyFrom.map(Set::copyOf);
        ways = List.copyOf(ways);
    }

    /** A part that keeps clear of every blemish. */
    public Piece(
            String id, long length, long width, int copies, boolean mayTurn, Set<String> klasses,
            Optional<Set<String>> onlyFrom, long value) {
        this(id, length, width, copies, mayTurn, klasses, onlyFrom, value, List.of());
    }

    /**
     * A way in which a part may lie, one face or the other up, one end or the other to the left.
     *
     * @param name told with the layout, so that the part is laid so
     * @param keepClear by the kind of blemish that the part may have in it: the rectangles of the part, from its left end
     *     and lower edge as it lies, into which no such blemish may reach; a kind that is not named it may not have
     */
    public record Way(String name, Map<String, List<Rect>> keepClear) {
        /** Keeps its own copy. */
        public Way {
            keepClear = Map.copyOf(keepClear);
        }
    }

    /** A part that may come from any board, grain along the board, worth its area. */
    public static Piece of(String id, long length, long width, int copies) {
        return new Piece(id, length, width, copies, false, Set.of(), Optional.empty(), length * width);
    }

    /** The same with another value. */
    public Piece worth(long amount) {
        return new Piece(id, length, width, copies, mayTurn, klasses, onlyFrom, amount, ways);
    }

    /** The same, free to turn. */
    public Piece turning() {
        return new Piece(id, length, width, copies, true, klasses, onlyFrom, value, ways);
    }

    /** The same, from these boards only. */
    public Piece from(Set<String> stocks) {
        return new Piece(id, length, width, copies, mayTurn, klasses, Optional.of(stocks), value, ways);
    }

    /** The same, lying in one of these ways where it takes blemishes. */
    public Piece lying(List<Way> these) {
        return new Piece(id, length, width, copies, mayTurn, klasses, onlyFrom, value, these);
    }

    /** Whether its class and its own wish let it come from a stock; size is another question. */
    public boolean accepts(Stock stock) {
        return (klasses.isEmpty() || klasses.contains(stock.klass()))
                && onlyFrom.map(wanted -> wanted.contains(stock.id())).orElse(true);
    }
}

package dev.treen.model;

import dev.treen.quantity.Size;
import dev.treen.source.Span;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a board costs, as it is sold.
 *
 * @param amount of money for one {@code per}
 * @param at where it is written
 */
public record Price(double amount, Per per, Span at) {
    /** By what boards are sold. The inch is 25.4 mm (international yard and pound agreement of 1959). */
    public enum Per {
        /** The whole board or sheet. */
        EACH("each", "each", 1),
        /** A cubic metre. */
        CUBIC_METRE("cubic_metre", "a cubic metre", 1e9),
        /** A board foot: 144 cubic inches. */
        BOARD_FOOT("board_foot", "a board foot", 144 * 25.4 * 25.4 * 25.4),
        /** A square metre. */
        SQUARE_METRE("square_metre", "a square metre", 1e6),
        /** A square foot. */
        SQUARE_FOOT("square_foot", "a square foot", 304.8 * 304.8);

        private final String word;
        private final String phrase;
        private final double mm;

        Per(String word, String phrase, double mm) {
            this.word = word;
            this.phrase = phrase;
            this.mm = mm;
        }

        /** How the language writes it. */
        public String word() {
            return word;
        }

        /** How a sentence says it. */
        public String phrase() {
            return phrase;
        }
    }

    /** What {@code boards} cost together; none where the price of one of them is not known. */
    public static OptionalDouble of(List<Board> boards) {
        double sum = 0;
        for (Board board : boards) {
            if (board.price().isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += board.price().get().of(board);
        }
        return OptionalDouble.of(sum);
    }

    /** What {@code board} costs at this price. */
    public double of(Board board) {
        return of(new Size(board.length().value(), board.width().value(), board.thickness().value()));
    }

    /** What something of this size costs at this price. */
    public double of(Size size) {
        double face = size.length().toDoubleMm() * size.width().toDoubleMm();
        double amountOf = switch (per) {
            case EACH -> 1;
            case SQUARE_METRE, SQUARE_FOOT -> face;
            case CUBIC_METRE, BOARD_FOOT -> face * size.thickness().toDoubleMm();
        };
        return amount * amountOf / per.mm;
    }
}

package dev.treen.yield;

import java.util.Optional;

/**
 * Copies of a piece that no board gave.
 *
 * @param pieceId which piece
 * @param copies how many of its copies
 * @param reason why
 */
public record Unplaced(String pieceId, int copies, Reason reason) {

    /** Why a part is not in the layout, with the nearest change that would let it in. */
    public sealed interface Reason
            permits Reason.NoStockAccepted, Reason.TooLarge, Reason.DefectInTheWay, Reason.NoRoom, Reason.NotWorthIt {

        /** No stock is of a class the part accepts, or on its list. */
        record NoStockAccepted() implements Reason {}

        /**
         * Larger than every accepted board, even one that is clear.
         *
         * @param stockId the board that comes nearest
         * @param tooLong by how much it is too long there, 0 if it is not
         * @param tooWide by how much it is too wide there, 0 if it is not
         * @param otherStock a board of another class that would hold it
         */
        record TooLarge(String stockId, long tooLong, long tooWide, Optional<String> otherStock) implements Reason {}

        /**
         * It would fit the board's size, but lies on a defect wherever it is put.
         *
         * @param stockId the board that comes nearest
         * @param defect one that stands in the way there
         * @param shorterBy how much shorter it would have to be to fit between the defects
         * @param narrowerBy how much narrower it would have to be instead
         */
        record DefectInTheWay(String stockId, Defect defect, long shorterBy, long narrowerBy) implements Reason {}

        /**
         * It fits a board alone, but the search found no place beside the others.
         *
         * @param moreOf a stock of which one more board would hold it
         * @param certain whether it is proved that no layout has room for everything
         */
        record NoRoom(String moreOf, boolean certain) implements Reason {}

        /** Left out because other parts are worth more there. */
        record NotWorthIt() implements Reason {}
    }
}

package dev.treen.yield;

import java.util.List;

/**
 * Parts that come out of one strip in this order with one kerf between neighbours, so that the figure runs on from part
 * to part. Each mention takes one copy of the piece.
 *
 * @param pieceIds the pieces in order along the grain
 */
public record Run(List<String> pieceIds) {

    /** Keeps its own copy of the list. */
    public Run {
        pieceIds = List.copyOf(pieceIds);
    }
}

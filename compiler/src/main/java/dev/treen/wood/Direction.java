package dev.treen.wood;

/** Which size of a board is meant. */
public enum Direction {
    /** Across the grain, along the wide face. */
    WIDTH,
    /** Across the grain, square to the wide face. */
    THICKNESS,
    /** Along the grain. */
    LENGTH
}

package dev.treen.yield;

/** What makes one layout better than another, before offcuts and cuts are compared. */
public enum Objective {
    /** All parts, and the boards taken weigh the least. With every cost 1 these are the fewest boards. */
    ALL_PARTS_LEAST_COST,
    /** The parts cut are worth the most; every board given may be used and costs nothing. */
    MOST_VALUE,
    /** All parts from the first board, using the least of its length: what must be bought of a given width. */
    SHORTEST_BOARD
}

package dev.treen.cutting;

import java.util.List;
import java.util.Map;

/**
 * How boards are resawn and wide parts divided, before anything is laid out.
 *
 * @param leaves into how many leaves each board is resawn, by its name
 * @param glued the parts that are glued up, by their names
 */
record Division(Map<String, Integer> leaves, Map<String, Glued> glued) {
    /** Keeps its own copies. */
    Division {
        leaves = Map.copyOf(leaves);
        glued = Map.copyOf(glued);
    }

    int leaves(String board) {
        return leaves.getOrDefault(board, 1);
    }

    /** How many staves there are in all. */
    int staves() {
        return glued.values().stream().map(Glued::staves).mapToInt(List::size).sum();
    }
}

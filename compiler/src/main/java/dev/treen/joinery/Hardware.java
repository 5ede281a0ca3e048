package dev.treen.joinery;

import dev.treen.quantity.Length;
import java.util.List;

/**
 * What a joint takes besides wood and glue.
 *
 * @param kind what it is
 * @param sizes what it is asked for by, as thickness and length; may be empty
 * @param count how many
 */
public record Hardware(Kind kind, List<Length> sizes, int count) {
    /** Keeps its own copy. */
    public Hardware {
        sizes = List.copyOf(sizes);
    }

    /** What a shop calls it. */
    public enum Kind {
        /** Wood screws. */
        SCREW("screws"),
        /** Nails or brads. */
        NAIL("nails"),
        /** Hinges, a single one each. */
        HINGE("hinges"),
        /** Dowels. */
        DOWEL("dowels"),
        /** Buttons that hold a top. */
        BUTTON("buttons with a screw each");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word for several of them. */
        public String word() {
            return word;
        }
    }
}

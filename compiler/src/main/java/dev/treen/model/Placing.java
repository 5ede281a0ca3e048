package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.source.Span;
import java.util.List;

/**
 * How a part lies in the assembly. Its seen size fills a box whose lowest corner (left, front, foot) is {@code at},
 * whatever way its length and width point.
 *
 * @param length the way its grain points
 * @param width the way its width points
 * @param thickness the third way, always the positive one
 * @param at x, y, z of the lowest corner
 */
public record Placing(Direction length, Direction width, Direction thickness, List<Length> at, Span span) {
    /** Keeps its own copy. */
    public Placing {
        at = List.copyOf(at);
    }

    /** Which of length (0), width (1) and thickness (2) lies along {@code axis}. */
    public int measureAlong(int axis) {
        if (length.axis() == axis) {
            return 0;
        }
        return width.axis() == axis ? 1 : 2;
    }
}

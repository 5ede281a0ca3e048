package dev.treen.model;

import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import dev.treen.source.Span;
import java.util.List;

/**
 * How a part lies in the assembly: a box of its seen size with one corner at {@code at}, whatever way its length and
 * width point.
 *
 * @param length the way its grain points
 * @param width the way its width points
 * @param thickness the third way, always the positive one
 * @param at x, y, z of that corner
 * @param corner which corner: the lowest as a project writes it, another where a pattern has been turned
 * @param coordinates where x, y and z are written; none where they have been turned or moved since
 */
public record Placing(
        Direction length, Direction width, Direction thickness, List<Length> at, Corner corner, Span span,
        List<Span> coordinates) {
    /** Keeps its own copy. */
    public Placing {
        at = List.copyOf(at);
        coordinates = List.copyOf(coordinates);
    }

    /** A corner of a box: for each axis whether it is the end towards right, back, top. */
    public record Corner(boolean right, boolean back, boolean top) {
        /** Left, front, foot. */
        public static final Corner LOWEST = new Corner(false, false, false);

        /** Whether it is the far end along {@code axis}. */
        public boolean high(int axis) {
            return axis == 0 ? right : axis == 1 ? back : top;
        }
    }

    /** Which of length (0), width (1) and thickness (2) lies along {@code axis}. */
    public int measureAlong(int axis) {
        if (length.axis() == axis) {
            return 0;
        }
        return width.axis() == axis ? 1 : 2;
    }

    /** Where the box of {@code part}, lying so, begins along {@code axis}. */
    public Length low(Part part, int axis) {
        Length corner = at.get(axis);
        return corner().high(axis) ? corner.minus(extent(part, axis)) : corner;
    }

    /** Where the box of {@code part}, lying so, ends along {@code axis}. */
    public Length high(Part part, int axis) {
        Length corner = at.get(axis);
        return corner().high(axis) ? corner : corner.plus(extent(part, axis));
    }

    /** How far {@code part}, lying so, reaches along {@code axis} in the assembly. */
    public Length extent(Part part, int axis) {
        Size size = part.assembled();
        return switch (measureAlong(axis)) {
            case 0 -> size.length();
            case 1 -> size.width();
            default -> size.thickness();
        };
    }
}

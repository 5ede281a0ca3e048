package dev.treen.quantity;

import java.util.List;
import java.util.Optional;

/**
 * The three measures of a part or a board. The length is along the grain, even where it is the shorter.
 *
 * @param length    along the grain
 * @param width     across the grain
 * @param thickness through the face
 */
public record Size(Length length, Length width, Length thickness) {
    /** The names by which a project asks for one measure, in the order in which a size is written. */
    public static final List<String> NAMES = List.of("length", "width", "thickness");

    /** The measure of that name (see {@link #NAMES}), or nothing if a size has no such measure. */
    public Optional<Length> measure(String name) {
        return switch (name) {
            case "length" -> Optional.of(length);
            case "width" -> Optional.of(width);
            case "thickness" -> Optional.of(thickness);
            default -> Optional.empty();
        };
    }

    /** Each measure made longer by the one beside it. */
    public Size plus(Length alongGrain, Length acrossGrain, Length throughFace) {
        return new Size(length.plus(alongGrain), width.plus(acrossGrain), thickness.plus(throughFace));
    }

    /** The same size with another length. */
    public Size withLength(Length other) {
        return new Size(other, width, thickness);
    }

    /** The same size with another width. */
    public Size withWidth(Length other) {
        return new Size(length, other, thickness);
    }

    /** The same size with another thickness. */
    public Size withThickness(Length other) {
        return new Size(length, width, other);
    }

    /** Whether a piece of {@code other} can be had from this without turning it. */
    public boolean holds(Size other) {
        return length.compareTo(other.length) >= 0
                && width.compareTo(other.width) >= 0
                && thickness.compareTo(other.thickness) >= 0;
    }

    /** Whether all three measures are above zero. */
    public boolean isReal() {
        return length.signum() > 0 && width.signum() > 0 && thickness.signum() > 0;
    }

    /** The area of one face, length by width. */
    public Quantity faceArea() {
        return new Quantity(length.mm().multiply(width.mm()), Dimension.AREA);
    }

    /** The volume of wood in the whole piece. */
    public Quantity volume() {
        return new Quantity(length.mm().multiply(width.mm()).multiply(thickness.mm()), Dimension.VOLUME);
    }

    /** The size as a project writes it, e.g. {@code 178 x 86.3 x 9 mm}. */
    public String text(LengthFormat format) {
        return format.figure(length) + " x " + format.figure(width) + " x " + format.figure(thickness) + " "
                + format.unit();
    }
}

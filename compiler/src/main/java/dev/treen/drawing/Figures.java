package dev.treen.drawing;

import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import java.util.Optional;

/**
 * How a drawing writes its figures: in the project's own unit, and where both are wanted in brackets behind it in the other
 * (dual dimensioning, ASME Y14.5; from memory).
 *
 * @param own the project's unit
 * @param beside the other one, where it is wanted
 */
public record Figures(LengthFormat own, Optional<LengthFormat> beside) {

    /** The project's own unit alone. */
    public static Figures of(Settings settings) {
        return new Figures(settings.format(), Optional.empty());
    }

    /** A bare figure: {@code 57}, or {@code 57 [2 1/4]}. */
    String figure(Length length) {
        return own.figure(length) + beside.map(other -> " [" + other.figure(length) + "]").orElse("");
    }

    /** With its unit, for those who hear the drawing. */
    String text(Length length) {
        return own.text(length) + beside.map(other -> " [" + other.text(length) + "]").orElse("");
    }
}

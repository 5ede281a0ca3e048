package dev.treen.quantity;

/**
 * How far something leans: an exact angle, or an exact slope. One cannot be turned into the other without loss, so
 * each is kept as it was written, and only what is drawn or set out is worked out.
 */
public sealed interface Incline permits Angle, Slope {
    /** Degrees, as near as a floating number comes. */
    double toDoubleDegrees();

    /** Rise for a run of one, as near as a floating number comes. */
    double toDoubleTangent();

    /** As a person reads it: {@code 7.5°} or {@code 1:8}. */
    String text();
}

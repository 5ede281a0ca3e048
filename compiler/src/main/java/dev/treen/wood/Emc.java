package dev.treen.wood;

import java.util.Optional;

/** The moisture content wood comes to in an air, or why it cannot be told. */
public sealed interface Emc {

    /**
     * Moisture content.
     *
     * @param percent of the ovendry mass
     * @param air the air it belongs to; empty where the moisture itself was given
     * @param citation the equation or table, or the project
     */
    record Moisture(double percent, Optional<Air> air, Citation citation) implements Emc {}

    /**
     * The air lies outside what the equation was fitted to.
     *
     * @param what {@code temperature} or {@code humidity}
     * @param given the value that was given
     * @param from the least value that can be used
     * @param to the greatest value that can be used
     * @param unit {@code degC} or {@code % RH}
     * @param citation where the range comes from
     */
    record OutOfRange(String what, double given, double from, double to, String unit, Citation citation)
            implements Emc {}

    /** The moisture in percent, {@code otherwise} where it cannot be told. */
    default double percentOr(double otherwise) {
        return switch (this) {
            case Moisture moisture -> moisture.percent();
            case OutOfRange range -> otherwise;
        };
    }
}

package dev.treen.model;

/**
 * How the growth rings meet the wide face: 0° flat, 90° quarter.
 *
 * @param degrees the angle used in sums
 * @param word as the project says it; {@code flat} and assumed where it does not
 * @param assumed whether the project was silent
 */
public record Rings(double degrees, String word, boolean assumed) {
    /** Taken where a project is silent: the angle at which wide faces move most. */
    public static final Rings ASSUMED = new Rings(0, "flat", true);
}

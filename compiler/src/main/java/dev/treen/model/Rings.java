package dev.treen.model;

import java.util.List;

/**
 * How the growth rings meet the wide face: 0° flat, 90° quarter.
 *
 * @param degrees the angle used in sums; of rings that vary, the one that moves as their mean
 * @param word as the project says it; {@code flat} and assumed where it does not
 * @param assumed whether the project was silent
 * @param staves of a glue-up whose staves differ, side by side and equally wide; else empty
 */
public record Rings(double degrees, String word, boolean assumed, List<Rings> staves) {
    /** Taken where a project is silent: the angle at which wide faces move most. */
    public static final Rings ASSUMED = new Rings(0, "flat", true);

    /** Keeps its own copy. */
    public Rings {
        staves = List.copyOf(staves);
    }

    /** Alike over the whole width. */
    public Rings(double degrees, String word, boolean assumed) {
        this(degrees, word, assumed, List.of());
    }

    /**
     * Rings whose angle goes evenly from one to the other over the width, as in a wide rift-sawn board. A width moves by
     * {@code C_T cos²θ + C_R sin²θ} (M-03), so only the mean of sin²θ counts, which over an even range from a to b is
     * {@code 1/2 − (sin 2b − sin 2a) / (4(b − a))}: derived.
     */
    public static Rings between(Rings from, Rings to) {
        double a = Math.toRadians(from.degrees);
        double b = Math.toRadians(to.degrees);
        double mean = 0.5 - (Math.sin(2 * b) - Math.sin(2 * a)) / (4 * (b - a));
        return new Rings(angle(mean), from.word + ".." + to.word, false);
    }

    /** Staves of one width, glued edge to edge: the whole moves by the mean of theirs. */
    public static Rings glued(List<Rings> staves) {
        double mean = staves.stream()
                .mapToDouble(stave -> Math.pow(Math.sin(Math.toRadians(stave.degrees)), 2))
                .average()
                .orElse(0);
        return new Rings(angle(mean), String.join(", ", staves.stream().map(Rings::word).toList()), false, staves);
    }

    /** The single angle with this sin². */
    private static double angle(double sinSquared) {
        return Math.toDegrees(Math.asin(Math.sqrt(Math.clamp(sinSquared, 0, 1))));
    }
}

package dev.treen.wood;

/**
 * The moisture of a part at the bench and at the extremes of its life, in percent.
 *
 * @param bench when it is cut and fitted
 * @param wet in the wettest season of its place
 * @param dry in the driest season of its place
 */
public record Seasons(double bench, double wet, double dry) {

    /**
     * The wettest the finished part ever is. A board wetter at the bench than it will ever be again is wettest
     * there, and what is tight then counts.
     */
    public double wettest() {
        return Math.max(bench, wet);
    }

    /** The driest the finished part ever is, the bench included. */
    public double driest() {
        return Math.min(bench, dry);
    }

    /** Wettest less driest, in points. */
    public double swing() {
        return wettest() - driest();
    }
}

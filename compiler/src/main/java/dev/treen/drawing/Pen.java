package dev.treen.drawing;

/**
 * Kinds of line by what they mean (ISO 128-2: wide and narrow lines in the proportion 2 : 1, dashes in multiples of the
 * width; from memory).
 */
public enum Pen {
    /** Edges that are seen. */
    SEEN(0.5, ""),
    /** Edges that lie behind something. */
    HIDDEN(0.25, "2.5 0.8"),
    /** Dimensions, extensions, leaders. */
    THIN(0.25, ""),
    /** Centre lines and ways along which a part moves. */
    CHAIN(0.25, "5 0.8 0.6 0.8"),
    /** Frames. */
    FRAME(0.7, "");

    private final double width;
    private final String dashes;

    Pen(double width, String dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    /** The width in millimetres. */
    public double width() {
        return width;
    }

    /** Lengths of dashes and gaps in millimetres; empty for a continuous line. */
    public String dashes() {
        return dashes;
    }
}

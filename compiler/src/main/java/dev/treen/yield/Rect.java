package dev.treen.yield;

/**
 * A rectangle on a board: {@code x} runs along the grain from the board's left end, {@code y} across it from the lower
 * edge, in whole units chosen by the caller.
 *
 * @param x left end
 * @param y lower edge
 * @param length size along the grain, never negative
 * @param width size across the grain, never negative
 */
public record Rect(long x, long y, long length, long width) {

    /** Refuses a rectangle turned inside out. */
    public Rect {
        if (length < 0 || width < 0) {
            throw new IllegalArgumentException("a rectangle of negative size: " + length + " x " + width);
        }
    }

    /** The right end. */
    public long right() {
        return x + length;
    }

    /** The upper edge. */
    public long top() {
        return y + width;
    }

    /** Length times width. */
    public long area() {
        return Math.multiplyExact(length, width);
    }

    /** Whether the two share more than an edge. */
    public boolean overlaps(Rect other) {
        return x < other.right() && other.x < right() && y < other.top() && other.y < top();
    }

    /** Whether {@code other} lies wholly inside this one; edges may touch. */
    public boolean holds(Rect other) {
        return x <= other.x && y <= other.y && right() >= other.right() && top() >= other.top();
    }
}

package dev.treen.solid;

/** One of the three directions a project is laid out along: x to the right, y to the back, z up. */
public enum Axis {
    /** From left to right. */
    X,
    /** From front to back. */
    Y,
    /** From bottom to top. */
    Z
}

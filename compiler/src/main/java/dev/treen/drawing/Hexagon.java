package dev.treen.drawing;

import dev.treen.solid.Box;
import dev.treen.solid.Vec3;

/**
 * A box in the isometric view, where its outline has six sides in three directions. All coordinates grow towards the eye,
 * so the axis to the back is turned round; two points fall on one spot of the paper when their differences are equal, and
 * the outline is what lies in a band of each of the three differences.
 */
record Hexagon(double x0, double x1, double y0, double y1, double z0, double z1) {
    private static final double SAME = 1e-6;

    static Hexagon of(Box box) {
        return new Hexagon(box.min().x().doubleValue(), box.max().x().doubleValue(), -box.max().y().doubleValue(),
                -box.min().y().doubleValue(), box.min().z().doubleValue(), box.max().z().doubleValue());
    }

    Hexagon moved(Vec3 by) {
        double x = by.x().doubleValue();
        double y = -by.y().doubleValue();
        double z = by.z().doubleValue();
        return new Hexagon(x0 + x, x1 + x, y0 + y, y1 + y, z0 + z, z1 + z);
    }

    /** The room on paper, in lengths of the box drawn in its true size; downwards is positive. */
    Bounds onPaper() {
        double cos = Math.sqrt(3) / 2;
        return new Bounds((x0 - y1) * cos, (x0 + y0) / 2 - z1, (x1 - y0) * cos, (x1 + y1) / 2 - z0);
    }

    double area() {
        return overlap(this);
    }

    /** How much of the paper both cover, in a measure of its own that is the same for all. */
    double overlap(Hexagon other) {
        double p0 = Math.max(x0 - y1, other.x0 - other.y1);
        double p1 = Math.min(x1 - y0, other.x1 - other.y0);
        double q0 = Math.max(y0 - z1, other.y0 - other.z1);
        double q1 = Math.min(y1 - z0, other.y1 - other.z0);
        double s0 = Math.max(x0 - z1, other.x0 - other.z1);
        double s1 = Math.min(x1 - z0, other.x1 - other.z0);
        if (p0 >= p1 || q0 >= q1 || s0 >= s1) {
            return 0;
        }
        return Math.max(0, below(p0, p1, q0, q1, s1) - below(p0, p1, q0, q1, s0));
    }

    /** The area of the rectangle's points whose coordinates sum up to less than {@code sum}. */
    private static double below(double p0, double p1, double q0, double q1, double sum) {
        return (square(sum - p0 - q0) - square(sum - p1 - q0) - square(sum - p0 - q1) + square(sum - p1 - q1)) / 2;
    }

    private static double square(double value) {
        return value <= 0 ? 0 : value * value;
    }

    /** Whether {@code other} lies nearer to the eye wherever the two come over each other. */
    boolean behind(Hexagon other) {
        return other.x0 >= x1 - SAME || other.y0 >= y1 - SAME || other.z0 >= z1 - SAME;
    }
}

package dev.treen.drawing;

/** A rectangle on a sheet, in millimetres. */
public record Bounds(double left, double top, double right, double bottom) {
    /** A box about a point. */
    static Bounds about(Spot middle, double wide, double high) {
        return new Bounds(
                middle.x() - wide / 2, middle.y() - high / 2, middle.x() + wide / 2, middle.y() + high / 2);
    }

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    Spot middle() {
        return new Spot((left + right) / 2, (top + bottom) / 2);
    }

    Bounds join(Bounds other) {
        return new Bounds(Math.min(left, other.left), Math.min(top, other.top), Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    Bounds moved(double dx, double dy) {
        return new Bounds(left + dx, top + dy, right + dx, bottom + dy);
    }

    Bounds grown(double by) {
        return new Bounds(left - by, top - by, right + by, bottom + by);
    }

    boolean contains(Bounds other) {
        return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
    }

    /** Whether both share some area. */
    public boolean overlaps(Bounds other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** Whether a straight line runs through the inside (clipped against the four edges: Liang and Barsky). */
    public boolean crossedBy(Spot from, Spot to) {
        double[] p = {from.x() - to.x(), to.x() - from.x(), from.y() - to.y(), to.y() - from.y()};
        double[] q = {from.x() - left, right - from.x(), from.y() - top, bottom - from.y()};
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] <= 0) {
                    return false;
                }
            } else if (p[i] < 0) {
                enter = Math.max(enter, q[i] / p[i]);
            } else {
                leave = Math.min(leave, q[i] / p[i]);
            }
        }
        return enter < leave;
    }
}

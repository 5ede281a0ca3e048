package dev.treen.solid;

import java.util.List;

/**
 * The extent of something along three directions, in doubles rounded outward.
 *
 * <p>Two things whose spans are apart are certainly apart; nothing follows when the spans meet. This is the cheap first
 * question before every exact one.
 */
record Span(double lowX, double highX, double lowY, double highY, double lowZ, double highZ) {

    static Span of(List<Vec3> points) {
        Vec3 low = points.getFirst();
        Vec3 high = low;
        for (Vec3 point : points) {
            low = Box.lowest(low, point);
            high = Box.highest(high, point);
        }
        return of(low, high);
    }

    static Span of(Vec3 low, Vec3 high) {
        return new Span(low.x.lower(), high.x.upper(), low.y.lower(), high.y.upper(), low.z.lower(), high.z.upper());
    }

    /** Whether the extents certainly share no point. */
    boolean apart(Span other) {
        return highX < other.lowX || other.highX < lowX
                || highY < other.lowY || other.highY < lowY
                || highZ < other.lowZ || other.highZ < lowZ;
    }

    /** The extent together with everything beyond it in the third direction. */
    Span openTowardsZ() {
        return new Span(lowX, highX, lowY, highY, lowZ, Double.MAX_VALUE);
    }

    /** The extent without bounds along one axis. */
    Span endless(Axis along) {
        double far = Double.MAX_VALUE;
        return switch (along) {
            case X -> new Span(-far, far, lowY, highY, lowZ, highZ);
            case Y -> new Span(lowX, highX, -far, far, lowZ, highZ);
            case Z -> new Span(lowX, highX, lowY, highY, -far, far);
        };
    }

    /** The extent together with everything beyond it on one side. */
    Span open(Axis along, boolean up) {
        Span all = endless(along);
        return new Span(
                along == Axis.X && up ? lowX : all.lowX, along == Axis.X && !up ? highX : all.highX,
                along == Axis.Y && up ? lowY : all.lowY, along == Axis.Y && !up ? highY : all.highY,
                along == Axis.Z && up ? lowZ : all.lowZ, along == Axis.Z && !up ? highZ : all.highZ);
    }

    Span join(Span other) {
        return new Span(
                Math.min(lowX, other.lowX), Math.max(highX, other.highX),
                Math.min(lowY, other.lowY), Math.max(highY, other.highY),
                Math.min(lowZ, other.lowZ), Math.max(highZ, other.highZ));
    }

    double middle(Axis axis) {
        return switch (axis) {
            case X -> (lowX + highX) / 2;
            case Y -> (lowY + highY) / 2;
            case Z -> (lowZ + highZ) / 2;
        };
    }

    double low(Axis axis) {
        return switch (axis) {
            case X -> lowX;
            case Y -> lowY;
            case Z -> lowZ;
        };
    }

    double high(Axis axis) {
        return switch (axis) {
            case X -> highX;
            case Y -> highY;
            case Z -> highZ;
        };
    }
}

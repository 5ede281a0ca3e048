package dev.treen.solid;

import org.apache.commons.numbers.fraction.BigFraction;

/** How two boxes along the axes lie to each other. */
public sealed interface BoxContact {

    /**
     * They do not touch.
     *
     * @param gaps the free way along each axis, zero where their extents reach each other
     */
    record Apart(Vec3 gaps) implements BoxContact {
        /** The squared shortest distance between both, in square millimetres. */
        public BigFraction distanceSquared() {
            return gaps.lengthSquared();
        }
    }

    /**
     * They meet at one point.
     *
     * @param at the point
     */
    record Corner(Vec3 at) implements BoxContact {}

    /**
     * They meet along an edge.
     *
     * @param along the axis of the edge
     * @param from its lower end
     * @param to its upper end
     * @param first one of the two surfaces of the first box that share this edge
     * @param second the other one
     */
    record Edge(Axis along, Vec3 from, Vec3 to, Side first, Side second) implements BoxContact {}

    /**
     * They meet on a surface.
     *
     * @param side the surface of the first box that touches; the second box touches with the opposite one
     * @param min the lowest corner of the common rectangle
     * @param max its highest corner; both have the same coordinate along the side's axis
     */
    record FaceToFace(Side side, Vec3 min, Vec3 max) implements BoxContact {
        /** The area of the common rectangle in square millimetres. */
        public BigFraction area() {
            Rat area = Rat.ONE;
            for (Axis axis : Axis.values()) {
                if (axis != side.axis()) {
                    area = area.times(max.at(axis).minus(min.at(axis)));
                }
            }
            return area.toFraction();
        }
    }

    /**
     * They share volume.
     *
     * @param shared the box both fill
     */
    record Overlapping(Box shared) implements BoxContact {}

    /** How {@code a} and {@code b} lie to each other, seen from {@code a}. */
    static BoxContact between(Box a, Box b) {
        Vec3 low = Box.highest(a.min(), b.min());
        Vec3 high = Box.lowest(a.max(), b.max());
        Vec3 gaps = Box.highest(low.minus(high), Vec3.ZERO);
        if (!gaps.isZero()) {
            return new Apart(gaps);
        }
        java.util.List<Side> met = new java.util.ArrayList<>(3);
        Axis free = Axis.X;
        for (Axis axis : Axis.values()) {
            if (low.at(axis).equals(high.at(axis))) {
                met.add(Side.of(axis, a.max().at(axis).equals(b.min().at(axis)) ? 1 : -1));
            } else {
                free = axis;
            }
        }
        return switch (met.size()) {
            case 0 -> new Overlapping(new Box(low, high));
            case 1 -> new FaceToFace(met.getFirst(), low, high);
            case 2 -> new Edge(free, low, high, met.get(0), met.get(1));
            default -> new Corner(low);
        };
    }
}

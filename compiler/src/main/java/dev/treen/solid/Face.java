package dev.treen.solid;

import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One flat face of a convex piece.
 *
 * @param plane its plane, whose normal points out of the piece
 * @param corners its corners, counter-clockwise as seen from outside
 * @param origin the cut that made it; where several cuts made parts of it, the one that made the rest
 */
public record Face(Plane plane, List<Vec3> corners, Origin origin) {

    /** Takes its own copy of the corners. */
    public Face {
        corners = List.copyOf(corners);
    }

    /** The square of the area, which is exact where the area itself may have a root in it. */
    public BigFraction areaSquared() {
        return areaVector().lengthSquared();
    }

    /** The area in square millimetres, to double precision. */
    public double area() {
        return areaVector().length();
    }

    /** The outward arrow whose length is the area: half the sum of the cross products of neighbouring corners. */
    public Vec3 areaVector() {
        Vec3 sum = Vec3.ZERO;
        Vec3 first = corners.getFirst();
        for (int i = 2; i < corners.size(); i++) {
            sum = sum.plus(corners.get(i - 1).minus(first).cross(corners.get(i).minus(first)));
        }
        return sum.times(Rat.of(1, 2));
    }

    Face translate(Vec3 by) {
        return new Face(plane.translate(by), corners.stream().map(by::plus).toList(), origin);
    }

    Face turn(Turn turn) {
        List<Vec3> moved = corners.stream().map(turn::apply).toList();
        return new Face(turn.apply(plane), turn.mirrors() ? moved.reversed() : moved, origin);
    }
}

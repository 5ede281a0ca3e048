package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Exact flat coordinates for the points of a plane: the coordinate along one axis is left out and the plane restores it.
 *
 * <p>A plane and its flip share one frame, so faces that look at each other can be compared in it. The axis left out is
 * the one the normal leans to most. Outlines in the frame always run counter-clockwise; {@link #lift(Poly, Plane)} turns
 * them round where the plane looks towards the smaller coordinates of that axis.
 */
record Frame(Axis out, Axis first, Axis second, Plane plane) {

    static Frame of(Plane plane) {
        Vec3 n = plane.normal();
        Rat x = n.x.abs();
        Rat y = n.y.abs();
        Rat z = n.z.abs();
        Axis out = z.compareTo(x) >= 0 && z.compareTo(y) >= 0 ? Axis.Z : y.compareTo(x) >= 0 ? Axis.Y : Axis.X;
        Plane upward = n.at(out).signum() > 0 ? plane : plane.flip();
        return switch (out) {
            case X -> new Frame(Axis.X, Axis.Y, Axis.Z, upward);
            case Y -> new Frame(Axis.Y, Axis.Z, Axis.X, upward);
            case Z -> new Frame(Axis.Z, Axis.X, Axis.Y, upward);
        };
    }

    Vec2 flatten(Vec3 point) {
        return new Vec2(point.at(first), point.at(second));
    }

    Vec3 lift(Vec2 point) {
        Vec3 n = plane.normal();
        Rat rest = plane.offsetRat().minus(n.at(first).times(point.u)).minus(n.at(second).times(point.v));
        Rat missing = rest.dividedBy(n.at(out));
        return switch (out) {
            case X -> new Vec3(missing, point.u, point.v);
            case Y -> new Vec3(point.v, missing, point.u);
            case Z -> new Vec3(point.u, point.v, missing);
        };
    }

    /** The outline of a face, counter-clockwise in the frame whichever way the face looks. */
    Poly flatten(Convex piece, Facet facet) {
        int[] loop = facet.loop();
        boolean back = !facet.plane().equals(plane);
        List<Vec2> corners = new ArrayList<>(loop.length);
        for (int i = 0; i < loop.length; i++) {
            corners.add(flatten(piece.vertices().get(loop[back ? loop.length - 1 - i : i])));
        }
        return new Poly(corners);
    }

    List<Vec3> lift(Poly poly, Plane facing) {
        return lift(poly.corners(), facing);
    }

    List<Vec3> lift(List<Vec2> corners, Plane facing) {
        List<Vec3> lifted = corners.stream().map(this::lift).toList();
        return facing.equals(plane) ? lifted : lifted.reversed();
    }

    /** The square of the factor by which an area in the frame is smaller than on the plane: |n|² / n_out². */
    Rat stretchSquared() {
        Vec3 n = plane.normal();
        return n.inner(n).dividedBy(n.at(out).square());
    }
}

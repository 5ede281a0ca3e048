package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Exact flat coordinates for looking along an arrow: two points share them when one comes to the other by moving along
 * the arrow, and their heights differ by how often the arrow fits between.
 *
 * <p>The coordinate along one axis is left out, the one the arrow leans to most.
 */
final class Shadow {
    private final Vec3 way;
    private final Axis out;
    private final Axis first;
    private final Axis second;

    Shadow(Vec3 way) {
        Frame frame = Frame.of(Plane.of(way, Rat.ZERO));
        this.way = way;
        this.out = frame.out();
        this.first = frame.first();
        this.second = frame.second();
    }

    /** Whether the arrow runs along an axis. */
    boolean square() {
        return way.at(first).isZero() && way.at(second).isZero();
    }

    /** The axis that the arrow leans to most. */
    Axis out() {
        return out;
    }

    Vec2 flatten(Vec3 point) {
        Rat height = height(point);
        return new Vec2(point.at(first).minus(height.times(way.at(first))),
                point.at(second).minus(height.times(way.at(second))));
    }

    /** How often the arrow fits between the point and the base plane through the origin. */
    Rat height(Vec3 point) {
        return point.at(out).dividedBy(way.at(out));
    }

    /** The height at which a plane, which must not run along the arrow, lies over a flat point. */
    Rat height(Plane plane, Vec2 at) {
        Vec3 n = plane.normal();
        Rat rest = plane.offsetRat().minus(n.at(first).times(at.u)).minus(n.at(second).times(at.v));
        return rest.dividedBy(n.inner(way));
    }

    /** The shadow of a whole piece. */
    Optional<Poly> of(Convex piece) {
        return Poly.around(piece.vertices().stream().map(this::flatten).toList());
    }

    /** A face over its shadow. */
    record Cover(Plane plane, Poly shadow) {}

    /** The faces of a piece that look along the arrow ({@code sign} plus one) or against it (minus one). */
    List<Cover> faces(Convex piece, int sign) {
        List<Cover> covers = new ArrayList<>();
        for (Facet facet : piece.facets()) {
            if (facet.plane().normal().inner(way).signum() == sign) {
                List<Vec2> corners = new ArrayList<>(facet.loop().length);
                for (int index : facet.loop()) {
                    corners.add(flatten(piece.vertices().get(index)));
                }
                boolean clockwise = Poly.signedArea(corners).signum() < 0;
                covers.add(new Cover(facet.plane(), new Poly(clockwise ? corners.reversed() : corners)));
            }
        }
        return covers;
    }
}

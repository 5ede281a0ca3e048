package dev.treen.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Builds convex pieces from boxes, planes, outlines and points. */
final class Shapes {

    private Shapes() {
    }

    static Convex box(Box box, Origin origin) {
        Vec3 a = box.min();
        Vec3 b = box.max();
        List<Vec3> vertices = new ArrayList<>(8);
        for (int i = 0; i < 8; i++) {
            vertices.add(
                    new Vec3((i & 1) == 0 ? a.x : b.x, (i & 2) == 0 ? a.y : b.y, (i & 4) == 0 ? a.z : b.z));
        }
        List<Facet> facets = new ArrayList<>(6);
        for (Side side : Side.values()) {
            facets.add(new Facet(Plane.at(side, box.face(side)), boxLoop(side), origin));
        }
        return new Convex(vertices, facets);
    }

    // Corners are numbered so that bit 0 is x, bit 1 is y, bit 2 is z; each loop is counter-clockwise from outside.
    private static int[] boxLoop(Side side) {
        return switch (side) {
            case LEFT -> new int[]{0, 4, 6, 2};
            case RIGHT -> new int[]{1, 3, 7, 5};
            case FRONT -> new int[]{0, 1, 5, 4};
            case BACK -> new int[]{2, 6, 7, 3};
            case BOTTOM -> new int[]{0, 2, 3, 1};
            case TOP -> new int[]{4, 5, 7, 6};
        };
    }

    static Convex prism(List<Vec3> outline, Vec3 along, Origin origin) {
        return prism(outline, along, origin, true);
    }

    /** The same of an outline that is convex and flat by the way it is made, as that of a round is: not looked at again. */
    static Convex prismOfRound(List<Vec3> outline, Vec3 along, Origin origin) {
        return prism(outline, along, origin, false);
    }

    /** Between two rounds that face each other, corner for corner: what lies between a circle and a smaller one. */
    static Convex frustumOfRound(List<Vec3> outline, List<Vec3> other, Origin origin) {
        Vec3 along = other.getFirst().minus(outline.getFirst());
        Vec3 area = new Face(Plane.of(along, Rat.ZERO), outline, origin).areaVector();
        int way = area.inner(along).signum();
        if (outline.size() < 3 || outline.size() != other.size() || way == 0) {
            throw new IllegalArgumentException(
                    "a frustum needs two outlines with area and a way from one to the other");
        }
        List<Vec3> base = way < 0 ? outline : outline.reversed();
        List<Vec3> top = way < 0 ? other : other.reversed();
        Vec3 down = way < 0 ? area : area.negate();
        return between(
                base, top, Plane.through(base.getFirst(), down), Plane.through(top.getFirst(), down.negate()), origin);
    }

    private static Convex prism(List<Vec3> outline, Vec3 along, Origin origin, boolean checked) {
        Vec3 area = new Face(Plane.of(along, Rat.ZERO), outline, origin).areaVector();
        int way = area.inner(along).signum();
        if (outline.size() < 3 || way == 0) {
            throw new IllegalArgumentException("a prism needs an outline with area and an arrow out of its plane");
        }
        List<Vec3> base = way < 0 ? outline : outline.reversed();
        Plane bottom = Plane.through(base.getFirst(), way < 0 ? area : area.negate());
        if (checked) {
            checkConvex(base, bottom);
        }
        List<Vec3> top = base.stream().map(corner -> corner.plus(along)).toList();
        return between(base, top, bottom, bottom.flip().translate(along), origin);
    }

    /** What lies between two outlines, corner for corner, the edges of which run the same way. */
    private static Convex between(List<Vec3> base, List<Vec3> top, Plane bottom, Plane lid, Origin origin) {
        int n = base.size();
        List<Vec3> vertices = new ArrayList<>(base);
        vertices.addAll(top);
        List<Facet> facets = new ArrayList<>(n + 2);
        int[] low = new int[n];
        int[] high = new int[n];
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            low[i] = i;
            high[i] = 2 * n - 1 - i;
            // The base runs counter-clockwise as seen from below, so each side runs back along it and up. Both its edges run
            // the same way, so that the four corners lie in one plane.
            Plane side = Plane.through(base.get(j), base.get(i), top.get(i));
            facets.add(new Facet(side, new int[]{j, i, n + i, n + j}, origin));
        }
        facets.add(new Facet(bottom, low, origin));
        facets.add(new Facet(lid, high, origin));
        return new Convex(vertices, facets);
    }

    private static void checkConvex(List<Vec3> base, Plane plane) {
        int n = base.size();
        for (int i = 0; i < n; i++) {
            Vec3 edge = base.get((i + 1) % n).minus(base.get(i));
            Vec3 inward = plane.normal().cross(edge);
            if (plane.side(base.get(i)) != 0) {
                throw new IllegalArgumentException("the outline of a prism lies in one plane");
            }
            for (int k = 2; k < n; k++) {
                if (inward.inner(base.get((i + k) % n).minus(base.get(i))).signum() <= 0) {
                    throw new IllegalArgumentException("the outline of a prism is convex, with true corners only");
                }
            }
        }
    }

    static Convex hull(Collection<Vec3> points, Origin origin) {
        List<Vec3> distinct = List.copyOf(new LinkedHashSet<>(points));
        Set<Plane> planes = new LinkedHashSet<>();
        for (int i = 0; i < distinct.size(); i++) {
            for (int j = i + 1; j < distinct.size(); j++) {
                for (int k = j + 1; k < distinct.size(); k++) {
                    Plane found = supporting(distinct, i, j, k);
                    if (found != null) {
                        planes.add(found);
                    }
                }
            }
        }
        Vec3 low = distinct.getFirst();
        Vec3 high = low;
        for (Vec3 point : distinct) {
            low = Box.lowest(low, point);
            high = Box.highest(high, point);
        }
        if (planes.size() < 4) {
            throw new IllegalArgumentException("the points lie in one plane");
        }
        return clipped(box(new Box(low, high), origin), planes, origin).orElseThrow();
    }

    private static @Nullable Plane supporting(List<Vec3> points, int i, int j, int k) {
        Vec3 a = points.get(i);
        Vec3 normal = points.get(j).minus(a).cross(points.get(k).minus(a));
        if (normal.isZero()) {
            return null;
        }
        Plane plane = Plane.through(a, normal);
        boolean inside = false;
        boolean outside = false;
        for (Vec3 point : points) {
            int side = plane.side(point);
            inside |= side < 0;
            outside |= side > 0;
        }
        return inside == outside ? null : outside ? plane.flip() : plane;
    }

    static Optional<Convex> intersection(Collection<Plane> planes, Origin origin) {
        Origin beyond = Origin.cut("");
        Rat reach = reach(planes);
        Vec3 corner = new Vec3(reach, reach, reach);
        Optional<Convex> found = clipped(box(new Box(corner.negate(), corner), beyond), planes, origin);
        boolean unbounded = found.isPresent() && found.get().vertices().stream().anyMatch(v -> reaches(v, reach));
        if (unbounded) {
            throw new IllegalArgumentException("the half-spaces do not close off a piece");
        }
        return found;
    }

    private static boolean reaches(Vec3 point, Rat reach) {
        return point.x.abs().equals(reach) || point.y.abs().equals(reach) || point.z.abs().equals(reach);
    }

    /**
     * A coordinate beyond every crossing of three of the planes. By Cramer's rule a crossing is a quotient of determinants;
     * the lower one is a whole number that is not zero, the upper one has six products of two normal entries and an offset.
     */
    private static Rat reach(Collection<Plane> planes) {
        Rat entry = Rat.ONE;
        Rat offset = Rat.ONE;
        for (Plane plane : planes) {
            Vec3 n = plane.normal();
            entry = entry.max(n.x.abs()).max(n.y.abs()).max(n.z.abs());
            offset = offset.max(plane.offsetRat().abs());
        }
        return entry.square().times(offset).times(6).plus(Rat.ONE);
    }

    private static Optional<Convex> clipped(Convex start, Collection<Plane> planes, Origin origin) {
        Optional<Convex> rest = Optional.of(start);
        for (Plane plane : planes) {
            rest = rest.flatMap(piece -> piece.clip(plane, origin));
        }
        return rest;
    }
}

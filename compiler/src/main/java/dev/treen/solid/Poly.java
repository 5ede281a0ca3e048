package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A convex polygon with area in flat coordinates, counter-clockwise, with true corners only. */
final class Poly {

    private final List<Vec2> corners;
    private final double lowU;
    private final double highU;
    private final double lowV;
    private final double highV;

    Poly(List<Vec2> corners) {
        this.corners = corners;
        double lu = Double.POSITIVE_INFINITY;
        double hu = Double.NEGATIVE_INFINITY;
        double lv = lu;
        double hv = hu;
        for (Vec2 c : corners) {
            lu = Math.min(lu, c.u.lower());
            hu = Math.max(hu, c.u.upper());
            lv = Math.min(lv, c.v.lower());
            hv = Math.max(hv, c.v.upper());
        }
        lowU = lu;
        highU = hu;
        lowV = lv;
        highV = hv;
    }

    /** Both sides of a line; a side without area is absent. */
    private record Halves(Optional<Poly> inside, Optional<Poly> outside) {}

    List<Vec2> corners() {
        return corners;
    }

    /** Whether the polygons certainly share no point. */
    boolean apart(Poly other) {
        return highU < other.lowU || other.highU < lowU || highV < other.lowV || other.highV < lowV;
    }

    /** The area of the upright rectangle around it, nearly. */
    double extent() {
        return (highU - lowU) * (highV - lowV);
    }

    /** Whether a point lies in the polygon or on its border. */
    boolean contains(Vec2 point) {
        for (int i = 0; i < corners.size(); i++) {
            if (next(i).minus(corners.get(i)).cross(point.minus(corners.get(i))).signum() < 0) {
                return false;
            }
        }
        return true;
    }

    Rat area() {
        return signedArea(corners);
    }

    /** Half the sum of cross products; positive when the outline runs counter-clockwise. */
    static Rat signedArea(List<Vec2> outline) {
        Rat twice = Rat.ZERO;
        Vec2 first = outline.getFirst();
        for (int i = 2; i < outline.size(); i++) {
            twice = twice.plus(outline.get(i - 1).minus(first).cross(outline.get(i).minus(first)));
        }
        return twice.times(Rat.of(1, 2));
    }

    Optional<Poly> intersect(Poly other) {
        if (apart(other)) {
            return Optional.empty();
        }
        Poly rest = this;
        for (int i = 0; i < other.corners.size(); i++) {
            Optional<Poly> inside = rest.split(other.corners.get(i), other.next(i)).inside();
            if (inside.isEmpty()) {
                return Optional.empty();
            }
            rest = inside.get();
        }
        return Optional.of(rest);
    }

    /** What is left of this polygon without the other, as convex polygons that share no area. */
    List<Poly> minus(Poly other) {
        if (apart(other)) {
            return List.of(this);
        }
        List<Poly> left = new ArrayList<>();
        Poly rest = this;
        for (int i = 0; i < other.corners.size(); i++) {
            Halves halves = rest.split(other.corners.get(i), other.next(i));
            if (halves.inside().isEmpty()) {
                return List.of(this);
            }
            halves.outside().ifPresent(left::add);
            rest = halves.inside().get();
        }
        return left;
    }

    Vec2 next(int i) {
        return corners.get(i + 1 == corners.size() ? 0 : i + 1);
    }

    /** Divides by the line from {@code from} to {@code to}; its left side is inside. */
    private Halves split(Vec2 from, Vec2 to) {
        int n = corners.size();
        int[] signs = new int[n];
        boolean left = false;
        boolean right = false;
        for (int i = 0; i < n; i++) {
            signs[i] = Vec2.turn(from, to, corners.get(i));
            left |= signs[i] > 0;
            right |= signs[i] < 0;
        }
        if (!left) {
            return new Halves(Optional.empty(), Optional.of(this));
        }
        if (!right) {
            return new Halves(Optional.of(this), Optional.empty());
        }
        List<Vec2> inside = new ArrayList<>(n + 2);
        List<Vec2> outside = new ArrayList<>(n + 2);
        for (int i = 0; i < n; i++) {
            Vec2 here = corners.get(i);
            int j = i + 1 == n ? 0 : i + 1;
            int sign = signs[i];
            if (sign >= 0) {
                inside.add(here);
            }
            if (sign <= 0) {
                outside.add(here);
            }
            if (sign * signs[j] < 0) {
                Vec2 there = corners.get(j);
                Vec2 way = to.minus(from);
                Vec2 crossing = here.between(way.cross(here.minus(from)), there, way.cross(there.minus(from)));
                inside.add(crossing);
                outside.add(crossing);
            }
        }
        return new Halves(Optional.of(new Poly(inside)), Optional.of(new Poly(outside)));
    }

    /** The convex polygon around some points, or nothing when they lie on one line (Andrew's monotone chain). */
    static Optional<Poly> around(List<Vec2> points) {
        List<Vec2> sorted = points.stream().distinct().sorted(Poly::order).toList();
        List<Vec2> chain = new ArrayList<>();
        extend(chain, sorted, 0);
        int lower = chain.size();
        extend(chain, sorted.reversed(), Math.max(0, lower - 1));
        if (!chain.isEmpty()) {
            chain.removeLast();
        }
        return chain.size() < 3 ? Optional.empty() : Optional.of(new Poly(List.copyOf(chain)));
    }

    private static void extend(List<Vec2> chain, List<Vec2> points, int floor) {
        for (int k = floor == 0 ? 0 : 1; k < points.size(); k++) {
            Vec2 point = points.get(k);
            while (chain.size() >= floor + 2) {
                Vec2 a = chain.get(chain.size() - 2);
                Vec2 b = chain.getLast();
                if (b.minus(a).cross(point.minus(a)).signum() > 0) {
                    break;
                }
                chain.removeLast();
            }
            chain.add(point);
        }
    }

    static int order(Vec2 a, Vec2 b) {
        int byU = a.u.compareTo(b.u);
        return byU != 0 ? byU : a.v.compareTo(b.v);
    }
}

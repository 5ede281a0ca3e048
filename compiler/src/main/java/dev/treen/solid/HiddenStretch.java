package dev.treen.solid;

import java.util.List;

/**
 * The stretches of one edge that convex pieces hide, one after the other: within the piece's shadow on paper, and behind its faces.
 *
 * <p>Conditions have the form {@code A + B t + N e < 0} where {@code e} is a shift aside, smaller than any fraction: it
 * counts only where A and B are both zero. See {@link Occlusion} for why.
 */
final class HiddenStretch {
    private final View view;
    private final Vec3 from;
    private final Vec3 way;
    private final Vec2 flatFrom;
    private final Vec2 flatWay;
    private final Vec2 flatAside;
    private Rat low = Rat.ZERO;
    private Rat high = Rat.ONE;
    private boolean left;
    private boolean right;

    HiddenStretch(View view, Vec3 from, Vec3 way, Vec3 aside) {
        this.view = view;
        this.from = from;
        this.way = way;
        this.flatFrom = view.flatten(from);
        this.flatWay = view.flatten(way);
        this.flatAside = view.flatten(aside);
    }

    /**
     * Adds what pieces with one and the same shadow hide, for the edge moved to the left and to the right; true when all of the
     * edge is hidden either way and nothing more needs to be asked. Behind a piece that lies wholly before the edge all of its
     * shadow hides, so that after such a one the others add nothing.
     */
    boolean behind(Poly shadow, List<Occlusion.Screen> screens, Span asked,
            List<Intervals.Stretch> leftStretches, List<Intervals.Stretch> rightStretches) {
        low = Rat.ZERO;
        high = Rat.ONE;
        left = true;
        right = true;
        if (!withinShadow(shadow)) {
            return false;
        }
        Rat first = low;
        Rat last = high;
        boolean onLeft = left;
        boolean onRight = right;
        for (Occlusion.Screen screen : screens) {
            if (screen.span().apart(asked)) {
                continue;
            }
            low = first;
            high = last;
            left = onLeft;
            right = onRight;
            if (behindFaces(screen.piece())) {
                add(leftStretches, rightStretches);
                if (left == onLeft && right == onRight && low.equals(first) && high.equals(last)) {
                    return left && right && low.isZero() && high.equals(Rat.ONE);
                }
            }
        }
        return false;
    }

    private void add(List<Intervals.Stretch> leftStretches, List<Intervals.Stretch> rightStretches) {
        Intervals.Stretch found = new Intervals.Stretch(low, high);
        if (left) {
            leftStretches.add(found);
        }
        if (right) {
            rightStretches.add(found);
        }
    }

    private boolean withinShadow(Poly shadow) {
        for (int i = 0; i < shadow.corners().size(); i++) {
            Vec2 corner = shadow.corners().get(i);
            // The shadow runs counter-clockwise: its inside lies to the left of each side.
            Vec2 side = corner.minus(shadow.next(i));
            need(side.cross(flatFrom.minus(corner)), side.cross(flatWay), side.cross(flatAside));
            if (isNothing()) {
                return false;
            }
        }
        return true;
    }

    /** The piece must reach beyond the edge itself, which stays in place: no shift here. */
    private boolean behindFaces(Convex piece) {
        for (Facet facet : piece.facets()) {
            Plane plane = facet.plane();
            if (plane.normal().inner(view.toViewer()).signum() > 0) {
                need(plane.value(from), plane.normal().inner(way), Rat.ZERO);
                if (isNothing()) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean isNothing() {
        return !(left || right) || low.compareTo(high) >= 0;
    }

    private void need(Rat start, Rat along, Rat shift) {
        int slope = along.signum();
        if (slope == 0) {
            int sign = start.signum();
            left &= sign < 0 || (sign == 0 && shift.signum() < 0);
            right &= sign < 0 || (sign == 0 && shift.signum() > 0);
        } else {
            Rat bound = start.dividedBy(along).negate();
            if (slope > 0) {
                high = high.min(bound);
            } else {
                low = low.max(bound);
            }
        }
    }
}

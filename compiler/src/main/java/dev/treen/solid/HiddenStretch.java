package dev.treen.solid;

import java.util.List;

/**
 * The stretch of one edge that one convex piece hides, by elimination of the way to the viewer.
 *
 * <p>Conditions have the form {@code A + B t + N e < 0} where {@code e} is a shift aside, smaller than any fraction: it
 * counts only where A and B are both zero. See {@link Occlusion} for why.
 */
final class HiddenStretch {
    private final Vec3 from;
    private final Vec3 way;
    private final Vec3 toViewer;
    private final Vec3 aside;
    private Rat low = Rat.ZERO;
    private Rat high = Rat.ONE;
    private boolean left = true;
    private boolean right = true;

    /** A face's plane along the edge: value at its start, change along it, towards the viewer and aside. */
    private record Condition(Rat start, Rat along, Rat towards, Rat aside) {}

    HiddenStretch(Vec3 from, Vec3 way, Vec3 toViewer, Vec3 aside) {
        this.from = from;
        this.way = way;
        this.toViewer = toViewer;
        this.aside = aside;
    }

    /**
     * Adds the hidden stretch, if any, for the edge moved to the left and to the right; true when all of the edge is hidden
     * either way and nothing more needs to be asked.
     */
    boolean behind(Convex piece, List<Intervals.Stretch> leftStretches, List<Intervals.Stretch> rightStretches) {
        Condition[] all = new Condition[piece.facets().size()];
        for (int i = 0; i < all.length; i++) {
            Plane plane = piece.facets().get(i).plane();
            Vec3 n = plane.normal();
            all[i] = new Condition(plane.value(from), n.inner(way), n.inner(toViewer), n.inner(aside));
        }
        for (Condition upper : all) {
            int sign = upper.towards().signum();
            if (sign == 0) {
                need(upper.start(), upper.along(), upper.aside());
            } else if (sign > 0) {
                // The piece must reach beyond the edge itself, which stays in place: no shift here.
                need(upper.start(), upper.along(), Rat.ZERO);
                for (Condition lower : all) {
                    if (lower.towards().signum() < 0) {
                        combine(lower, upper);
                    }
                }
            }
            if (!(left || right) || low.compareTo(high) >= 0) {
                return false;
            }
        }
        Intervals.Stretch found = new Intervals.Stretch(low, high);
        if (left) {
            leftStretches.add(found);
        }
        if (right) {
            rightStretches.add(found);
        }
        return left && right && low.isZero() && high.equals(Rat.ONE);
    }

    /** The ray must leave the one face's plane after it has entered the other's. */
    private void combine(Condition lower, Condition upper) {
        Rat up = upper.towards();
        Rat down = lower.towards();
        need(lower.start().times(up).minus(upper.start().times(down)),
                lower.along().times(up).minus(upper.along().times(down)),
                lower.aside().times(up).minus(upper.aside().times(down)));
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

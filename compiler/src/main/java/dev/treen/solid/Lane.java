package dev.treen.solid;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Moves along one arrow, for many questions: what the faces of a piece look like along it is worked out once.
 */
final class Lane {
    private final Vec3 way;
    private final Shadow shadow;
    private final IdentityHashMap<Convex, Sides> known = new IdentityHashMap<>();

    /** The faces of a piece that look along the arrow and against it. */
    private record Sides(List<Shadow.Cover> front, List<Shadow.Cover> back) {}

    Lane(Vec3 way) {
        this.way = way;
        this.shadow = new Shadow(way);
    }

    /** The stretches of an endless move, backwards and forwards, in which pieces of both share volume. */
    List<Intervals.Stretch> meetings(Solid moving, Solid obstacle) {
        if (shadow.square() && beside(moving.span(), obstacle.span())) {
            return List.of();
        }
        List<Intervals.Stretch> stretches = new ArrayList<>();
        for (Convex a : moving.pieces()) {
            for (Convex b : obstacle.pieces()) {
                meeting(a, b).ifPresent(stretches::add);
            }
        }
        return stretches;
    }

    /** Whether a move along the arrow, or against it, comes to share volume with the obstacle at some time. */
    boolean blocked(Solid moving, Solid obstacle, boolean forward) {
        if (shadow.square() && beside(moving.span(), obstacle.span())) {
            return false;
        }
        // Few questions of a tree of many pieces, not many of a tree of few.
        return moving.pieces().size() <= obstacle.pieces().size()
                ? strikes(moving, obstacle, forward)
                : strikes(obstacle, moving, !forward);
    }

    private boolean strikes(Solid moving, Solid obstacle, boolean forward) {
        boolean up = way.at(shadow.out()).signum() > 0 == forward;
        for (Convex a : moving.pieces()) {
            boolean met = shadow.square()
                    ? obstacle.anyNear(a.span().open(shadow.out(), up), b -> strikes(a, b, forward))
                    : obstacle.pieces().stream().anyMatch(b -> strikes(a, b, forward));
            if (met) {
                return true;
            }
        }
        return false;
    }

    /** Whether one piece has yet to pass the other: its back faces lie before the other's front ones somewhere. */
    private boolean strikes(Convex a, Convex b, boolean forward) {
        if (shadow.square()) {
            if (apartSideways(a.bounds(), b.bounds())) {
                return false;
            }
            if (a.isBox() && b.isBox()) {
                Intervals.Stretch stretch = boxes(a.bounds(), b.bounds());
                return forward ? stretch.high().signum() > 0 : stretch.low().signum() < 0;
            }
        }
        Sides moving = sides(a);
        Sides other = sides(b);
        return forward ? lies(moving.back(), other.front(), 1) : lies(moving.front(), other.back(), -1);
    }

    /** Whether the way from the moving faces to the others has the given sign anywhere over their common shadow. */
    private boolean lies(List<Shadow.Cover> moving, List<Shadow.Cover> others, int sign) {
        for (Shadow.Cover from : moving) {
            for (Shadow.Cover to : others) {
                Optional<Poly> common = from.shadow().intersect(to.shadow());
                for (Vec2 corner : common.map(Poly::corners).orElse(List.of())) {
                    Rat gap = shadow.height(to.plane(), corner).minus(shadow.height(from.plane(), corner));
                    if (gap.signum() == sign) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private Optional<Intervals.Stretch> meeting(Convex a, Convex b) {
        if (shadow.square()) {
            if (beside(a.span(), b.span()) || apartSideways(a.bounds(), b.bounds())) {
                return Optional.empty();
            }
            if (a.isBox() && b.isBox()) {
                return Optional.of(boxes(a.bounds(), b.bounds()));
            }
        }
        Sides moving = sides(a);
        Sides other = sides(b);
        return extreme(moving.front(), other.back(), false).map(low -> new Intervals.Stretch(low,
                extreme(moving.back(), other.front(), true).orElseThrow()));
    }

    private Sides sides(Convex piece) {
        return known.computeIfAbsent(piece, p -> new Sides(shadow.faces(p, 1), shadow.faces(p, -1)));
    }

    /** Whether two extents certainly pass each other. */
    private boolean beside(Span a, Span b) {
        for (Axis axis : Axis.values()) {
            if (way.at(axis).isZero() && (a.high(axis) < b.low(axis) || b.high(axis) < a.low(axis))) {
                return true;
            }
        }
        return false;
    }

    private boolean apartSideways(Box a, Box b) {
        for (Axis axis : Axis.values()) {
            if (way.at(axis).isZero() && a.gapRat(b, axis).signum() >= 0) {
                return true;
            }
        }
        return false;
    }

    private Intervals.Stretch boxes(Box a, Box b) {
        Rat one = shadow.height(b.min()).minus(shadow.height(a.max()));
        Rat other = shadow.height(b.max()).minus(shadow.height(a.min()));
        return new Intervals.Stretch(one.min(other), one.max(other));
    }

    /** The least (or greatest) way from the moving faces to the others over their common shadow. */
    private Optional<Rat> extreme(List<Shadow.Cover> moving, List<Shadow.Cover> others, boolean greatest) {
        Optional<Rat> best = Optional.empty();
        for (Shadow.Cover from : moving) {
            for (Shadow.Cover to : others) {
                Optional<Poly> common = from.shadow().intersect(to.shadow());
                for (Vec2 corner : common.map(Poly::corners).orElse(List.of())) {
                    Rat way = shadow.height(to.plane(), corner).minus(shadow.height(from.plane(), corner));
                    if (best.isEmpty() || way.lessThan(best.get()) != greatest) {
                        best = Optional.of(way);
                    }
                }
            }
        }
        return best;
    }
}

package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Decides exactly what of an edge or a face is hidden behind the pieces of some parts.
 *
 * <p>A point is hidden by a convex piece when the ray from it to the viewer runs through the piece's inside: for every
 * face {@code a·(p + s v) < d} for some {@code s > 0}. Along an edge {@code p} is linear in a parameter {@code t}, so
 * eliminating {@code s} (each lower bound against each upper one) leaves linear conditions on {@code t} alone, and the
 * hidden part of the edge is one open stretch between fractions.
 *
 * <p>Where an edge lies exactly behind the seam of two pieces its rays run in the seam and pass through the inside of
 * neither, though nobody could see it; and where it lies behind a silhouette, one side of it is open. So each edge is
 * asked about twice, moved to either side on paper by less than any fraction, and is hidden where both are hidden. The
 * shift matters only in conditions that are exactly zero all along; the bound {@code s > 0} keeps the edge where it is,
 * so that an edge is not hidden by the faces it belongs to.
 */
final class Occlusion {
    private final View view;
    private final List<Convex> pieces = new ArrayList<>();
    private final BoxTree tree;

    /** Receives the parts of an edge. */
    interface Receiver {
        void accept(boolean visible, Vec2 from, Vec2 to);
    }

    Occlusion(List<Placed> parts, View view) {
        this.view = view;
        parts.forEach(part -> pieces.addAll(part.solid().pieces()));
        this.tree = new BoxTree(pieces.stream().map(piece -> onPaper(piece.vertices())).toList());
    }

    private Span onPaper(List<Vec3> points) {
        return Span.of(points.stream().map(view::withDepth).toList());
    }

    /** All pieces that may lie between the given points and the viewer. */
    private List<Convex> before(List<Vec3> points) {
        Span span = onPaper(points);
        List<Convex> found = new ArrayList<>();
        tree.near(span.openTowardsZ(), number -> found.add(pieces.get(number)));
        return found;
    }

    /** Hands over the visible and hidden stretches of an edge; nothing for edges seen end on or not seen as edges. */
    void show(SurfaceEdge edge, Receiver receiver) {
        Vec3 way = edge.to().minus(edge.from());
        Vec3 aside = view.toViewer().cross(way);
        if (aside.isZero() || (edge.isSmooth() && !isSilhouette(edge))) {
            return;
        }
        Intervals hidden = looksAway(edge) ? Intervals.of(Rat.ZERO, Rat.ONE) : hidden(edge, way, aside);
        Intervals visible = Intervals.of(Rat.ZERO, Rat.ONE).minus(hidden);
        hand(edge, way, hidden, false, receiver);
        hand(edge, way, visible, true, receiver);
    }

    private Intervals hidden(SurfaceEdge edge, Vec3 way, Vec3 aside) {
        List<Intervals.Stretch> left = new ArrayList<>();
        List<Intervals.Stretch> right = new ArrayList<>();
        for (Convex piece : before(List.of(edge.from(), edge.to()))) {
            if (new HiddenStretch(edge.from(), way, view.toViewer(), aside).behind(piece, left, right)) {
                break;
            }
        }
        return Intervals.union(left).intersect(Intervals.union(right));
    }

    /** Whether both faces at an edge look away; the way to the viewer then begins in their own part's material. */
    private boolean looksAway(SurfaceEdge edge) {
        return edge.rims().size() == 2 && edge.rims().stream()
                .allMatch(rim -> rim.plane().normal().inner(view.toViewer()).signum() < 0);
    }

    private void hand(SurfaceEdge edge, Vec3 way, Intervals stretches, boolean visible, Receiver receiver) {
        for (Intervals.Stretch stretch : stretches.stretches()) {
            receiver.accept(visible, view.flatten(edge.from().plus(way.times(stretch.low()))),
                    view.flatten(edge.from().plus(way.times(stretch.high()))));
        }
    }

    /** Whether a smooth edge divides what looks to the viewer from what does not. */
    private boolean isSilhouette(SurfaceEdge edge) {
        int first = edge.rims().get(0).plane().normal().inner(view.toViewer()).signum();
        int second = edge.rims().get(1).plane().normal().inner(view.toViewer()).signum();
        return first != second;
    }

    /** What is left visible of a convex bit of a face that looks to the viewer. */
    List<Poly> open(List<Vec3> bit, Plane plane) {
        List<Poly> left = List.of(new Poly(bit.stream().map(view::flatten).toList()));
        for (Convex piece : before(bit)) {
            // Only what lies before the face's plane can hide it.
            List<Poly> shadow = piece.clip(plane.flip(), Origin.STOCK)
                    .flatMap(front -> Poly.around(front.vertices().stream().map(view::flatten).toList()))
                    .stream().toList();
            for (Poly cover : shadow) {
                left = left.stream().flatMap(poly -> poly.minus(cover).stream()).toList();
            }
        }
        return left;
    }
}

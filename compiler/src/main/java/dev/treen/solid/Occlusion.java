package dev.treen.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Decides exactly what of an edge or a face is hidden behind the pieces of some parts.
 *
 * <p>A point is hidden by a convex piece when the ray from it to the viewer runs through the piece's inside: for every
 * face {@code a·(p + s v) < d} for some {@code s > 0}. That is so when the point lies within the piece's shadow on paper
 * and before none of its faces that look to the viewer. Along an edge {@code p} is linear in a parameter {@code t}, so
 * these are linear conditions on {@code t}, and the hidden part of the edge is one open stretch between fractions.
 *
 * <p>Where an edge lies exactly behind the seam of two pieces its rays run in the seam and pass through the inside of
 * neither, though nobody could see it; and where it lies behind a silhouette, one side of it is open. So each edge is
 * asked about twice, moved to either side on paper by less than any fraction, and is hidden where both are hidden. The
 * shift matters only in conditions that are exactly zero all along; the bound {@code s > 0} keeps the edge where it is,
 * so that an edge is not hidden by the faces it belongs to.
 */
final class Occlusion {
    private final View view;
    private final List<Screen> screens = new ArrayList<>();
    private final BoxTree tree;
    private @Nullable Screen hider;

    /** Receives the parts of an edge. */
    interface Receiver {
        void accept(boolean visible, Vec2 from, Vec2 to);
    }

    Occlusion(List<Placed> parts, View view) {
        this.view = view;
        parts.forEach(part -> part.solid().pieces().forEach(piece -> screens.add(new Screen(piece))));
        this.tree = new BoxTree(screens.stream().map(screen -> onPaper(screen.piece.vertices())).toList());
    }

    /** A piece that may hide something, with its shadow on paper, made when it is first asked for. */
    final class Screen {
        private final Convex piece;
        private @Nullable Poly shadow;

        private Screen(Convex piece) {
            this.piece = piece;
        }

        Convex piece() {
            return piece;
        }

        /** All that the piece covers on paper. */
        Poly shadow() {
            Poly known = shadow;
            if (known == null) {
                known = flat(piece).orElseThrow();
                shadow = known;
            }
            return known;
        }

        /** What the part of the piece that lies before a plane covers on paper. */
        private Optional<Poly> before(Plane plane) {
            boolean before = false;
            boolean behind = false;
            for (Vec3 corner : piece.vertices()) {
                int side = plane.side(corner);
                before |= side > 0;
                behind |= side < 0;
            }
            if (!before) {
                return Optional.empty();
            }
            return behind ? piece.clip(plane.flip(), Origin.STOCK).flatMap(Occlusion.this::flat)
                    : Optional.of(shadow());
        }
    }

    private Optional<Poly> flat(Convex piece) {
        return Poly.around(piece.vertices().stream().map(view::flatten).toList());
    }

    private Span onPaper(List<Vec3> points) {
        return Span.of(points.stream().map(view::withDepth).toList());
    }

    /** All pieces that may lie between the given points and the viewer. */
    private List<Screen> before(List<Vec3> points) {
        Span span = onPaper(points);
        List<Screen> found = new ArrayList<>();
        tree.near(span.openTowardsZ(), number -> found.add(screens.get(number)));
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
        HiddenStretch stretch = new HiddenStretch(view, edge.from(), way, aside);
        // What hid the whole of one edge often hides that of the next.
        Screen last = hider;
        if (last == null || !stretch.behind(last, left, right)) {
            tree.any(onPaper(List.of(edge.from(), edge.to())).openTowardsZ(), number -> {
                Screen screen = screens.get(number);
                boolean all = !screen.equals(last) && stretch.behind(screen, left, right);
                hider = all ? screen : hider;
                return all;
            });
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
        Poly whole = new Poly(bit.stream().map(view::flatten).toList());
        List<Screen> near = new ArrayList<>(before(bit));
        near.removeIf(screen -> screen.shadow().apart(whole));
        // What covers much comes first: little is left then to be cut up by the rest, and often nothing.
        near.sort(Comparator.comparingDouble((Screen screen) -> screen.shadow().extent()).reversed());
        List<Poly> left = List.of(whole);
        for (Screen screen : near) {
            if (left.stream().allMatch(poly -> poly.apart(screen.shadow()))) {
                continue;
            }
            // Only what lies before the face's plane can hide it.
            Optional<Poly> cover = screen.before(plane);
            if (cover.isPresent()) {
                left = left.stream().flatMap(poly -> poly.minus(cover.get()).stream()).toList();
            }
            if (left.isEmpty()) {
                return left;
            }
        }
        return left;
    }
}

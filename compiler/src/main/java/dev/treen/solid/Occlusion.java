package dev.treen.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final List<Pile> piles = new ArrayList<>();
    private final BoxTree pilesTree;
    /** The pile that hid the whole of the last edge; none at first. */
    private int hider = -1;

    /** Receives the parts of an edge. */
    interface Receiver {
        void accept(boolean visible, Vec2 from, Vec2 to);
    }

    Occlusion(List<Placed> parts, View view) {
        this.view = view;
        parts.forEach(part -> part.solid().pieces().forEach(piece -> screens.add(new Screen(piece))));
        this.tree = new BoxTree(screens.stream().map(Screen::span).toList());
        pile();
        this.pilesTree = new BoxTree(piles.stream().map(Pile::span).toList());
    }

    /**
     * Pieces with one and the same shadow, the nearest to the viewer first. Where a long part is looked at along its length
     * hundreds lie behind each other, and an edge asks of them as of one.
     */
    private record Pile(List<Screen> screens, Span span) {
        static Pile of(List<Screen> screens) {
            List<Screen> sorted = new ArrayList<>(screens);
            sorted.sort(Comparator.comparingDouble((Screen screen) -> -screen.span().low(Axis.Z)));
            return new Pile(List.copyOf(sorted),
                    screens.stream().map(Screen::span).reduce(Span::join).orElseThrow());
        }

        Poly shadow() {
            return screens.getFirst().shadow();
        }
    }

    private void pile() {
        Map<Span, List<Screen>> alike = new LinkedHashMap<>();
        screens.forEach(screen -> alike.computeIfAbsent(screen.span().endless(Axis.Z), s -> new ArrayList<>(1))
                .add(screen));
        for (List<Screen> some : alike.values()) {
            if (some.size() == 1) {
                piles.add(Pile.of(some));
                continue;
            }
            Map<Set<Vec2>, List<Screen>> same = new LinkedHashMap<>();
            some.forEach(screen -> same.computeIfAbsent(Set.copyOf(screen.shadow().corners()), s -> new ArrayList<>(1))
                    .add(screen));
            same.values().forEach(each -> piles.add(Pile.of(each)));
        }
    }

    /** A piece that may hide something, with its shadow on paper, made when it is first asked for. */
    final class Screen {
        private final Convex piece;
        private final Span span;
        private @Nullable Poly shadow;

        private Screen(Convex piece) {
            this.piece = piece;
            this.span = onPaper(piece.vertices());
        }

        /** How far the piece reaches on paper and towards the viewer. */
        Span span() {
            return span;
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
        Span asked = onPaper(List.of(edge.from(), edge.to())).openTowardsZ();
        // What hid the whole of one edge often hides that of the next.
        int last = hider;
        if (last < 0 || !behind(piles.get(last), stretch, asked, left, right)) {
            pilesTree.any(asked, number -> {
                boolean all = number != last && behind(piles.get(number), stretch, asked, left, right);
                hider = all ? number : hider;
                return all;
            });
        }
        return Intervals.union(left).intersect(Intervals.union(right));
    }

    private static boolean behind(Pile pile, HiddenStretch stretch, Span asked, List<Intervals.Stretch> left,
            List<Intervals.Stretch> right) {
        return stretch.behind(pile.shadow(), pile.screens(), asked, left, right);
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

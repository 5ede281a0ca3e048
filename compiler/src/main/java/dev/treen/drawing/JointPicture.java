package dev.treen.drawing;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JointKinds;
import dev.treen.joinery.MadeJoint;
import dev.treen.solid.Drawing;
import dev.treen.solid.Fill;
import dev.treen.solid.Placed;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.Stroke;
import dev.treen.solid.SurfaceEdge;
import dev.treen.solid.SurfaceFace;
import dev.treen.solid.Vec3;
import dev.treen.solid.View;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A joint by itself: the stretch of its parts that matters, drawn apart and together from where most of its cuts are seen.
 * Its cuts are darker; once together, dashed lines tell what lies inside.
 */
public final class JointPicture {
    private static final double SAME = 1e-6;
    /** Against these arrows, the usual one first, those from above before those from below. */
    private static final List<Vec3> VIEWS = List.of(Vec3.of(1, -1, 1), Vec3.of(-1, -1, 1), Vec3.of(1, 1, 1),
            Vec3.of(-1, 1, 1), Vec3.of(1, -1, -1), Vec3.of(-1, -1, -1));
    private static final int ABOVE = 4;
    /** Another view has to show this much more than the usual one. */
    private static final double USUAL = 1.2;
    /** The shares of all edges with which a search from above is content, and below which it goes on from below. */
    private static final double ENOUGH = 0.5;
    private static final double LITTLE = 0.2;

    private static final int MOST_PIECES = 120;

    private final Set<String> joints;
    private final List<Placed> parts;
    private final List<Placed> moved;
    private final Map<String, Vec3> shifts;
    private final Drawing apart;
    private final Drawing together;

    /** A straight stretch on paper. */
    private record Stretch(View.Spot from, View.Spot to) {
        boolean holds(View.Spot spot) {
            double dx = to.x() - from.x();
            double dy = to.y() - from.y();
            double length = Math.hypot(dx, dy);
            if (length < SAME) {
                return false;
            }
            double along = ((spot.x() - from.x()) * dx + (spot.y() - from.y()) * dy) / length;
            double off = ((spot.x() - from.x()) * dy - (spot.y() - from.y()) * dx) / length;
            return Math.abs(off) < SAME && along > -SAME && along < length + SAME;
        }
    }

    private JointPicture(Set<String> joints, List<Placed> parts, List<Side> ways) {
        this.joints = joints;
        this.parts = parts;
        shifts = Explosion.ofFirst(parts, ways);
        moved = Pictorial.moved(parts, shifts);
        View view = best();
        apart = Drawing.shaded(moved, view);
        together = Drawing.shaded(parts, view);
    }

    /**
     * The picture of a joint; empty where one of its parts has no body or no place. Where a part goes into others and the
     * joint cuts nothing into these, all of them are drawn: a lid is told by all the walls on which it lies.
     */
    public static Optional<JointPicture> of(Joined joined, MadeJoint pair) {
        boolean cut = joined.part(pair.joint().right().name())
                .flatMap(FinishedPart::solid)
                .filter(solid -> solid.surface().madeBy(pair.joint().name()).findAny().isPresent())
                .isPresent();
        List<MadeJoint> all = cut || !pair.joint().into() ? List.of(pair) : joined.joints().stream()
                .filter(other -> other.joint().statement() == pair.joint().statement()
                        && other.joint().left().name().equals(pair.joint().left().name()))
                .toList();
        Set<String> joints = new LinkedHashSet<>();
        all.forEach(each -> joints.add(each.joint().name()));
        boolean round = all.size() > 1 && !JointKinds.named(pair.joint().kind()).orElseThrow().holdsFast();
        return whole(joined, all, part -> body(part, joints))
                .map(whole -> new JointPicture(joints, round ? whole : Nearby.of(whole, joints), ways(pair)));
    }

    /**
     * The picture of one pair, without the holes of its fasteners, for one who waits for it; empty also where it has so
     * many faces that it would take long.
     */
    public static Optional<JointPicture> quick(Joined joined, MadeJoint pair) {
        Set<String> joints = Set.of(pair.joint().name());
        return whole(joined, List.of(pair), FinishedPart::bare)
                .filter(whole -> whole.stream().mapToInt(p -> p.solid().pieces().size()).sum() <= MOST_PIECES)
                .map(whole -> new JointPicture(joints, Nearby.of(whole, joints), ways(pair)));
    }

    private static Optional<List<Placed>> whole(Joined joined, List<MadeJoint> pairs,
            Function<FinishedPart, Optional<Solid>> body) {
        Set<String> names = new LinkedHashSet<>();
        pairs.forEach(pair -> names.add(pair.joint().left().name()));
        pairs.forEach(pair -> names.add(pair.joint().right().name()));
        List<Placed> whole = new ArrayList<>();
        for (String name : names) {
            joined.part(name).flatMap(body).filter(s -> !s.isEmpty())
                    .ifPresent(solid -> whole.add(new Placed(name, solid)));
        }
        return whole.size() < names.size() || names.size() < 2 ? Optional.empty() : Optional.of(whole);
    }

    /** The body, with the holes of fasteners only where they are the joint's own. */
    private static Optional<Solid> body(FinishedPart part, Set<String> joints) {
        boolean own = part.solid().stream()
                .flatMap(solid -> solid.surface().faces().stream())
                .anyMatch(face -> face.origin().round() && joints.contains(face.origin().name()));
        return own ? part.solid() : part.bare();
    }

    /** Away from where the first part meets the second. */
    private static List<Side> ways(MadeJoint pair) {
        return pair.meeting().edge()
                .map(edge -> List.of(edge.first().opposite(), edge.second().opposite()))
                .orElseGet(() -> pair.meeting().face().map(Side::opposite).stream().toList());
    }

    /** From where most edges of the joint's cuts are seen: from below only what hides from above. */
    private View best() {
        View best = View.ISOMETRIC;
        Sight most = seen(best).times(USUAL);
        // With many faces every look is dear: then only the usual one, from above and from below.
        int step = moved.stream().mapToInt(p -> p.solid().pieces().size()).sum() > MOST_PIECES ? ABOVE : 1;
        for (int i = step; i < VIEWS.size() && most.share() < (i < ABOVE ? ENOUGH : LITTLE); i += step) {
            View view = View.pictorial(VIEWS.get(i));
            Sight sight = seen(view);
            if (sight.share() > most.share() + SAME) {
                best = view;
                most = sight;
            }
        }
        return best;
    }

    /** How much of the joint's edges is seen on paper. */
    private record Sight(double open, double hidden) {
        double share() {
            return open + hidden == 0 ? 1 : open / (open + hidden);
        }

        Sight times(double factor) {
            return new Sight(open * factor, hidden);
        }
    }

    private Sight seen(View view) {
        List<Stretch> own = stretches(view, moved, joints);
        double open = 0;
        double hidden = 0;
        for (Stroke stroke : Drawing.lines(moved, view).strokes()) {
            if (on(own, view, stroke)) {
                View.Spot from = view.onPaper(stroke.from());
                View.Spot to = view.onPaper(stroke.to());
                double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
                open += stroke.visible() ? length : 0;
                hidden += stroke.visible() ? 0 : length;
            }
        }
        return new Sight(open, hidden);
    }

    /** The edges on paper of faces that cuts of these names made. */
    private static List<Stretch> stretches(View view, List<Placed> parts, Set<String> cuts) {
        List<Stretch> stretches = new ArrayList<>();
        for (Placed part : parts) {
            for (SurfaceEdge edge : part.solid().surface().edges()) {
                if (edge.rims().stream().anyMatch(r -> cuts.contains(r.origin().name()))) {
                    stretches.add(new Stretch(view.onPaper(edge.from()), view.onPaper(edge.to())));
                }
            }
        }
        return stretches;
    }

    private boolean cut(SurfaceFace face) {
        return joints.contains(face.origin().name());
    }

    /** How large the parts are to be drawn so that both pictures find their room. */
    double scale(double wideApart, double wideTogether, double high) {
        Bounds one = Mark.bounds(lines(apart, moved, 1, false));
        Bounds other = Mark.bounds(lines(together, parts, 1, false));
        return Math.min(Math.min(wideApart / one.width(), wideTogether / other.width()),
                high / Math.max(one.height(), other.height()));
    }

    /** The parts apart, with the ways along which they go together. */
    List<Mark> apart(double scale) {
        Pictorial pictorial = new Pictorial(apart, scale);
        List<Mark> marks = new ArrayList<>(pictorial.waysOf(moved, shifts));
        marks.addAll(faces(pictorial, apart));
        marks.addAll(lines(apart, moved, scale, false));
        return marks;
    }

    /** The parts together, with what lies inside in dashes. */
    List<Mark> together(double scale) {
        List<Mark> marks = new ArrayList<>(faces(new Pictorial(together, scale), together));
        marks.addAll(lines(together, parts, scale, true));
        return marks;
    }

    /** The names of the parts for the picture of them apart, where there is room on it or beside it. */
    List<Mark> names(double scale, List<Mark> drawn) {
        Clearing clearing = new Clearing();
        drawn.stream().filter(Mark.Line.class::isInstance).forEach(clearing::add);
        List<Mark> names = new ArrayList<>();
        new Pictorial(apart, scale).anchors()
                .forEach((part, spot) -> names.addAll(clearing.words(spot, part, Lettering.USUAL)));
        return names;
    }

    List<String> parts() {
        return parts.stream().map(Placed::name).toList();
    }

    private List<Mark> faces(Pictorial pictorial, Drawing drawing) {
        List<Mark> marks = new ArrayList<>();
        for (Fill fill : drawing.fills()) {
            List<List<Spot>> outlines = fill.outlines().stream()
                    .map(o -> o.stream().map(pictorial::spot).toList()).toList();
            marks.add(new Mark.Area(outlines, grey(drawing.view(), fill.face())));
        }
        return marks;
    }

    /** Light comes from above and from the left of the one who looks; cuts are darker, broken wood is white. */
    private int grey(View view, SurfaceFace face) {
        if (face.origin().name().equals(Nearby.BROKEN)) {
            return 255;
        }
        Vec3 normal = face.plane().normal();
        double up = normal.z().doubleValue() / normal.length();
        double right = normal.dot(view.right()).doubleValue() / normal.length() / view.right().length();
        double light = Math.clamp(226 + 24 * Math.abs(up) - 22 * right, 196, 250);
        return (int) Math.round(cut(face) ? light - 66 : light);
    }

    private List<Mark> lines(Drawing drawing, List<Placed> drawn, double scale, boolean hidden) {
        Pictorial pictorial = new Pictorial(drawing, scale);
        List<Stretch> broken = stretches(drawing.view(), drawn, Set.of(Nearby.BROKEN));
        List<Stretch> own = stretches(drawing.view(), drawn, joints);
        List<Mark> marks = new ArrayList<>();
        for (Stroke stroke : drawing.strokes()) {
            Pen pen = !stroke.visible() ? Pen.HIDDEN : on(broken, drawing.view(), stroke) ? Pen.THIN : Pen.SEEN;
            if (stroke.visible()
                    || (hidden && !on(broken, drawing.view(), stroke) && on(own, drawing.view(), stroke))) {
                marks.add(new Mark.Line(pictorial.spot(stroke.from()), pictorial.spot(stroke.to()), pen));
            }
        }
        return marks;
    }

    private static boolean on(List<Stretch> stretches, View view, Stroke stroke) {
        View.Spot from = view.onPaper(stroke.from());
        View.Spot to = view.onPaper(stroke.to());
        return stretches.stream().anyMatch(s -> s.holds(from) && s.holds(to));
    }
}

package dev.treen.drawing;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Placing;
import dev.treen.quantity.Exact;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Drawing;
import dev.treen.solid.Fill;
import dev.treen.solid.Origin;
import dev.treen.solid.Placed;
import dev.treen.solid.Plane;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.Stroke;
import dev.treen.solid.SurfaceEdge;
import dev.treen.solid.SurfaceFace;
import dev.treen.solid.Vec2;
import dev.treen.solid.View;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One face of a part where a joint has slopes in it, at full size: what stays at this face is grey, what is cut away is
 * white.
 *
 * @param caption which part, and from where it is seen
 * @param marks in millimetres, the corner at the upper left at nought
 */
record Template(String caption, List<Mark> marks) {
    private static final int GREY = 225;
    /** How much of the part is drawn beside the joint. */
    private static final BigFraction BESIDE = BigFraction.of(15);
    private static final double SAME = 1e-4;

    /** All that a project's joints need, those that look alike once. */
    static List<Template> of(Joined joined) {
        Map<Set<List<Long>>, List<Seen>> alike = new LinkedHashMap<>();
        for (MadeJoint made : joined.joints()) {
            for (var part : List.of(made.joint().left(), made.joint().right())) {
                joined.part(part.name()).ifPresent(finished -> seen(finished, made)
                        .forEach(seen -> alike.computeIfAbsent(key(seen.marks()), k -> new ArrayList<>()).add(seen)));
            }
        }
        return alike.values().stream().map(Template::merged).toList();
    }

    /** A view before those that look alike are put together. */
    private record Seen(String part, Side side, List<Mark> marks) {}

    private static Template merged(List<Seen> alike) {
        List<String> names = alike.stream().map(seen -> seen.part() + " from the " + word(seen.side())).distinct()
                .toList();
        return new Template(String.join("; ", names) + "; ↑ " + up(alike.getFirst().side()),
                alike.getFirst().marks());
    }

    private static String word(Side side) {
        return switch (side) {
            case LEFT -> "left";
            case RIGHT -> "right";
            case FRONT -> "front";
            case BACK -> "back";
            case TOP -> "top";
            case BOTTOM -> "bottom";
        };
    }

    /** What lies up on paper: as {@link View#from(Side)} has it. */
    private static String up(Side side) {
        return switch (side) {
            case LEFT, RIGHT, FRONT, BACK -> "up";
            case TOP -> "back";
            case BOTTOM -> "front";
        };
    }

    private static List<Seen> seen(FinishedPart part, MadeJoint made) {
        String joint = made.joint().name();
        Optional<Solid> solid = part.bare().filter(s -> !s.isEmpty());
        Optional<Placing> placing = part.part().placing();
        if (solid.isEmpty() || placing.isEmpty() || solid.get().surface().madeBy(joint).findAny().isEmpty()) {
            return List.of();
        }
        Axis along = axis(placing.get());
        Placed near = new Placed(part.part().name(), near(solid.get(), joint, along));
        boolean dovetailed = made.joint().kind().equals("dovetail");
        List<Seen> seen = new ArrayList<>();
        for (Side side : Side.values()) {
            View view = View.from(side);
            Drawing drawing = Drawing.shaded(List.of(near), view);
            List<Stroke> own = own(drawing, near, joint);
            boolean flat = own.stream().noneMatch(Template::slanted);
            // Pins have their slopes on the end, and on both faces the lines down to the base line.
            boolean wanted = dovetailed ? !own.isEmpty() && !edge(placing.get(), side) : !flat;
            if (wanted) {
                seen.add(new Seen(near.name(), side, marks(drawing, near, side)));
            }
        }
        return seen;
    }

    private static Axis axis(Placing placing) {
        return Laid.side(placing.length()).axis();
    }

    /** Whether a side is one of the narrow long ones, where dovetails show nothing to be marked. */
    private static boolean edge(Placing placing, Side side) {
        return Laid.side(placing.width()).axis() == side.axis();
    }

    private static Solid near(Solid solid, String joint, Axis along) {
        Box box = solid.bounds().orElseThrow();
        BigFraction low = box.max().get(along);
        BigFraction high = box.min().get(along);
        for (SurfaceFace face : solid.surface().madeBy(joint).toList()) {
            var extent = face.region().extent().orElseThrow();
            low = least(low, extent.min().get(along));
            high = least(extent.max().get(along), high).equals(high) ? extent.max().get(along) : high;
        }
        Solid rest = solid;
        if (Exact.compare(high.add(BESIDE), box.max().get(along)) < 0) {
            rest = rest.keep(Plane.at(Side.of(along, 1), high.add(BESIDE)), Origin.cut(Nearby.BROKEN));
        }
        if (Exact.compare(low.subtract(BESIDE), box.min().get(along)) > 0) {
            rest = rest.keep(Plane.at(Side.of(along, -1), low.subtract(BESIDE)), Origin.cut(Nearby.BROKEN));
        }
        return rest;
    }

    private static BigFraction least(BigFraction a, BigFraction b) {
        return Exact.compare(a, b) < 0 ? a : b;
    }

    /** Visible lines of the joint's own edges that do not lie on the rim of the view. */
    private static List<Stroke> own(Drawing drawing, Placed part, String joint) {
        Set<List<Vec2>> edges = new HashSet<>();
        for (SurfaceEdge edge : part.solid().surface().edges()) {
            if (edge.rims().stream().anyMatch(rim -> rim.origin().name().equals(joint))) {
                Vec2 from = drawing.view().flatten(edge.from());
                Vec2 to = drawing.view().flatten(edge.to());
                edges.add(List.of(from, to));
                edges.add(List.of(to, from));
            }
        }
        Bounds all = bounds(drawing);
        return drawing.visible().stream()
                .filter(stroke -> edges.contains(List.of(stroke.from(), stroke.to())))
                .filter(stroke -> !onRim(stroke, all))
                .toList();
    }

    private static boolean onRim(Stroke stroke, Bounds all) {
        Spot from = spot(stroke.from());
        Spot to = spot(stroke.to());
        boolean upright = Math.abs(from.x() - to.x()) < SAME
                && (Math.abs(from.x() - all.left()) < SAME || Math.abs(from.x() - all.right()) < SAME);
        boolean level = Math.abs(from.y() - to.y()) < SAME
                && (Math.abs(from.y() - all.top()) < SAME || Math.abs(from.y() - all.bottom()) < SAME);
        return upright || level;
    }

    /** Neither along the paper nor a plain 45°, which any square has. */
    private static boolean slanted(Stroke stroke) {
        BigFraction across = stroke.to().u().subtract(stroke.from().u()).abs();
        BigFraction upward = stroke.to().v().subtract(stroke.from().v()).abs();
        return across.signum() != 0 && upward.signum() != 0 && !across.equals(upward);
    }

    private static List<Mark> marks(Drawing drawing, Placed part, Side side) {
        BigFraction front = part.solid().bounds().orElseThrow().coordinate(side);
        List<Mark> marks = new ArrayList<>();
        for (Fill fill : drawing.fills()) {
            boolean face = fill.face().plane().equals(Plane.at(side, front));
            if (face) {
                marks.add(new Mark.Area(fill.outlines().stream()
                        .map(outline -> outline.stream().map(Template::spot).toList()).toList(), GREY));
            }
        }
        for (Stroke stroke : drawing.visible()) {
            marks.add(new Mark.Line(spot(stroke.from()), spot(stroke.to()), Pen.THIN));
        }
        Bounds all = Mark.bounds(marks);
        return Mark.moved(marks, -all.left(), -all.top());
    }

    private static Bounds bounds(Drawing drawing) {
        return drawing.visible().stream()
                .map(stroke -> new Mark.Line(spot(stroke.from()), spot(stroke.to()), Pen.THIN).bounds())
                .reduce(Bounds::join)
                .orElseThrow();
    }

    /** Views square to a side have arrows of length one: flat coordinates are millimetres. */
    private static Spot spot(Vec2 flat) {
        return new Spot(flat.u().doubleValue(), -flat.v().doubleValue());
    }

    private static Set<List<Long>> key(List<Mark> marks) {
        Set<List<Long>> key = new HashSet<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Line(Spot from, Spot to, Pen pen)) {
                List<Long> one = List.of(rounded(from.x()), rounded(from.y()));
                List<Long> other = List.of(rounded(to.x()), rounded(to.y()));
                boolean order = one.getFirst() < other.getFirst()
                        || (one.getFirst().equals(other.getFirst()) && one.getLast() <= other.getLast());
                List<Long> both = new ArrayList<>(order ? one : other);
                both.addAll(order ? other : one);
                key.add(List.copyOf(both));
            }
        }
        return key;
    }

    private static long rounded(double mm) {
        return Math.round(mm / SAME);
    }
}

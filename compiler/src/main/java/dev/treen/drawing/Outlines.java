package dev.treen.drawing;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.solid.Stroke;
import dev.treen.solid.Vec2;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Parts in plain lines at full size, in the views that their cuts need, laid out by first-angle projection.
 *
 * @param names the parts that are all alike
 * @param views the face side first
 */
public record Outlines(List<String> names, List<Face> views) {
    private static final double BETWEEN = 20;
    /** How far from its circle a corner of a facet may lie, as a share of the radius. */
    private static final double ROUND = 0.03;

    /** Keeps its own copies. */
    public Outlines {
        names = List.copyOf(names);
        views = List.copyOf(views);
    }

    /**
     * One view, in millimetres: x to the right and y up, its place beside the others already in it.
     *
     * @param caption what is seen: face side, left end, …
     */
    public record Face(String caption, List<Segment> segments, List<Circle> circles) {
        /** Keeps its own copies. */
        public Face {
            segments = List.copyOf(segments);
            circles = List.copyOf(circles);
        }
    }

    /** A straight line; unseen where it lies behind wood. */
    public record Segment(double fromX, double fromY, double toX, double toY, boolean seen) {
        private boolean facetOf(Circle circle) {
            return circle.passes(fromX, fromY) && circle.passes(toX, toY)
                    && Math.hypot(toX - fromX, toY - fromY) < circle.radius();
        }
    }

    /** A round hole seen end on. */
    public record Circle(double x, double y, double radius, boolean seen) {
        private boolean passes(double atX, double atY) {
            return Math.abs(Math.hypot(atX - x, atY - y) - radius) < ROUND * radius;
        }
    }

    /** All parts that have a shape, those that are alike once; by what their drawing is called. */
    public static Map<String, Outlines> of(Joined joined) {
        Map<String, Outlines> all = new LinkedHashMap<>();
        for (List<FinishedPart> alike : Drawings.alike(joined.parts())) {
            PartViews views = PartViews.of(Laid.of(alike.getFirst()));
            all.put("part-" + alike.getFirst().part().name(),
                    new Outlines(alike.stream().map(p -> p.part().name()).toList(), faces(views)));
        }
        return all;
    }

    private static List<Face> faces(PartViews views) {
        Map<Way, PartView> byWay = new EnumMap<>(Way.class);
        views.views().forEach(view -> byWay.put(view.way(), view));
        List<Face> faces = new ArrayList<>();
        double right = 0;
        double left = 0;
        double top = 0;
        double foot = 0;
        for (Way way : List.of(Way.FRONT, Way.LEFT, Way.BACK, Way.RIGHT, Way.ABOVE, Way.BELOW)) {
            PartView view = byWay.get(way);
            if (view == null) {
                continue;
            }
            // First angle: what is seen from the left lies on the right, what is seen from above lies below.
            switch (way) {
                case FRONT -> {
                    faces.add(face(view, 0, 0));
                    right = view.width();
                    top = view.height();
                }
                case LEFT, BACK -> {
                    faces.add(face(view, right + BETWEEN, 0));
                    right += BETWEEN + view.width();
                }
                case RIGHT -> {
                    left -= BETWEEN + view.width();
                    faces.add(face(view, left, 0));
                }
                case ABOVE -> {
                    foot -= BETWEEN + view.height();
                    faces.add(face(view, 0, foot));
                }
                case BELOW -> faces.add(face(view, 0, top + BETWEEN));
            }
        }
        return faces;
    }

    private static Face face(PartView view, double dx, double dy) {
        double x = dx - view.left().doubleValue();
        double y = dy + view.height() - view.high().doubleValue();
        List<Circle> circles = view.discs().stream()
                .map(disc -> new Circle(x + disc.middle().u().doubleValue(), y + disc.middle().v().doubleValue(),
                        disc.hole().diameter().mm().doubleValue() / 2, disc.visible()))
                .toList();
        List<Segment> segments = new ArrayList<>();
        for (Stroke stroke : view.strokes()) {
            Vec2 from = stroke.from();
            Vec2 to = stroke.to();
            Segment segment = new Segment(x + from.u().doubleValue(), y + from.v().doubleValue(),
                    x + to.u().doubleValue(), y + to.v().doubleValue(), stroke.visible());
            if (circles.stream().noneMatch(segment::facetOf)) {
                segments.add(segment);
            }
        }
        return new Face(view.way().caption(), segments, circles);
    }
}

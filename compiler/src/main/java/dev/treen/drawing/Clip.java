package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** What of a drawing lies within a rectangle. */
final class Clip {
    private final Bounds window;

    Clip(Bounds window) {
        this.window = window;
    }

    /** Lines and areas as far as they lie inside; words and rings whole where their middle does. */
    List<Mark> of(List<Mark> marks) {
        List<Mark> inside = new ArrayList<>();
        for (Mark mark : marks) {
            switch (mark) {
                case Mark.Line line -> line(line).ifPresent(inside::add);
                case Mark.Area area -> {
                    List<List<Spot>> outlines = area.outlines().stream().map(this::polygon)
                            .filter(o -> o.size() > 2).toList();
                    if (!outlines.isEmpty()) {
                        inside.add(new Mark.Area(outlines, area.grey()));
                    }
                }
                case Mark.Ring ring -> add(inside, ring, ring.middle());
                case Mark.Label label -> add(inside, label, label.middle());
            }
        }
        return inside;
    }

    private void add(List<Mark> inside, Mark mark, Spot middle) {
        if (window.contains(new Bounds(middle.x(), middle.y(), middle.x(), middle.y()))) {
            inside.add(mark);
        }
    }

    /** Against each edge in turn, as a polygon of two corners. */
    private Optional<Mark> line(Mark.Line line) {
        Spot from = line.from();
        Spot to = line.to();
        for (ToDoubleFunction<Spot> edge : edges()) {
            double a = edge.applyAsDouble(from);
            double b = edge.applyAsDouble(to);
            if (a < 0 && b < 0) {
                return Optional.empty();
            }
            if (a < 0) {
                from = crossing(from, a, to, b);
            } else if (b < 0) {
                to = crossing(from, a, to, b);
            }
        }
        return Optional.of(new Mark.Line(from, to, line.pen()));
    }

    /** Sutherland and Hodgman 1974: an outline against each edge of the window in turn. */
    private List<Spot> polygon(List<Spot> outline) {
        List<Spot> rest = outline;
        for (ToDoubleFunction<Spot> edge : edges()) {
            List<Spot> kept = new ArrayList<>();
            for (int i = 0; i < rest.size(); i++) {
                Spot here = rest.get(i);
                Spot next = rest.get((i + 1) % rest.size());
                double a = edge.applyAsDouble(here);
                double b = edge.applyAsDouble(next);
                if (a >= 0) {
                    kept.add(here);
                }
                if (a < 0 != b < 0) {
                    kept.add(crossing(here, a, next, b));
                }
            }
            rest = kept;
        }
        return rest;
    }

    /** How far a spot lies within each of the four edges. */
    private List<ToDoubleFunction<Spot>> edges() {
        return List.of(s -> s.x() - window.left(), s -> window.right() - s.x(), s -> s.y() - window.top(),
                s -> window.bottom() - s.y());
    }

    private static Spot crossing(Spot from, double a, Spot to, double b) {
        double share = a / (a - b);
        return new Spot(from.x() + (to.x() - from.x()) * share, from.y() + (to.y() - from.y()) * share);
    }
}

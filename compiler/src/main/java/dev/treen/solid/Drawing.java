package dev.treen.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What parts look like from one side: geometry only, for any writer of pictures.
 *
 * <p>Lines are the edges where a part's surface turns, so no seam between pieces of one part appears, while two parts that
 * lie flush keep the line between them. What is hidden is decided exactly. Every bit of paper is drawn at most once: where
 * several edges fall on one line, a visible one wins over a hidden one and an earlier part over a later one.
 *
 * @param view from where
 * @param strokes the lines
 * @param fills the visible faces; no two overlap, so they need no order; empty if not asked for
 */
public record Drawing(View view, List<Stroke> strokes, List<Fill> fills) {

    /** Takes its own copies. */
    public Drawing {
        strokes = List.copyOf(strokes);
        fills = List.copyOf(fills);
    }

    /** The lines only, as for a working drawing. */
    public static Drawing lines(List<Placed> parts, View view) {
        return new Drawing(view, strokes(parts, new Occlusion(parts, view)), List.of());
    }

    /** Lines and visible faces, as for a pictorial view. */
    public static Drawing shaded(List<Placed> parts, View view) {
        Occlusion occlusion = new Occlusion(parts, view);
        return new Drawing(view, strokes(parts, occlusion), fills(parts, view, occlusion));
    }

    /** The visible lines. */
    public List<Stroke> visible() {
        return strokes.stream().filter(Stroke::visible).toList();
    }

    /** The hidden lines. */
    public List<Stroke> hidden() {
        return strokes.stream().filter(stroke -> !stroke.visible()).toList();
    }

    private record Layer(boolean visible, String part) {}

    private static List<Stroke> strokes(List<Placed> parts, Occlusion occlusion) {
        Map<Line2, Map<Layer, List<Intervals.Stretch>>> lines = new LinkedHashMap<>();
        for (Placed part : parts) {
            for (SurfaceEdge edge : part.solid().surface().edges()) {
                occlusion.show(edge, (visible, from, to) -> {
                    Line2 line = Line2.through(from, to);
                    Rat a = line.parameter(from);
                    Rat b = line.parameter(to);
                    lines.computeIfAbsent(line, l -> new LinkedHashMap<>(2))
                            .computeIfAbsent(new Layer(visible, part.name()), l -> new ArrayList<>(2))
                            .add(new Intervals.Stretch(a.min(b), a.max(b)));
                });
            }
        }
        List<Stroke> strokes = new ArrayList<>();
        lines.forEach((line, layers) -> {
            Intervals drawn = draw(line, layers, true, Intervals.NONE, strokes);
            draw(line, layers, false, drawn, strokes);
        });
        return strokes;
    }

    /** Draws the visible or the hidden layers of one line where nothing is drawn yet; returns what is drawn then. */
    private static Intervals draw(Line2 line, Map<Layer, List<Intervals.Stretch>> layers, boolean visible,
            Intervals before, List<Stroke> strokes) {
        Intervals drawn = before;
        for (Map.Entry<Layer, List<Intervals.Stretch>> layer : layers.entrySet()) {
            if (layer.getKey().visible() == visible) {
                Intervals own = Intervals.union(layer.getValue());
                for (Intervals.Stretch stretch : own.minus(drawn).stretches()) {
                    strokes.add(new Stroke(line.point(stretch.low()), line.point(stretch.high()), visible,
                            layer.getKey().part()));
                }
                drawn = drawn.with(own);
            }
        }
        return drawn;
    }

    private static List<Fill> fills(List<Placed> parts, View view, Occlusion occlusion) {
        List<Fill> fills = new ArrayList<>();
        for (Placed part : parts) {
            for (SurfaceFace face : part.solid().surface().faces()) {
                if (face.plane().normal().inner(view.toViewer()).signum() > 0) {
                    List<Patch> open = new ArrayList<>();
                    for (List<Vec3> bit : face.region().pieces()) {
                        occlusion.open(bit, face.plane()).forEach(poly -> open.add(new Patch(poly, face.origin())));
                    }
                    if (!open.isEmpty()) {
                        fills.add(new Fill(part.name(), face, Outline.loops(open)));
                    }
                }
            }
        }
        return fills;
    }
}

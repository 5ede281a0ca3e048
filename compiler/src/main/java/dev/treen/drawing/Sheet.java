package dev.treen.drawing;

import java.util.List;
import java.util.stream.Stream;

/**
 * What stands on one sheet of paper.
 *
 * @param width in millimetres
 * @param height in millimetres
 * @param title for those who hear the drawing
 * @param description the same, longer: what the drawing says
 * @param scale so many on paper for so many of the part; empty for a picture without one
 * @param frame what stands round the drawing: a frame, a title block
 * @param drawing the drawing itself, in the order in which it is drawn
 */
public record Sheet(double width, double height, String title, String description, String scale, List<Mark> frame,
        List<Mark> drawing) {
    /** What stands behind a scale where long stretches of a part are left out. */
    static final String SHORTENED = ", shortened";

    private static final double EDGE = 1.5;

    /** Keeps its own copies. */
    public Sheet {
        frame = List.copyOf(frame);
        drawing = List.copyOf(drawing);
    }

    /** Whether long stretches of the part are left out. */
    public boolean shortened() {
        return scale.endsWith(SHORTENED);
    }

    /** All that stands on it. */
    public List<Mark> marks() {
        return Stream.concat(frame.stream(), drawing.stream()).toList();
    }

    /** The drawing alone, cut out of its sheet, for a page with words round it; as large as on the sheet. */
    public Sheet cutOut() {
        if (drawing.isEmpty()) {
            return this;
        }
        Bounds bounds = Mark.bounds(drawing).grown(EDGE);
        return new Sheet(bounds.width(), bounds.height(), title, description, scale, List.of(),
                Mark.moved(drawing, -bounds.left(), -bounds.top()));
    }

    /** The sheet as SVG that prints true to size. */
    public String svg() {
        Svg svg = new Svg();
        draw(svg, marks());
        return svg.printed(width, height, title, description);
    }

    static void draw(Svg svg, List<Mark> marks) {
        for (Mark mark : marks) {
            switch (mark) {
                case Mark.Line line -> line(svg, line);
                case Mark.Area area -> svg.path(path(area), "fill", grey(area.grey()), "fill-rule", "evenodd");
                case Mark.Ring ring -> svg.circle(ring.middle().x(), ring.middle().y(), ring.radius(), "fill",
                        ring.black() ? "#000000" : "#ffffff", "stroke", "#000000", "stroke-width",
                        Svg.number(Pen.THIN.width()));
                case Mark.Label label -> label(svg, label);
            }
        }
    }

    private static void line(Svg svg, Mark.Line line) {
        String wide = Svg.number(line.pen().width());
        String[] look = line.pen().dashes().isEmpty()
                ? new String[]{"stroke-width", wide, "stroke-linecap", "round"}
                : new String[]{"stroke-width", wide, "stroke-dasharray", line.pen().dashes()};
        svg.line(line.from().x(), line.from().y(), line.to().x(), line.to().y(), look);
    }

    static String path(Mark.Area area) {
        StringBuilder d = new StringBuilder();
        for (List<Spot> outline : area.outlines()) {
            char move = 'M';
            for (Spot spot : outline) {
                d.append(move).append(Svg.number(spot.x())).append(' ').append(Svg.number(spot.y()));
                move = 'L';
            }
            d.append('z');
        }
        return d.toString();
    }

    static String grey(int light) {
        return String.format(java.util.Locale.ROOT, "#%02x%02x%02x", light, light, light);
    }

    /** Letters stand on a line a little below their middle. */
    private static void label(Svg svg, Mark.Label label) {
        double down = label.size() * 0.34;
        double half = Lettering.width(label.words(), label.size(), label.bold()) / 2;
        double x = label.middle().x() + switch (label.from()) {
            case MIDDLE -> 0;
            case LEFT -> -half;
            case RIGHT -> half;
        };
        String anchor = switch (label.from()) {
            case MIDDLE -> "middle";
            case LEFT -> "start";
            case RIGHT -> "end";
        };
        double y = label.middle().y() + down;
        String size = Svg.number(label.size());
        String weight = label.bold() ? "bold" : "normal";
        if (label.turned()) {
            String turn = "rotate(-90 " + Svg.number(x) + " " + Svg.number(label.middle().y()) + ")";
            svg.text(x, y, "middle", label.words(), "font-size", size, "font-weight", weight, "transform", turn);
        } else {
            svg.text(x, y, anchor, label.words(), "font-size", size, "font-weight", weight);
        }
    }
}

package dev.treen.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Drawings of joints by themselves: one on a sheet, apart and together, or all that there are on one. */
public final class JointSheets {
    private static final double APART = 92;
    private static final double TOGETHER = 62;
    private static final double HIGH = 78;
    private static final double BETWEEN = 8;
    private static final double EDGE = 3;

    private static final double SMALL_WIDE = 60;
    private static final double SMALL_HIGH = 44;
    private static final double SMALL_SEEN = 0.35;

    private static final int COLUMNS = 7;
    private static final double CELL_WIDE = 54;
    private static final double CELL_HIGH = 50;
    private static final double CAPTION = 11;

    private JointSheets() {
    }

    /** The parts of a joint apart and together. */
    public static Sheet of(JointPicture picture) {
        double scale = picture.scale(APART, TOGETHER, HIGH);
        List<Mark> marks = new ArrayList<>(picture.apart(scale));
        marks.addAll(picture.names(scale, marks));
        Bounds left = Mark.bounds(marks);
        List<Mark> joined = picture.together(scale);
        Bounds right = Mark.bounds(joined);
        List<Mark> beside = Mark.moved(joined, left.right() + BETWEEN - right.left(),
                left.middle().y() - right.middle().y());
        marks.addAll(beside);
        Bounds all = Mark.bounds(marks);
        caption(marks, left.middle().x(), all.bottom() + 5, "apart");
        caption(marks, Mark.bounds(beside).middle().x(), all.bottom() + 5, "together");
        Bounds whole = Mark.bounds(marks).grown(EDGE);
        String names = String.join(", ", picture.parts());
        return new Sheet(whole.width(), whole.height(), names,
                "An isometric view of " + names + ", apart and together; what the joint cuts is darker.", "",
                List.of(), Mark.moved(marks, -whole.left(), -whole.top()));
    }

    /** The parts apart, in few bytes of SVG: what is drawn alike is one path, to a tenth of a millimetre. */
    public static String small(JointPicture picture) {
        double scale = picture.scale(SMALL_WIDE, SMALL_WIDE, SMALL_HIGH);
        List<Mark> drawn = picture.apart(scale);
        List<Mark> names = picture.names(scale, drawn);
        List<Mark> all = new ArrayList<>(drawn);
        all.addAll(names);
        Bounds bounds = Mark.bounds(all).grown(1);
        Map<Pen, StringBuilder> lines = new EnumMap<>(Pen.class);
        Map<Integer, StringBuilder> areas = new TreeMap<>();
        for (Mark mark : Mark.moved(drawn, -bounds.left(), -bounds.top())) {
            switch (mark) {
                case Mark.Line line -> lines.computeIfAbsent(line.pen(), pen -> new StringBuilder())
                        .append(at('M', line.from())).append(at('L', line.to()));
                case Mark.Area area -> area.outlines().forEach(outline -> {
                    StringBuilder d = areas.computeIfAbsent(area.grey(), grey -> new StringBuilder());
                    char move = 'M';
                    for (Spot spot : outline) {
                        d.append(at(move, spot));
                        move = 'L';
                    }
                    d.append('z');
                });
                case Mark.Ring ring -> throw new IllegalStateException("no rings in " + ring);
                case Mark.Label label -> throw new IllegalStateException("no words in " + label);
            }
        }
        Svg svg = new Svg();
        StringBuilder ways = lines.remove(Pen.CHAIN);
        if (ways != null) {
            path(svg, Pen.CHAIN, ways);
        }
        areas.forEach((grey, d) -> svg.path(d.toString(), "fill", Sheet.grey(grey), "fill-rule", "evenodd"));
        lines.forEach((pen, d) -> path(svg, pen, d));
        Sheet.draw(svg, Mark.moved(names, -bounds.left(), -bounds.top()));
        String parts = String.join(", ", picture.parts());
        return svg.printed(bounds.width(), bounds.height(), parts, "An isometric view, apart.");
    }

    private static void path(Svg svg, Pen pen, StringBuilder d) {
        svg.path(d.toString(), "fill", "none", "stroke", "#000000", "stroke-width",
                Svg.number(pen == Pen.SEEN ? SMALL_SEEN : pen.width()), "stroke-dasharray",
                pen.dashes().isEmpty() ? "none" : pen.dashes(), "stroke-linecap", "round");
    }

    private static String at(char move, Spot spot) {
        return move + Svg.number(Math.round(spot.x() * 10) / 10.0) + " " + Svg.number(Math.round(spot.y() * 10) / 10.0);
    }

    private static void caption(List<Mark> marks, double x, double y, String words) {
        marks.add(new Mark.Label(new Spot(x, y), words, Lettering.USUAL, false, false));
    }

    /**
     * A picture for the sheet of all joints.
     *
     * @param form what the trade calls this form of the joint; may be empty
     */
    public record Sample(String kind, String form, JointPicture picture) {}

    /** Every one of {@code samples}, apart, on one sheet. */
    public static Sheet all(List<Sample> samples) {
        List<Mark> marks = new ArrayList<>();
        int at = 0;
        for (Sample sample : samples) {
            int row = at / COLUMNS;
            double x = EDGE + at % COLUMNS * CELL_WIDE;
            double y = EDGE + row * CELL_HIGH;
            JointPicture picture = sample.picture();
            double scale = picture.scale(CELL_WIDE - 6, CELL_WIDE, CELL_HIGH - CAPTION - 3);
            List<Mark> drawn = picture.apart(scale);
            Bounds bounds = Mark.bounds(drawn);
            Spot middle = bounds.middle();
            marks.addAll(Mark.moved(drawn, x + CELL_WIDE / 2 - middle.x(),
                    y + (CELL_HIGH - CAPTION) / 2 - middle.y()));
            double foot = y + CELL_HIGH - CAPTION;
            marks.add(
                    new Mark.Label(new Spot(x + CELL_WIDE / 2, foot + 3), sample.kind(), Lettering.USUAL, true, false));
            if (!sample.form().isEmpty()) {
                marks.add(new Mark.Label(new Spot(x + CELL_WIDE / 2, foot + 7), sample.form(), Lettering.SMALL, false,
                        false));
            }
            at++;
        }
        int rows = (at + COLUMNS - 1) / COLUMNS;
        String names = samples.stream()
                .map(s -> s.form().isEmpty() ? s.kind() : s.kind() + " (" + s.form() + ")")
                .collect(Collectors.joining(", "));
        return new Sheet(2 * EDGE + COLUMNS * CELL_WIDE, 2 * EDGE + rows * CELL_HIGH, "All joints",
                "One picture of each form of each joint, its parts apart: " + names + ".", "", List.of(), marks);
    }
}

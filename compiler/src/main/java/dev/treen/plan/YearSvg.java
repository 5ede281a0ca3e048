package dev.treen.plan;

import dev.treen.check.RoomYear;
import dev.treen.drawing.Svg;
import dev.treen.quantity.LengthFormat;
import java.util.List;

/** A small curve for each panel, door and lid: the room that it keeps through the year, with what making may take. */
public final class YearSvg {
    private static final double WIDE = 480;
    private static final double HIGH = 190;
    private static final double LEFT = 70;
    private static final double RIGHT = 20;
    private static final double TOP = 44;
    private static final double FOOT = 38;
    private static final double LETTERS = 11;

    private YearSvg() {
    }

    /** All curves of a plan, one below the other. */
    public static String of(Plan plan, List<RoomYear> years) {
        Svg svg = new Svg();
        double y = 0;
        for (RoomYear year : years) {
            draw(svg, year, y, plan.format());
            y += HIGH;
        }
        return svg.finished(
                WIDE,
                Math.max(HIGH, y),
                "The room of panels, doors and lids through the year",
                "One curve for each, with a band for what making may take or give.");
    }

    /** From millimetres to the height on the paper. */
    private record Scale(double low, double high, double top) {
        double y(double mm) {
            return top + TOP + (high - mm) / (high - low) * (HIGH - TOP - FOOT);
        }
    }

    private static void draw(Svg svg, RoomYear year, double top, LengthFormat format) {
        double low = Math.min(0, Math.min(year.tightest().mm(), least(year)) * 1.1);
        double high = Math.max(year.loosest().mm(), most(year)) * 1.1 + 0.01;
        Scale scale = new Scale(low, high, top);
        svg.text(8, top + 16, "start", "Room of " + year.part() + " on each side",
                "font-size", "13", "font-weight", "bold");
        svg.text(8, top + 32, "start", YearText.ends(year, format), "font-size",
                Svg.number(Svg.fitting(YearText.ends(year, format), WIDE - 10, LETTERS)));
        svg.path(band(year, scale), "fill", "#dddddd", "stroke", "none");
        rule(svg, 0, scale, format, false);
        rule(svg, year.benchMm(), scale, format, true);
        svg.path(curve(year, scale), "fill", "none", "stroke", "#000000", "stroke-width", "1.6");
        for (int i = 0; i < year.points().size(); i++) {
            RoomYear.Point point = year.points().get(i);
            svg.circle(x(year, i), scale.y(point.mm()), 2.2, "fill", "#000000");
            svg.text(x(year, i), top + HIGH - FOOT + 16, "middle", point.when(), "font-size", Svg.number(LETTERS));
        }
        svg.text(WIDE - RIGHT, top + HIGH - 8, "end", "grey: all errors of making at their worst", "font-size",
                Svg.number(LETTERS - 1));
    }

    private static void rule(Svg svg, double mm, Scale scale, LengthFormat format, boolean dashed) {
        double y = scale.y(mm);
        svg.line(LEFT, y, WIDE - RIGHT, y, "stroke-width", dashed ? "0.6" : "0.9", "stroke-dasharray",
                dashed ? "4 3" : "none");
        svg.text(LEFT - 6, y + 4, "end", YearText.mm(mm, format), "font-size", Svg.number(LETTERS));
    }

    private static double x(RoomYear year, int i) {
        int last = Math.max(1, year.points().size() - 1);
        return LEFT + 12 + (WIDE - LEFT - RIGHT - 24) * i / last;
    }

    private static String curve(RoomYear year, Scale scale) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < year.points().size(); i++) {
            path.append(i == 0 ? "M" : " L").append(at(x(year, i), scale.y(year.points().get(i).mm())));
        }
        return path.toString();
    }

    private static String band(RoomYear year, Scale scale) {
        StringBuilder path = new StringBuilder();
        int count = year.points().size();
        for (int i = 0; i < count; i++) {
            path.append(i == 0 ? "M" : " L")
                    .append(at(x(year, i), scale.y(year.points().get(i).mm() + year.makingMm())));
        }
        for (int i = count - 1; i >= 0; i--) {
            path.append(" L").append(at(x(year, i), scale.y(year.points().get(i).mm() - year.makingMm())));
        }
        return path.append(" Z").toString();
    }

    private static String at(double x, double y) {
        return Svg.number(x) + " " + Svg.number(y);
    }

    private static double least(RoomYear year) {
        return year.points().stream().mapToDouble(RoomYear.Point::mm).min().orElse(0) - year.makingMm();
    }

    private static double most(RoomYear year) {
        return year.points().stream().mapToDouble(RoomYear.Point::mm).max().orElse(0) + year.makingMm();
    }
}

package dev.treen.plan;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.drawing.Svg;
import dev.treen.quantity.LengthFormat;
import java.util.ArrayList;
import java.util.List;

/** Names and sizes on the pieces of a board; what is too small for them bears a letter, which a key below explains. */
final class LayoutLabels {
    static final double TEXT = 10;
    static final double SMALL = 7.5;
    static final double LINE = 11;
    private static final double SMALLEST = 6;
    private static final double TWO_LINES = 27;
    private static final double TWO_SMALL_LINES = 19;
    private static final double WITH_ARROW = 38;
    private static final int LETTERS = 26;

    private final Svg svg;
    private final DrawnBoard at;
    private final LengthFormat format;
    private final List<String> key = new ArrayList<>();
    private int letters;

    LayoutLabels(Svg svg, DrawnBoard at, LengthFormat format) {
        this.svg = svg;
        this.at = at;
        this.format = format;
    }

    private enum Fit {
        LINES, LINE, TURNED, NOT
    }

    private Fit fit(Rectangle area, String name, String size) {
        double along = at.size(area.length());
        double high = at.size(area.width());
        String both = name + "  " + size;
        if (high >= TWO_SMALL_LINES && Svg.fitting(name, along, TEXT) >= SMALLEST) {
            return Fit.LINES;
        }
        if (Math.min(high - 2, Svg.fitting(both, along, TEXT)) >= SMALLEST) {
            return Fit.LINE;
        }
        return Math.min(along - 2, Svg.fitting(both, high, TEXT)) >= SMALLEST ? Fit.TURNED : Fit.NOT;
    }

    private String size(Rectangle area) {
        return format.figure(area.length()) + " × " + format.figure(area.width());
    }

    void part(BoardCut.OnBoard part) {
        Rectangle area = part.area();
        if (!label(area, part.name(), "font-weight", "bold")) {
            String letter = letter(letters++);
            key.add(letter + " " + part.name() + " " + size(area));
            svg.text(at.middleX(area), at.middleY(area) + 2.5, "middle", letter, "font-size", Svg.number(SMALL));
        }
        if (at.size(area.width()) >= WITH_ARROW) {
            arrow(area);
        }
        if (!part.note().isEmpty()) {
            key.add(part.name() + " " + part.note());
        }
    }

    void offcut(Rectangle offcut) {
        var _ = label(offcut, "offcut", "font-style", "italic");
    }

    private boolean label(Rectangle area, String name, String... look) {
        double along = at.size(area.length());
        double high = at.size(area.width());
        double cx = at.middleX(area);
        double cy = at.middleY(area);
        String size = size(area);
        String both = name + "  " + size;
        switch (fit(area, name, size)) {
            case LINES -> {
                double most = high >= TWO_LINES ? TEXT : SMALL;
                double font = Svg.fitting(name, along, most + 1);
                svg.text(cx, cy - 2, "middle", name, with(look, "font-size", Svg.number(font)));
                svg.text(cx, cy + most - 1, "middle", size, "font-size", Svg.number(Svg.fitting(size, along, most)));
            }
            case LINE -> {
                double font = Math.min(high - 2, Svg.fitting(both, along, TEXT));
                svg.text(cx, cy + font / 3, "middle", both, with(look, "font-size", Svg.number(font)));
            }
            case TURNED -> {
                double font = Math.min(along - 2, Svg.fitting(both, high, TEXT));
                String turn = "rotate(-90 " + Svg.number(cx) + " " + Svg.number(cy) + ")";
                svg.text(cx, cy + font / 3, "middle", both,
                        with(look, "font-size", Svg.number(font), "transform", turn));
            }
            case NOT -> {
                return false;
            }
        }
        return true;
    }

    private void arrow(Rectangle area) {
        double middle = at.middleX(area);
        double below = at.y(area.y()) - 5;
        double reach = Math.min(24, at.size(area.length()) / 3);
        svg.line(middle - reach, below, middle + reach, below, "stroke-width", "0.7");
        svg.path("M" + Svg.number(middle + reach) + " " + Svg.number(below) + " l-5 -2 v4 z", "fill", "#000000");
        svg.path("M" + Svg.number(middle - reach) + " " + Svg.number(below) + " l5 -2 v4 z", "fill", "#000000");
    }

    private static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % LETTERS));
        return index < LETTERS ? last : letter(index / LETTERS - 1) + last;
    }

    /** The key in lines of at most {@code wide}, once all parts have their labels. */
    List<String> key(double wide) {
        return key.isEmpty()
                ? List.of()
                : FindingText.wrapped(String.join("; ", key), columns(wide));
    }

    /** How many small letters stand on a line so wide. */
    static int columns(double wide) {
        return (int) (wide / (Svg.LETTER * SMALL));
    }

    private static String[] with(String[] look, String... more) {
        String[] all = new String[look.length + more.length];
        System.arraycopy(look, 0, all, 0, look.length);
        System.arraycopy(more, 0, all, look.length, more.length);
        return all;
    }
}

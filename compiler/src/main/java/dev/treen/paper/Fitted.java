package dev.treen.paper;

import dev.treen.drawing.PaperSize;
import dev.treen.drawing.Svg;
import org.jsoup.nodes.Element;

/** Gives a drawing the size in which it is printed: its own where it has one and there is room, else what fits. */
final class Fitted {
    /** What the page's style leaves free beside an upright sheet, and on each side of one that lies. */
    private static final double UPRIGHT_MARGINS = 18 + 16;

    private static final double LYING_MARGINS = 16 + 16;
    private static final double ABOVE_AND_BELOW = 12 + 12;
    private static final double HERO = 92;
    private static final double LYING = 104;
    private static final double TALLEST = 218;

    /** Below a lying drawing stands its caption; above the first one what is to be said of all. */
    private static final double CAPTION = 12;
    private static final double ABOVE = 62;
    private static final double STEP_WIDE = 64;
    private static final double STEP_HIGH = 46;

    private Fitted() {
    }

    static void on(PaperSize size, Element svg) {
        String[] box = svg.attr("viewBox").strip().split("[ ,]+");
        if (box.length != 4) {
            return;
        }
        double wide = Double.parseDouble(box[2]);
        double high = Double.parseDouble(box[3]);
        double scale = Math.min(room(size, svg) * share(svg) / wide, height(size, svg) / high);
        if (svg.attr("width").endsWith("mm") && svg.closest(".steps, .hero") == null) {
            // Drawn in millimetres: never larger than it was meant, and exactly so large where there is room.
            scale = Math.min(1, scale);
        }
        svg.removeAttr("width").removeAttr("height");
        svg.attr("style", "width: " + Svg.number(wide * scale) + "mm; height: " + Svg.number(high * scale) + "mm");
        Element title = svg.selectFirst("> title");
        if (title != null) {
            svg.attr("alt", title.text());
        }
        Element step = svg.closest(".steps > li");
        if (step != null) {
            step.attr("style", "min-height: " + Svg.number(high * scale) + "mm");
        }
        Words.lift(svg, scale);
    }

    /** How wide a drawing is that has its size already. */
    static double width(Element drawn) {
        return Double.parseDouble(drawn.attr("style").replaceFirst("^width: ([0-9.]+)mm.*$", "$1"));
    }

    /** How high a drawing is that has its size already. */
    static double height(Element drawn) {
        return Double.parseDouble(drawn.attr("style").replaceFirst("^.*height: ([0-9.]+)mm.*$", "$1"));
    }

    /** How high words and pictures may be where the sheet lies, in millimetres. */
    static double lyingHigh(PaperSize size) {
        return size.width() - ABOVE_AND_BELOW;
    }

    /** How much of the room a drawing wants for itself. */
    private static double share(Element svg) {
        String width = svg.attr("width");
        return width.endsWith("%") ? Double.parseDouble(width.substring(0, width.length() - 1)) / 100 : 1;
    }

    /** How wide words and pictures may be where the sheet lies, in millimetres. */
    static double lying(PaperSize size) {
        return size.height() - LYING_MARGINS;
    }

    private static double room(PaperSize size, Element svg) {
        if (svg.closest(".wide") != null) {
            return lying(size);
        }
        return svg.closest(".steps") == null ? size.width() - UPRIGHT_MARGINS : STEP_WIDE;
    }

    private static double height(PaperSize size, Element svg) {
        if (svg.closest(".drawing") != null) {
            double sheet = lyingHigh(size) - CAPTION;
            return svg.closest(".apart") == null ? sheet : sheet - ABOVE;
        }
        if (svg.closest(".wide") != null) {
            return LYING;
        }
        if (svg.closest(".steps") != null) {
            return STEP_HIGH;
        }
        if (svg.closest(".hero") != null) {
            return HERO;
        }
        return TALLEST;
    }
}

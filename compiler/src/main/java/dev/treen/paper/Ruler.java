package dev.treen.paper;

import dev.treen.drawing.Svg;

/** A ruler of 100 mm and one of 4 in, by which a printed sheet is held against a real one. */
final class Ruler {
    private static final double INCH = 25.4;
    private static final double LEFT = 6;
    private static final double WIDE = 120;
    private static final double HIGH = 34;
    private static final String WORDS = "Above 100 millimetres, below 4 inches.";

    private Ruler() {
    }

    /** Prints true to size. */
    static String svg() {
        Svg svg = new Svg();
        line(svg, 100, 8);
        for (int mm = 0; mm <= 100; mm++) {
            tick(svg, mm, 8, mm % 10 == 0 ? 5 : mm % 5 == 0 ? 3.5 : 2);
            if (mm % 20 == 0) {
                svg.text(LEFT + mm, 6, "middle", mm == 100 ? "100 mm" : String.valueOf(mm), "font-size", "3.2");
            }
        }
        line(svg, 4 * INCH, 22);
        for (int sixteenths = 0; sixteenths <= 64; sixteenths++) {
            double high = sixteenths % 16 == 0 ? 5 : sixteenths % 8 == 0 ? 4 : sixteenths % 4 == 0 ? 3 : 2;
            tick(svg, sixteenths * INCH / 16, 22, high);
            if (sixteenths % 16 == 0) {
                int inches = sixteenths / 16;
                svg.text(LEFT + inches * INCH, 31, "middle", inches == 4 ? "4 in" : String.valueOf(inches),
                        "font-size", "3.2");
            }
        }
        return svg.printed(WIDE, HIGH, "A ruler to check the print by", WORDS);
    }

    private static void line(Svg svg, double length, double y) {
        svg.line(LEFT, y, LEFT + length, y, "stroke-width", "0.25");
    }

    private static void tick(Svg svg, double at, double y, double high) {
        svg.line(LEFT + at, y, LEFT + at, y + high, "stroke-width", at == 0 ? "0.25" : "0.15");
    }
}

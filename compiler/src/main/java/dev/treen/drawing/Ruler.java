package dev.treen.drawing;

import java.util.ArrayList;
import java.util.List;

/** A ruler of 100 mm and one of 4 in below it, by which a printed sheet is held against a real one. */
public final class Ruler {
    /** The room that both take. */
    static final double WIDTH = 118;
    static final double HEIGHT = 19;

    private static final double LEFT = 3;
    private static final double METRIC = 8;
    private static final double IMPERIAL = 18;
    private static final double INCH = 25.4;
    private static final String WORDS = "Above 100 millimetres, below 4 inches.";

    private Ruler() {
    }

    /** The rulers as a drawing that prints true to size. */
    public static Sheet sheet() {
        return new Sheet(WIDTH, HEIGHT, "A ruler to check the print by", WORDS, "1:1", List.of(), marks());
    }

    /** The rulers, their upper left corner at nought; each stands on its line. */
    static List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        line(marks, 100, METRIC);
        for (int mm = 0; mm <= 100; mm++) {
            tick(marks, mm, METRIC, mm % 10 == 0 ? 4 : mm % 5 == 0 ? 3 : 1.8);
        }
        words(marks, 100, METRIC, "100 mm");
        line(marks, 4 * INCH, IMPERIAL);
        for (int sixteenths = 0; sixteenths <= 64; sixteenths++) {
            double high = sixteenths % 16 == 0 ? 4 : sixteenths % 8 == 0 ? 3.2 : sixteenths % 4 == 0 ? 2.5 : 1.5;
            tick(marks, sixteenths * INCH / 16, IMPERIAL, high);
        }
        words(marks, 4 * INCH, IMPERIAL, "4 in");
        return marks;
    }

    private static void line(List<Mark> marks, double length, double y) {
        marks.add(new Mark.Line(new Spot(LEFT, y), new Spot(LEFT + length, y), Pen.THIN));
    }

    private static void tick(List<Mark> marks, double at, double y, double high) {
        marks.add(new Mark.Line(new Spot(LEFT + at, y), new Spot(LEFT + at, y - high), Pen.THIN));
    }

    private static void words(List<Mark> marks, double length, double y, String words) {
        double wide = Lettering.width(words, Lettering.SMALL, false);
        marks.add(new Mark.Label(new Spot(LEFT + length + 1.5 + wide / 2, y - 1.5), words, Lettering.SMALL, false,
                false, Mark.Label.From.LEFT));
    }
}

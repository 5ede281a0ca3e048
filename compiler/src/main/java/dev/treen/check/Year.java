package dev.treen.check;

import dev.treen.joinery.Nature;
import dev.treen.quantity.DecimalText;
import java.util.ArrayList;
import java.util.List;

/**
 * The moisture of a part through the year: by months where the project gives a table of them, else from the driest to the
 * dampest that a range lets it be.
 */
final class Year {
    private static final List<String> MONTHS = List.of("January", "February", "March", "April", "May", "June", "July",
            "August", "September", "October", "November", "December");
    private static final int STEPS = 6;

    private Year() {
    }

    /** A point of the year: its name, and the moisture of the wood then. */
    record Point(String name, double moisture) {}

    static List<Point> of(Nature nature) {
        List<Point> points = new ArrayList<>();
        List<Double> months = nature.months();
        for (int i = 0; i < months.size(); i++) {
            points.add(new Point(MONTHS.get(i).substring(0, 3), months.get(i)));
        }
        if (points.isEmpty()) {
            double dry = nature.seasons().dry();
            double wet = nature.seasons().wet();
            for (int i = 0; i <= STEPS; i++) {
                double moisture = dry + (wet - dry) * i / STEPS;
                points.add(new Point(DecimalText.write(moisture, 1) + " %", moisture));
            }
        }
        return points;
    }

    /** When the part is dampest or driest, in words. */
    static String when(Nature nature, boolean wet) {
        double there = wet ? nature.seasons().wettest() : nature.seasons().driest();
        boolean bench = there == nature.seasons().bench() && there != (wet ? nature.seasons().wet()
                : nature.seasons().dry());
        if (bench) {
            return "at the bench";
        }
        int month = nature.months().indexOf(wet ? nature.seasons().wet() : nature.seasons().dry());
        return month >= 0
                ? "in " + MONTHS.get(month)
                : wet ? "in the dampest season" : "in the driest season";
    }

}

package dev.treen.order;

import java.util.List;
import java.util.Map;

/** Hands-on time and waits by kind of work, from the tables beside this class (rules of the trade Q-07, O-04). */
final class Times {
    private final Map<String, List<String>> times = Figures.of("times.tsv");
    private final Map<String, List<String>> waits = Figures.of("waits.tsv");
    private final boolean hand;

    Times(boolean hand) {
        this.hand = hand;
    }

    /** How long {@code units} of {@code work} take: skilled to learner by hand, half to twice by machine. */
    Minutes of(String work, double units) {
        List<String> row = Figures.row(times, work);
        if (hand) {
            return Minutes.around(number(row, 2) * units, number(row, 3) * units);
        }
        double machine = number(row, 4) * units + number(row, 5);
        return Minutes.around(machine / 2, machine * 2);
    }

    boolean knows(String work) {
        return times.containsKey(work);
    }

    Wait wait(String what) {
        return wait(what, 1);
    }

    /** The wait called {@code what}, longer or shorter by {@code factor}, in whole hours. */
    Wait wait(String what, double factor) {
        List<String> row = Figures.row(waits, what);
        return new Wait(
                (int) Math.ceil(number(row, 1) * factor), (int) Math.ceil(number(row, 2) * factor), row.get(3),
                row.get(4), row.get(5));
    }

    private static double number(List<String> row, int column) {
        return Double.parseDouble(row.get(column));
    }
}

package dev.treen.wood;

import java.util.ArrayList;
import java.util.List;

/**
 * A kind of finish and how far it goes; the label of the one at hand comes first.
 *
 * @param name such as {@code shellac}
 * @param leastCoats how many coats at least
 * @param mostCoats how many at most
 * @param leastRate the area in m² that a litre covers once, at least
 * @param mostRate the same at most
 * @param remark in words, or empty
 * @param citation where the row comes from
 */
public record Finish(
        String name, int leastCoats, int mostCoats, double leastRate, double mostRate, String remark,
        Citation citation) {

    /** All rows of {@code finishes.csv}, read anew each time: only plans ask, once. */
    public static List<Finish> all() {
        List<Finish> finishes = new ArrayList<>();
        for (Csv.Row row : Csv.load("finishes.csv").rows()) {
            finishes.add(new Finish(
                    row.text("finish"),
                    (int) row.required("coats_low"),
                    (int) row.required("coats_high"),
                    row.required("m2_per_litre_low"),
                    row.required("m2_per_litre_high"),
                    row.text("remark"),
                    Citation.of(row)));
        }
        return List.copyOf(finishes);
    }

    /** How the language writes its name. */
    public String word() {
        return name.replace(' ', '_');
    }

    /** Litres for an area in m²: few coats that go far. */
    public double leastLitres(double areaM2) {
        return Consumables.finishLitres(areaM2, leastCoats, mostRate);
    }

    /** Litres for an area in m²: many coats that do not go far. */
    public double mostLitres(double areaM2) {
        return Consumables.finishLitres(areaM2, mostCoats, leastRate);
    }
}

package dev.treen.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Moisture content that a source advises or reports for a place and a use, in percent; an empty number was not
 * published.
 *
 * @param kind {@code recommended}, {@code service range}, {@code bonding} or {@code outdoor EMC}
 * @param place region or city
 * @param area state or country
 * @param use what the wood is for
 * @param average mean
 * @param from least
 * @param to greatest
 * @param months means of the months, January first; empty where the source has no months
 * @param citation where the row comes from
 */
public record MoistureAdvice(
        String kind,
        String place,
        String area,
        String use,
        OptionalDouble average,
        OptionalDouble from,
        OptionalDouble to,
        List<Double> months,
        Citation citation) {

    private static final List<String> MONTHS = List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep",
            "oct", "nov", "dec");

    /** All rows of {@code recommended_mc.csv}, read anew each time. */
    public static List<MoistureAdvice> published() {
        List<MoistureAdvice> advice = new ArrayList<>();
        for (Csv.Row row : Csv.load("recommended_mc.csv").rows()) {
            List<Double> months = new ArrayList<>();
            for (String month : MONTHS) {
                row.number(month + "_pct").ifPresent(months::add);
            }
            advice.add(new MoistureAdvice(
                    row.text("kind"),
                    row.text("place"),
                    row.text("area_or_state"),
                    row.text("use"),
                    row.number("average_pct"),
                    row.number("piece_min_pct"),
                    row.number("piece_max_pct"),
                    List.copyOf(months),
                    Citation.of(row)));
        }
        return List.copyOf(advice);
    }
}

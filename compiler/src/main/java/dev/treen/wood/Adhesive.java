package dev.treen.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A glue, or a rule about gluing, as the trade publishes it; the label of the glue at hand comes first. An empty
 * number was not published.
 *
 * @param name such as {@code hot hide glue}
 * @param form how it is sold
 * @param openMinutes time between spreading and closing
 * @param assemblyMinutes time until the pressure must be on
 * @param clampHours time under pressure
 * @param pressureMpa pressure on the joint
 * @param gapFilling in words
 * @param water resistance to water in words
 * @param remark creep or caution in words
 * @param citation where the row comes from
 */
public record Adhesive(
        String name,
        String form,
        Span openMinutes,
        Span assemblyMinutes,
        Span clampHours,
        Span pressureMpa,
        String gapFilling,
        String water,
        String remark,
        Citation citation) {

    /**
     * A published range.
     *
     * @param low its low end
     * @param high its high end
     */
    public record Span(OptionalDouble low, OptionalDouble high) {
        static Span of(Csv.Row row, String column) {
            return new Span(row.number(column + "_low"), row.number(column + "_high"));
        }
    }

    /** All rows of {@code adhesives.csv}, read anew each time: only plans ask, once. */
    public static List<Adhesive> published() {
        List<Adhesive> adhesives = new ArrayList<>();
        for (Csv.Row row : Csv.load("adhesives.csv").rows()) {
            adhesives.add(new Adhesive(
                    row.text("adhesive"),
                    row.text("example_form"),
                    Span.of(row, "open_time_min"),
                    Span.of(row, "total_assembly_min"),
                    Span.of(row, "clamp_time_h"),
                    Span.of(row, "pressure_mpa"),
                    row.text("gap_filling"),
                    row.text("water_resistance"),
                    row.text("creep_or_caution"),
                    Citation.of(row)));
        }
        return List.copyOf(adhesives);
    }
}

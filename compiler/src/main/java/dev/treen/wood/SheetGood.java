package dev.treen.wood;

import java.util.OptionalDouble;

/**
 * A manufactured panel. It hardly moves, and alike in both directions of its face.
 *
 * @param id the name as the language writes it, such as {@code plywood}
 * @param commonName the name as people write it
 * @param changePerTenHumidity fractional change of a face size per 10 points of relative humidity (rule M-19)
 * @param modulusOfElasticity in MPa, where a source gives one
 * @param citation where the figures come from
 */
public record SheetGood(
        String id,
        String commonName,
        double changePerTenHumidity,
        OptionalDouble modulusOfElasticity,
        Citation citation)
        implements Material {

    static SheetGood of(Csv.Row row) {
        return new SheetGood(
                row.text("id"),
                row.text("common_name"),
                row.required("change_per_10_rh"),
                row.number("moe_mpa"),
                Citation.of(row));
    }

    /**
     * Growth of a face size over a rise of humidity (rule M-19): {@code size · figure · points / 10}.
     *
     * @param sizeMm in mm
     * @param humidityPoints rise of relative humidity in points; negative when the air gets drier
     * @return growth in mm; negative is shrinkage
     */
    public double growth(double sizeMm, double humidityPoints) {
        return sizeMm * changePerTenHumidity * humidityPoints / 10;
    }

    /** Whether rules M-05 to M-16 leave a panel of this size alone. */
    public boolean isExempt(double sizeMm, Figures figures) {
        return sizeMm < figures.value("sheet.exempt-to");
    }
}

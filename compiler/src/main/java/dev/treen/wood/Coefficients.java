package dev.treen.wood;

/**
 * How much a species moves: the fractional change of a size per 1 % of moisture content, valid near 6 to 14 %.
 * Both are means of a species; single boards differ by some 15 % (Wood Handbook ch. 4, from memory).
 *
 * @param tangential along the rings (C_T), per 1 %
 * @param radial across the rings (C_R), per 1 %
 * @param fibreSaturation the moisture in percent above which nothing moves
 * @param citation where the pair comes from
 */
public record Coefficients(double tangential, double radial, double fibreSaturation, Citation citation) {

    /** Coefficients the project gives itself; fibre saturation as for most woods. */
    public static Coefficients declared(double tangential, double radial) {
        return new Coefficients(
                tangential, radial, Figures.standard().value("movement.fibre-saturation"), Citation.declared());
    }

    /**
     * Coefficients for a species no table holds. The radial one is unknown too, so the tangential figure serves
     * in every direction, which is the safe side for movement; it says nothing about cupping.
     */
    public static Coefficients ofUnknownSpecies(Figures figures) {
        Figure figure = figures.get("movement.unknown-species");
        return new Coefficients(
                figure.value(), figure.value(), figures.value("movement.fibre-saturation"), figure.citation());
    }

    static Coefficients of(Csv.Row row) {
        Citation citation = new Citation(row.text("source"), row.text("provenance"), row.text("edition"));
        return new Coefficients(
                row.required("c_t_per_pct_mc"), row.required("c_r_per_pct_mc"), row.required("fsp_pct"), citation);
    }
}

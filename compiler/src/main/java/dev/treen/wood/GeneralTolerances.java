package dev.treen.wood;

import java.util.List;
import java.util.Optional;

/**
 * General tolerances for linear dimensions by ISO 2768-1: each class allows so much plus or minus, by the size. Written for
 * metal; at the bench a common measure of care.
 */
public final class GeneralTolerances {
    /** The table begins with this size and includes it; every other range begins over its lower bound. */
    private static final double SMALLEST_MM = 0.5;

    private static final List<Row> ROWS = Csv.load("iso2768.csv").rows().stream().map(Row::of).toList();

    private GeneralTolerances() {
    }

    /**
     * What a class allows.
     *
     * @param mm plus or minus
     * @param citation where it is printed
     */
    public record Limit(double mm, Citation citation) {}

    private record Row(String grade, double over, double to, Limit limit) {
        static Row of(Csv.Row row) {
            return new Row(row.text("class"), row.required("over_mm"), row.required("to_mm"),
                    new Limit(row.required("plus_or_minus_mm"), Citation.of(row)));
        }

        boolean covers(double mm) {
            return mm <= to && (mm > over || mm == SMALLEST_MM);
        }
    }

    /**
     * Plus or minus for a size, or nothing where the class says none: below 0.5 mm and beyond its largest size.
     *
     * @param grade the designation: {@code fine}, {@code medium}, {@code coarse} or {@code very_coarse}
     */
    public static Optional<Limit> of(String grade, double nominalMm) {
        return ROWS.stream()
                .filter(row -> row.grade.equals(grade) && row.covers(nominalMm))
                .map(Row::limit)
                .findFirst();
    }
}

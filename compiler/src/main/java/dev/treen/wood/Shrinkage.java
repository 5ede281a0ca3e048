package dev.treen.wood;

import java.util.OptionalDouble;

/**
 * Total shrinkage from green to ovendry, in percent of the green size.
 *
 * @param radial across the rings
 * @param tangential along the rings; one species of the tables lacks it
 * @param volumetric of the whole
 * @param citation where the row comes from
 */
public record Shrinkage(
        OptionalDouble radial, OptionalDouble tangential, OptionalDouble volumetric, Citation citation) {

    static Shrinkage of(Csv.Row row) {
        return new Shrinkage(
                row.number("radial_pct"),
                row.number("tangential_pct"),
                row.number("volumetric_pct"),
                Citation.of(row));
    }
}

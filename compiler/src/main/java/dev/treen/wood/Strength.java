package dev.treen.wood;

import java.util.OptionalDouble;

/**
 * Weight, stiffness and strength of small clear pieces, species means: not design values.
 *
 * @param moisture the moisture content in percent the row is for
 * @param specificGravity ovendry mass on the volume at 12 %; empty for most imported woods
 * @param basicSpecificGravity ovendry mass on the green volume; empty for most domestic woods
 * @param density in kg/m³ at 12 %
 * @param modulusOfElasticity in MPa, from loading at mid-span at a span of 14 depths
 * @param modulusOfRupture in MPa
 * @param sideHardness in N
 * @param shear along the grain, in MPa
 * @param citation where the row comes from
 */
public record Strength(
        double moisture,
        OptionalDouble specificGravity,
        OptionalDouble basicSpecificGravity,
        OptionalDouble density,
        OptionalDouble modulusOfElasticity,
        OptionalDouble modulusOfRupture,
        OptionalDouble sideHardness,
        OptionalDouble shear,
        Citation citation) {

    static Strength of(Csv.Row row) {
        return new Strength(
                row.required("mc_pct"),
                row.number("sg_12pct_mc"),
                row.number("sg_basic_green_volume"),
                row.number("density_kg_m3_12mc"),
                row.number("moe_mpa"),
                row.number("mor_mpa"),
                row.number("side_hardness_n"),
                row.number("shear_parallel_mpa"),
                Citation.of(row));
    }
}

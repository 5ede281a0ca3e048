package dev.treen.joinery;

import dev.treen.solid.Solid;
import dev.treen.wood.Density;
import dev.treen.wood.Figures;
import dev.treen.wood.Species;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What a finished part weighs in its room.
 *
 * @param part the part
 * @param volume its finished body in mm³, exact, with all that its joints take out; of a part without a place the box of
 *     its finished size
 * @param moisture the moisture in percent that its wood has on average: the middle of its room's climate
 * @param density in kg/m³ at that moisture; empty where no table holds its species
 */
public record Weight(FinishedPart part, BigFraction volume, double moisture, OptionalDouble density) {
    private static final double MM3_IN_M3 = 1e9;

    /** The weight of a part of {@code joined}. */
    public static Weight of(FinishedPart part, Joined joined) {
        double moisture = joined.nature(part.part()).usualMoisture();
        return new Weight(part, part.solid().map(Solid::volume).orElseGet(() -> box(part)), moisture,
                density(part, moisture));
    }

    /** The density of a part's wood in kg/m³ at some moisture in percent, where a table holds it. */
    public static OptionalDouble density(FinishedPart part, double moisture) {
        return part.part()
                .stuff()
                .flatMap(Woods::of)
                .flatMap(Species::strength)
                .map(strength -> Density.of(strength, moisture, Figures.standard()))
                .orElseGet(OptionalDouble::empty);
    }

    /** The mass in kg; empty where the density is not known. */
    public OptionalDouble kilograms() {
        return density.isEmpty() ? density : OptionalDouble.of(
                volume.doubleValue() / MM3_IN_M3 * density.getAsDouble());
    }

    private static BigFraction box(FinishedPart part) {
        return part.length().value().mm()
                .multiply(part.width().value().mm())
                .multiply(part.thickness().value().mm());
    }
}

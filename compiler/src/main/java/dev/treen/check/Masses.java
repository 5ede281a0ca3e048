package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Woods;
import dev.treen.wood.Shelves;
import dev.treen.wood.Strength;
import java.util.OptionalDouble;

/** What parts weigh at 12 % moisture, by their finished sizes; what joints hollow out is not taken off. */
final class Masses {
    /** Specific gravity is ovendry mass on the volume at 12 %; the water at 12 % comes on top. */
    private static final double WITH_WATER = 1.12;

    private Masses() {
    }

    static OptionalDouble kilograms(FinishedPart part) {
        OptionalDouble density = density(part);
        return density.isEmpty()
                ? density
                : OptionalDouble.of(Shelves.massKg(
                        part.length().value().toDoubleMm(),
                        part.width().value().toDoubleMm(),
                        part.thickness().value().toDoubleMm(),
                        density.getAsDouble()));
    }

    /** In kg/m³, where a table holds it. */
    static OptionalDouble density(FinishedPart part) {
        return part.part()
                .from()
                .flatMap(Woods::of)
                .flatMap(species -> species.strength())
                .map(Masses::density)
                .orElseGet(OptionalDouble::empty);
    }

    private static OptionalDouble density(Strength strength) {
        if (strength.density().isPresent()) {
            return strength.density();
        }
        return strength.specificGravity().isPresent()
                ? OptionalDouble.of(strength.specificGravity().getAsDouble() * 1000 * WITH_WATER)
                : OptionalDouble.empty();
    }
}

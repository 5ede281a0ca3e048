package dev.treen.joinery;

import dev.treen.model.Board;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What all parts of a project weigh: wood alone, without hardware, glue and finish.
 *
 * @param parts in the order of the project
 */
public record Weights(List<Weight> parts) {

    /** Keeps its own copy. */
    public Weights {
        parts = List.copyOf(parts);
    }

    /**
     * The parts of one species.
     *
     * @param wood its common name; empty where the project does not say or no table holds it
     * @param parts how many they are
     * @param volume of all of them in mm³
     * @param kilograms of those of known density
     */
    public record OfWood(String wood, int parts, BigFraction volume, double kilograms) {
        private OfWood with(Weight part) {
            return new OfWood(wood, parts + 1, volume.add(part.volume()), kilograms + part.kilograms().orElse(0));
        }
    }

    /** The weights of all parts of {@code joined}. */
    public static Weights of(Joined joined) {
        return new Weights(joined.parts().stream().map(part -> Weight.of(part, joined)).toList());
    }

    /** The mass in kg of all parts whose density is known. */
    public double kilograms() {
        return parts.stream().mapToDouble(part -> part.kilograms().orElse(0)).sum();
    }

    /** The names of the parts whose density is not known. */
    public List<String> unknown() {
        return parts.stream()
                .filter(part -> part.kilograms().isEmpty())
                .map(part -> part.part().part().name())
                .toList();
    }

    /** By species, in the order in which the project first takes them. */
    public List<OfWood> byWood() {
        Map<String, OfWood> found = new LinkedHashMap<>();
        for (Weight part : parts) {
            String wood = wood(part.part());
            OfWood before = found.getOrDefault(wood, new OfWood(wood, 0, BigFraction.ZERO, 0));
            found.put(wood, before.with(part));
        }
        return List.copyOf(found.values());
    }

    private static String wood(FinishedPart part) {
        Optional<Board> board = part.part().stuff();
        return board.map(Woods::name).orElse("");
    }
}

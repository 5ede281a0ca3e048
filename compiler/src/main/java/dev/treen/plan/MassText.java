package dev.treen.plan;

import dev.treen.joinery.Weight;
import dev.treen.joinery.Weights;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.LengthFormat;
import dev.treen.wood.Density;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the parts weigh, in words: to lift it, to hang it, to send it. */
public final class MassText {
    private static final double MM3_IN_CM3 = 1000;
    private static final double KG_IN_LB = 0.45359237;
    private static final int NAMED = 4;

    private MassText() {
    }

    /** Some sentences, or none where no part's wood is in the tables. */
    public static List<String> of(Weights weights, LengthFormat format) {
        List<Weight> known = weights.parts().stream().filter(part -> part.kilograms().isPresent()).toList();
        if (known.isEmpty()) {
            return List.of();
        }
        List<String> woods = weights.byWood().stream()
                .filter(wood -> wood.kilograms() > 0)
                .map(wood -> (wood.wood().isEmpty() ? "wood not named" : wood.wood()) + " "
                        + mass(wood.kilograms(), format) + " (" + grouped(wood.volume().doubleValue() / MM3_IN_CM3)
                        + " cm³)")
                .toList();
        double least = known.stream().mapToDouble(Weight::moisture).min().orElse(0);
        double most = known.stream().mapToDouble(Weight::moisture).max().orElse(0);
        List<String> sentences = new ArrayList<>(List.of(
                "Finished, the wood weighs about " + mass(weights.kilograms(), format) + ": "
                        + String.join(", ", woods) + ".",
                "That is at the middle of the room's moisture, " + DecimalText.write(least, 1)
                        + (most - least < 0.05 ? "" : " to " + DecimalText.write(most, 1)) + " % (" + Density.SOURCE
                        + "), for species means; hardware, glue and finish come on top."));
        List<String> unknown = weights.unknown();
        if (!unknown.isEmpty()) {
            sentences.add("Not among it, for want of a density, " + (unknown.size() == 1 ? "is " : "are ")
                    + String.join(", ", unknown.subList(0, Math.min(NAMED, unknown.size())))
                    + (unknown.size() > NAMED ? " and " + (unknown.size() - NAMED) + " more" : "") + ".");
        }
        return sentences;
    }

    /** One line of one part, or none where its wood is not in the tables. */
    public static List<String> of(Weight weight, LengthFormat format) {
        return weight.kilograms().isEmpty() ? List.of() : List.of(
                "weighs about " + mass(weight.kilograms().getAsDouble(), format) + " at "
                        + DecimalText.write(weight.moisture(), 1) + " % moisture, "
                        + DecimalText.write(weight.volume().doubleValue() / MM3_IN_CM3, 1) + " cm³");
    }

    /** A mass in kilograms, or in pounds with the kilograms behind. */
    static String mass(double kilograms, LengthFormat format) {
        String metric = DecimalText.write(kilograms, kilograms < 1 ? 3 : 2) + " kg";
        return format.imperial() ? DecimalText.write(kilograms / KG_IN_LB, 2) + " lb (" + metric + ")" : metric;
    }

    private static String grouped(double value) {
        return String.format(Locale.ROOT, "%,.0f", value);
    }
}

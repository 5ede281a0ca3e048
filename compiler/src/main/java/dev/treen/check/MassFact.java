package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Weight;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Derived;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.Unit;
import dev.treen.wood.Density;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a part weighs. */
final class MassFact implements FactKind {
    private static final double MM3_IN_CM3 = 1000;

    @Override
    public String name() {
        return "mass";
    }

    @Override
    public String doc() {
        return "What a part weighs, by its finished body, at the middle of its room's moisture.";
    }

    @Override
    public Map<String, Derived> of(Joined joined) {
        Map<String, Derived> facts = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            Weight weight = Weight.of(part, joined);
            weight.kilograms().ifPresent(kg -> {
                Quantity mass = Unit.G.of(BigFraction.of(Math.round(kg * 1000)));
                Datum value = new Datum.Exactly(mass);
                facts.put(part.part().name(), new Derived(value, Derivation.rule(
                        name(),
                        value,
                        DecimalText.write(weight.volume().doubleValue() / MM3_IN_CM3, 1) + " cm³ finished, at "
                                + DecimalText.write(weight.density().orElse(0), 0) + " kg/m³ with "
                                + DecimalText.write(weight.moisture(), 1) + " % moisture",
                        "Wood Handbook FPL-GTR-190 ch. 5; " + Density.SOURCE,
                        List.of())));
            });
        }
        return facts;
    }
}

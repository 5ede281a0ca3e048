package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Derived;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Quantity;
import dev.treen.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** What a part weighs. */
final class MassFact implements FactKind {
    @Override
    public String name() {
        return "mass";
    }

    @Override
    public String doc() {
        return "What a part weighs at 12 % moisture, by its finished sizes.";
    }

    @Override
    public Map<String, Derived> of(Joined joined) {
        Map<String, Derived> facts = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            Masses.kilograms(part).ifPresent(kg -> {
                Quantity mass = Unit.G.of(BigFraction.of(Math.round(kg * 1000)));
                Datum value = new Datum.Exactly(mass);
                facts.put(part.part().name(), new Derived(value, Derivation.rule(
                        name(),
                        value,
                        "its finished sizes at " + DecimalText.write(Masses.density(part).orElse(0), 0) + " kg/m³",
                        "Wood Handbook FPL-GTR-190 ch. 5",
                        List.of())));
            });
        }
        return facts;
    }
}

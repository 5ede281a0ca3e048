package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Datum;
import dev.treen.model.Derivation;
import dev.treen.model.Derived;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/** The weight that the screws or nails through a part bear. */
final class PullOutFact implements FactKind {
    @Override
    public String name() {
        return "pull_out";
    }

    @Override
    public String doc() {
        return "The weight that the screws and nails through a part bear in the long run when it pulls them straight out;"
                + " no structural design.";
    }

    @Override
    public Map<String, Derived> of(Joined joined) {
        Map<String, Double> kilograms = new LinkedHashMap<>();
        Map<String, PullOuts.Held> first = new LinkedHashMap<>();
        for (PullOuts.Held held : PullOuts.of(joined)) {
            String part = held.made().joint().left().name();
            kilograms.merge(part, held.kilograms(), Double::sum);
            first.putIfAbsent(part, held);
        }
        Map<String, Derived> facts = new LinkedHashMap<>();
        first.forEach((part, held) -> {
            Datum value = new Datum.Exactly(
                    Unit.G.of(BigFraction.of(Math.round(kilograms.getOrDefault(part, 0.0) * 1000))));
            facts.put(part, new Derived(value, Derivation.rule(
                    name(), value, words(held), held.pull().citation().source(), List.of())));
        });
        return facts;
    }

    /** How one joint's pull is reckoned. */
    static String words(PullOuts.Held held) {
        return held.set().count() + " × " + DecimalText.write(held.pull().workingN(), 0) + " N to work with, of "
                + DecimalText.write(held.pull().ultimateN(), 0) + " N at which one comes out on average: "
                + DecimalText.write(held.pull().coefficient(), 2) + " × " + DecimalText.write(held.gravity(), 2) + "^"
                + DecimalText.write(held.pull().power(), 1) + " × "
                + DecimalText.write(held.set().thick().toDoubleMm(), 2) + " × "
                + DecimalText.write(held.set().hold().toDoubleMm(), 1)
                + (held.set().endGrain() ? ", less for end grain" : "");
    }
}

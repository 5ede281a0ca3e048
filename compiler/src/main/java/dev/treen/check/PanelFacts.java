package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Derivation;
import dev.treen.model.Derived;
import dev.treen.model.Measure;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What is known of a panel in its grooves (rules of the trade M-05 and M-06). */
final class PanelFacts {
    private static final Length NATURES = Length.ofMm(1).dividedBy(100_000);

    private PanelFacts() {
    }

    /** A length that nature gave, with the rule in words. */
    static Derived natural(String name, double mm, String how, String source) {
        Length length = Length.nearest(mm, NATURES);
        return new Derived(
                Measure.datum(length), Derivation.rule(name, Measure.datum(length), how, source, List.of()));
    }

    private static Map<String, Derived> each(Joined joined, Function<Panels.Held, Derived> fact) {
        Map<String, Derived> facts = new LinkedHashMap<>();
        for (Panels.Held panel : Panels.of(joined)) {
            facts.put(panel.part().part().name(), fact.apply(panel));
        }
        return facts;
    }

    /** Room at the bench. */
    static final class Gap implements FactKind {
        @Override
        public String name() {
            return "gap";
        }

        @Override
        public String doc() {
            return "The room between a panel and the bottom of its groove at the bench, where there is least.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            return each(joined, panel -> {
                Measure gap = Panels.figure(panel.tightest(), "gap");
                return new Derived(Measure.datum(gap.value()), gap.how());
            });
        }
    }

    /** Room at the wettest. */
    static final class Clearance implements FactKind {
        @Override
        public String name() {
            return "clearance";
        }

        @Override
        public String doc() {
            return "What is left of the room on each side of a panel in the dampest season.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            return each(joined, panel -> natural(
                    name(),
                    panel.gapMm() - panel.swellingMm(),
                    DecimalText.write(panel.gapMm(), 2) + " mm of room a side less "
                            + DecimalText.write(panel.swellingMm(), 2) + " mm that it grows from "
                            + DecimalText.write(panel.nature().seasons().bench(), 2) + " % to "
                            + DecimalText.write(panel.nature().seasons().wettest(), 2) + " % moisture",
                    panel.nature().across().citation().source()));
        }
    }

    /** What holds it at the driest. */
    static final class Cover implements FactKind {
        @Override
        public String name() {
            return "cover";
        }

        @Override
        public String doc() {
            return "How far a panel in the middle of its grooves still reaches into each in the driest season.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            return each(joined, panel -> natural(
                    name(),
                    (panel.dryMm(panel.widthMm()) - panel.openingMm()) / 2,
                    "half of what the panel, " + DecimalText.write(panel.dryMm(panel.widthMm()), 2)
                            + " mm wide at " + DecimalText.write(panel.nature().seasons().driest(), 2)
                            + " % moisture, is wider than its opening of "
                            + DecimalText.write(panel.openingMm(), 2) + " mm",
                    panel.nature().across().citation().source()));
        }
    }
}

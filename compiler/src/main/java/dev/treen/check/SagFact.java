package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Derived;
import dev.treen.quantity.DecimalText;
import dev.treen.wood.Figures;
import java.util.LinkedHashMap;
import java.util.Map;

/** How far a shelf sags. */
final class SagFact implements FactKind {
    @Override
    public String name() {
        return "sag";
    }

    @Override
    public String doc() {
        return "How far a part that lies level between two ends sags in its middle after years under its load.";
    }

    @Override
    public Map<String, Derived> of(Joined joined) {
        Map<String, Derived> facts = new LinkedHashMap<>();
        for (Spans.Span span : Spans.of(joined)) {
            Sagging.of(span).ifPresent(sagging -> facts.put(
                    span.part().part().name(),
                    PanelFacts.natural(name(), sagging.sag().laterMm(), words(sagging), source(sagging))));
        }
        return facts;
    }

    static String words(Sagging sagging) {
        return DecimalText.write(sagging.sag().firstMm(), 2) + " mm at first, × "
                + DecimalText.write(Figures.standard().value("shelf.creep"), 2) + " after years, over "
                + DecimalText.write(sagging.span().spanMm(), 1) + " mm between its ends, under "
                + sagging.load().words() + (sagging.load().assumed() ? " (assumed)" : "") + ", "
                + DecimalText.write(sagging.load().newtons() + sagging.ownN(), 0)
                + " N with its own weight, at a stiffness of "
                + DecimalText.write(sagging.modulusMpa() / 1000, 1) + " GPa";
    }

    static String source(Sagging sagging) {
        return "Wood Handbook FPL-GTR-190 ch. 9; load: " + sagging.load().source();
    }
}

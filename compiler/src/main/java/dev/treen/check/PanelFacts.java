package dev.treen.check;

import dev.treen.joinery.Joined;
import dev.treen.model.Derivation;
import dev.treen.model.Derived;
import dev.treen.model.Measure;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import dev.treen.wood.Panels.Hold;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What is known of the room of panels, doors and lids (rules of the trade M-05, M-06, M-11, M-13 and F-06). */
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

    private static Map<String, Derived> each(Joined joined, Function<Clearance, Derived> fact) {
        Map<String, Clearance> tightest = new LinkedHashMap<>();
        for (Clearance room : Clearances.of(joined)) {
            tightest.merge(room.of().part().name(), room, PanelFacts::tighter);
        }
        Map<String, Derived> facts = new LinkedHashMap<>();
        tightest.forEach((part, room) -> facts.put(part, fact.apply(room)));
        return facts;
    }

    private static Clearance tighter(Clearance one, Clearance other) {
        return other.tightest().mm() < one.tightest().mm() ? other : one;
    }

    /** Room at the bench. */
    static final class Gap implements FactKind {
        @Override
        public String name() {
            return "gap";
        }

        @Override
        public String doc() {
            return "The room on each side of a panel, door or lid at the bench, where there is least.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            return each(joined, room -> natural(name(), room.benchMm(), "what is left of the opening", "derived"));
        }
    }

    /** Room when least is left. */
    static final class Tightest implements FactKind {
        @Override
        public String name() {
            return "clearance";
        }

        @Override
        public String doc() {
            return "What is left of that room in the dampest season, every error of making at its worst.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            return each(joined, room -> natural(
                    name(), room.tightest().mm(), words(room, room.swellingMm(), "less"), source(room)));
        }
    }

    /** Room when there is most. */
    static final class Loosest implements FactKind {
        @Override
        public String name() {
            return "loosest";
        }

        @Override
        public String doc() {
            return "What that room grows to in the driest season, every error of making at its worst.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            return each(joined, room -> natural(
                    name(), room.loosest().mm(), words(room, room.shrinkingMm(), "and"), source(room)));
        }
    }

    private static String words(Clearance room, double season, String sign) {
        return DecimalText.write(room.benchMm(), 2) + " mm of room at the bench, " + sign + " "
                + DecimalText.write(season, 2) + " mm that it moves from "
                + DecimalText.write(room.nature().seasons().bench(), 2) + " % to "
                + DecimalText.write(sign.equals("less")
                        ? room.nature().seasons().wettest()
                        : room.nature().seasons().driest(), 2)
                + " % moisture, " + sign + " " + DecimalText.write(room.worstMm(), 2)
                + " mm that making may take, most of it from the "
                + room.largest().stream().findFirst().map(Clearance.Deviation::what).orElse("opening");
    }

    private static String source(Clearance room) {
        return room.nature().coefficient(room.measure()).citation().source();
    }

    /** What holds it at the driest. */
    static final class Cover implements FactKind {
        @Override
        public String name() {
            return "cover";
        }

        @Override
        public String doc() {
            return "How far a panel in its place still reaches into each in the driest season.";
        }

        @Override
        public Map<String, Derived> of(Joined joined) {
            Map<String, Derived> facts = new LinkedHashMap<>();
            for (Panels.Held panel : Panels.of(joined)) {
                facts.put(panel.part().part().name(), cover(panel));
            }
            return facts;
        }

        private Derived cover(Panels.Held panel) {
            return natural(
                    name(),
                    panel.lyingMm(),
                    (panel.hold() == Hold.ONE_EDGE
                            ? "what reaches beyond the edge that is glued, of all that the panel, "
                            : "half of what the panel, ") + DecimalText.write(panel.dryMm(panel.widthMm()), 2)
                            + " mm wide at " + DecimalText.write(panel.nature().seasons().driest(), 2)
                            + " % moisture, is wider than its opening of "
                            + DecimalText.write(panel.openingMm(), 2) + " mm",
                    panel.nature().across().citation().source());
        }
    }
}

package dev.treen.page;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Work;
import dev.treen.quantity.Length;
import dev.treen.solid.Contact;
import dev.treen.solid.Solid;
import dev.treen.wood.Consumables;
import dev.treen.wood.Figures;
import dev.treen.wood.Finish;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What a project takes besides wood, with how that was reckoned. */
final class Supplies {
    private static final double MM2_IN_M2 = 1_000_000;
    private static final String PRACTICE = "common practice, no source";

    /**
     * One thing to have at hand.
     *
     * @param what its kind
     * @param amount how much, as a number that may be a range
     * @param unit of the amount
     * @param reckoned from what
     * @param source of the figures
     */
    record Supply(String what, String amount, String unit, String reckoned, String source) {}

    private Supplies() {
    }

    static List<Supply> of(Joined joined) {
        List<Supply> all = new ArrayList<>();
        glue(joined).ifPresent(all::add);
        finish(joined, all);
        hardware(joined, all);
        return all;
    }

    private static Optional<Supply> glue(Joined joined) {
        double area = 0;
        for (MadeJoint made : joined.joints()) {
            boolean glued = made.holdsFast()
                    && joined.joints().stream().anyMatch(m -> m.joint().statement() == made.joint().statement()
                            && m.works().stream().anyMatch(w -> w.stage() == Work.Stage.GLUE));
            if (glued) {
                area += touching(joined, made);
            }
        }
        if (area <= 0) {
            return Optional.empty();
        }
        Figures figures = Figures.standard();
        double most = Consumables.glueToMixMl(area, figures);
        return Optional.of(new Supply("glue", String.valueOf((int) Math.max(1, Math.ceil(most))), "ml",
                area(area) + " of glued faces, a film of " + figures.value("glue.film")
                        + " mm, twice that for both faces"
                        + " and what is squeezed out",
                figures.get("glue.film").citation().source() + ", from memory; " + PRACTICE));
    }

    private static double touching(Joined joined, MadeJoint made) {
        Optional<Solid> one = solid(joined, made.joint().left().name());
        Optional<Solid> other = solid(joined, made.joint().right().name());
        if (one.isEmpty() || other.isEmpty()) {
            return 0;
        }
        return Contact.between(one.get(), other.get()).stream().mapToDouble(c -> c.region().area()).sum();
    }

    private static Optional<Solid> solid(Joined joined, String part) {
        return joined.part(part).flatMap(FinishedPart::solid).filter(s -> !s.isEmpty());
    }

    private static void finish(Joined joined, List<Supply> all) {
        double area = joined.parts().stream().mapToDouble(Supplies::surface).sum();
        if (area <= 0) {
            return;
        }
        for (Finish each : Finish.all()) {
            double m2 = area / MM2_IN_M2;
            String coats = each.leastCoats() == each.mostCoats()
                    ? each.leastCoats() + " coats"
                    : each.leastCoats() + " to " + each.mostCoats() + " coats";
            all.add(new Supply("finish, if it is " + each.name(),
                    millilitres(each.leastLitres(m2)) + " to " + millilitres(each.mostLitres(m2)), "ml",
                    area(area) + " of surface, all faces of all parts; " + coats + " at "
                            + (int) each.leastRate() + " to " + (int) each.mostRate() + " m² a litre"
                            + (each.remark().isEmpty() ? "" : "; " + each.remark()),
                    each.citation().source()));
        }
    }

    private static double surface(FinishedPart part) {
        return part.solid().filter(s -> !s.isEmpty()).map(s -> s.surface().area()).orElseGet(() -> {
            double length = part.length().value().toDoubleMm();
            double width = part.width().value().toDoubleMm();
            double thickness = part.thickness().value().toDoubleMm();
            return Math.max(0, 2 * (length * width + width * thickness + thickness * length));
        });
    }

    private static void hardware(Joined joined, List<Supply> all) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (MadeJoint made : joined.joints()) {
            switch (made.joint().kind()) {
                case "butt" -> counts.merge("butt", 1, Integer::sum);
                case "button" -> counts.merge("button", buttons(made), Integer::sum);
                case "inset" -> counts.merge("hinge", made.joint().word("hinge").isPresent() ? 1 : 0, Integer::sum);
                default -> {
                }
            }
        }
        add(all, counts, "button", "buttons with a screw each", "", 1,
                "as far apart as the joint says, along each rail");
        add(all, counts, "hinge", "pairs of hinges", "", 1, "a pair for each hinged door or lid");
        add(all, counts, "butt", "nails, screws or dowels", "", 2, "two at least for each butt joint");
    }

    private static void add(List<Supply> all, Map<String, Integer> counts, String key, String what, String unit,
            int each, String reckoned) {
        int count = counts.getOrDefault(key, 0) * each;
        if (count > 0) {
            all.add(new Supply(what, String.valueOf(count), unit, reckoned, PRACTICE));
        }
    }

    private static int buttons(MadeJoint made) {
        Length every = made.figure("every").map(f -> f.measure().value()).orElse(Length.ZERO);
        double rail = made.joint().right().length().value().toDoubleMm();
        return every.signum() > 0 ? (int) Math.floor(rail / every.toDoubleMm()) + 1 : 1;
    }

    private static String area(double mm2) {
        return mm2 < MM2_IN_M2 / 10
                ? String.format(Locale.ROOT, "%.0f cm²", mm2 / 100)
                : String.format(Locale.ROOT, "%.2f m²", mm2 / MM2_IN_M2);
    }

    /** To five, since nobody measures finish more finely. */
    private static long millilitres(double litres) {
        return Math.max(5, 5 * Math.round(litres * 200));
    }
}

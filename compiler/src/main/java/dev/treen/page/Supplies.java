package dev.treen.page;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GlueFaces;
import dev.treen.joinery.Hardware;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.wood.Consumables;
import dev.treen.wood.Figures;
import dev.treen.wood.Finish;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What a project takes besides wood, with how that was reckoned. */
final class Supplies {
    private static final double MM2_IN_M2 = 1_000_000;
    private static final double MM2_IN_SQUARE_FOOT = 304.8 * 304.8;
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
        double area = GlueFaces.of(joined).stream().filter(GlueFaces::glued).mapToDouble(GlueFaces::total).sum();
        if (area <= 0) {
            return Optional.empty();
        }
        Figures figures = Figures.standard();
        double most = Consumables.glueToMixMl(area, figures);
        return Optional.of(new Supply("glue", String.valueOf((int) Math.max(1, Math.ceil(most))), "ml",
                area(area, joined.project().settings().format()) + " of glued faces, a film of "
                        + figures.value("glue.film")
                        + " mm, twice that for both faces"
                        + " and what is squeezed out",
                figures.get("glue.film").citation().source() + ", from memory; " + PRACTICE));
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
                    area(area, joined.project().settings().format()) + " of surface, all faces of all parts; " + coats
                            + " at "
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

    /** What the joints take, like things together; where the project leaves open how a joint is held, the usual. */
    private static void hardware(Joined joined, List<Supply> all) {
        LengthFormat format = joined.project().settings().format();
        Map<Hardware, Integer> counts = new LinkedHashMap<>();
        Set<Set<String>> held = new HashSet<>();
        Set<String> hung = new HashSet<>();
        for (MadeJoint made : joined.joints()) {
            made.hardware().forEach(taken -> {
                counts.merge(new Hardware(taken.kind(), taken.sizes(), 0), taken.count(), Integer::sum);
                held.add(pair(made));
                if (taken.kind() == Hardware.Kind.HINGE) {
                    hung.add(made.joint().left().name());
                }
            });
        }
        counts.forEach((taken, count) -> all.add(new Supply(named(taken, format), String.valueOf(count), "",
                "as many as the joints say" + rod(taken, count, format), PRACTICE)));
        long butts = joined.joints().stream()
                .filter(made -> made.joint().kind().equals("butt") && !held.contains(pair(made)))
                .count();
        long pairs = joined.joints().stream()
                .filter(made -> made.joint().word("hinge").isPresent() && !hung.contains(made.joint().left().name()))
                .map(made -> made.joint().left().name())
                .distinct()
                .count();
        add(all, pairs, "pairs of hinges", "a pair for each hinged door or lid");
        add(all, 2 * butts, "nails, screws or dowels", "two at least for each butt joint");
    }

    /** Dowels are bought cut and grooved, or sawn off a rod: so long, with a saw cut each. */
    private static String rod(Hardware taken, int count, LengthFormat format) {
        if (taken.kind() != Hardware.Kind.DOWEL) {
            return "";
        }
        Length rod = taken.sizes().getLast().plus(Length.ofMm(2)).times(count).roundUpTo(Length.ofMm(10));
        return ", or " + format.text(rod) + " of rod to cut them from";
    }

    private static String named(Hardware taken, LengthFormat format) {
        String size = taken.sizes().stream().map(format::figure).collect(Collectors.joining(" x "));
        return taken.kind().word() + (size.isEmpty() ? "" : ", " + size + " " + format.unit());
    }

    private static Set<String> pair(MadeJoint made) {
        return Set.of(made.joint().left().name(), made.joint().right().name());
    }

    private static void add(List<Supply> all, long count, String what, String reckoned) {
        if (count > 0) {
            all.add(new Supply(what, String.valueOf(count), "", reckoned, PRACTICE));
        }
    }

    private static String area(double mm2, LengthFormat format) {
        String metric = area(mm2);
        return format.imperial()
                ? String.format(Locale.ROOT, "%.1f square feet (%s)", mm2 / MM2_IN_SQUARE_FOOT, metric)
                : metric;
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

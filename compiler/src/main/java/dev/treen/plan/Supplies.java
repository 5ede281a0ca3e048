package dev.treen.plan;

import dev.treen.cutting.Glued;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GlueFaces;
import dev.treen.joinery.Hardware;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.model.Selling;
import dev.treen.model.Ware;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import dev.treen.wood.Consumables;
import dev.treen.wood.Figures;
import dev.treen.wood.Finish;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** What a project takes besides wood, with how that was reckoned and how it is sold. */
public final class Supplies {
    private static final double MM2_IN_M2 = 1_000_000;
    private static final double MM2_IN_SQUARE_FOOT = 304.8 * 304.8;
    private static final String PRACTICE = "common practice, no source";

    /** What kinds of things are bought besides wood. */
    public enum Group {
        /** Parts that are bought ready. */
        PART,
        /** Glue. */
        GLUE,
        /** Finish. */
        FINISH,
        /** Hardware and what else is bought by the piece. */
        HARDWARE
    }

    /**
     * One thing to have at hand.
     *
     * @param group where it belongs
     * @param what its kind
     * @param name as the project calls it; empty where it does not
     * @param least how much of it at least
     * @param most how much at most
     * @param unit of both; empty for pieces
     * @param reckoned from what
     * @param source of the figures
     * @param selling how it is sold
     * @param either whether it is one of several of its group, of which one is wanted
     */
    public record Supply(Group group, String what, String name, long least, long most, String unit, String reckoned,
            String source, Selling selling, boolean either) {
        /** How much, as a number that may be a range. */
        public String amount() {
            return least == most ? String.valueOf(least) : least + " to " + most;
        }

        /** Its kind, with the name that the project gives it. */
        public String called() {
            return what + (name.isEmpty() || name.equals(what) ? "" : ", `" + name + "`");
        }
    }

    private Supplies() {
    }

    /** What {@code joined} takes, where these of its parts are {@code glued} up from staves. */
    public static List<Supply> of(Joined joined, List<Glued> glued) {
        List<Supply> all = new ArrayList<>();
        parts(joined, all);
        glue(joined, glued).ifPresent(all::add);
        finish(joined, all);
        hardware(joined, all);
        return all;
    }

    /** What is bought of one kind, size and price. */
    private record Ready(String stuff, Size size, OptionalDouble each) {
        static Ready of(FinishedPart part, Board bought) {
            return new Ready(Woods.name(bought), part.finished(), bought.price()
                    .map(price -> OptionalDouble.of(price.of(part.finished())))
                    .orElseGet(OptionalDouble::empty));
        }

        /** A piece at the price that {@code first} of them is sold at. */
        Selling selling(Board first) {
            return new Selling(first.price().flatMap(price -> each.isEmpty() ? Optional.empty()
                    : Optional.of(new Selling.Sum(each.getAsDouble(), Selling.Per.EACH, price.at()))),
                    OptionalDouble.empty(), OptionalDouble.empty());
        }
    }

    /** The parts that are bought ready, those alike together. */
    private static void parts(Joined joined, List<Supply> all) {
        Map<Ready, List<Board>> alike = new LinkedHashMap<>();
        for (FinishedPart part : joined.parts()) {
            part.part().bought().ifPresent(bought -> alike
                    .computeIfAbsent(Ready.of(part, bought), ready -> new ArrayList<>())
                    .add(bought));
        }
        LengthFormat format = joined.project().settings().format();
        alike.forEach((ready, pieces) -> all.add(new Supply(Group.PART,
                ready.stuff() + ", " + ready.size().text(format), "", pieces.size(), pieces.size(), "",
                "bought ready as " + String.join(", ", pieces.stream().map(piece -> "`" + piece.name() + "`").toList()),
                "the project",
                ready.selling(pieces.getFirst()), false)));
    }

    private static Optional<Supply> glue(Joined joined, List<Glued> glued) {
        double joints = GlueFaces.of(joined).stream().filter(GlueFaces::glued).mapToDouble(GlueFaces::total).sum();
        double area = joints + glued.stream().mapToDouble(Supplies::lines).sum();
        if (area <= 0) {
            return Optional.empty();
        }
        Figures figures = Figures.standard();
        long most = (long) Math.max(1, Math.ceil(Consumables.glueToMixMl(area, figures)));
        Optional<Ware> glue = joined.project().settings().glue();
        return Optional.of(new Supply(Group.GLUE, "glue", glue.map(Ware::name).orElse(""), most, most, "ml",
                area(area, joined.project().settings().format()) + " of glued faces, a film of "
                        + figures.value("glue.film")
                        + " mm, twice that for both faces"
                        + " and what is squeezed out",
                figures.get("glue.film").citation().source() + ", from memory; " + PRACTICE,
                glue.map(Ware::selling).orElse(Selling.UNKNOWN), false));
    }

    /** The glue lines between the staves of a part, in mm²: as long as these, and as thick before they are planed again. */
    private static double lines(Glued glued) {
        return glued.lines().size() * glued.roughLength().toDoubleMm() * glued.thickness().toDoubleMm();
    }

    private static void finish(Joined joined, List<Supply> supplies) {
        double area = joined.parts().stream().mapToDouble(Supplies::finished).sum();
        if (area <= 0) {
            return;
        }
        boolean all = joined.made().stream().allMatch(part -> part.part().service().faces().equals("both"));
        Optional<Ware> chosen = joined.project().settings().finish().filter(ware -> ware.kind().isPresent());
        for (Finish each : Finish.all()) {
            boolean wanted = chosen.flatMap(Ware::kind).map(kind -> kind.equals(each.word())).orElse(true);
            if (!wanted) {
                continue;
            }
            double m2 = area / MM2_IN_M2;
            String coats = each.leastCoats() == each.mostCoats()
                    ? each.leastCoats() + " coats"
                    : each.leastCoats() + " to " + each.mostCoats() + " coats";
            supplies.add(new Supply(Group.FINISH,
                    chosen.isPresent() ? "finish: " + each.name() : "finish, if it is " + each.name(),
                    chosen.map(Ware::name).orElse(""),
                    millilitres(each.leastLitres(m2)), millilitres(each.mostLitres(m2)), "ml",
                    area(area, joined.project().settings().format()) + " of surface, "
                            + (all ? "all faces of all parts; " : "the faces that are finished; ") + coats
                            + " at "
                            + (int) each.leastRate() + " to " + (int) each.mostRate() + " m² a litre"
                            + (each.remark().isEmpty() ? "" : "; " + each.remark()),
                    each.citation().source(), chosen.map(Ware::selling).orElse(Selling.UNKNOWN),
                    chosen.isEmpty()));
        }
    }

    /** What of its surface a part asks to be finished, in mm². */
    private static double finished(FinishedPart part) {
        return switch (part.part().service().faces()) {
            case "none" -> 0;
            case "one" -> Math.max(0,
                    surface(part) - part.length().value().toDoubleMm() * part.width().value().toDoubleMm());
            default -> surface(part);
        };
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
        List<Ware> known = joined.project().hardware();
        counts.forEach((taken, count) -> all.add(piece(named(taken, format), count,
                "as many as the joints say" + rod(taken, count, format), fitting(known, taken))));
        long butts = joined.joints().stream()
                .filter(made -> made.joint().kind().equals("butt") && !held.contains(pair(made)))
                .count();
        long pairs = joined.joints().stream()
                .filter(made -> made.joint().word("hinge").isPresent() && !hung.contains(made.joint().left().name()))
                .map(made -> made.joint().left().name())
                .distinct()
                .count();
        Hardware some = new Hardware(Hardware.Kind.HINGE, List.of(), 0);
        add(all, 2 * pairs, "hinges, of any length", "a pair for each hinged door or lid", fitting(known, some));
        add(all, 2 * butts, "nails, screws or dowels", "two at least for each butt joint", Optional.empty());
        known.stream().filter(ware -> ware.count().isPresent()).forEach(ware -> all.add(piece(
                ware.name().replace('_', ' '), ware.count().getAsInt(), "as the project says", Optional.of(ware))));
    }

    /** The hardware that the project says for {@code taken}: the one that says most of its sizes, the length first. */
    private static Optional<Ware> fitting(List<Ware> known, Hardware taken) {
        List<Length> sizes = taken.sizes();
        Optional<Length> length = sizes.isEmpty() ? Optional.empty() : Optional.of(sizes.getLast());
        Optional<Length> thick = sizes.size() > 1 ? Optional.of(sizes.getFirst()) : Optional.empty();
        return known.stream()
                .filter(ware -> ware.kind().equals(Optional.of(taken.kind().name().toLowerCase(Locale.ROOT))))
                .filter(ware -> ware.length().isEmpty() || ware.length().equals(length))
                .filter(ware -> ware.thick().isEmpty() || ware.thick().equals(thick))
                .max(Comparator.comparingInt(
                        ware -> (ware.length().isPresent() ? 2 : 0) + (ware.thick().isPresent() ? 1 : 0)));
    }

    private static Supply piece(String what, long count, String reckoned, Optional<Ware> ware) {
        String name = ware.map(Ware::name).filter(called -> !called.replace('_', ' ').equals(what)).orElse("");
        return new Supply(Group.HARDWARE, what, name, count, count, "", reckoned, PRACTICE,
                ware.map(Ware::selling).orElse(Selling.UNKNOWN), false);
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

    private static void add(List<Supply> all, long count, String what, String reckoned, Optional<Ware> ware) {
        if (count > 0) {
            all.add(piece(what, count, reckoned, ware));
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

package dev.treen.wood;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/** Screws and nails as they are sold, and the holes bored for them (rules J-18 and J-19), from {@code fasteners.csv}. */
public final class FastenerTable {
    private static final String SCREW = "wood screw";

    private FastenerTable() {
    }

    /**
     * A wood screw of a number.
     *
     * @param gauge its number
     * @param shankMm thickness of its shank
     * @param thinnestMm thinnest wood whose edge takes it, where the table says so
     */
    public record Gauge(int gauge, double shankMm, OptionalDouble thinnestMm, Citation citation) {}

    /** The screw of this number, where it is made. */
    public static Optional<Gauge> gauge(int number) {
        return Optional.ofNullable(Table.GAUGES.get(number));
    }

    /** The thickest usual screw that an edge of this thickness takes; the thinnest of them where none fits. */
    public static Gauge forEdge(double thicknessMm) {
        List<Gauge> usual = Table.GAUGES.values().stream()
                .filter(gauge -> gauge.thinnestMm().isPresent())
                .sorted((a, b) -> Integer.compare(a.gauge(), b.gauge()))
                .toList();
        return usual.stream()
                .filter(gauge -> gauge.thinnestMm().orElseThrow() <= thicknessMm)
                .reduce((a, b) -> b)
                .orElse(usual.getFirst());
    }

    /** Usual lengths of screws, in inches or in millimetres, rising. */
    public static List<BigFraction> screwLengths(boolean inches) {
        return Table.usual(SCREW, "lengths", inches ? "in" : "mm");
    }

    /** Usual lengths of nails and brads, in inches or in millimetres, rising. */
    public static List<BigFraction> nailLengths(boolean inches) {
        return Table.usual("nail", "lengths", inches ? "in" : "mm");
    }

    /** Usual thicknesses of nails and brads, in millimetres, rising. */
    public static List<BigFraction> nailDiametersMm() {
        return Table.usual("nail", "diameters", "mm");
    }

    /** Usual lengths of hinges, in inches or in millimetres, rising. */
    public static List<BigFraction> hingeLengths(boolean inches) {
        return Table.usual("hinge", "lengths", inches ? "in" : "mm");
    }

    /**
     * A hole to bore.
     *
     * @param mm its width
     * @param words how it was found
     */
    public record Hole(double mm, String words, Citation citation) {}

    /** The hole for the thread of a screw: 70 % of its root in softwood, 90 % in hardwood. */
    public static Hole pilot(double shankMm, boolean softwood) {
        Csv.Row root = Table.row("F054");
        Csv.Row share = Table.row(softwood ? "F055" : "F056");
        return new Hole(
                shankMm * root.required("value") * share.required("value"),
                (softwood ? "70" : "90") + " % of the root, which is two thirds of the shank",
                Citation.of(share));
    }

    private static final class Table {
        static final Csv ROWS = Csv.load("fasteners.csv");
        static final Map<Integer, Gauge> GAUGES = gauges();

        static Csv.Row row(String id) {
            return ROWS.rowsOf(id).getFirst();
        }

        static List<BigFraction> usual(String item, String property, String unit) {
            List<BigFraction> sizes = new ArrayList<>();
            for (Csv.Row row : ROWS.rows()) {
                boolean wanted = row.text("group").equals("usual sizes") && row.text("item").equals(item)
                        && row.text("property").equals(property) && row.text("unit").equals(unit);
                if (wanted) {
                    for (String size : row.text("rule_or_formula").split("\\|")) {
                        sizes.add(number(size));
                    }
                }
            }
            return List.copyOf(sizes);
        }

        private static BigFraction number(String size) {
            int point = size.indexOf('.');
            return point < 0
                    ? BigFraction.parse(size)
                    : BigFraction.of(
                            Integer.parseInt(size.replace(".", "")),
                            (int) Math.pow(10, size.length() - point - 1));
        }

        private static Map<Integer, Gauge> gauges() {
            Map<Integer, Csv.Row> shanks = new HashMap<>();
            Map<Integer, Double> thinnest = new HashMap<>();
            for (Csv.Row row : ROWS.rows()) {
                boolean gauge = row.text("group").equals(SCREW) && row.text("item").startsWith("gauge ");
                if (gauge) {
                    int number = Integer.parseInt(row.text("item").substring("gauge ".length()));
                    switch (row.text("property")) {
                        case "shank diameter" -> shanks.put(number, row);
                        case "thinnest edge" -> thinnest.put(number, row.required("value"));
                        default -> throw new IllegalStateException("unknown property " + row.text("property"));
                    }
                }
            }
            Map<Integer, Gauge> gauges = new HashMap<>();
            shanks.forEach((number, row) -> gauges.put(number, new Gauge(
                    number,
                    row.required("value"),
                    thinnest.containsKey(number)
                            ? OptionalDouble.of(thinnest.get(number))
                            : OptionalDouble.empty(),
                    Citation.of(row))));
            return Map.copyOf(gauges);
        }
    }
}

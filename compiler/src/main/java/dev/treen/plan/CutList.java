package dev.treen.plan;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.LoosePiece;
import dev.treen.joinery.Woods;
import dev.treen.model.Board;
import dev.treen.order.Phase;
import dev.treen.order.Step;
import dev.treen.quantity.BoardMeasure;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The cut list: parts of one size and wood in one row with a mark of their own (rules of the trade P-01).
 *
 * @param rows in the order of the project
 * @param loose the small pieces that the joints take, made of offcuts or a rod: they have no place in the layout
 * @param totals one a thickness, the thinnest first; of the parts alone
 */
public record CutList(List<Row> rows, List<Loose> loose, List<Total> totals) {
    private static final int LETTERS = 26;

    /** Keeps its own copies. */
    public CutList {
        rows = List.copyOf(rows);
        loose = List.copyOf(loose);
        totals = List.copyOf(totals);
    }

    /**
     * Parts that are alike.
     *
     * @param mark A, B, … Z, AA, …
     * @param parts their names
     * @param finished with what their joints hide
     * @param rough with allowances
     * @param species empty where the project does not say
     * @param board empty where any will do
     * @param toFit made to what is measured: the size is only planned
     * @param bought it is not made: the rough size is the finished one, and {@code species} says what it is of
     * @param notes from the project, and how it is sawn out where that is not in one piece
     */
    public record Row(
            String mark,
            List<String> parts,
            Size finished,
            Size rough,
            String species,
            String board,
            boolean toFit,
            boolean bought,
            String notes) {
        /** Keeps its own copy. */
        public Row {
            parts = List.copyOf(parts);
        }

        /** Where it comes from, in words. */
        public String source() {
            return bought ? "bought" : board.isEmpty() ? "any board" : board;
        }
    }

    /**
     * Small pieces that are alike.
     *
     * @param mark the next after those of the parts
     * @param piece one of them, with the count of all
     * @param species empty where the project does not say, or where it is bought
     * @param board of whose offcuts they are made; empty where any will do, or where they are bought
     * @param parts the parts that they join
     */
    public record Loose(String mark, LoosePiece piece, String species, String board, List<String> parts) {
        /** Keeps its own copy. */
        public Loose {
            parts = List.copyOf(parts);
        }

        /** What it is and what it joins. */
        public String name() {
            return piece.kind().word(piece.count()) + " for " + String.join(", ", parts);
        }

        /** What it is made of, in words. */
        public String source() {
            if (piece.kind().bought()) {
                return "bought, or a rod";
            }
            return board.isEmpty() ? "an offcut" : "an offcut of " + board;
        }
    }

    /**
     * All rough parts of one finished thickness.
     *
     * @param area of one face, in square metres
     * @param cubicMetres of the rough parts
     * @param boardFeet of the rough parts
     */
    public record Total(Length thickness, int parts, BigFraction area, BigFraction cubicMetres,
            BigFraction boardFeet) {}

    /** The cut list of {@code plan}. */
    public static CutList of(Plan plan) {
        Set<String> fitted = new HashSet<>();
        for (Step step : plan.order().steps()) {
            if (step.operation().phase() == Phase.FITTED || step.operation().phase() == Phase.OPENING) {
                fitted.addAll(step.operation().parts());
            }
        }
        Map<Row, List<String>> alike = new LinkedHashMap<>();
        for (FinishedPart part : plan.joined().parts()) {
            boolean toFit = fitted.contains(part.part().name());
            alike.computeIfAbsent(nameless(plan, part, toFit), r -> new ArrayList<>()).add(part.part().name());
        }
        List<Row> rows = new ArrayList<>();
        alike.forEach((row, names) -> rows.add(new Row(
                mark(rows.size()),
                names,
                row.finished(),
                row.rough(),
                row.species(),
                row.board(),
                row.toFit(),
                row.bought(),
                row.notes())));
        return new CutList(rows, LooseRows.of(plan.joined(), plan.cutting(), rows.size()), totals(rows));
    }

    private static Row nameless(Plan plan, FinishedPart part, boolean toFit) {
        return new Row(
                "",
                List.of(),
                part.finished(),
                part.rough(),
                part.part().stuff().map(Woods::name).orElse(""),
                part.part().bought().isPresent() ? ""
                        : plan.cutting().sourcesOf(part.part()).stream().map(Board::name)
                                .collect(Collectors.joining(", ")),
                toFit,
                part.part().bought().isPresent(),
                Stream.concat(Stream.of(part.part().doc()), SawnText.of(plan, part).stream())
                        .filter(text -> !text.isEmpty())
                        .reduce((one, other) -> one.replaceFirst("\\.$", "") + "; " + other)
                        .orElse(""));
    }

    static String mark(int index) {
        StringBuilder mark = new StringBuilder();
        for (int left = index; left >= 0; left = left / LETTERS - 1) {
            mark.insert(0, (char) ('A' + left % LETTERS));
        }
        return mark.toString();
    }

    private static List<Total> totals(List<Row> rows) {
        Map<Length, Total> totals = new TreeMap<>();
        for (Row row : rows) {
            if (row.bought()) {
                continue;
            }
            int count = row.parts().size();
            BigFraction area = row.rough()
                    .length()
                    .mm()
                    .multiply(row.rough().width().mm())
                    .multiply(count)
                    .divide(1_000_000);
            Length thickness = row.finished().thickness();
            Total more = new Total(
                    thickness,
                    count,
                    area,
                    BoardMeasure.cubicMetres(row.rough()).multiply(count),
                    BoardMeasure.boardFeet(row.rough()).multiply(count));
            totals.merge(thickness, more, CutList::sum);
        }
        return List.copyOf(totals.values());
    }

    private static Total sum(Total a, Total b) {
        return new Total(
                a.thickness(),
                a.parts() + b.parts(),
                a.area().add(b.area()),
                a.cubicMetres().add(b.cubicMetres()),
                a.boardFeet().add(b.boardFeet()));
    }
}

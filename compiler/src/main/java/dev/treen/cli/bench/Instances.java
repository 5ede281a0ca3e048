package dev.treen.cli.bench;

import static dev.treen.cli.bench.JsonValues.list;
import static dev.treen.cli.bench.JsonValues.number;
import static dev.treen.cli.bench.JsonValues.text;

import dev.treen.yield.Defect;
import dev.treen.yield.Objective;
import dev.treen.yield.Piece;
import dev.treen.yield.Rect;
import dev.treen.yield.Run;
import dev.treen.yield.Settings;
import dev.treen.yield.Stock;
import dev.treen.yield.YieldProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Turns the instances of a file into problems, by the objective written at its head. */
final class Instances {
    private Instances() {
    }

    /**
     * One instance.
     *
     * @param name its name
     * @param problem as the solver takes it
     * @param known the best value known to the file, -1 if it has none
     * @param waste what counts is the area of the boards less that of the parts, the last board up to its last cut across
     */
    record Instance(String name, YieldProblem problem, long known, boolean waste) {}

    static List<Instance> read(Path file) throws IOException {
        if (!(JsonValues.read(file) instanceof Map<?, ?> head)) {
            throw new IOException("not an object: " + file.getFileName());
        }
        var found = new ArrayList<Instance>();
        for (Object each : list(head, "instances")) {
            if (each instanceof Map<?, ?> one) {
                boolean glass = one.containsKey("boardSize");
                var problem = glass ? glass(one) : problem(text(head, "family"), text(head, "objective"), one);
                found.add(new Instance(text(one, "name"), problem, known(one), glass));
            }
        }
        return found;
    }

    private static long known(Map<?, ?> one) {
        if (one.get("feasible") instanceof Boolean feasible) {
            return feasible ? 1 : 2;
        }
        return one.get("best") instanceof Number n ? n.longValue() : -1;
    }

    private static YieldProblem problem(String family, String objective, Map<?, ?> one) throws IOException {
        boolean realistic = family.startsWith("realistic");
        boolean strip = objective.contains("height");
        boolean most = objective.contains("most value") || objective.contains("maximise");
        Objective aim = strip ? Objective.SHORTEST_BOARD : most ? Objective.MOST_VALUE : Objective.ALL_PARTS_LEAST_COST;
        Settings settings = Settings.kerf(number(one.get("kerf"), 0)).aiming(aim);
        if (one.get("minOffcut") instanceof List<?> least) {
            settings = settings.keeping(number(least.get(0), 1), number(least.get(1), 1));
        }
        if (one.containsKey("length")) {
            return lengths(one, settings);
        }
        var stocks = new ArrayList<Stock>();
        for (Object each : list(one, "boards")) {
            stocks.add(board((List<?>) each, stocks.size(), realistic, strip, list(one, "parts")));
        }
        var pieces = new ArrayList<Piece>();
        for (Object each : list(one, "parts")) {
            pieces.add(part((List<?>) each, pieces.size(), strip));
        }
        var runs = new ArrayList<Run>();
        for (Object each : list(one, "runs")) {
            runs.add(new Run(((List<?>) each).stream().map(i -> "p" + i).toList()));
        }
        return new YieldProblem(stocks, pieces, runs, settings);
    }

    // Sheets of one size in a fixed order, with parts in a fixed order and cuts that keep distances: of these rules only the
    // sizes, the flaws and saw-through cuts are kept, so a bound found here holds there, and a layout need not.
    private static YieldProblem glass(Map<?, ?> one) {
        long length = number(list(one, "boardSize").get(0), 0);
        long width = number(list(one, "boardSize").get(1), 0);
        var stocks = new ArrayList<Stock>();
        for (Object each : list(one, "boards")) {
            List<Defect> flaws = ((List<?>) each).stream().map(flaw -> flaw((List<?>) flaw)).toList();
            stocks.add(new Stock("b" + stocks.size(), length, width, flaws, 1, 1, false, ""));
        }
        var pieces = new ArrayList<Piece>();
        for (Object each : list(one, "parts")) {
            List<?> part = (List<?>) each;
            pieces.add(new Piece(
                    "p" + pieces.size(), number(part.get(0), 0), number(part.get(1), 0), 1, true, java.util.Set.of(),
                    Optional.empty(), 1));
        }
        // A leftover as wide as the board is what the last cut across leaves.
        Settings settings = Settings.kerf(0).aiming(Objective.ALL_PARTS_LEAST_COST).keeping(1, width);
        return new YieldProblem(stocks, pieces, List.of(), settings);
    }

    private static YieldProblem lengths(Map<?, ?> one, Settings settings) {
        var bar = Stock.clear("bar", number(one.get("length"), 0), 1).costing(1).times(Stock.UNLIMITED);
        var pieces = new ArrayList<Piece>();
        for (Object each : list(one, "parts")) {
            List<?> part = (List<?>) each;
            pieces.add(Piece.of("p" + pieces.size(), number(part.get(0), 0), 1, (int) number(part.get(1), 0)));
        }
        return new YieldProblem(List.of(bar), pieces, List.of(), settings);
    }

    private static Stock board(List<?> row, int index, boolean realistic, boolean strip, List<?> parts) {
        long first = number(row.get(0), 0);
        if (strip) {
            // The free side is the length here; all parts end to end are always long enough.
            long sum = 0;
            for (Object each : parts) {
                List<?> part = (List<?>) each;
                sum += number(part.get(1), 0) * number(part.get(2), 1);
            }
            return Stock.clear("b" + index, sum, first);
        }
        long second = number(row.get(1), 0);
        int count = realistic ? 1 : (int) number(row.get(2), Stock.UNLIMITED);
        int flawsAt = realistic ? 2 : 3;
        var flaws = new ArrayList<Defect>();
        if (row.size() > flawsAt) {
            for (Object each : (List<?>) row.get(flawsAt)) {
                flaws.add(flaw((List<?>) each));
            }
        }
        long cost = realistic ? first * second : row.size() > 4 ? number(row.get(4), 1) : 1;
        return new Stock("b" + index, first, second, flaws, cost, count, false, "");
    }

    private static Defect flaw(List<?> row) {
        int at = row.get(0) instanceof String ? 1 : 0;
        var box = new Rect(
                number(row.get(at), 0), number(row.get(at + 1), 0), number(row.get(at + 2), 0),
                number(row.get(at + 3), 0));
        return "ellipse".equals(row.get(0)) ? new Defect.Knot(box) : new Defect.Box(box);
    }

    private static Piece part(List<?> row, int index, boolean strip) {
        long width = number(row.get(0), 0);
        long height = number(row.get(1), 0);
        int copies = (int) number(row.get(2), Piece.UNLIMITED);
        long value = row.size() > 3 ? number(row.get(3), 0) : width * height;
        return new Piece(
                "p" + index,
                strip ? height : width,
                strip ? width : height,
                copies,
                false,
                java.util.Set.of(),
                Optional.empty(),
                value);
    }
}

package dev.treen.order;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Strip;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** From boards to parts of the right size: rest, resaw, saw out, true, width and thickness, length (O-01, Y-10, A-04). */
final class StockWork {
    private static final double BOARD_OF_THE_TABLE = 25;
    private static final double LEAF_OF_THE_TABLE = 140.0 * 500;
    private static final String SHORT_PIECES = "No piece shorter or thinner than the machine's manual allows: plane such"
            + " pieces by hand, or while they hang together.";

    private final Workshop shop;
    private final List<Operation> operations = new ArrayList<>();

    private StockWork(Workshop shop) {
        this.shop = shop;
    }

    static List<Operation> of(Workshop shop) {
        StockWork work = new StockWork(shop);
        work.boards();
        shop.cutting().boards().forEach(work::sawOut);
        work.strips();
        work.lengths();
        return work.operations;
    }

    private void boards() {
        Map<String, BoardCut> solid = new LinkedHashMap<>();
        for (BoardCut cut : shop.cutting().boards()) {
            if (!cut.board().sheet()) {
                solid.putIfAbsent(cut.board().name(), cut);
            }
        }
        if (solid.isEmpty()) {
            return;
        }
        double thick = solid.values().stream()
                .mapToDouble(cut -> cut.board().thickness().value().toDoubleMm())
                .max()
                .orElse(0);
        operations.add(Operation.of(
                Phase.REST,
                "Let the boards lie in the room where the piece will live",
                List.copyOf(solid.keySet()),
                "moisture meter or balance")
                .checking("two readings some days apart agree")
                .waiting(shop.times().wait("rest", Math.pow(thick / BOARD_OF_THE_TABLE, 2))));
        solid.values().stream().filter(cut -> cut.leaves() > 1).forEach(this::resaw);
    }

    private void resaw(BoardCut cut) {
        Board board = cut.board();
        List<String> name = List.of(board.name());
        double area = board.length().value().toDoubleMm() * board.width().value().toDoubleMm();
        operations.add(Operation.of(
                Phase.FLATTEN,
                "Plane one face flat and one edge square to it, and mark both",
                name,
                shop.tool("try plane, winding sticks, square", "jointer"))
                .checking("no light under a straight edge, along, across and from corner to corner")
                .taking(shop.times().of("true", area / 100_000)));
        Length line = cut.thickness().plus(board.allow().resaw().value());
        operations.add(Operation.of(
                Phase.RESAW,
                "Resaw into " + cut.leaves() + " leaves, and flatten the sawn face before the next one",
                name,
                shop.tool("marking gauge, frame saw or rip saw", "band saw with a fence"))
                .setting(List.of(new GaugeSetting("leaf", line)))
                .from("the true face; the line leaves " + shop.format().text(board.allow().resaw().value())
                        + " to smooth")
                .checking("every leaf still gives " + shop.format().text(cut.thickness()) + " when it is flat")
                .minding(shop.tool(
                        "Hold the board upright in a vice, and saw from both edges in turn.",
                        "Keep both hands clear of the line of the blade; feed the last of it with a stick."))
                .taking(shop.times().of("resaw", area * (cut.leaves() - 1) / LEAF_OF_THE_TABLE))
                .waiting(shop.times().wait("stick")));
    }

    private void sawOut(BoardCut cut) {
        List<Integer> free = cut.cuts().stream()
                .filter(c -> c.strip() == BoardCut.SawCut.NO_STRIP)
                .map(BoardCut.SawCut::number)
                .toList();
        List<Integer> later = cut.cuts().stream()
                .filter(c -> c.strip() != BoardCut.SawCut.NO_STRIP)
                .map(BoardCut.SawCut::number)
                .toList();
        List<String> parts = cut.parts().stream().map(BoardCut.OnBoard::part).toList();
        String whole = cut.strips().isEmpty() ? "" : "; leave whole " + Workshop.list(
                cut.strips().stream().map(StockWork::told).toList());
        operations.add(Operation.of(
                Phase.SAW,
                "Mark out `" + cut.name() + "` as drawn, clear of its flaws, and saw it by " + numbers(free) + whole,
                parts,
                shop.tool("rule, square, crosscut and rip saw", "rule, square, saw with fence and stop"))
                .from("the left end and the near edge")
                .checking("every piece bears its name and an arrow along the grain")
                .minding(shop.tool("", "Riving knife and guard on; push stick; stand out of the line of the blade."))
                .taking(shop.times().of("saw", free.size())));
        if (!later.isEmpty()) {
            operations.add(Operation.of(
                    Phase.APART,
                    "Cut the strips of `" + cut.name() + "` apart by " + numbers(later),
                    cut.strips().stream().flatMap(s -> s.parts().stream()).toList(),
                    shop.tool("crosscut saw, square", "crosscut saw with a stop"))
                    .checking("the kerf falls beside the line, in the waste")
                    .taking(shop.times().of("saw", later.size())));
        }
    }

    private static String told(Strip strip) {
        return "strip " + strip.number() + " (" + Workshop.quoted(strip.parts()) + ")";
    }

    private static String numbers(List<Integer> cuts) {
        if (cuts.isEmpty()) {
            return "no cut";
        }
        if (cuts.size() == 1) {
            return "cut " + cuts.getFirst();
        }
        return "cuts " + cuts.getFirst() + (cuts.size() == 2 ? " and " : " to ") + cuts.getLast();
    }

    private void strips() {
        List<FinishedPart> solid = shop.parts().stream().filter(p -> !Workshop.sheet(p)).toList();
        if (!solid.isEmpty()) {
            operations.add(Operation.of(
                    Phase.TRUE,
                    "Plane one face flat and one edge square to it on every piece, and mark both",
                    Workshop.names(solid),
                    shop.tool("try plane, winding sticks, square", "jointer"))
                    .checking("no light under a straight edge, and none under the square")
                    .minding(shop.tool("", SHORT_PIECES))
                    .taking(shop.times().of("true", Workshop.tenths(solid))));
        }
        // By hand the gauge rides the true edge and face; by machine the planer goes first, then the fence.
        if (shop.hand()) {
            widths(solid);
            thicknesses(solid);
        } else {
            thicknesses(solid);
            widths(solid);
        }
    }

    private void widths(List<FinishedPart> solid) {
        List<FinishedPart> known = solid.stream().filter(p -> !shop.measured().contains(Workshop.name(p))).toList();
        by(known, p -> p.width().value()).forEach((width, parts) -> operations.add(Operation.of(
                Phase.SIZE,
                shop.tool("Gauge and plane to ", "Rip to ") + shop.format().text(width) + " wide",
                Workshop.names(parts),
                shop.tool("panel gauge, try plane", "saw with rip fence"))
                .setting(List.of(new GaugeSetting("width", width)))
                .from("the true edge")
                .checking(shop.tool("the gauge line is just split from end to end", "equal at both ends"))
                .minding(shop.tool("", "Push stick; no narrow strip between blade and fence by hand."))
                .taking(shop.times().of("size", Workshop.tenths(parts) / 2))));
    }

    private void thicknesses(List<FinishedPart> solid) {
        by(solid, p -> p.thickness().value()).forEach((thick, parts) -> operations.add(Operation.of(
                Phase.SIZE,
                shop.tool("Gauge and plane to ", "Plane to ") + shop.format().text(thick) + " thick",
                Workshop.names(parts),
                shop.tool("marking gauge, try plane", "thickness planer"))
                .setting(List.of(new GaugeSetting("thickness", thick)))
                .from("the true face")
                .checking(shop.tool("the gauge line is just split all round", "measured at both ends"))
                .minding(shop.tool("", SHORT_PIECES))
                .taking(shop.times().of("size", Workshop.tenths(parts)))));
    }

    private void lengths() {
        List<FinishedPart> known = shop.named(shop.first());
        by(known, p -> p.length().value()).forEach((length, parts) -> operations.add(Operation.of(
                Phase.LENGTH,
                shop.tool("Shoot both ends square, to ", "Crosscut to ") + shop.format().text(length) + " over all"
                        + (parts.size() > 1 ? ", all of them together" : ""),
                Workshop.names(parts),
                shop.tool("knife, square, shooting board", "saw with crosscut fence and stop"))
                .setting(List.of(new GaugeSetting("length", length)))
                .from("the face and edge that are marked true")
                .checking(parts.size() > 1 ? "stood side by side they are equal" : "square both ways")
                .minding(shop.tool("", "Clamp short parts to the fence; let the blade stop before reaching in."))
                .taking(shop.times().of("end", 2.0 * parts.size()))));
    }

    private static Map<Length, List<FinishedPart>> by(List<FinishedPart> parts, Function<FinishedPart, Length> size) {
        Map<Length, List<FinishedPart>> groups = new LinkedHashMap<>();
        parts.forEach(p -> groups.computeIfAbsent(size.apply(p), s -> new ArrayList<>()).add(p));
        return groups;
    }
}

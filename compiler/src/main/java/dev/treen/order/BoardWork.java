package dev.treen.order;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Strip;
import dev.treen.joinery.GrainRing;
import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.model.Board;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** From boards to rough parts and strips: rest, resaw, mark out, saw, and later cut strips apart (Y-10, A-04). */
final class BoardWork {
    private static final double BOARD_OF_THE_TABLE = 25;
    private static final double LEAF_OF_THE_TABLE = 140.0 * 500;

    private final Workshop shop;
    private final Draft draft;

    private BoardWork(Workshop shop, Draft draft) {
        this.shop = shop;
        this.draft = draft;
    }

    static void add(Workshop shop, Draft draft) {
        BoardWork work = new BoardWork(shop, draft);
        Map<String, BoardCut> solid = new LinkedHashMap<>();
        for (BoardCut cut : shop.cutting().boards()) {
            if (!cut.board().sheet()) {
                solid.putIfAbsent(cut.board().name(), cut);
            }
        }
        work.rest(solid);
        work.rip(solid);
        solid.values().stream().filter(cut -> cut.leaves() > 1).forEach(work::resaw);
        shop.cutting().boards().forEach(work::sawOut);
    }

    /** Boards of one thickness rest as long; others need not wait for them. */
    private void rest(Map<String, BoardCut> boards) {
        Map<Length, List<String>> alike = new LinkedHashMap<>();
        boards.values().forEach(cut -> {
            List<String> names = alike.computeIfAbsent(cut.board().thickness().value(), t -> new ArrayList<>());
            if (!names.contains(cut.source().name())) {
                names.add(cut.source().name());
            }
        });
        alike.forEach((thick, names) -> draft.add(Operation.of(
                Phase.REST,
                "Lay " + Names.quoted(names) + " on sticks in the room where the piece will live",
                names,
                "moisture meter or balance")
                .checking("two readings some days apart agree")
                .taking(shop.times().of("lay", names.size()))
                .waiting(shop.times().wait("rest", Math.pow(thick.toDoubleMm() / BOARD_OF_THE_TABLE, 2)))));
    }

    private void rip(Map<String, BoardCut> boards) {
        Map<String, Board> ripped = new LinkedHashMap<>();
        boards.values().stream()
                .filter(cut -> !cut.source().rips().isEmpty())
                .forEach(cut -> ripped.put(cut.source().name(), cut.source()));
        ripped.values().forEach(board -> {
            List<String> pieces = new ArrayList<>(List.of(board.name()));
            boards.values().stream()
                    .filter(cut -> cut.source().name().equals(board.name()))
                    .forEach(cut -> pieces.add(cut.board().name()));
            draft.add(Operation.of(
                    Phase.RIP,
                    "Rip `" + board.name() + "` from end to end at " + Names.list(board.rips().stream()
                            .map(rip -> shop.format().text(rip.value()))
                            .toList()) + " from its near edge, and number the pieces from there",
                    pieces,
                    shop.tool("rip saw, straight edge", "band saw, or saw with rip fence"))
                    .checking("each piece lies less hollow on the bench than the board did")
                    .minding(shop.tool("",
                            "A hollow board rocks and pinches the blade: lay its hollow side down, edge straight to the"
                                    + " fence, riving knife on; a band saw is safer."))
                    .taking(shop.times().of("saw", board.rips().size())));
        });
    }

    private void resaw(BoardCut cut) {
        Board board = cut.board();
        List<String> name = List.of(board.name());
        double area = board.length().value().toDoubleMm() * board.width().value().toDoubleMm();
        draft.add(Operation.of(
                Phase.FLATTEN,
                "Plane one face of `" + board.name() + "` flat and one edge square to it, and mark both",
                name,
                shop.tool("try plane, winding sticks, square", "jointer"))
                .checking("no light under a straight edge, along, across and from corner to corner")
                .minding(shop.tool("", StockWork.SHORT_PIECES))
                .taking(shop.times().of("true", area / 100_000)));
        Length line = cut.thickness().plus(board.allow().resaw().value());
        draft.add(Operation.of(
                Phase.RESAW,
                "Resaw `" + board.name() + "` into " + cut.leaves()
                        + " leaves, and flatten the sawn face before the next one",
                name,
                shop.tool("marking gauge, frame saw or rip saw", "band saw with a fence"))
                .setting(List.of(new GaugeSetting("leaf", line)))
                .from("the face side; the line leaves " + shop.format().text(board.allow().resaw().value())
                        + " to smooth")
                .checking("every leaf still gives " + shop.format().text(cut.thickness())
                        + " when it is flat; number the leaves as they come off")
                .minding(shop.tool(
                        "Hold the board upright in a vice, and saw from both edges in turn.",
                        "Keep both hands clear of the line of the blade; feed the last of it with a stick."))
                .taking(shop.times().of("resaw", area * (cut.leaves() - 1) / LEAF_OF_THE_TABLE))
                .waiting(shop.times().wait("stick")));
    }

    private void sawOut(BoardCut cut) {
        List<String> parts = cut.parts().stream().flatMap(p -> p.blank().parts().stream()).distinct().toList();
        List<BoardCut.SawCut> free = cut.cuts().stream().filter(c -> !apart(c)).toList();
        List<BoardCut.SawCut> later = cut.cuts().stream().filter(BoardWork::apart).toList();
        List<String> notes = cut.parts().stream()
                .filter(part -> !part.note().isEmpty())
                .map(part -> "`" + part.name() + "` " + part.note())
                .toList();
        List<String> rings = cut.rings(shop.joined()).stream()
                .map(ring -> ring.told(name -> "`" + name + "`") + asTheyLie(ring, cut))
                .toList();
        draft.add(Operation.of(
                Phase.MARK,
                "Mark out `" + cut.name() + "` as drawn" + (notes.isEmpty() ? ", clear of its flaws" : ""),
                parts,
                "rule, square, straight edge, chalk or pencil")
                .from("the left end and the near edge of the drawing")
                .inSteps(Stream.concat(notes.stream(), rings.stream()).toList())
                .checking("every part bears its name and an arrow along the grain, and parts that stand next to each"
                        + " other one triangle over all of them")
                .taking(shop.times().of("mark", parts.size())));
        List<String> how = runs(free);
        cut.strips().forEach(strip -> how.add(told(strip)));
        draft.add(Operation.of(
                Phase.SAW,
                "Saw up `" + cut.name() + "` by " + numbers(free),
                parts,
                shop.tool("crosscut saw and rip saw", "saw with crosscut fence and rip fence"))
                .inSteps(how)
                .checking("the kerf falls beside the line, in the waste")
                .minding(shop.tool("", "Riving knife and guard on; push stick; stand out of the line of the blade."))
                .taking(shop.times().of("saw", free.size())));
        if (!later.isEmpty()) {
            draft.add(Operation.of(
                    Phase.APART,
                    "Cut the strips of `" + cut.name() + "` apart by " + numbers(later),
                    cut.strips().stream().flatMap(s -> s.parts().stream()).toList(),
                    shop.tool("crosscut saw, square", "saw with crosscut fence and stop"))
                    .inSteps(runs(later))
                    .checking("the kerf falls beside the line, in the waste; the names are still on every part")
                    .minding(shop.tool("", "Let the blade stop before reaching for a short piece."))
                    .taking(shop.times().of("saw", later.size())));
        }
    }

    private static boolean apart(BoardCut.SawCut cut) {
        return cut.strip() != BoardCut.SawCut.NO_STRIP;
    }

    private static String told(Strip strip) {
        return "strip " + strip.number() + " stays whole: " + Names.quoted(strip.parts());
    }

    /** How parts lie so that their ends meet; nothing where flaws already say how one of them lies. */
    private static String asTheyLie(GrainRing ring, BoardCut cut) {
        boolean laid = cut.parts().stream()
                .anyMatch(part -> !part.lay().isEmpty() && ring.run().parts().contains(part.name()));
        return laid ? "" : "; lay all outer faces up, ends that meet side by side";
    }

    /** Cuts that follow each other in one direction are one line. */
    private static List<String> runs(List<BoardCut.SawCut> cuts) {
        List<String> lines = new ArrayList<>();
        List<BoardCut.SawCut> run = new ArrayList<>();
        for (BoardCut.SawCut cut : cuts) {
            if (!run.isEmpty() && run.getFirst().along() != cut.along()) {
                lines.add(run(run));
                run.clear();
            }
            run.add(cut);
        }
        if (!run.isEmpty()) {
            lines.add(run(run));
        }
        return lines;
    }

    private static String run(List<BoardCut.SawCut> run) {
        return (run.getFirst().along() ? "rip by " : "crosscut by ") + numbers(run);
    }

    private static String numbers(List<BoardCut.SawCut> cuts) {
        if (cuts.isEmpty()) {
            return "no cut";
        }
        int first = cuts.getFirst().number();
        int last = cuts.getLast().number();
        if (cuts.size() == 1) {
            return "cut " + first;
        }
        return "cuts " + first + (cuts.size() == 2 ? " and " : " to ") + last;
    }
}

package dev.treen.order;

import dev.treen.cutting.Blank;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Glued;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.quantity.DecimalText;
import dev.treen.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What becomes of rough pieces that are not parts yet: blanks are resawn, staves are glued up (A-04, Y-07, Y-08, J-01). */
final class StaveWork {
    private static final double LEAF_OF_THE_TABLE = 140.0 * 500;

    private final Workshop shop;
    private final Draft draft;

    private StaveWork(Workshop shop, Draft draft) {
        this.shop = shop;
        this.draft = draft;
    }

    static void add(Workshop shop, Draft draft) {
        var work = new StaveWork(shop, draft);
        for (BoardCut cut : shop.cutting().boards()) {
            cut.parts().stream()
                    .filter(piece -> piece.blank().resawn())
                    .forEach(piece -> work.resaw(cut, piece));
        }
        shop.cutting().glued().stream().filter(work::laidOut).forEach(work::glue);
    }

    private boolean laidOut(Glued glued) {
        Set<String> parts = new LinkedHashSet<>();
        shop.cutting().boards().forEach(cut -> cut.parts().forEach(piece -> parts.addAll(piece.blank().parts())));
        return parts.contains(glued.part());
    }

    /** Two leaves that open like a book. */
    private void resaw(BoardCut cut, BoardCut.OnBoard piece) {
        Blank blank = piece.blank();
        Length smooth = cut.source().allow().resaw().value();
        Length thick = blank.parts().stream()
                .flatMap(name -> shop.named(List.of(name)).stream())
                .map(this::flat)
                .max(Length::compareTo)
                .orElse(Length.ZERO);
        double area = piece.area().length().toDoubleMm() * piece.area().width().toDoubleMm();
        draft.add(Operation.of(
                Phase.LEAVES,
                "Plane one face and one edge of the piece for " + members(blank)
                        + " true, and resaw it into two leaves",
                blank.parts(),
                shop.tool("marking gauge, frame saw or rip saw", "band saw with a fence"))
                .setting(List.of(new GaugeSetting("leaf", thick.plus(smooth))))
                .from("the face side; the line leaves " + shop.format().text(smooth) + " to smooth")
                .inSteps(List.of(
                        "before it is sawn, draw a triangle over both edges and a line over one end, so that the"
                                + " leaves find each other again",
                        "open the leaves like a book: the sawn faces lie up side by side, and one figure is the other's"
                                + " in a mirror",
                        "the figure drifts by what the saw and the plane take between the leaves, so plane no more"
                                + " off them than has to be; on one leaf the plane goes the other way"))
                .checking("the figure meets along the line on which the book opens")
                .minding(shop.tool(
                        "Hold the piece upright in a vice, and saw from both edges in turn.",
                        "Keep both hands clear of the line of the blade; feed the last of it with a stick."))
                .taking(shop.times().of("true", area / 100_000)
                        .plus(shop.times().of("resaw", area / LEAF_OF_THE_TABLE)))
                .waiting(shop.times().wait("stick")));
    }

    private Length flat(FinishedPart part) {
        return part.thickness().value()
                .plus(glued(part).isEmpty() ? Length.ZERO : part.part().allow().planing().value().times(2));
    }

    private Optional<Glued> glued(FinishedPart part) {
        return shop.cutting().glued(Workshop.name(part));
    }

    private static String members(Blank blank) {
        return blank.parts().size() > 1 ? Names.quoted(blank.parts())
                : "the two staves of " + Names.quoted(blank.parts());
    }

    private void glue(Glued glued) {
        List<String> part = List.of(glued.part());
        List<String> widths = glued.staves().stream().map(shop.format()::figure).toList();
        double metres = 2 * glued.roughLength().toDoubleMm() * (glued.staves().size() - 1) / 1000;
        int shoot = draft.add(Operation.of(
                Phase.STAVES,
                "Plane the " + glued.staves().size() + " staves of `" + glued.part() + "` to "
                        + shop.format().text(glued.thickness()) + " thick, and shoot their edges in pairs",
                part,
                shop.tool("try plane, shooting board, winding sticks", "jointer and thickness planer"))
                .setting(List.of(new GaugeSetting("thickness", glued.thickness())))
                .inSteps(laying(glued, widths))
                .from("the marked face: shot one face up and one down, errors of the angle cancel (Fairham)")
                .checking("held to the light the edges close, long ones a hair hollow in the middle")
                .minding(shop.tool("", StockWork.SHORT_PIECES))
                .taking(shop.times().of("edge", metres)));
        double cm2 = glued.roughLength().toDoubleMm() * glued.thickness().toDoubleMm()
                * (glued.staves().size() - 1) / 100;
        int glue = draft.add(Operation.of(
                Phase.STAVES,
                "Glue up `" + glued.part() + "` edge to edge, " + DecimalText.write(cm2, 0) + " cm² in all",
                part,
                "bar clamps every 200 to 300 mm, cauls, glue brush")
                .inSteps(lines(glued))
                .checking("flat under a straight edge; a bead of glue all along")
                .minding("Read the glue's label; scrape the bead before it is hard, away from the hand.")
                .taking(shop.times().of("glue", 1))
                .waiting(shop.times().wait("glue")));
        draft.follows(shoot, glue, "edges are glued while they are freshly planed");
    }

    private static List<String> laying(Glued glued, List<String> widths) {
        List<String> steps = new ArrayList<>();
        steps.add("widths once shot, from the edge where its width begins: " + String.join(", ", widths));
        steps.add(switch (glued.asked().match()) {
            case BOOK -> "open the two leaves like a book, mirrored along the joint";
            case BOARD, NONE -> switch (glued.asked().order()) {
                case ALTERNATE ->
                    "lay them by their grain, their heart sides up and down by turns; staves of quartered wood"
                            + " as they look best";
                case ALIKE -> "lay them by their grain, their heart sides all one way";
            };
        });
        if (!glued.hearts().isEmpty()) {
            steps.add("heart sides, from the same edge: "
                    + String.join(", ", glued.hearts().stream().map(Glued.Heart::word).toList()));
        }
        steps.add("mark a triangle across all of them, and plane them all the same way along the grain");
        return steps;
    }

    private List<String> lines(Glued glued) {
        String lines = String.join(", ", glued.lines().stream().map(shop.format()::figure).toList());
        return List.of("glue lines from that edge of the rough part: " + lines
                + (glued.clear() ? "; they keep clear of what is cut into it" : ""));
    }
}

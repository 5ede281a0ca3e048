package dev.treen.order;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Work.GaugeSetting;
import dev.treen.quantity.Length;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** From rough pieces to parts of the right size: face and edge, width and thickness, length (O-01, O-05). */
final class StockWork {
    static final String SHORT_PIECES = "No piece shorter or thinner than the machine's manual allows: plane such"
            + " pieces by hand, or while they hang together.";

    private final Workshop shop;
    private final Draft draft;

    private StockWork(Workshop shop, Draft draft) {
        this.shop = shop;
        this.draft = draft;
    }

    static void add(Workshop shop, Draft draft) {
        StockWork work = new StockWork(shop, draft);
        work.strips();
        work.lengths();
        work.sheets();
    }

    private void strips() {
        List<FinishedPart> solid = shop.made().stream().filter(p -> !Workshop.sheet(p)).toList();
        // What comes from thick boards rests longer; the rest need not wait for it.
        Map<Optional<Length>, List<FinishedPart>> rested = new LinkedHashMap<>();
        solid.forEach(part -> rested
                .computeIfAbsent(shop.cutting().sourcesOf(part.part()).stream().findFirst()
                        .map(board -> board.thickness().value()), t -> new ArrayList<>())
                .add(part));
        rested.values().forEach(parts -> faceAndEdge(parts, rested.size() == 1));
        // By hand the gauge rides the true edge and face; by machine the planer goes first, then the fence.
        if (shop.hand()) {
            inTurn(widths(solid), thicknesses(solid),
                    "width comes first, so that the line of the thickness is gauged on"
                            + " edges that are planed");
        } else {
            inTurn(thicknesses(solid), widths(solid),
                    "planed on both faces, a piece lies flat on the table of the saw");
        }
    }

    private void inTurn(List<Integer> first, List<Integer> then, String because) {
        for (int before : first) {
            for (int after : then) {
                if (draft.at(before).parts().stream().anyMatch(draft.at(after).parts()::contains)) {
                    draft.follows(before, after, because);
                }
            }
        }
    }

    private void faceAndEdge(List<FinishedPart> parts, boolean all) {
        List<String> names = Workshop.names(parts);
        draft.add(Operation.of(
                Phase.TRUE,
                "Plane one face flat, then one edge square to it, on " + (all ? "every piece" : "these pieces")
                        + ", and mark both",
                names,
                shop.tool("try plane, winding sticks, square", "jointer"))
                .inSteps(shop.whole(names))
                .checking("no light under a straight edge, and none under the square; every piece bears the marks"
                        + " of its face side and face edge")
                .minding(shop.tool("", SHORT_PIECES))
                .taking(shop.times().of("true", Workshop.tenths(parts))));
    }

    private List<Integer> widths(List<FinishedPart> solid) {
        List<Integer> places = new ArrayList<>();
        List<FinishedPart> known = solid.stream().filter(p -> !shop.measured().contains(Workshop.name(p))).toList();
        by(known, p -> p.width().value()).forEach((width, parts) -> places.add(draft.add(Operation.of(
                Phase.SIZE,
                shop.tool("Gauge and plane to ", "Rip to ") + shop.format().text(width) + " wide",
                Workshop.names(parts),
                shop.tool("panel gauge, try plane", "saw with rip fence"))
                .setting(List.of(new GaugeSetting("width", width)))
                .inSteps(shop.whole(Workshop.names(parts)))
                .from("the face edge")
                .checking(shop.tool("the gauge line is just split from end to end", "equal at both ends"))
                .minding(shop.tool("", "Push stick; no narrow strip between blade and fence by hand."))
                .taking(shop.times().of("size", Workshop.tenths(parts) / 2)))));
        return places;
    }

    private List<Integer> thicknesses(List<FinishedPart> solid) {
        List<Integer> places = new ArrayList<>();
        by(solid, p -> p.thickness().value()).forEach((thick, parts) -> places.add(draft.add(Operation.of(
                Phase.SIZE,
                shop.tool("Gauge and plane to ", "Plane to ") + shop.format().text(thick) + " thick",
                Workshop.names(parts),
                shop.tool("marking gauge, try plane", "thickness planer"))
                .setting(List.of(new GaugeSetting("thickness", thick)))
                .inSteps(shop.whole(Workshop.names(parts)))
                .from("the face side")
                .checking(shop.tool("the gauge line is just split all round", "measured at both ends"))
                .minding(shop.tool("", SHORT_PIECES))
                .taking(shop.times().of("size", Workshop.tenths(parts))))));
        return places;
    }

    private void lengths() {
        List<FinishedPart> known = shop.named(shop.first()).stream().filter(p -> !Workshop.sheet(p)).toList();
        by(known, p -> p.length().value()).forEach((length, parts) -> draft.add(Operation.of(
                Phase.LENGTH,
                shop.tool(small(parts)
                        ? "Shoot both ends square, to "
                        : "Saw both ends to a knifed line and plane them square, to ", "Crosscut to ")
                        + shop.format().text(length) + " over all"
                        + (parts.size() > 1 ? ", all at one setting" : ""),
                Workshop.names(parts),
                shop.tool(small(parts) ? "knife, square, shooting board" : "knife, square, crosscut saw, block plane",
                        "saw with crosscut fence and stop"))
                .setting(List.of(new GaugeSetting("length", length)))
                .from("the face side and the face edge")
                .checking(parts.size() > 1 ? "stood side by side they are equal" : "square both ways")
                .minding(shop.tool(
                        small(parts) ? "" : "Plane from both edges toward the middle: the far edge splits out.",
                        "Clamp short parts to the fence; let the blade stop before reaching in."))
                .taking(shop.times().of("end", 2.0 * parts.size()))));
    }

    /** Whether all of {@code parts} can be held on a shooting board; what is larger is planed upright in the vice. */
    private static boolean small(List<FinishedPart> parts) {
        Figures figures = Figures.standard();
        double length = figures.value("shooting-board.length");
        double width = figures.value("shooting-board.width");
        return parts.stream().allMatch(part -> part.length().value().toDoubleMm() <= length
                && part.width().value().toDoubleMm() <= width);
    }

    private record Size(Length length, Length width) {}

    /** A sheet has its thickness and true faces; all four edges are brought to size at once. */
    private void sheets() {
        List<FinishedPart> known = shop.named(shop.first()).stream().filter(Workshop::sheet).toList();
        by(known, p -> new Size(p.length().value(), p.width().value())).forEach((size, parts) -> draft.add(Operation.of(
                Phase.LENGTH,
                shop.tool("Plane the edges square, to ", "Saw to ") + shop.format().text(size.length()) + " x "
                        + shop.format().text(size.width()),
                Workshop.names(parts),
                shop.tool("straight edge, knife, square, block plane", "saw with rip fence, crosscut fence and stop"))
                .setting(List.of(new GaugeSetting("length", size.length()), new GaugeSetting("width", size.width())))
                .from("one long edge made straight")
                .checking("the diagonals agree, and the good face has not chipped")
                .minding(shop.tool("", "Hold the whole sheet down flat; push stick for narrow strips."))
                .taking(shop.times().of("end", 4.0 * parts.size()))));
    }

    private static <K> Map<K, List<FinishedPart>> by(List<FinishedPart> parts, Function<FinishedPart, K> size) {
        Map<K, List<FinishedPart>> groups = new LinkedHashMap<>();
        parts.forEach(p -> groups.computeIfAbsent(size.apply(p), s -> new ArrayList<>()).add(p));
        return groups;
    }
}

package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.joinery.Weights;
import dev.treen.model.Board;
import dev.treen.plan.Costs;
import dev.treen.plan.CutList;
import dev.treen.plan.MassText;
import dev.treen.plan.PlanText;
import dev.treen.plan.Supplies;
import dev.treen.quantity.DecimalText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jsoup.nodes.Element;

/** Boards, sheets, and what else must be at hand. */
final class Materials {
    private Materials() {
    }

    static void write(Page page) {
        Element section = page.section("materials", "Materials");
        boards(page, section);
        wood(page, section);
        supplies(page, section);
        cost(page, section);
    }

    private static void boards(Page page, Element section) {
        Map<String, Board> used = new LinkedHashMap<>();
        Map<String, TreeSet<String>> marks = new LinkedHashMap<>();
        for (BoardCut cut : page.plan().cutting().boards()) {
            used.put(cut.source().name(), cut.source());
            TreeSet<String> of = marks.computeIfAbsent(cut.source().name(), b -> new TreeSet<>());
            cut.parts().forEach(part -> of.add(page.mark(part.blank())));
        }
        if (used.isEmpty()) {
            Html.said(section, "p", "No board is laid out: the project names none, or no part fits on those it names.");
            unplaced(page, section);
            return;
        }
        Costs costs = Costs.of(page.plan());
        List<String> heads = new ArrayList<>(
                List.of("Board", "Wood", " Length", " Width", " Thickness", "Moisture", "Gives parts"));
        if (costs.any()) {
            heads.add("Price");
        }
        Element rows = Page.table(section, "Boards and sheets, as they were measured, in " + page.unit(),
                heads.toArray(String[]::new));
        used.forEach((name, board) -> {
            Element row = Html.add(rows, "tr");
            Html.name(Html.add(row, "th", "scope", "row"), name);
            Html.said(row, "td", Opening.wood(board).orElse("") + (board.sheet() ? " (sheet)" : ""));
            page.figure(row, board.length().value());
            page.figure(row, board.width().value());
            page.figure(row, board.thickness().value());
            Html.said(row, "td", board.moisture().map(m -> DecimalText.write(m, 1) + " %").orElse(""));
            Html.said(row, "td", String.join(", ", marks.getOrDefault(name, new TreeSet<>())));
            if (costs.any()) {
                Html.said(row, "td", costs.words(board));
            }
        });
        Html.said(section, "p", PlanText.yieldLine(page.plan()));
        page.plan().cutting().remarks().forEach(line -> Html.words(Html.add(section, "p"), line));
        unplaced(page, section);
        List<String> mass = MassText.of(Weights.of(page.plan().joined()), page.plan().format());
        if (!mass.isEmpty()) {
            Html.said(section, "p", String.join(" ", mass));
        }
    }

    private static void unplaced(Page page, Element section) {
        List<String> missing = page.plan().cutting().unplaced();
        if (!missing.isEmpty()) {
            Element note = Html.add(section, "p", "class", "note");
            Html.add(note, "strong").text("No board has room for: ");
            Html.names(note, missing);
            Html.text(note, ". The plan holds without them; find another board before you begin.");
        }
    }

    private static void wood(Page page, Element section) {
        if (page.list().totals().isEmpty()) {
            return;
        }
        boolean inches = page.format().imperial();
        Element rows = Page.table(section, "Wood in the rough parts, by finished thickness", "Thickness", " Parts",
                inches ? " Board feet" : " Square metres", inches ? " Square metres" : " Board feet");
        for (CutList.Total total : page.list().totals()) {
            String feet = DecimalText.write(total.boardFeet(), 2);
            String metres = DecimalText.write(total.area(), 3);
            Element row = Html.add(rows, "tr");
            Html.said(row, "th", page.text(total.thickness()), "scope", "row");
            Html.said(row, "td", String.valueOf(total.parts()), "class", "figure");
            Html.said(row, "td", inches ? feet : metres, "class", "figure");
            Html.said(row, "td", inches ? metres : feet, "class", "figure");
        }
    }

    private static void supplies(Page page, Element section) {
        Costs costs = Costs.of(page.plan());
        if (costs.supplies().isEmpty()) {
            return;
        }
        List<String> heads = new ArrayList<>(List.of("What", " How much", "Reckoned from", "Source"));
        if (costs.any()) {
            heads.add(2, "Price");
        }
        Element rows = Page.table(section, "Besides wood", heads.toArray(String[]::new));
        for (Supplies.Supply each : costs.supplies()) {
            Element row = Html.add(rows, "tr");
            Html.said(row, "th", each.called(), "scope", "row");
            Html.said(row, "td", (each.amount() + " " + each.unit()).strip(), "class", "figure");
            if (costs.any()) {
                Html.said(row, "td", costs.words(each));
            }
            Html.said(row, "td", each.reckoned());
            Html.said(row, "td", each.source());
        }
        boolean open = costs.supplies().stream().anyMatch(Supplies.Supply::either);
        Html.said(section, "p", (open ? "One finish is wanted, not all of them. " : "")
                + "What the label of yours says comes before these figures; end grain drinks two to three times as much.");
    }

    private static void cost(Page page, Element section) {
        Costs costs = Costs.of(page.plan());
        if (costs.any()) {
            Html.said(section, "p", costs.sum(), "class", "cost");
        }
    }
}

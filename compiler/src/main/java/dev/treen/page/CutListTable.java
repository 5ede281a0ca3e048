package dev.treen.page;

import dev.treen.plan.CutList;
import java.util.Map;
import org.jsoup.nodes.Element;

/** What is to be cut: every part at its finished and its rough size. */
final class CutListTable {
    private CutListTable() {
    }

    static void write(Page page) {
        if (page.list().rows().isEmpty()) {
            return;
        }
        Element section = page.section("cut-list", "Cut list");
        Html.said(section, "p",
                "Length runs along the grain. Finished sizes include what the joints hide; rough sizes add"
                        + " what saw and plane take off. Write the mark on each piece as it comes off the saw."
                        + (page.format().imperial()
                                ? " A + is a shade over the mark of the rule, a − or - a shade under it."
                                : ""));
        Element table = Html.add(Page.scroll(section, "All parts with their sizes"), "table", "class", "cuts");
        Html.said(table, "caption", "Sizes in " + page.unit());
        Element head = Html.add(table, "thead");
        Element groups = Html.add(head, "tr");
        for (String each : new String[]{"Mark", "Part", "No."}) {
            Html.said(groups, "th", each, "scope", "col", "rowspan", "2");
        }
        Html.said(groups, "th", "Finished", "scope", "colgroup", "colspan", "3", "class", "group");
        Html.said(groups, "th", "Rough", "scope", "colgroup", "colspan", "3", "class", "group");
        Html.said(groups, "th", "From", "scope", "col", "rowspan", "2");
        Element names = Html.add(head, "tr");
        for (int i = 0; i < 2; i++) {
            for (String each : new String[]{"Length", "Width", "Thick"}) {
                Html.said(names, "th", each, "scope", "col", "class", i == 1 && each.equals("Length")
                        ? "figure first"
                        : "figure");
            }
        }
        Element body = Html.add(table, "tbody");
        Map<String, String> drawn = PartDrawings.addresses(page);
        boolean anyToFit = false;
        for (CutList.Row row : page.list().rows()) {
            row(page, body, row, drawn);
            anyToFit |= row.toFit();
        }
        page.list().loose().forEach(row -> loose(page, body, row));
        if (!page.list().loose().isEmpty()) {
            Html.said(section, "p",
                    "Small pieces for the joints are made of offcuts with straight grain, so they have no"
                            + " place on the boards; they have no rough size, and one more of each is wanted to try.",
                    "class", "quiet");
        }
        if (page.list().rows().stream().anyMatch(CutList.Row::bought)) {
            Html.said(section, "p", "What is bought has no rough size: it comes as it goes in.", "class", "quiet");
        }
        if (anyToFit) {
            Html.said(section, "p", "* made to fit: the size is planned, and the part is cut to what is measured.",
                    "class", "quiet");
        }
    }

    private static void loose(Page page, Element body, CutList.Loose row) {
        Element line = Html.add(body, "tr");
        Html.said(line, "th", row.mark(), "scope", "row", "class", "mark");
        Element part = Html.add(line, "td");
        Html.text(part, row.piece().kind().word(row.piece().count()) + (row.piece().kind().round() ? ", round" : ""));
        Html.said(part, "span", "for " + String.join(", ", row.parts()), "class", "remark");
        Html.said(line, "td", String.valueOf(row.piece().count()), "class", "figure");
        page.figure(line, row.piece().size().length());
        page.figure(line, row.piece().size().width());
        page.figure(line, row.piece().size().thickness());
        for (int i = 0; i < 3; i++) {
            Html.said(line, "td", "", "class", i == 0 ? "figure first" : "figure");
        }
        Element from = Html.add(line, "td");
        Html.text(from, row.source());
        Html.said(from, "span", row.species(), "class", "remark");
    }

    private static void row(Page page, Element body, CutList.Row row, Map<String, String> drawn) {
        Element line = Html.add(body, "tr");
        Element mark = Html.add(line, "th", "scope", "row", "class", "mark");
        row.parts().stream().filter(drawn::containsKey).map(drawn::get).findFirst().ifPresentOrElse(
                address -> Html.said(mark, "a", row.mark(), "href", "#" + address),
                () -> Html.text(mark, row.mark()));
        Element part = Html.add(line, "td");
        Html.names(part, row.parts());
        Html.text(part, row.toFit() ? " *" : "");
        if (!row.notes().isEmpty()) {
            Html.said(part, "span", row.notes(), "class", "remark");
        }
        Html.said(line, "td", String.valueOf(row.parts().size()), "class", "figure");
        page.figure(line, row.finished().length());
        page.figure(line, row.finished().width());
        page.figure(line, row.finished().thickness());
        if (row.bought()) {
            Html.said(line, "td", "", "class", "figure first");
            Html.said(line, "td", "", "class", "figure");
            Html.said(line, "td", "", "class", "figure");
        } else {
            page.figure(line, row.rough().length()).addClass("first");
            page.figure(line, row.rough().width());
            page.figure(line, row.rough().thickness());
        }
        Element from = Html.add(line, "td");
        if (row.bought() || row.board().isEmpty()) {
            Html.text(from, row.source());
        } else {
            Html.name(from, row.board());
        }
        Html.said(from, "span", row.species(), "class", "remark");
    }
}

package dev.treen.page;

import dev.treen.check.RoomYear;
import dev.treen.cutting.Blank;
import dev.treen.drawing.DrawingSet;
import dev.treen.plan.CutList;
import dev.treen.plan.Plan;
import dev.treen.quantity.Length;
import dev.treen.quantity.LengthFormat;
import dev.treen.quantity.Size;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.nodes.Element;

/**
 * What the sections of a plan are written from, and where.
 *
 * @param plan all that was worked out
 * @param years the rooms of panels, doors and lids through the year
 * @param drawings the drawings
 * @param sources the project's files
 * @param beside how lengths are shown a second time, where both ways are asked for
 * @param list the cut list
 * @param marks the mark of each part in the cut list
 * @param main the element that holds the sections
 */
record Page(Plan plan, List<RoomYear> years, DrawingSet drawings, Sources sources, Optional<LengthFormat> beside,
        CutList list, Map<String, String> marks, Element main) {

    static Page of(Plan plan, List<RoomYear> years, DrawingSet drawings, Sources sources,
            Optional<LengthFormat> beside, Element main) {
        CutList list = CutList.of(plan);
        Map<String, String> marks = new HashMap<>();
        list.rows().forEach(row -> row.parts().forEach(part -> marks.put(part, row.mark())));
        return new Page(plan, years, drawings, sources, beside, list, marks, main);
    }

    /** How the project shows lengths. */
    LengthFormat format() {
        return plan.format();
    }

    /** The mark of a part; empty for what is no part. */
    String mark(String part) {
        return marks.getOrDefault(part, "");
    }

    /** The marks of what a blank becomes: {@code B}, {@code B/2} for its second stave, {@code C+D} for two leaves. */
    String mark(Blank blank) {
        return String.join("+", blank.members().stream()
                .map(each -> mark(each.part()) + (each.stave() == Blank.Member.WHOLE ? "" : "/" + each.stave()))
                .toList());
    }

    /** A length in words: {@code 94 mm}, or {@code 94 mm (3 45/64+ in)} where both ways are asked for. */
    String text(Length length) {
        return format().text(length) + beside.map(other -> " (" + other.text(length) + ")").orElse("");
    }

    /** A size in words. */
    String text(Size size) {
        return sized(size, format()) + beside.map(other -> " (" + sized(size, other) + ")").orElse("");
    }

    private static String sized(Size size, LengthFormat format) {
        return format.figure(size.length()) + " × " + format.figure(size.width()) + " × "
                + format.text(size.thickness());
    }

    /** The units of figures in tables. */
    String unit() {
        return format().unit() + beside.map(other -> ", below it " + other.unit()).orElse("");
    }

    /** A cell with a figure; a second one below it where both ways are asked for. */
    Element figure(Element row, Length length) {
        Element cell = Html.said(row, "td", format().figure(length), "class", "figure");
        beside.ifPresent(other -> {
            Html.add(cell, "br");
            Html.said(cell, "span", other.figure(length), "class", "beside");
        });
        return cell;
    }

    /** A section with its heading. */
    Element section(String id, String heading) {
        Element section = Html.add(main, "section", "id", id, "aria-labelledby", id + "-heading");
        Html.said(section, "h2", heading, "id", id + "-heading");
        return section;
    }

    /** A table that is too wide for a small screen is moved inside it, by keys too. */
    static Element scroll(Element parent, String label) {
        return Html.add(parent, "div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label",
                "Table: " + label.replace("`", ""));
    }

    /** A table with its caption and the heads of its columns; figures stand under heads that begin with a blank. */
    static Element table(Element parent, String caption, String... heads) {
        Element table = Html.add(scroll(parent, caption), "table");
        Html.said(table, "caption", caption);
        Element row = Html.add(Html.add(table, "thead"), "tr");
        for (String head : heads) {
            Element cell = Html.said(row, "th", head.strip(), "scope", "col");
            if (head.startsWith(" ")) {
                cell.addClass("figure");
            }
        }
        return Html.add(table, "tbody");
    }
}

package dev.treen.page;

import dev.treen.drawing.Sheet;
import java.util.Map;
import org.jsoup.nodes.Element;

/** The whole taken apart, then every part with the figures that are marked out on it. */
final class PartDrawings {
    private PartDrawings() {
    }

    static void write(Page page) {
        Map<String, Sheet> sheets = page.drawings().sheets();
        if (sheets.isEmpty()) {
            return;
        }
        Element section = page.section("drawings", "Drawings");
        section.addClass("wide");
        Html.said(section, "p",
                "Views lie by first-angle projection: what is seen from the left stands on the right, what is"
                        + " seen from above lies below. Figures count from the left end, the face edge and the face side, and are in "
                        + page.format().unit()
                        + ". Printed at 100 %, each part is true to the scale that stands below it.");
        Sheet apart = sheets.get("taken-apart");
        if (apart != null) {
            figure(section, apart, "apart", "Taken apart: along the lines the parts go together.")
                    .parents().getFirst().addClass("apart");
        }
        int number = 0;
        for (Map.Entry<String, Sheet> each : sheets.entrySet()) {
            if (each.getKey().startsWith("part-")) {
                number++;
                part(page, section, each.getValue(), number, each.getKey().substring("part-".length()));
            }
        }
    }

    private static void part(Page page, Element section, Sheet sheet, int number, String part) {
        int colon = sheet.title().lastIndexOf(": working drawing for ");
        String names = colon < 0 ? part : sheet.title().substring(0, colon);
        Element caption = figure(section, sheet, "part-" + number, "");
        caption.parents().getFirst().attr("id", "drawing-" + number);
        Html.add(caption, "strong").text(page.mark(part) + "  ");
        Html.text(Html.add(caption, "bdi", "class", "name"), names);
        page.plan().joined().part(part).ifPresent(
                made -> Html.text(caption, ", finished " + page.text(made.finished()) + "; scale " + sheet.scale()));
    }

    private static Element figure(Element section, Sheet sheet, String key, String words) {
        Sheet drawing = sheet.cutOut();
        Element figure = Html.add(section, "figure", "class", "drawing");
        Html.drawing(figure, drawing.svg(), key);
        return Html.said(figure, "figcaption", words);
    }
}

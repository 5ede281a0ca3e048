package dev.treen.page;

import dev.treen.drawing.ProjectionSymbol;
import dev.treen.drawing.Sheet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;

/** The whole taken apart, then every part with the figures that are marked out on it. */
final class PartDrawings {
    private static final String PART = "part-";

    private PartDrawings() {
    }

    static void write(Page page) {
        Map<String, Sheet> sheets = page.drawings().sheets();
        if (sheets.isEmpty()) {
            return;
        }
        Element section = page.section("drawings", "Drawings");
        section.addClass("wide");
        Html.drawing(Html.add(section, "figure", "class", "symbol"), ProjectionSymbol.sheet().svg(), "projection");
        Html.said(section, "p",
                "Views lie by first-angle projection: what is seen from the left stands on the right, what is"
                        + " seen from above lies below. Figures count from the left end, the face edge and the face side, and are in "
                        + page.format().unit()
                        + page.beside().map(other -> ", with " + other.unit() + " in brackets").orElse("")
                        + ". Printed at 100 %, each part is true to the scale that stands below it."
                        + (sheets.values().stream().anyMatch(Sheet::shortened)
                                ? " Between two zigzag lines a stretch is left out on which nothing is marked out."
                                : ""));
        Sheet apart = sheets.get("taken-apart");
        if (apart != null) {
            figure(section, apart, "apart", "Taken apart: along the lines the parts go together.")
                    .parents().getFirst().addClass("apart");
        }
        int number = 0;
        for (Map.Entry<String, Sheet> each : sheets.entrySet()) {
            if (each.getKey().startsWith(PART)) {
                number++;
                part(page, section, each.getValue(), number, each.getKey().substring(PART.length()));
            }
        }
    }

    /** Where each part is drawn; parts that are alike share a drawing. */
    static Map<String, String> addresses(Page page) {
        Map<String, String> addresses = new HashMap<>();
        int number = 0;
        for (Map.Entry<String, Sheet> each : page.drawings().sheets().entrySet()) {
            if (each.getKey().startsWith(PART)) {
                String address = "drawing-" + ++number;
                names(each.getValue(), each.getKey().substring(PART.length()))
                        .forEach(name -> addresses.putIfAbsent(name, address));
            }
        }
        return addresses;
    }

    /** The parts that {@code sheet} shows. */
    private static List<String> names(Sheet sheet, String part) {
        int colon = sheet.title().lastIndexOf(": working drawing for ");
        return colon < 0 ? List.of(part) : List.of(sheet.title().substring(0, colon).split(", "));
    }

    private static void part(Page page, Element section, Sheet sheet, int number, String part) {
        List<String> names = names(sheet, part);
        Element caption = figure(section, sheet, "part-" + number, "");
        caption.parents().getFirst().attr("id", "drawing-" + number);
        Html.add(caption, "strong").text(names.stream().map(page::mark).filter(mark -> !mark.isEmpty()).distinct()
                .collect(Collectors.joining(", ")) + "  ");
        Html.names(caption, names);
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

package dev.treen.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * The pictures of the steps as drawings that stand by themselves. On the page they share what they draw on; a file of its
 * own has to hold it.
 */
public final class StepPictures {
    /** So many letters they may have together: each holds the outline of all parts, which of hundreds is long. */
    private static final int MOST = 4_000_000;

    private StepPictures() {
    }

    /**
     * A picture.
     *
     * @param step its number
     * @param address of its title in the page
     * @param svg the drawing
     */
    public record Picture(int step, String address, String svg) {}

    /** The pictures of {@code page} in the order of the steps; none where they would be too large together. */
    public static List<Picture> of(Document page) {
        List<Picture> pictures = new ArrayList<>();
        Map<String, Element> shared = new LinkedHashMap<>();
        page.select("#steps defs [id]").forEach(each -> shared.put("#" + each.id(), each));
        int letters = 0;
        for (Element item : page.select("#steps ol.steps > li")) {
            Element drawn = item.selectFirst("> figure > svg");
            if (drawn == null) {
                continue;
            }
            String svg = alone(drawn, shared);
            letters += svg.length();
            if (letters > MOST) {
                return List.of();
            }
            Element title = drawn.selectFirst("> title");
            pictures.add(new Picture(Integer.parseInt(item.attr("value")), title == null ? "" : title.id(), svg));
        }
        return pictures;
    }

    private static String alone(Element drawn, Map<String, Element> shared) {
        Document document = new Document("");
        document.outputSettings().syntax(Document.OutputSettings.Syntax.xml).prettyPrint(false);
        Element svg = drawn.clone();
        document.appendChild(svg);
        svg.attr("xmlns", "http://www.w3.org/2000/svg");
        Map<String, Element> wanted = new LinkedHashMap<>();
        svg.select("use").forEach(use -> {
            Element drawing = shared.get(use.attr("href"));
            if (drawing != null) {
                wanted.putIfAbsent(drawing.id(), drawing);
            }
        });
        if (!wanted.isEmpty()) {
            Element defs = new Element("defs");
            wanted.values().forEach(each -> defs.appendChild(each.clone()));
            svg.insertChildren(0, defs);
            // A picture is called by its title, which has to come first.
            Element title = svg.selectFirst("> title");
            if (title != null) {
                svg.insertChildren(0, title);
            }
        }
        return svg.outerHtml() + "\n";
    }
}

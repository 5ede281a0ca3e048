package dev.treen.page;

import dev.treen.drawing.PaperSize;
import dev.treen.drawing.Sheet;
import java.util.List;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Templates as a page that prints true to size on one kind of paper. */
public final class TemplatePages {
    private TemplatePages() {
    }

    /** The page with all of {@code sheets}, one on each sheet of paper. */
    public static String of(String title, List<Sheet> sheets, PaperSize paper) {
        Document document = Html.document(title + ": templates", "templates.css");
        Html.add(document.head(), "style").appendChild(
                new DataNode("@page { size: " + css(paper) + " portrait; margin: 12mm }"));
        Element main = Html.add(document.body(), "main");
        Html.text(Html.add(Html.add(main, "h1"), "bdi"), title);
        Html.said(main, "p", "Templates at full size, for " + css(paper)
                + " paper. Print at 100 %, not fitted to the page,"
                + " and hold a rule to the one on each sheet before you trust it. Cut along a knife line on the wood, not"
                + " along the paper; chop and saw with the work held fast and both hands behind the edge.");
        for (int i = 0; i < sheets.size(); i++) {
            Html.drawing(Html.add(main, "div", "class", "sheet"), sheets.get(i).svg(), "sheet-" + (i + 1));
        }
        return document.outerHtml() + "\n";
    }

    /** The paper's name in CSS (W3C, CSS Paged Media Module Level 3). */
    private static String css(PaperSize paper) {
        return switch (paper) {
            case A4 -> "A4";
            case LETTER -> "letter";
        };
    }
}

package dev.treen.paper;

import dev.treen.drawing.PaperSize;
import dev.treen.drawing.Ruler;
import dev.treen.drawing.Svg;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.stream.Collectors;
import org.jsoup.nodes.DataNode;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/**
 * The page of a plan made ready for paper: what only a screen needs is left out, every drawing stands by itself in the size
 * that it is printed in, and bookmarks, a foot for every sheet and a ruler are added.
 */
final class PaperPage {
    private static final int LONG = 24;
    private static final int ON_ONE_SHEET = 16;
    private static final int CUT_COLUMNS = 3;
    private static final int MOST_LACKING = 12;
    private static final double BETWEEN = 6;
    private static final double LEAST_BESIDE = 75;

    private final Document page;
    private final PaperSize size;

    private PaperPage(Document page, PaperSize size) {
        this.page = page;
        this.size = size;
    }

    static Document of(Document page, PaperSize size) {
        PaperPage ready = new PaperPage(page.clone(), size);
        ready.lacking();
        ready.head();
        ready.apart();
        ready.contents();
        ready.ruler();
        ready.drawings();
        ready.bookmarks();
        ready.longWords();
        ready.beside();
        ready.columns();
        ready.rows();
        ready.together();
        ready.closing();
        return ready.page;
    }

    /** Says by their numbers which letters a box stands for, so that a name is not lost without a word. */
    private void lacking() {
        NavigableSet<Integer> letters = Typefaces.lacking(page.text());
        Element title = page.selectFirst("h1");
        if (!letters.isEmpty() && title != null) {
            String named = letters.stream().limit(MOST_LACKING).map("U+%04X"::formatted)
                    .collect(Collectors.joining(", "));
            int more = letters.size() - MOST_LACKING;
            title.after(new Element("p").addClass("lacking")
                    .text("On these sheets a box \u25a1 stands for letters that the"
                            + " file does not carry: " + named + (more > 0 ? " and " + more + " more" : "")
                            + ". The page plan.html shows them."));
        }
    }

    /** The library lets a name that runs from the right turn round what stands after it: a mark keeps them apart. */
    private void apart() {
        for (Element name : page.select("bdi")) {
            if (RightToLeft.any(name.text())) {
                name.after(RightToLeft.mark());
            }
        }
    }

    private void head() {
        page.select("a.skip").remove();
        Element head = page.head();
        head.appendElement("meta").attr("name", "subject").attr("content", "A plan to build from");
        head.appendElement("meta").attr("name", "description").attr("content", "A plan to build from");
        head.appendElement("style").appendChild(new DataNode(style().replace("A4", size.word())));
        foot();
    }

    /** The title stands apart from what follows it, which would change sides beside a title that runs from the right. */
    private void foot() {
        Element foot = page.body().prependElement("p").addClass("foot");
        String title = page.select("h1").text();
        boolean first = !title.isEmpty() && page.title().startsWith(title + ":");
        foot.appendElement("bdi").text(first ? title : page.title());
        if (first) {
            foot.appendText(page.title().substring(title.length()));
        }
    }

    /** To the words and not to what holds them: a heading may go over to the next sheet by itself. */
    private void contents() {
        for (Element link : page.select("nav a")) {
            Element heading = page.selectFirst(link.attr("href") + "-heading");
            if (heading != null) {
                link.attr("href", "#" + heading.id());
            }
        }
    }

    private static String style() {
        try (InputStream in = PaperPage.class.getResourceAsStream("paper.css")) {
            if (in == null) {
                throw new IllegalStateException("the style paper.css is not among the resources");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Before the first drawing of a part; at the very end where there is none. */
    private void ruler() {
        Element ruler = new Element("div").attr("id", "ruler");
        ruler.appendElement("p").text("Is this printed true to size? Hold a rule against these two. If they do not"
                + " agree to half a millimetre, the sheets were printed larger or smaller: print again at 100 %, without"
                + " fitting to the page.");
        Element drawn = Parser.xmlParser().parseInput(Ruler.sheet().svg(), "").child(0);
        ruler.appendElement("figure").addClass("ruler").appendChild(drawn.removeAttr("xmlns"));
        Element before = page.selectFirst("#drawings > p");
        if (before == null) {
            page.body().appendChild(ruler);
        } else {
            before.after(ruler);
        }
    }

    private void drawings() {
        // Looked up once: hundreds of pictures draw on hundreds of parts.
        Map<String, Element> shared = new HashMap<>();
        page.select("svg[aria-hidden] [id]").forEach(each -> shared.putIfAbsent("#" + each.id(), each));
        for (Element svg : page.select("svg:not([aria-hidden])")) {
            for (Element use : svg.select("use")) {
                Element meant = shared.get(use.attr("href"));
                if (meant == null) {
                    use.remove();
                } else {
                    Element copy = meant.clone();
                    copy.getAllElements().forEach(each -> each.removeAttr("id"));
                    use.replaceWith(copy);
                }
            }
        }
        page.select("svg[aria-hidden]").remove();
        page.select("svg").forEach(svg -> Fitted.on(size, svg));
    }

    private void bookmarks() {
        Element marks = page.head().appendElement("bookmarks");
        for (Element section : page.select("section")) {
            Element heading = section.selectFirst("h2");
            if (heading != null) {
                Element mark = bookmark(marks, heading.text(), heading.id());
                for (Element step : section.select("ol.steps > li, article")) {
                    Element words = step.selectFirst("h3");
                    if (words != null) {
                        bookmark(mark, words.text(), step.id());
                    }
                }
            }
        }
    }

    /** A word longer than any column is broken; all others stay whole, and columns as wide as they. */
    private void longWords() {
        for (Element each : page.body().getAllElements()) {
            for (String word : each.ownText().split("\\s", -1)) {
                if (word.length() > LONG) {
                    each.addClass("long");
                }
            }
        }
    }

    /** The library's own columns lose their numbers and fill unevenly, so lists are dealt out here. */
    private void columns() {
        for (Element list : page.select("nav ol, .columns, .cut-order")) {
            int columns = list.hasClass("narrow") ? 1 : list.hasClass("cut-order") ? CUT_COLUMNS : 2;
            Element row = new Element("div").addClass("dealt");
            list.replaceWith(row);
            List<Element> items = list.children();
            int each = (items.size() + columns - 1) / columns;
            for (int from = 0; from < items.size(); from += each) {
                Element column = list.shallowClone().removeAttr("id").addClass("of" + columns);
                if (list.tagName().equals("ol")) {
                    column.attr("start", String.valueOf(from + 1));
                }
                items.subList(from, Math.min(items.size(), from + each)).forEach(column::appendChild);
                row.appendChild(column);
            }
            row.appendElement("div").addClass("end");
        }
    }

    /** Drawings stand side by side and below each other, so many on a sheet as find room. */
    private void rows() {
        List<Element> figures = page.select("#drawings > figure.drawing:not(.apart)");
        if (!figures.isEmpty()) {
            DrawnSheets sheets = new DrawnSheets(Fitted.lying(size), Fitted.lyingHigh(size));
            Element before = new Element("div");
            figures.getFirst().before(before);
            figures.forEach(sheets::place);
            sheets.rows().forEach(before::before);
            before.remove();
        }
    }

    /** Beside the drawing of a board that takes half the sheet's width stands what is said of it. */
    private void beside() {
        for (Element board : page.select("article.board")) {
            Element drawn = board.selectFirst("> figure > .drawn");
            Element words = board.selectFirst("> .sawn");
            if (drawn != null && words != null) {
                double room = Fitted.lying(size) - Fitted.width(drawn) - BETWEEN;
                if (room > LEAST_BESIDE) {
                    board.addClass("beside");
                    words.attr("style", "width: " + Svg.number(room) + "mm");
                    words.select(".cut-order").forEach(list -> list.addClass("narrow"));
                    board.appendElement("div").addClass("end");
                }
            }
        }
    }

    /** A cut list that finds room on one sheet stays on one. */
    private void together() {
        for (Element table : page.select("table.cuts")) {
            Element around = table.closest(".scroll");
            if (around != null && table.select("tbody tr").size() <= ON_ONE_SHEET) {
                around.addClass("whole");
            }
        }
        // The library makes all sheets as wide as the first unless it is told.
        page.select(".wide").attr("style", "width: " + Svg.number(Fitted.lying(size)) + "mm");
        Element first = page.selectFirst(".wide article");
        if (first != null) {
            first.addClass("first");
        }
    }

    /** What is said of the whole plan stands among the cautions: at the very end it would often have a sheet to itself. */
    private void closing() {
        Element footer = page.selectFirst("footer > p");
        Element cautions = page.selectFirst("#cautions");
        if (footer != null && cautions != null) {
            cautions.appendChild(footer.addClass("closing").addClass("quiet"));
            page.select("footer").remove();
        }
    }

    private static Element bookmark(Element parent, String words, String id) {
        return parent.appendElement("bookmark").attr("name", words).attr("href", "#" + id);
    }
}

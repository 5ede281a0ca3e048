package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Rectangle;
import dev.treen.cutting.Strip;
import dev.treen.plan.LayoutSvg;
import dev.treen.plan.MovesText;
import dev.treen.quantity.Length;
import java.util.List;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;

/** How each board is sawn: the drawing, the cuts in their order, what is left. */
final class Layouts {
    private static final int MANY = 40;

    private Layouts() {
    }

    static void write(Page page) {
        List<BoardCut> boards = page.plan().cutting().boards();
        if (boards.isEmpty()) {
            return;
        }
        Element section = page.section("layouts", "How each board is cut");
        section.addClass("wide");
        Html.said(section, "p",
                "The board lies before you with its near edge below. Places count from its left end and its"
                        + " near edge; cuts are numbered in their order. "
                        + String.join(" ", LayoutSvg.legend(boards)));
        MovesText.of(page.plan().cutting().moves(), page.plan().settings().format())
                .forEach(line -> Html.text(Html.add(section, "p"), line));
        int number = 0;
        for (BoardCut board : boards) {
            number++;
            board(page, section, board, number);
        }
        List<String> whole = page.plan().cutting().untouched();
        if (!whole.isEmpty()) {
            Element line = Html.said(section, "p", "Stays whole: ");
            Html.names(line, whole);
            Html.text(line, ".");
        }
    }

    /** The address of a board's layout in the page. */
    static String id(int number) {
        return "layout-" + number;
    }

    private static void board(Page page, Element section, BoardCut board, int number) {
        Element article = Html.add(section, "article", "class", "board", "id", id(number));
        Element heading = Html.add(article, "h3");
        Html.name(heading, board.name());
        Html.said(heading, "span", ", " + size(page, board.board().length().value(), board.board().width().value())
                + ", " + page.text(board.thickness()) + (board.board().sheet() ? " thick" : " thick once flat"),
                "class", "plain");
        Element figure = Html.add(article, "figure");
        Html.drawing(figure, LayoutSvg.inPage(page.plan().joined(), board), "layout-" + number);
        figure.select("> svg").forEach(svg -> svg.attr("width", share(svg)));
        Element words = Html.add(article, "div", "class", "sawn");
        marks(page, words, board);
        cuts(page, words, board, article.id());
        kept(page, words, board);
    }

    /** So much of the page's width that letters are as large on every board. */
    private static String share(Element svg) {
        double wide = Double.parseDouble(svg.attr("viewBox").split(" ", -1)[2]);
        return Math.round(1000 * wide / LayoutSvg.WIDEST) / 10.0 + "%";
    }

    private static void marks(Page page, Element article, BoardCut board) {
        if (board.parts().isEmpty()) {
            return;
        }
        Element line = Html.add(article, "p");
        Html.text(line, "On it: ");
        boolean first = true;
        for (BoardCut.OnBoard part : board.parts()) {
            Html.text(line, first ? "" : ", ");
            Html.name(line, part.name());
            Html.text(line, " (" + page.mark(part.blank()) + (part.note().isEmpty() ? ")" : ", " + part.note() + ")"));
            first = false;
        }
        Html.text(line, ".");
        for (Strip strip : board.strips()) {
            Element kept = Html.add(article, "p");
            Html.text(kept, "Strip " + strip.number() + " stays whole until what runs along it is done: ");
            Html.names(kept, strip.parts());
            Html.text(kept, ".");
        }
    }

    private static void cuts(Page page, Element article, BoardCut board, String id) {
        if (board.cuts().isEmpty()) {
            return;
        }
        Element heading = Html.said(article, "p", "Cuts in their order", "class", "label");
        heading.attr("id", id + "-cuts");
        Element list = Html.add(article, "ol", "class", "cut-order", "aria-labelledby", id + "-cuts");
        for (BoardCut.SawCut cut : board.cuts()) {
            String way = cut.along() ? "rip, " : "crosscut, ";
            String from = cut.along() ? " from the near edge" : " from the left end";
            String strip = cut.strip() == BoardCut.SawCut.NO_STRIP ? "" : "; parts strip " + cut.strip();
            Html.said(list, "li", way + page.text(cut.at()) + from + strip, "value", String.valueOf(cut.number()));
        }
    }

    private static void kept(Page page, Element article, BoardCut board) {
        if (board.offcuts().isEmpty()) {
            return;
        }
        List<Rectangle> offcuts = board.offcuts();
        String sizes = offcuts.stream().limit(MANY)
                .map(o -> size(page, o.length(), o.width()))
                .collect(Collectors.joining(", "));
        Html.said(article, "p", "Offcuts worth keeping: " + sizes + (offcuts.size() > MANY ? " and more." : "."));
    }

    private static String size(Page page, Length length, Length width) {
        return page.text(length) + " × " + page.text(width);
    }
}

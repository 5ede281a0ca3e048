package dev.treen.page;

import dev.treen.model.Holding;
import dev.treen.model.Requirement;
import dev.treen.quantity.Length;
import java.util.List;
import org.jsoup.nodes.Element;

/** What goes in, and what else the project asks of itself. */
final class Holds {
    private Holds() {
    }

    static void write(Page page) {
        List<Holding> holdings = page.plan().joined().project().holdings();
        List<Requirement> asked = page.plan().joined().project().requirements();
        if (holdings.isEmpty() && asked.isEmpty()) {
            return;
        }
        Element section = page.section("holds", "What it holds and must do");
        for (Holding holding : holdings) {
            String room = holding.room().isZero() ? "" : ", with " + page.text(holding.room()) + " free on every side";
            Element rows = Page.table(section, "`" + holding.what() + "`: inside " + sizes(page, holding.inside())
                    + room, "What goes in", " How many", "Size");
            for (Holding.Content content : holding.contents()) {
                Element row = Html.add(rows, "tr");
                Html.name(Html.add(row, "th", "scope", "row"), content.name());
                Html.said(row, "td", String.valueOf(content.count()), "class", "figure");
                Html.said(row, "td",
                        sizes(page, List.of(content.length(), content.width(), content.height())));
            }
        }
        if (!asked.isEmpty()) {
            Html.said(section, "p", "The plan keeps what the project asks for:");
            Element list = Html.add(section, "ul");
            for (Requirement each : asked) {
                Element item = Html.add(list, "li");
                Html.text(Html.add(item, "code"), each.at().text());
                each.because().ifPresent(why -> Html.text(item, ", because " + why));
            }
        }
    }

    private static String sizes(Page page, List<Length> lengths) {
        return String.join(" × ", lengths.stream().map(page::text).toList());
    }
}

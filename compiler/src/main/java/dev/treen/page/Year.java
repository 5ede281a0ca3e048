package dev.treen.page;

import dev.treen.check.RoomYear;
import dev.treen.plan.YearSvg;
import dev.treen.plan.YearText;
import java.util.List;
import org.jsoup.nodes.Element;

/** What panels, doors and lids have of room through the year. */
final class Year {
    private Year() {
    }

    static void write(Page page) {
        if (page.years().isEmpty()) {
            return;
        }
        Element section = page.section("year", "Room through the year");
        Html.said(section, "p",
                "Wood takes up moisture and gives it off; across the grain it grows and shrinks. These are the"
                        + " gaps that remain on each side, month by month or from the driest to the dampest air, and what making"
                        + " may add or take.");
        Element rows = Page.table(section, "Tightest and loosest", "Part", " At the bench", " Tightest", "When",
                " Loosest",
                "When");
        for (RoomYear year : page.years()) {
            Element row = Html.add(rows, "tr");
            Html.name(Html.add(row, "th", "scope", "row"), year.part());
            Html.said(row, "td", mm(page, year.benchMm()), "class", "figure");
            Html.said(row, "td", mm(page, year.tightest().mm()), "class", "figure");
            Html.said(row, "td", year.tightest().when() + ", mostly by " + year.tightest().cause());
            Html.said(row, "td", mm(page, year.loosest().mm()), "class", "figure");
            Html.said(row, "td", year.loosest().when());
        }
        int number = 0;
        for (RoomYear year : page.years()) {
            number++;
            Element figure = Html.add(section, "figure", "class", "curve");
            Html.drawing(figure, YearSvg.of(page.plan(), List.of(year)), "year-" + number);
            if (!year.largest().isEmpty()) {
                Html.said(figure, "figcaption", "`" + year.part() + "`: making may take or give "
                        + mm(page, year.makingMm()) + ", as a rule " + mm(page, year.likelyMm()) + "; most from "
                        + String.join("; ", year.largest()) + ".");
            }
        }
    }

    static String mm(Page page, double mm) {
        return YearText.mm(mm, page.format())
                + page.beside().map(other -> " (" + YearText.mm(mm, other) + ")").orElse("");
    }
}

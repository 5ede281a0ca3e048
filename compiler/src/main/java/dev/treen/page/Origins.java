package dev.treen.page;

import dev.treen.joinery.FinishedPart;
import dev.treen.model.Measure;
import dev.treen.plan.CutList;
import dev.treen.plan.Explanation;
import java.util.List;
import org.jsoup.nodes.Element;

/** How each size came about. */
final class Origins {
    private static final int MOST = 80;

    private Origins() {
    }

    static void write(Page page) {
        List<CutList.Row> rows = page.list().rows();
        if (rows.isEmpty()) {
            return;
        }
        Element section = page.section("origins", "How each size came about");
        Html.said(section, "p",
                "One line a number; what it rests on stands below it. Lines without a file's name count in the project's"
                        + " file at the end of this plan; patterns from treen/ come with Treen.");
        for (CutList.Row row : rows.stream().limit(MOST).toList()) {
            page.plan().joined().part(row.parts().getFirst()).ifPresent(part -> part(page, section, row, part));
        }
        if (rows.size() > MOST) {
            Html.said(section, "p", "These are the first " + MOST + " of " + rows.size()
                    + "; `treen explain` tells of the others.");
        }
    }

    private static void part(Page page, Element section, CutList.Row row, FinishedPart part) {
        Element block = Html.add(section, "div", "class", "origin");
        Element heading = Html.add(block, "h3");
        Html.said(heading, "span", row.mark() + " ", "class", "number");
        Html.names(heading, row.parts());
        for (Measure each : List.of(part.length(), part.width(), part.thickness())) {
            Html.add(block, "pre", "class", "how")
                    .text(Html.plain(Explanation.of(each.how(), page.plan().settings())));
        }
    }
}

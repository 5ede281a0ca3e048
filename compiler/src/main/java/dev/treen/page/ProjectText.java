package dev.treen.page;

import org.jsoup.nodes.Element;
import org.jsoup.nodes.TextNode;

/** The project's own files, from which all of the plan follows. */
final class ProjectText {
    private ProjectText() {
    }

    static void write(Page page) {
        Element section = page.section("source", "The project's own text");
        Html.said(section, "p",
                "All that stands above follows from this. The page is its own source: `treen build` with its"
                        + " name builds it again.");
        page.sources().texts().forEach((name, text) -> {
            Element heading = Html.add(section, "h3");
            Html.text(Html.add(heading, "bdi"), name);
            Element pre = Html.add(section, "pre", "class", "source", Sources.MARK, name);
            // A reader of HTML drops the first line end of such a block.
            pre.appendChild(new TextNode("\n" + text));
        });
    }
}

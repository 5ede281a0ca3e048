package dev.treen.page;

import dev.treen.check.RoomYear;
import dev.treen.drawing.DrawingSet;
import dev.treen.plan.Plan;
import dev.treen.quantity.LengthFormat;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * The plan as one page of HTML that needs nothing else: no network, no script, no other file. It holds the project's own
 * files, so that it can be built again.
 */
public final class PlanPage {
    private PlanPage() {
    }

    /**
     * The page.
     *
     * @param years the rooms of panels, doors and lids through the year
     * @param beside how lengths are shown a second time, where both ways are asked for
     */
    public static String of(Plan plan, List<RoomYear> years, DrawingSet drawings, Sources sources,
            Optional<LengthFormat> beside) {
        return text(document(plan, years, drawings, sources, beside));
    }

    /** The text of the page. */
    public static String text(Document page) {
        return page.outerHtml() + "\n";
    }

    /** The same as a tree, for those who make something else of it. */
    public static Document document(Plan plan, List<RoomYear> years, DrawingSet drawings, Sources sources,
            Optional<LengthFormat> beside) {
        Document document = Html.document(
                plan.title().isBlank() ? "A plan" : plan.title() + ": a plan", "plan.css");
        Element body = document.body();
        Html.said(body, "a", "To the steps", "href", "#steps", "class", "skip");
        Element header = Html.add(body, "header");
        Element nav = Html.add(body, "nav", "aria-labelledby", "contents-heading");
        Element main = Html.add(body, "main");
        Page page = Page.of(plan, years, drawings, sources, beside, main);
        Opening.write(page, header);
        sections(page);
        contents(nav, main);
        if (main.selectFirst("#steps") == null) {
            body.select("a.skip").remove();
        }
        Element footer = Html.add(body, "footer");
        Html.said(footer, "p",
                "Reckoned by Treen from the project's own text. Figures say where they come from; times and what is"
                        + " marked as common practice are guides. No plan replaces the manual of your machine, the label on the can,"
                        + " your local code or somebody licensed to judge what carries people.");
        ShortNames.in(document, plan.joined().parts().stream().map(part -> part.part().name()).toList());
        return document;
    }

    /** The address of the title of a board's layout, counted from one in the order of the plan. */
    public static String layout(int number) {
        return Layouts.id(number) + "-title";
    }

    /** The address of the title of the drawing called {@code sheet}; none where the page does not show it. */
    public static Optional<String> drawing(DrawingSet drawings, String sheet) {
        if (sheet.equals("assembled")) {
            return Optional.of("assembled-title");
        }
        if (sheet.equals("taken-apart")) {
            return Optional.of("apart-title");
        }
        List<String> parts = drawings.sheets().keySet().stream().filter(each -> each.startsWith("part-")).toList();
        int number = parts.indexOf(sheet) + 1;
        return number > 0 ? Optional.of("part-" + number + "-title") : Optional.empty();
    }

    private static void sections(Page page) {
        ToolsAndCautions.findings(page);
        Holds.write(page);
        Materials.write(page);
        ToolsAndCautions.write(page);
        CutListTable.write(page);
        Layouts.write(page);
        PartDrawings.write(page);
        Steps.write(page);
        SettingsAndChecks.write(page);
        Year.write(page);
        Origins.write(page);
        OtherBoard.write(page);
        ProjectText.write(page);
    }

    private static void contents(Element nav, Element main) {
        Html.said(nav, "h2", "In this plan", "id", "contents-heading");
        Element list = Html.add(nav, "ol");
        for (Element section : main.select("> section")) {
            Element link = Html.add(Html.add(list, "li"), "a", "href", "#" + section.id());
            Html.text(link, section.select("h2").text());
        }
    }
}

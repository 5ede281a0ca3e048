package dev.treen.page;

import dev.treen.cutting.BoardCut;
import dev.treen.joinery.FinishedPart;
import dev.treen.plan.CutList;
import dev.treen.plan.Plan;
import java.util.HashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A page of labels, one a part, to cut out and stick on the face side: the label's lower edge lies at the face edge, its
 * arrow along the grain.
 */
public final class Labels {
    private Labels() {
    }

    /** The labels of {@code plan}. */
    public static String of(Plan plan) {
        Document document = Html.document(plan.title() + ": labels", "labels.css");
        Element body = Html.add(document.body(), "main");
        Html.text(Html.add(Html.add(body, "h1"), "bdi"), plan.title());
        Html.said(body, "p",
                "One label a part: on its face side, the lower edge of the label at the face edge, the arrow along"
                        + " the grain, its left end at the part's left end.");
        Element list = Html.add(body, "ul");
        CutList rows = CutList.of(plan);
        Map<String, String> boards = new HashMap<>();
        for (BoardCut cut : plan.cutting().boards()) {
            cut.parts().forEach(part -> boards.put(part.part(), cut.name()));
        }
        for (CutList.Row row : rows.rows()) {
            for (String part : row.parts()) {
                plan.joined().part(part).ifPresent(
                        made -> label(plan, list, row, made, boards.getOrDefault(part, "")));
            }
        }
        return document.outerHtml() + "\n";
    }

    private static void label(Plan plan, Element list, CutList.Row row, FinishedPart part, String board) {
        Element label = Html.add(list, "li");
        Html.said(label, "span", row.mark(), "class", "mark");
        Html.name(label, part.part().name());
        Element lines = Html.add(label, "p");
        var size = part.finished();
        Html.text(lines, plan.format().figure(size.length()) + " × " + plan.format().figure(size.width()) + " × "
                + plan.format().text(size.thickness()));
        if (!board.isEmpty()) {
            Html.text(lines, ", from ");
            Html.name(lines, board);
        }
        Html.said(label, "p", "⟵ grain ⟶", "class", "grain");
        Html.said(label, "p", "face side · left end · face edge below", "class", "edge");
    }
}

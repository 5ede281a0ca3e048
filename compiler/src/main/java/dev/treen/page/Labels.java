package dev.treen.page;

import dev.treen.cutting.Blank;
import dev.treen.cutting.BoardCut;
import dev.treen.cutting.Glued;
import dev.treen.drawing.Corners;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.GrainRing;
import dev.treen.model.GlueUp;
import dev.treen.plan.CutList;
import dev.treen.plan.Plan;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
                "One label a part" + (plan.cutting().glued().isEmpty() ? "" : ", and one a stave")
                        + ": on its face side, the lower edge of the label at the face edge, the arrow along"
                        + " the grain, its left end at the part's left end.");
        Corners corners = Corners.of(plan.joined());
        if (!corners.pairs().isEmpty()) {
            Html.said(body, "p",
                    "Two parts that are joined bear the same number, at the end where they meet: write it on both"
                            + " before the first is cut, and fit each to its own mate.");
        }
        Element list = Html.add(body, "ul");
        CutList rows = CutList.of(plan);
        Map<String, String> boards = new HashMap<>();
        for (BoardCut cut : plan.cutting().boards()) {
            cut.parts().forEach(part -> part.blank().parts().forEach(
                    name -> boards.merge(name, cut.name(), (a, b) -> a.equals(b) ? a : a + ", " + b)));
        }
        for (CutList.Row row : rows.rows()) {
            for (String part : row.parts()) {
                plan.joined().part(part).ifPresent(
                        made -> label(plan, list, row, made, boards.getOrDefault(part, ""), corners.on(part)));
                plan.cutting().glued(part).ifPresent(glued -> staves(plan, list, row, glued));
            }
        }
        ShortNames.in(document, plan.joined().parts().stream().map(part -> part.part().name()).toList());
        return document.outerHtml() + "\n";
    }

    private static void label(Plan plan, Element list, CutList.Row row, FinishedPart part, String board,
            List<Corners.Mark> corners) {
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
        if (row.bought()) {
            Html.text(lines, ", bought, " + row.species());
        }
        mate(plan, part.part().name()).ifPresent(other -> {
            Element book = Html.add(label, "p", "class", "book");
            Html.text(book, "opens like a book with ");
            Html.name(book, other);
        });
        ring(plan, part.part().name()).ifPresent(ring -> {
            Element run = Html.add(label, "p", "class", "ring");
            Html.text(run, "grain meets ");
            Html.names(run, ring.meeting(part.part().name()));
            ring.odd().mate(part.part().name()).ifPresent(other -> {
                Html.text(run, ", not ");
                Html.name(run, other);
            });
        });
        Element grain = Html.add(label, "p");
        grain.addClass("grain");
        boolean grained = !part.part().foreign();
        // What is at an end stands at that end of the label.
        numbers(grain, corners, Corners.Spot.LEFT_END);
        Html.text(grain, grained ? " ⟵ grain ⟶ " : " ⟵ length ⟶ ");
        numbers(grain, corners, Corners.Spot.RIGHT_END);
        Element edge = Html.add(label, "p");
        edge.addClass("edge");
        Html.text(edge, "face side · left end · face edge below");
        if (corners.stream().anyMatch(mark -> mark.spot() == Corners.Spot.BETWEEN)) {
            Html.text(edge, " · between: ");
            numbers(edge, corners, Corners.Spot.BETWEEN);
        }
    }

    /** The mate with which a part opens like a book. */
    private static Optional<String> mate(Plan plan, String part) {
        return plan.cutting().boards().stream()
                .flatMap(cut -> cut.parts().stream())
                .map(BoardCut.OnBoard::blank)
                .filter(blank -> blank.resawn() && blank.parts().size() > 1 && blank.parts().contains(part))
                .flatMap(blank -> blank.parts().stream())
                .filter(other -> !other.equals(part))
                .findFirst();
    }

    /** The ring round which a part's grain goes on, where all of it comes from one board. */
    private static Optional<GrainRing> ring(Plan plan, String part) {
        return plan.cutting().boards().stream()
                .flatMap(cut -> cut.rings(plan.joined()).stream())
                .filter(ring -> ring.run().parts().contains(part))
                .findFirst();
    }

    /** One label a stave: what it is, and how it lies in its part. */
    private static void staves(Plan plan, Element list, CutList.Row row, Glued glued) {
        boolean book = glued.asked().match() == GlueUp.Match.BOOK;
        for (int stave = 1; stave <= glued.staves().size(); stave++) {
            Blank.Member member = new Blank.Member(glued.part(), stave);
            Element label = Html.add(list, "li");
            Html.said(label, "span", row.mark() + "/" + stave, "class", "mark");
            Html.name(label, member.name());
            Element lines = Html.add(label, "p");
            Html.text(lines, "sawn " + plan.format().figure(glued.roughLength()) + " × "
                    + plan.format().figure(glued.roughWidth(stave)) + ", then "
                    + plan.format().text(glued.thickness()) + " thick");
            plan.cutting().boardOf(member).ifPresent(cut -> {
                Html.text(lines, ", from ");
                Html.name(lines, cut.name());
            });
            Element grain = Html.add(label, "p");
            grain.addClass("grain");
            Html.text(grain, " ⟵ grain ⟶ ");
            Element edge = Html.add(label, "p");
            edge.addClass("edge");
            Html.text(edge, "stave " + stave + " of " + glued.staves().size() + ", from the edge below · "
                    + (book ? "sawn face up: it opens like a book"
                            : "heart side " + glued.hearts().get(stave - 1).word()));
        }
    }

    private static void numbers(Element line, List<Corners.Mark> corners, Corners.Spot spot) {
        String numbers = corners.stream()
                .filter(mark -> mark.spot() == spot)
                .map(mark -> Integer.toString(mark.number()))
                .collect(Collectors.joining(" "));
        if (!numbers.isEmpty()) {
            Html.said(line, "span", numbers, "class", "corner", "title", spot.words());
        }
    }
}

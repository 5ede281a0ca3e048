package dev.treen.page;

import dev.treen.check.RoomYear;
import dev.treen.joinery.FinishedPart;
import dev.treen.quantity.Length;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;

/** What to change to build the same from other wood. */
final class OtherBoard {
    private OtherBoard() {
    }

    static void write(Page page) {
        if (page.plan().joined().parts().isEmpty()) {
            return;
        }
        Element section = page.section("other-board", "From another board");
        Html.said(section, "p",
                "The sizes in this plan hold for the wood it was reckoned for. With other wood, change the"
                        + " project's file and let everything follow:");
        Element list = Html.add(section, "ol");
        Html.said(list, "li",
                "Measure your board: length along the grain, width, thickness; its species; its moisture with a"
                        + " meter or a balance; every knot, split and stain by its place from the left end and the near edge.");
        Html.said(list, "li", "Write that into the `board` block of the file, in place of what stands there.");
        Html.said(list, "li", "If the piece will live in another room, write its air into `climate`.");
        Html.said(list, "li",
                "Build the plan again, with `treen build` and the file or this page itself. Panels, gaps and the"
                        + " layout follow; what no longer fits is said with what to do about it.");
        Html.said(list, "li",
                "When something comes out otherwise at the bench, write it into a `measured` line and build again.");
        needs(page, section);
        wants(page, section);
    }

    /** The least that a board of another size must give. */
    private static void needs(Page page, Element section) {
        Map<String, List<FinishedPart>> boards = new LinkedHashMap<>();
        for (FinishedPart part : page.plan().joined().made()) {
            boards.computeIfAbsent(part.part().source(), b -> new java.util.ArrayList<>())
                    .add(part);
        }
        Element rows = Page.table(section, "What other boards must be able to give, in " + page.unit(), "In place of",
                " Longest part", " Widest part", " Thickest part");
        boards.forEach((board, parts) -> {
            Element row = Html.add(rows, "tr");
            Element head = Html.add(row, "th", "scope", "row");
            if (board.isEmpty()) {
                Html.text(head, "any board");
            } else {
                Html.name(head, board);
            }
            page.figure(row, most(parts, 0));
            page.figure(row, most(parts, 1));
            page.figure(row, most(parts, 2));
        });
    }

    private static Length most(List<FinishedPart> parts, int which) {
        return parts.stream()
                .map(part -> switch (which) {
                    case 0 -> part.roughLength().value();
                    case 1 -> part.roughWidth().value();
                    default -> part.roughThickness().value();
                })
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    private static void wants(Page page, Element section) {
        if (page.years().stream().allMatch(year -> year.needs().isEmpty())) {
            return;
        }
        Element rows = Page.table(section,
                "The gap on each side that stands the dampest season, in other wood or another"
                        + " room",
                "Part", "If it is", " Gap");
        for (RoomYear year : page.years()) {
            for (RoomYear.Need need : year.needs()) {
                Element row = Html.add(rows, "tr");
                Html.name(Html.add(row, "th", "scope", "row"), year.part());
                Html.said(row, "td", need.what());
                Html.said(row, "td", Year.mm(page, need.gapMm()), "class", "figure");
            }
        }
    }
}

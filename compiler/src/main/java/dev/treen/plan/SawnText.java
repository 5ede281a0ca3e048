package dev.treen.plan;

import dev.treen.cutting.Blank;
import dev.treen.cutting.Glued;
import dev.treen.joinery.FinishedPart;
import dev.treen.model.GlueUp;
import java.util.List;
import java.util.Optional;

/** How a part is sawn out that does not come from the board as it is: glued from staves, or resawn with another. */
final class SawnText {
    private SawnText() {
    }

    /** {@code glued up from 3 staves, shot to 92, 92 and 77}; nothing where it is sawn out in one piece. */
    static Optional<String> of(Plan plan, FinishedPart part) {
        Optional<Glued> glued = plan.cutting().glued(part.part().name());
        return glued.map(each -> staves(plan, each)).or(() -> pair(plan, part.part().name()));
    }

    private static String staves(Plan plan, Glued glued) {
        List<String> widths = glued.staves().stream().map(plan.format()::figure).toList();
        boolean book = glued.asked().match() == GlueUp.Match.BOOK;
        return "glued up from " + (book ? "two leaves of one piece, opened like a book" : widths.size() + " staves")
                + ", shot to " + String.join(", ", widths);
    }

    private static Optional<String> pair(Plan plan, String name) {
        return plan.cutting().boards().stream()
                .flatMap(cut -> cut.parts().stream())
                .map(piece -> piece.blank())
                .filter(blank -> blank.resawn() && blank.parts().size() > 1 && blank.parts().contains(name))
                .findFirst()
                .map(SawnText::leaves);
    }

    private static String leaves(Blank blank) {
        return "bookmatched: " + String.join(" and ", blank.parts()) + " are the leaves of one piece";
    }
}

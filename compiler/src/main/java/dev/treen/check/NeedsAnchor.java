package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Meeting;
import dev.treen.model.Settings;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.wood.Figures;
import dev.treen.wood.Tipping;
import dev.treen.wood.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A case with shelves that is so high for its depth that it tips (rule of the trade S-06: common practice, no source; for
 * clothes the product law of the United States, 16 CFR 1261). A hint of statics: the law of the place decides.
 */
final class NeedsAnchor implements Check {
    static final FindingKind ANCHOR = FindingKind.note("needs-anchor", "A case may tip and wants fixing to the wall");

    /** What is shallower is a door or a frame and does not stand by itself. */
    private static final double STANDS = 100;

    @Override
    public List<FindingKind> kinds() {
        return List.of(ANCHOR);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Placement placement = Placement.of(joined);
        Optional<Box> bounds = placement.bounds();
        if (bounds.isEmpty()) {
            return List.of();
        }
        double high = Placement.extentMm(bounds.get(), Axis.Z);
        double deep = Math.min(
                Placement.extentMm(bounds.get(), Axis.X), Placement.extentMm(bounds.get(), Axis.Y));
        boolean tips = Tipping.needsAnchor(high, deep, Figures.standard()).grade() != Verdict.Grade.FINE;
        return deep >= STANDS && tips && !Spans.of(joined).isEmpty()
                ? tallest(placement).map(part -> finding(part, high, deep, joined.project().settings())).stream()
                        .toList()
                : List.of();
    }

    private static Optional<Meeting.Placed> tallest(Placement placement) {
        return placement.parts().stream()
                .max(Comparator.comparingDouble(part -> part.along(Axis.Z).value().toDoubleMm()));
    }

    private static Finding finding(Meeting.Placed part, double high, double deep, Settings settings) {
        Figures figures = Figures.standard();
        boolean clothes = high >= figures.value("clothing-storage.height");
        return Finding.of(ANCHOR, part.part().nameAt(), "The piece may tip forward: fix it to the wall")
                .found("It is " + Amounts.fine(high, settings) + " high and " + Amounts.fine(deep, settings)
                        + " deep; over four times its depth, or over "
                        + Amounts.fine(figures.value("needs-anchor.height"), settings)
                        + " where small children live, it wants a fixing (common practice, no source).")
                .because(
                        "Loaded shelves, open drawers and a child that climbs tip it. The law of the place decides, and who"
                                + " is licensed for walls of unknown make."
                                + (clothes
                                        ? " Clothing storage of this height falls under ASTM F2057-23 by 16 CFR 1261 in the"
                                                + " United States: tests, a restraint and labels."
                                        : ""))
                .about(part.part().name())
                .number("height", high)
                .number("depth", deep)
                .remedy(Remedy.choice("fix it into a stud or solid wall at its top, and say so in its plan"))
                .remedy(Remedy.choice("accept this with the reason, when it hangs on a wall or is built in"))
                .build();
    }
}

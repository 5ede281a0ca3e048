package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Axes;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.solid.Box;
import dev.treen.solid.Overlap;
import java.util.List;

/**
 * Parts that fill the same space once every joint is cut, joined or not: found from their bodies alone, exactly, among
 * neighbours that a tree of their extents finds. What only touches is let pass.
 */
final class PartsClash implements BodyCheck {
    static final FindingKind CLASH = FindingKind.error("parts-clash", "Two finished parts fill the same space");

    private static final double MM3_TO_CM3 = 1e-3;

    @Override
    public List<FindingKind> kinds() {
        return List.of(CLASH);
    }

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        return Overlap.among(standing.all()).stream()
                .map(overlap -> finding(overlap, standing, joined.project().settings()))
                .toList();
    }

    private static Finding finding(Overlap overlap, Standing standing, Settings settings) {
        FinishedPart first = standing.part(overlap.first());
        FinishedPart second = standing.part(overlap.second());
        Box bounds = overlap.bounds();
        double volume = overlap.volume().doubleValue();
        return Finding.of(
                CLASH,
                second.part().nameAt(),
                "`" + overlap.first() + "` and `" + overlap.second() + "` fill the same space")
                .found("With all joints cut they share " + DecimalText.write(volume * MM3_TO_CM3, 2)
                        + " cm³, within " + Axes.sides(bounds, settings.format()) + " (across, deep, high) from "
                        + Standing.point(bounds.min(), settings.format()) + ".")
                .because("Where two parts want the same wood, one of them has to be cut away.")
                .related(first.part().nameAt(), "`" + overlap.first() + "` is declared here")
                .about(overlap.first())
                .about(overlap.second())
                .number("volume", volume)
                .remedy(Remedy.choice("join the two, so that one is cut for the other"))
                .remedy(Remedy.choice("move one of them, or make it or its tenon shorter"))
                .build();
    }
}

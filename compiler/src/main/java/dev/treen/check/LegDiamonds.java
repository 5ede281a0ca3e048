package dev.treen.check;

import dev.treen.finding.Edit;
import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Joined;
import dev.treen.joinery.Meeting;
import dev.treen.joinery.Nature;
import dev.treen.model.Part;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.wood.Figures;
import dev.treen.wood.Movement;
import dev.treen.wood.Rings;
import dev.treen.wood.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * A square stick whose rings run from corner to corner goes out of square as it dries (rule of the trade M-04, derived; 0.3°
 * is common practice without a source). Only where the project says how the rings lie, and something is fitted to it.
 */
final class LegDiamonds implements Check {
    static final FindingKind DIAMONDS = FindingKind.note("leg-diamonds", "A square leg goes out of square");

    /** A stick is about as thick as it is wide, and much longer. */
    private static final double SQUARE = 1.25;

    private static final double LONG = 4;

    @Override
    public List<FindingKind> kinds() {
        return List.of(DIAMONDS);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        return Placement.of(joined).parts().stream()
                .map(Meeting.Placed::part)
                .filter(LegDiamonds::stick)
                .filter(part -> !part.rings().assumed())
                .flatMap(part -> judged(part, settings).stream())
                .toList();
    }

    private static boolean stick(Part part) {
        double wide = part.width().value().max(part.thickness().value()).toDoubleMm();
        double thin = part.width().value().min(part.thickness().value()).toDoubleMm();
        return wide <= SQUARE * thin && part.length().value().toDoubleMm() >= LONG * wide;
    }

    private static Optional<Finding> judged(Part part, Settings settings) {
        Nature nature = Nature.of(part, settings);
        if (nature.still()) {
            return Optional.empty();
        }
        double bench = nature.seasons().bench();
        double points = Math.max(nature.seasons().wettest() - bench, bench - nature.seasons().driest());
        Movement.Diamond diamond = Movement.diamond(
                nature.across().from(), new Rings.Angle(nature.across().ringDegrees()), points, Figures.standard());
        if (diamond.verdict().grade() == Verdict.Grade.FINE) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(DIAMONDS, part.ringsAt(), "`" + part.name() + "` goes out of square")
                .label("rings from corner to corner")
                .found("Its corners change by " + DecimalText.write(diamond.degrees(), 2)
                        + "° when its moisture changes by "
                        + Amounts.moisture(points) + "; 0.3° shows at a fitted face.")
                .because("It is " + nature.wood() + ", which moves more along its rings than across them ("
                        + nature.across().citation().source() + ").")
                .about(part.name())
                .number("degrees", diamond.degrees())
                .remedy(Remedy.choice(
                        "take stock whose rings lie along a face, and write `rings flat`",
                        new Edit(part.ringsAt(), "flat")))
                .build());
    }
}

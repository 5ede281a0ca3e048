package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Edge;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Nature;
import dev.treen.model.Part;
import dev.treen.model.Rings;
import dev.treen.model.Settings;
import dev.treen.quantity.DecimalText;
import dev.treen.wood.Coefficient;
import dev.treen.wood.Direction;
import dev.treen.wood.Figures;
import dev.treen.wood.Movement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Staves of different rings, glued edge to edge, come to differ in thickness, and each glue line shows as a step (rules of
 * the trade M-03 and Y-08, derived; flush within 0.3 mm: Architectural Woodwork Standards 2009, 6.1.21, best work).
 */
final class StavesStep implements Check {
    static final FindingKind STEP = FindingKind.warning("staves-step",
            "Staves of a glue-up come to differ in thickness");

    @Override
    public List<FindingKind> kinds() {
        return List.of(STEP);
    }

    @Override
    public List<Finding> run(Joined joined) {
        Settings settings = joined.project().settings();
        Stream<Finding> glued = joined.joints().stream()
                .filter(made -> made.joint().kind().equals(Edge.KIND))
                .flatMap(made -> judged(made, settings).stream());
        Stream<Finding> within = joined.parts().stream()
                .filter(part -> !part.part().rings().staves().isEmpty())
                .flatMap(part -> judged(part, settings).stream());
        return Stream.concat(within, glued).toList();
    }

    /** Two parts that an edge joint makes one board. */
    private static Optional<Finding> judged(MadeJoint made, Settings settings) {
        Nature left = Nature.of(made.joint().left(), settings);
        Nature right = Nature.of(made.joint().right(), settings);
        double limit = Figures.standard().value("staves-step.warning");
        double step = Math.abs(moves(made.joint().left(), left) - moves(made.joint().right(), right));
        if (left.still() || right.still() || step <= limit) {
            return Optional.empty();
        }
        String one = made.joint().left().name();
        String other = made.joint().right().name();
        return Optional.of(Finding
                .of(STEP, made.joint().at(),
                        "The glue line between `" + one + "` and `" + other + "` will show as a step")
                .found("They come to differ by " + Amounts.fine(step, settings) + " in thickness; "
                        + DecimalText.write(limit, 1) + " mm is flush.")
                .because("Quartered wood moves most in its thickness, flat-sawn wood in its width, and each wood by its"
                        + " own measure (" + left.across().citation().source() + ").")
                .about(one)
                .about(other)
                .about(made.joint().name())
                .number("step", step)
                .remedy(Remedy.choice("glue staves of one wood and of like rings side by side"))
                .build());
    }

    private static double moves(Part part, Nature nature) {
        double mm = part.thickness().value().toDoubleMm();
        return Math.max(nature.shrinking(2, mm), nature.swelling(2, mm));
    }

    private static Optional<Finding> judged(FinishedPart part, Settings settings) {
        Nature nature = Nature.of(part.part(), settings);
        double limit = Figures.standard().value("staves-step.warning");
        double most = 0;
        int at = 0;
        List<Rings> staves = part.part().rings().staves();
        for (int i = 1; i < staves.size(); i++) {
            double one = moves(part, staves.get(i - 1), nature);
            double other = moves(part, staves.get(i), nature);
            if (Math.abs(one - other) > most) {
                most = Math.abs(one - other);
                at = i;
            }
        }
        if (nature.still() || most <= limit) {
            return Optional.empty();
        }
        String name = part.part().name();
        return Optional.of(Finding
                .of(STEP, part.part().ringsAt(), "The staves of `" + name + "` will show their joints")
                .found("Staves " + at + " and " + (at + 1) + " come to differ by " + Amounts.fine(most, settings)
                        + " in thickness; " + DecimalText.write(limit, 1) + " mm is flush.")
                .because("Quartered wood moves most in its thickness, flat-sawn wood in its width ("
                        + nature.across().citation().source() + ").")
                .related(part.part().thickness().at(), "it is this thick")
                .about(name)
                .number("step", most)
                .remedy(Remedy.choice("glue staves of like rings side by side"))
                .build());
    }

    private static double moves(FinishedPart part, Rings stave, Nature nature) {
        Coefficient through = Coefficient.of(
                nature.across().from(),
                new dev.treen.wood.Rings.Angle(stave.degrees()),
                Direction.THICKNESS,
                Figures.standard());
        double mm = part.thickness().value().toDoubleMm();
        double dry = -Movement.shrinking(mm, through, nature.seasons()).changeMm();
        return Math.max(dry, Movement.swelling(mm, through, nature.seasons()).changeMm());
    }
}

package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Axes;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Box;
import dev.treen.solid.Placed;
import dev.treen.solid.ThinPlace;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A wall of less than 3 mm left between a cut and a face of its part, or between two cuts (rules of the trade J-a, common
 * practice, no source). What one joint leaves between its own cuts, and what goes into another part, as tongues, tenons,
 * tails and fingers do, is judged by the proportions of that joint; so is a wall that its own rule has told of.
 */
final class WallThin implements BodyCheck {
    static final FindingKind THIN = FindingKind.warning("wall-too-thin", "A cut leaves too thin a wall");

    private static final String LEAST = "groove-too-deep.error.left";

    @Override
    public List<FindingKind> kinds() {
        return List.of(THIN);
    }

    private record Wall(List<MadeJoint> makers, ThinPlace place) {}

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        CutFaces cuts = new CutFaces(joined);
        BigFraction least = Length.nearest(Figures.standard().value(LEAST), Length.ofMm(1).dividedBy(100)).mm();
        Map<String, List<Wall>> walls = new LinkedHashMap<>();
        for (Placed placed : standing.all()) {
            List<Wall> own = CutFaces.bare(standing.part(placed.name())).stream()
                    .flatMap(solid -> ThinPlace.in(solid, least, least).stream())
                    .map(place -> new Wall(makers(place, cuts), place))
                    .filter(wall -> !wall.makers().isEmpty() && !ofOneJoint(wall))
                    .filter(wall -> !enters(wall.place().place(), placed, standing))
                    .sorted(Comparator.comparingDouble(wall -> wall.place().thickness().doubleValue()))
                    .toList();
            if (!own.isEmpty()) {
                walls.put(placed.name(), own);
            }
        }
        return walls.isEmpty() ? List.of() : findings(walls, joined, standing);
    }

    private static List<Finding> findings(Map<String, List<Wall>> walls, Joined joined, Standing standing) {
        Set<String> told = told(joined);
        List<Finding> findings = new ArrayList<>();
        walls.forEach((name, own) -> {
            Set<List<MadeJoint>> done = new HashSet<>();
            own.stream()
                    .filter(wall -> wall.makers().stream().noneMatch(made -> told.contains(made.joint().name())))
                    .filter(wall -> done.add(wall.makers()))
                    .forEach(wall -> findings.add(
                            finding(wall, standing.part(name), joined.project().settings())));
        });
        return findings;
    }

    private static List<MadeJoint> makers(ThinPlace place, CutFaces cuts) {
        return Stream.of(place.one(), place.other()).flatMap(origin -> cuts.joint(origin).stream()).toList();
    }

    private static boolean ofOneJoint(Wall wall) {
        return wall.makers().size() == 2
                && wall.makers().get(0).joint().statement() == wall.makers().get(1).joint().statement();
    }

    /** The joints of which a rule of their own has something to say: asked for only where a wall is thin, which is rare. */
    private static Set<String> told(Joined joined) {
        Set<String> told = new HashSet<>();
        Stream.of(joined.findings(), new GrooveNearEdge().run(joined), new GrooveDepth().run(joined))
                .flatMap(List::stream)
                .forEach(finding -> told.addAll(finding.subjects()));
        return told;
    }

    /** Whether the thin wood lies in the space of another part, which was cut to take it in. */
    private static boolean enters(Box place, Placed part, Standing standing) {
        return standing.near(place).stream()
                .filter(other -> !other.name().equals(part.name()))
                .anyMatch(other -> other.solid().bounds().orElseThrow().overlap(place).isPresent());
    }

    private static Finding finding(Wall wall, FinishedPart part, Settings settings) {
        String name = part.part().name();
        Length thick = Length.ofMm(wall.place().thickness());
        MadeJoint last = wall.makers().getLast();
        String between = wall.makers().size() == 2
                ? CutFaces.named(wall.makers().getFirst(), name) + " and " + CutFaces.named(last, name)
                : CutFaces.named(last, name) + " and the face of the wood";
        Finding.Builder finding = Finding.of(
                THIN,
                last.joint().at(),
                "In `" + name + "` only " + Amounts.text(thick, settings) + " of wood is left between " + between)
                .found("The thin place reaches over " + Axes.sides(wall.place().place(),
                        settings.format()) + " (across, deep, high) from "
                        + Standing.point(wall.place().place().min(), settings.format()) + ".")
                .because(Amounts.limit(LEAST, settings)
                        + " has to stay beside a cut (common practice, no source); thinner than that it breaks when the"
                        + " piece is lifted or clamped.")
                .related(part.part().nameAt(), "`" + name + "` is declared here");
        wall.makers().stream().limit(wall.makers().size() - 1L).forEach(
                made -> finding.related(made.joint().at(), "the joint that cuts from the other side"));
        CutFaces.subjects(name, wall.makers()).forEach(finding::about);
        return finding
                .number("left", thick.toDoubleMm())
                .number("needed", Figures.standard().value(LEAST))
                .remedy(Remedy.choice("make a cut less deep, or move it"))
                .remedy(Remedy.choice("make `" + name + "` thicker"))
                .build();
    }
}

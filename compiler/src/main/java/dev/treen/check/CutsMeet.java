package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Settings;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Contact;
import dev.treen.solid.Placed;
import dev.treen.solid.Region;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.Surface;
import dev.treen.solid.SurfaceEdge;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Two cuts of one part that run into each other, seen from the edges in which their faces meet. At least one of them is a
 * pocket, as a mortise is: what runs through to the part's sides or shapes its end, as a groove, a housing, a rebate or a
 * corner, crosses others of its kind by right. Screws, nails and pegs have a rule of their own.
 *
 * <p>It is meant, and not told, where both come of one statement, where the parts that enter are joined to each other or
 * lie face on face, as tenons that are mitred, or where they are one part.
 */
final class CutsMeet implements BodyCheck {
    static final FindingKind MEET = FindingKind.warning("cuts-meet", "Two cuts of a part run into each other");

    @Override
    public List<FindingKind> kinds() {
        return List.of(MEET);
    }

    private record Pair(MadeJoint one, MadeJoint other) {}

    /** Two joints by their names: whole joints are too much to be looked up by. */
    private record Names(String one, String other) {}

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        CutFaces cuts = new CutFaces(joined);
        List<Finding> findings = new ArrayList<>();
        for (Placed placed : standing.all()) {
            FinishedPart part = standing.part(placed.name());
            CutFaces.bare(part).filter(solid -> several(solid, cuts)).ifPresent(solid -> {
                Surface surface = solid.surface();
                mouths(surface, cuts).forEach((names, mouth) -> {
                    Pair pair = new Pair(cuts.named(names.one()), cuts.named(names.other()));
                    boolean pocket = pocket(surface, solid, pair.one()) || pocket(surface, solid, pair.other());
                    boolean shapes = shapes(pair.one(), placed.name()) || shapes(pair.other(), placed.name());
                    if (pocket && !shapes && !meant(pair, placed.name(), cuts, standing)) {
                        findings.add(finding(pair, part, mouth, joined.project().settings()));
                    }
                });
            });
        }
        return findings;
    }

    /** Whether more than one joint cut it, which is known before its surface is worked out. */
    private static boolean several(Solid solid, CutFaces cuts) {
        return solid.pieces().stream()
                .flatMap(piece -> piece.faces().stream())
                .flatMap(face -> cuts.joint(face.origin()).stream())
                .map(made -> made.joint().name())
                .distinct()
                .limit(2)
                .count() > 1;
    }

    /** The pairs of joints whose faces share edges, each with the extent of those edges. */
    private static Map<Names, Region.Extent> mouths(Surface surface, CutFaces cuts) {
        Map<Names, Region.Extent> mouths = new LinkedHashMap<>();
        for (SurfaceEdge edge : surface.edges()) {
            List<String> makers = edge.rims().stream()
                    .flatMap(rim -> cuts.joint(rim.origin()).stream())
                    .map(made -> made.joint().name())
                    .distinct()
                    .sorted(Comparator.comparingInt(cuts::number))
                    .toList();
            if (makers.size() == 2) {
                mouths.merge(new Names(makers.get(0), makers.get(1)), Region.Extent.around(edge.from(), edge.to()),
                        Region.Extent::join);
            }
        }
        return mouths;
    }

    /** Whether a cut comes out at one side of the part alone, or at two opposite ones. */
    private static boolean pocket(Surface surface, Solid solid, MadeJoint made) {
        Box box = solid.bounds().orElseThrow();
        Set<Axis> open = EnumSet.noneOf(Axis.class);
        surface.extent(made.joint().name()).ifPresent(extent -> {
            for (Side side : Side.values()) {
                if ((side.sign() < 0 ? extent.min() : extent.max()).get(side.axis()).equals(box.coordinate(side))) {
                    open.add(side.axis());
                }
            }
        });
        return open.size() < 2;
    }

    /** Whether the part enters the other by this joint: then its cuts are shoulders and cheeks, to which others run out. */
    private static boolean shapes(MadeJoint made, String part) {
        return made.joint().into() && made.joint().left().name().equals(part);
    }

    private static boolean meant(Pair pair, String part, CutFaces cuts, Standing standing) {
        String one = CutFaces.mate(pair.one(), part);
        String other = CutFaces.mate(pair.other(), part);
        Optional<Solid> first = standing.solid(one);
        Optional<Solid> second = standing.solid(other);
        return pair.one().joint().statement() == pair.other().joint().statement()
                || cuts.together(one, other)
                || (first.isPresent() && second.isPresent() && Contact.touch(first.get(), second.get()));
    }

    private static Finding finding(Pair pair, FinishedPart part, Region.Extent mouth, Settings settings) {
        String name = part.part().name();
        String size = Arrays.stream(Axis.values())
                .map(mouth::along)
                .filter(along -> along.signum() > 0)
                .map(along -> Amounts.text(Length.ofMm(along), settings))
                .collect(Collectors.joining(" by "));
        Finding.Builder finding = Finding.of(
                MEET,
                pair.other().joint().at(),
                "In `" + name + "` " + CutFaces.named(pair.other(), name) + " runs into "
                        + CutFaces.named(pair.one(), name))
                .found("They open into each other over " + size + ", from "
                        + Standing.point(mouth.min(), settings.format()) + ".")
                .because("Where the wall of a pocket is gone, what sits in it has less to hold it, and glue runs into"
                        + " the other cut (derived from the finished bodies).")
                .related(pair.one().joint().at(), "the joint whose cut it runs into")
                .related(part.part().nameAt(), "`" + name + "` is declared here");
        CutFaces.subjects(name, List.of(pair.one(), pair.other())).forEach(finding::about);
        return finding
                .number("length",
                        Arrays.stream(Axis.values()).mapToDouble(axis -> mouth.along(axis).doubleValue()).max()
                                .orElse(0))
                .remedy(Remedy
                        .choice("move one of the two, or make it narrower or less deep, so that wood stays between"))
                .remedy(Remedy.choice("stop the one short of the other"))
                .build();
    }
}

package dev.treen.check;

import dev.treen.finding.Finding;
import dev.treen.finding.FindingKind;
import dev.treen.finding.Remedy;
import dev.treen.joinery.Axes;
import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.Joined;
import dev.treen.joinery.JointKinds;
import dev.treen.joinery.MadeJoint;
import dev.treen.model.Settings;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Holes;
import dev.treen.solid.Placed;
import dev.treen.solid.Plane;
import dev.treen.solid.Region;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.SurfaceEdge;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where a cut breaks out at the visible end of a part (rules of the trade J-05c, derived): a hole in the end, closed in by
 * wood all round, that no other part fills or covers, and that the part for which it was cut does not reach. Found on the
 * bodies where they stand, so that a mitre, a rebate, a lap or a haunch hides what it hides, whatever it is called; and as a
 * notch at its rim, where a rebate along an edge is planed through. What is narrower than 2 mm is left in peace (common
 * practice, no source).
 */
final class GrooveShows implements BodyCheck {
    static final FindingKind SHOWS = FindingKind.warning("groove-shows", "A groove shows at a corner");

    private static final String NARROWEST = "groove-shows.warning";

    @Override
    public List<FindingKind> kinds() {
        return List.of(SHOWS);
    }

    /** The end of a part: the plane of its outermost wood along the grain, and the rectangle round that. */
    private record End(FinishedPart part, Solid solid, Box box, Plane plane) {
        static Optional<End> of(FinishedPart part, Solid solid, Side side) {
            return solid.bounds().map(box -> new End(part, solid, box, Plane.at(side, box.coordinate(side))));
        }

        /** Whether a cut takes anything away there. */
        boolean open() {
            return !whole().minus(solid.section(plane)).isEmpty();
        }

        Region whole() {
            return Solid.of(box).section(plane);
        }
    }

    private record Told(String mate, String part) {}

    @Override
    public List<Finding> run(Joined joined, Standing standing) {
        CutFaces cuts = new CutFaces(joined);
        Map<String, BigFraction> behind = behind(joined, standing);
        List<Finding> findings = new ArrayList<>();
        Set<Told> told = new HashSet<>();
        for (Placed placed : standing.all()) {
            FinishedPart part = standing.part(placed.name());
            CutFaces.bare(part).stream()
                    .flatMap(solid -> ends(part).stream().flatMap(side -> End.of(part, solid, side).stream()))
                    .filter(End::open)
                    .forEach(end -> {
                        BigFraction back = behind.getOrDefault(placed.name(), end.box().coordinate(Side.BACK));
                        for (Opening opening : openings(end, standing.near(end.box()), back)) {
                            maker(end, opening, cuts, standing)
                                    .filter(made -> told
                                            .add(new Told(CutFaces.mate(made, placed.name()), placed.name())))
                                    .map(made -> finding(made, end, opening, joined.project().settings()))
                                    .ifPresent(findings::add);
                        }
                    });
        }
        return findings;
    }

    /** How far back the thing reaches that each part is joined into. */
    private static Map<String, BigFraction> behind(Joined joined, Standing standing) {
        Map<String, BigFraction> behind = new HashMap<>();
        for (List<Placed> group : standing.joinedGroups(joined.joints())) {
            BigFraction back = group.stream()
                    .flatMap(part -> part.solid().bounds().stream())
                    .map(box -> box.coordinate(Side.BACK))
                    .max(Exact::compare)
                    .orElse(BigFraction.ZERO);
            group.forEach(part -> behind.put(part.name(), back));
        }
        return behind;
    }

    private static List<Side> ends(FinishedPart part) {
        return part.part()
                .placing()
                .map(placing -> Axes.of(placing.length().axis()))
                .map(axis -> List.of(Side.of(axis, -1), Side.of(axis, 1)))
                .orElse(List.of());
    }

    /** A place at an end that is open, and nothing before it. */
    private record Opening(Region area, boolean closed) {}

    /** What is open of the end: a hole with wood all round it, or a notch at its rim. */
    private static List<Opening> openings(End end, List<Placed> near, BigFraction behind) {
        List<Region> wood = near.stream().map(part -> part.solid().section(end.plane())).toList();
        List<Region> before = near.stream().map(part -> part.solid().section(end.plane().flip())).toList();
        Region open = end.whole();
        for (Region cover : Stream.concat(wood.stream(), before.stream()).toList()) {
            open = open.minus(cover);
        }
        if (open.isEmpty()) {
            return List.of();
        }
        List<Region> holes = Holes.in(end.plane(), wood);
        return open.apart().stream()
                .filter(area -> narrowest(area, end) >= Figures.standard().value(NARROWEST))
                .map(area -> new Opening(area, holes.stream().anyMatch(hole -> !hole.intersect(area).isEmpty())))
                .filter(opening -> opening.closed() || seen(opening.area(), end, behind))
                .toList();
    }

    /**
     * Whether a notch at the rim is a cut that runs out there, and looked at: what goes from side to side shapes the end, and
     * nobody looks at the foot, nor at what is open at the back of the whole (common practice, no source).
     */
    private static boolean seen(Region notch, End end, BigFraction behind) {
        Region.Extent extent = notch.extent().orElseThrow();
        Side looks = end.plane().side().orElseThrow();
        boolean throughout = Arrays.stream(Axis.values())
                .filter(axis -> axis != looks.axis())
                .anyMatch(axis -> Exact.compare(extent.along(axis), end.box().extent(axis)) >= 0);
        return !throughout && looks != Side.BOTTOM && Exact.compare(extent.max().get(Axis.Y), behind) < 0;
    }

    private static double narrowest(Region hole, End end) {
        return sides(hole, end).stream().mapToDouble(BigFraction::doubleValue).min().orElse(0);
    }

    /** How far a hole reaches along the two axes of its end. */
    private static List<BigFraction> sides(Region hole, End end) {
        Region.Extent extent = hole.extent().orElseThrow();
        Axis through = end.plane().side().orElseThrow().axis();
        return Arrays.stream(Axis.values()).filter(axis -> axis != through).map(extent::along).toList();
    }

    /**
     * The joint whose cut ends in the hole, if its other part enters this one and does not come out at the same end: a tongue
     * or a sliding lid with room round it is meant to be seen, and a cut that the other part does not enter takes in a loose
     * dowel, key or tongue.
     */
    private static Optional<MadeJoint> maker(End end, Opening opening, CutFaces cuts, Standing standing) {
        String part = end.part().part().name();
        List<MadeJoint> makers = new ArrayList<>();
        for (SurfaceEdge edge : end.solid().surface().edges()) {
            if (opening.area().contains(edge.from()) && opening.area().contains(edge.to())) {
                edge.rims().forEach(rim -> cuts.joint(rim.origin()).ifPresent(makers::add));
            }
        }
        return makers.stream()
                .filter(made -> standing.solid(CutFaces.mate(made, part))
                        .filter(mate -> enters(mate, end))
                        .filter(mate -> mate.section(end.plane()).intersect(end.whole()).isEmpty())
                        .isPresent())
                .findFirst()
                .filter(made -> opening.closed() || made.joint().right().name().equals(part));
    }

    private static boolean enters(Solid mate, End end) {
        return mate.bounds().flatMap(end.box()::overlap).isPresent();
    }

    private static Finding finding(MadeJoint made, End end, Opening opening, Settings settings) {
        String part = end.part().part().name();
        String mate = CutFaces.mate(made, part);
        String size = sides(opening.area(), end).stream()
                .map(side -> Amounts.text(Length.ofMm(side), settings))
                .collect(Collectors.joining(" by "));
        return Finding.of(
                SHOWS,
                made.joint().at(),
                capital(CutFaces.named(made, part)) + " shows at the end of `" + part + "`")
                .found("It comes out there in " + (opening.closed() ? "a hole of " + size + ", with wood all round it"
                        : "a notch of " + size + " at the rim") + ": no other part fills or covers it, and `" + mate
                        + "` does not reach that far.")
                .because("A " + (opening.closed() ? "hole" : "notch")
                        + " in the end grain is seen at the corner (derived from the finished bodies).")
                .related(end.part().part().nameAt(), "`" + part + "` is declared here")
                .about(mate)
                .about(part)
                .about(made.joint().name())
                .number("area", opening.area().area())
                .remedy(Remedy.choice(stop(made, end, settings)))
                .remedy(Remedy.choice("choose a corner that covers it, as a mitre does"))
                .build();
    }

    private static String stop(MadeJoint made, End end, Settings settings) {
        boolean stops = JointKinds.named(made.joint().kind())
                .flatMap(kind -> kind.schema().block().property("stop"))
                .isPresent();
        return stops
                ? "stop the cut " + Amounts.text(Length.ofMm(behind(made, end)), settings)
                        + " short of the end, `stop auto`, which the other part's corner still reaches, or plug the hole"
                : "make the cut shorter than the part, or plug the hole";
    }

    /** What the part keeps of its thickness: as far from the end lies the floor of a cut as deep round the corner. */
    private static BigFraction behind(MadeJoint made, End end) {
        Axis thick = end.part().part().placing().map(placing -> Axes.of(placing.thickness().axis())).orElseThrow();
        return end.solid().surface().extent(made.joint().name())
                .map(extent -> end.box().extent(thick).subtract(extent.along(thick)))
                .filter(left -> left.signum() > 0)
                .orElse(BigFraction.ZERO);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

package dev.treen.joinery;

import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.quantity.Slope;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Where a sliding dovetail is, how it leans and how it is tapered. Exact where the slope is written as 1:n.
 *
 * @param face the end of the left part
 * @param leaning the sides of the left part that lean: one or both
 * @param taper how much narrower the dovetail is at its narrow end, in all; zero for none
 * @param narrow the edge toward which it narrows, where it has a taper and the edge a name
 * @param through what a plain housing that runs through would take
 */
record SlidingDovetailSizes(
        Meeting meeting, Side face, Measure deep, Slope slope, List<Side> leaning, Measure taper, Optional<Side> narrow,
        Box through) {

    static SlidingDovetailSizes of(
            Meeting meeting, Side face, Measure deep, Optional<HousingStop> stop, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Axis thin = Axes.of(meeting.left().placing().thickness().axis());
        Axis along = Meeting.third(face.axis(), thin);
        boolean both = joint.word("sides").filter("both"::equals).isPresent();
        Side one = HousingStop.side(joint, "sides.from", Direction.of(Axes.number(thin), -1)).orElse(Side.of(thin, -1));
        return new SlidingDovetailSizes(
                meeting,
                face,
                deep,
                joint.slope("slope").orElseGet(() -> DovetailSizes.usualSlope(meeting.left().part())),
                both ? List.of(Side.of(thin, -1), Side.of(thin, 1)) : List.of(one),
                taper(meeting, along, surroundings),
                HousingStop.side(joint, "taper.from", usualNarrow(along, stop)),
                Rebate.step(meeting.left().box(), face, deep.value()));
    }

    /** It narrows toward the end that goes in first: the stopped one, or the front. */
    private static Direction usualNarrow(Axis along, Optional<HousingStop> stop) {
        Side side = stop.flatMap(HousingStop::side).filter(each -> each.axis() == along).orElse(Side.of(along, -1));
        return Direction.of(Axes.number(side.axis()), side.sign());
    }

    private static Measure taper(Meeting meeting, Axis along, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Measure run = meeting.left().along(along);
        if (!joint.settings().containsKey("taper")) {
            return Ruled.of("taper", Length.ZERO, "none", Ruled.PRACTICE, run);
        }
        return joint.length("taper").orElseGet(() -> Ruled.onMark("taper", run.value().dividedBy(100),
                "a hundredth of its length, on a mark of the rule", Ruled.PRACTICE, run, surroundings));
    }

    /** The axis of the left part's thickness. */
    Axis thin() {
        return Axes.of(meeting.left().placing().thickness().axis());
    }

    /** The axis along which the dovetail slides. */
    Axis along() {
        return Meeting.third(face.axis(), thin());
    }

    boolean both() {
        return leaning.size() > 1;
    }

    boolean tapered() {
        return !taper.value().isZero();
    }

    /** How far a side leans over its depth. */
    Length lean() {
        return slope.over(deep.value());
    }

    /** How thick the left part is. */
    Measure wood() {
        return meeting.left().along(thin());
    }

    /** The dovetail where it is thinnest, at its wide end. */
    Length neck() {
        return wood().value().minus(lean().times(leaning.size()));
    }

    /** The dovetail where it is thinnest, at its narrow end. */
    Length leastNeck() {
        return neck().minus(taper.value());
    }

    /** Whether the box reaches an edge of the right part on a side. */
    boolean reaches(Box open, Side side) {
        Length edge = Length.ofMm(meeting.right().box().coordinate(side)).times(side.sign());
        return Length.ofMm(open.coordinate(side)).times(side.sign()).compareTo(edge) >= 0;
    }

    /** The dovetail, over the stretch of a box: what is carved out of the right part. */
    Convex tail(Box between) {
        Set<Vec3> points = new LinkedHashSet<>();
        for (BigFraction at : ends(between)) {
            for (int sign : new int[]{-1, 1}) {
                Side side = Side.of(thin(), sign);
                boolean leans = leaning.contains(side);
                Length in = leans ? drawnIn(at) : Length.ZERO;
                points.add(spot(side, in.plus(leans ? lean() : Length.ZERO), Length.ZERO, at));
                points.add(spot(side, in, deep.value(), at));
            }
        }
        return Convex.hull(points, meeting.origin());
    }

    /** What is pared off the left part on its leaning sides. */
    List<Convex> pared() {
        List<Convex> pared = new ArrayList<>();
        for (Side side : leaning) {
            Set<Vec3> points = new LinkedHashSet<>();
            for (BigFraction at : ends(through)) {
                points.add(spot(side, Length.ZERO, Length.ZERO, at));
                points.add(spot(side, drawnIn(at).plus(lean()), Length.ZERO, at));
                points.add(spot(side, drawnIn(at), deep.value(), at));
                points.add(spot(side, Length.ZERO, deep.value(), at));
            }
            pared.add(Convex.hull(points, meeting.origin()));
        }
        return pared;
    }

    private List<BigFraction> ends(Box between) {
        return List.of(between.min().get(along()), between.max().get(along()));
    }

    /** How far a leaning side is drawn in by the taper at a place along the dovetail. */
    private Length drawnIn(BigFraction at) {
        if (!tapered()) {
            return Length.ZERO;
        }
        Side toward = narrow.orElseThrow();
        BigFraction wide = through.coordinate(toward.opposite());
        BigFraction share = at.subtract(wide).multiply(toward.sign()).divide(through.extent(along()));
        return Length.ofMm(taper.value().mm().multiply(share)).dividedBy(leaning.size());
    }

    /** A spot so far in from a face of the left part, so deep in the right one. */
    private Vec3 spot(Side side, Length over, Length in, BigFraction at) {
        Box left = meeting.left().box();
        return left.min()
                .with(thin(), Length.ofMm(left.coordinate(side)).minus(over.times(side.sign())).mm())
                .with(face.axis(), Length.ofMm(left.coordinate(face)).plus(in.times(face.sign())).mm())
                .with(along(), at);
    }

    List<Figure> figures(Optional<HousingStop> stop) {
        Joint joint = meeting.joint();
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("deep", deep, joint.given("deep").isEmpty()));
        figures.add(new Figure(
                "neck",
                Ruled.at(wood().at(), "neck", neck(),
                        "the thickness less a slope of " + slope.text() + " on " + (both() ? "both sides" : "one side"),
                        "from the shape", List.of(wood().how(), deep.how())),
                true));
        if (tapered()) {
            figures.add(new Figure("taper", taper, joint.given("taper").isEmpty()));
            figures.add(new Figure(
                    "neck_narrow",
                    Ruled.at(wood().at(), "neck_narrow", leastNeck(), "the neck less the taper", "from the shape",
                            List.of(wood().how(), taper.how())),
                    true));
        }
        stop.ifPresent(each -> figures.add(new Figure("stop", each.length(), joint.given("stop").isEmpty())));
        return figures;
    }
}

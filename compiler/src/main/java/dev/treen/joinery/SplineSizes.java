package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Convex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The sizes of a loose tongue, given or by the rules of the trade (J-16).
 *
 * @param place where the tongue lies
 * @param deep of the groove in each part
 * @param stop how far the grooves stay from both ends
 */
record SplineSizes(Meeting meeting, Place place, Measure thick, Measure deep, Measure stop) {
    /** Where a tongue can lie. */
    sealed interface Place {
        /** Along two edges. */
        record Along(Edges edges) implements Place {}

        /** Flat in the corner of a frame. */
        record Flat(MitreCorner corner) implements Place {}

        /** Upright in the corner of a box. */
        record Upright(MitreCorner corner) implements Place {}
    }

    static Optional<SplineSizes> of(Meeting meeting, Surroundings surroundings) {
        Optional<Place> place = Edges.of(meeting)
                .<Place>map(Place.Along::new)
                .or(() -> MitreCorner.of(meeting)
                        .map(corner -> corner.flat() ? new Place.Flat(corner) : new Place.Upright(corner)));
        return place.map(found -> {
            Joint joint = meeting.joint();
            Measure wood = wood(meeting, found);
            Measure thick = joint.length("thick").orElseGet(() -> TenonRules.third(wood, surroundings));
            Measure deep = joint.length("deep").orElseGet(() -> usual(wood, found, surroundings));
            Measure stop = joint.length("stop").orElseGet(() -> Spline.none(joint));
            return new SplineSizes(meeting, found, thick, deep, stop);
        });
    }

    /** The thickness that the groove is cut out of. */
    private static Measure wood(Meeting meeting, Place place) {
        return switch (place) {
            case Place.Along along -> meeting.left().along(along.edges().thin());
            case Place.Flat flat -> meeting.left().along(flat.corner().free());
            case Place.Upright(MitreCorner corner) ->
                corner.toLeft().value().compareTo(corner.toRight().value()) < 0 ? corner.toLeft() : corner.toRight();
        };
    }

    private static Measure usual(Measure wood, Place place, Surroundings surroundings) {
        boolean upright = place instanceof Place.Upright;
        return Ruled.onMark("deep", wood.value().dividedBy(upright ? 3 : 2),
                (upright ? "a third" : "half") + " of the thickness, on a mark of the rule", Ruled.PRACTICE, wood,
                surroundings);
    }

    Length thickness() {
        return wood(meeting, place).value();
    }

    /** How wide the loose tongue is: 1 mm narrower than both grooves are deep. */
    Length tongue() {
        return deep.value().times(2).minus(Length.ofMm(1));
    }

    /** The tongue, its grain across the joint unless the project turns it; its ends are planed flush or stop short. */
    LoosePiece piece() {
        Length run = Length.nearest(lengthMm(), Length.ofMm(1).dividedBy(10)).minus(stop.value().times(2));
        boolean along = meeting.joint().word("grain").filter("along"::equals).isPresent();
        return LoosePiece.of(
                LoosePiece.Kind.TONGUE, along ? run : tongue(), along ? tongue() : run, thick.value(), 1);
    }

    /** How long the joint is. */
    double lengthMm() {
        return switch (place) {
            case Place.Along(Edges edges) -> edges.touch().max().get(edges.grain())
                    .subtract(edges.touch().min().get(edges.grain())).doubleValue();
            case Place.Flat(MitreCorner corner) -> corner.cutMm();
            case Place.Upright(MitreCorner corner) -> corner.height().toDoubleMm();
        };
    }

    /** How deep a groove may be before it comes out on the other side. */
    double roomMm() {
        return switch (place) {
            case Place.Along(Edges edges) -> Math.min(
                    meeting.left().along(edges.face().axis()).value().toDoubleMm(),
                    meeting.right().along(edges.face().axis()).value().toDoubleMm());
            case Place.Flat(MitreCorner corner) -> Math.min(
                    corner.toLeft().value().toDoubleMm(), corner.toRight().value().toDoubleMm());
            // From the outer side of the tongue square to the cut, out to the face of the thinner wall.
            case Place.Upright(MitreCorner corner) -> {
                double a = corner.toLeft().value().toDoubleMm();
                double b = corner.toRight().value().toDoubleMm();
                yield (corner.cutMm() - to(corner).doubleValue()) * Math.min(a / b, b / a);
            }
        };
    }

    /** Where an upright tongue begins along the cut: its middle lies a third of the way from the inner corner. */
    private BigFraction from(MitreCorner corner) {
        return middle(corner).subtract(thick.value().dividedBy(2).mm());
    }

    private BigFraction to(MitreCorner corner) {
        return middle(corner).add(thick.value().dividedBy(2).mm());
    }

    private static BigFraction middle(MitreCorner corner) {
        return Length.nearest(corner.cutMm() / 3, Length.ofMm(1).dividedBy(100)).mm();
    }

    /** How much wood lies between an upright tongue and the inner corner. */
    double insideMm() {
        return place instanceof Place.Upright(MitreCorner corner) ? from(corner).doubleValue() : thickness()
                .minus(thick.value()).dividedBy(2).toDoubleMm();
    }

    List<Addition> additions() {
        return switch (place) {
            case Place.Along along -> List.of();
            case Place.Flat(MitreCorner corner) -> corner.additions();
            case Place.Upright(MitreCorner corner) -> corner.additions();
        };
    }

    List<Figure> figures() {
        Joint joint = meeting.joint();
        List<Figure> figures = new ArrayList<>(List.of(
                new Figure("thick", thick, joint.given("thick").isEmpty()),
                new Figure("deep", deep, joint.given("deep").isEmpty()),
                new Figure(
                        "tongue",
                        Ruled.of("tongue", tongue(), "1 mm less than both grooves", Ruled.PRACTICE, deep),
                        true)));
        if (stop.value().signum() > 0) {
            figures.add(new Figure("stop", stop, false));
        }
        return figures;
    }

    List<Cut> cuts() {
        List<Cut> cuts = new ArrayList<>();
        switch (place) {
            case Place.Along(Edges edges) -> {
                Box slab = stopped(
                        edges.slab(thick.value().mm(), deep.value().mm().negate(), deep.value().mm()), edges);
                both(part -> cuts.add(new Cut.Hollow(part, slab, meeting.origin())));
            }
            case Place.Flat(MitreCorner corner) -> {
                cuts.addAll(corner.slices());
                boolean through = stop.value().isZero();
                BigFraction end = Length.nearest(corner.cutMm(), Length.ofMm(1).dividedBy(1000)).mm();
                BigFraction low = corner.low().plus(corner.height()
                        .minus(thick.value()).dividedBy(2)).mm();
                Convex bar = corner.bar(
                        through ? end.negate() : stop.value().mm(),
                        through ? end.multiply(2) : end.subtract(stop.value().mm()),
                        deep.value().mm(), low, low.add(thick.value().mm()));
                both(part -> cuts.add(new Cut.Carve(part, bar, meeting.origin())));
            }
            case Place.Upright(MitreCorner corner) -> {
                cuts.addAll(corner.slices());
                boolean through = stop.value().isZero();
                Convex bar = corner.bar(
                        from(corner), to(corner), deep.value().mm(),
                        through ? Groove.FAR.negate() : corner.low().plus(stop.value()).mm(),
                        through ? Groove.FAR : corner.high().minus(stop.value()).mm());
                both(part -> cuts.add(new Cut.Carve(part, bar, meeting.origin())));
            }
        }
        return cuts;
    }

    private void both(java.util.function.Consumer<String> cut) {
        cut.accept(meeting.left().part().name());
        cut.accept(meeting.right().part().name());
    }

    private Box stopped(Box slab, Edges edges) {
        Axis grain = edges.grain();
        return stop.value().isZero() ? slab : TenonSizes.between(
                slab,
                grain,
                edges.touch().min().get(grain).add(stop.value().mm()),
                edges.touch().max().get(grain).subtract(stop.value().mm()));
    }
}

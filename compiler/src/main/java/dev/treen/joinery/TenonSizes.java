package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The sizes of a tenon: as given, or by the proportions of the trade (rules of the trade J-10).
 *
 * @param end the side of the left part that enters
 * @param across the axis across the tenon's width
 * @param thin the axis through its thickness
 * @param thick how thick the tenon is
 * @param reach how far it reaches into the right part
 * @param low how far it stays from the left part's edge on the low side of {@code across}
 * @param high the same on the high side
 * @param haunch how far the haunch reaches that fills a set-back at a corner; zero for none
 * @param count how many tenons share the width, with as much between them as one is thick
 */
record TenonSizes(
        Side end,
        Axis across,
        Axis thin,
        Measure thick,
        Measure reach,
        Measure low,
        Measure high,
        Measure haunch,
        int count,
        boolean through) {

    /** Widths of the usual mortise chisels and cutters: common practice, no source. */
    private static final List<Length> CHISELS_MM = List.of(3, 4, 5, 6, 8, 10, 12, 16, 20).stream().map(Length::ofMm)
            .toList();

    private static final List<Length> CHISELS_IN = List.of(2, 3, 4, 5, 6, 8, 10, 12).stream()
            .map(n -> Length.ofInches(n, 16))
            .toList();

    /** The least shoulder: common practice, no source. */
    static final Length LEAST_SHOULDER = Length.ofMm(3);

    static TenonSizes of(Meeting meeting, Side end, Surroundings surroundings) {
        Joint joint = meeting.joint();
        Axis thin = Axes.of(meeting.left().placing().thickness().axis());
        Axis across = Meeting.third(end.axis(), thin);
        Measure wood = meeting.left().along(thin);
        Measure wall = meeting.right().along(end.axis());
        boolean through = joint.word("kind").filter("through"::equals).isPresent();
        Measure thick = joint.length("thick").orElseGet(() -> third(wood, surroundings));
        Measure reach = joint.length("long").orElseGet(() -> reach(joint, meeting, wall, through, surroundings));
        Measure haunch = joint.word("haunch").filter("none"::equals).isPresent()
                ? zero(joint)
                : joint.length("haunch").orElseGet(() -> asThick(thick, reach));
        Measure low = shoulder(meeting, across, -1, surroundings);
        Measure high = shoulder(meeting, across, 1, surroundings);
        Length width = meeting.left().along(across).value().minus(low.value()).minus(high.value());
        return new TenonSizes(
                end, across, thin, thick, reach, low, high, haunch, count(joint, width, thick.value()), through);
    }

    private static int count(Joint joint, Length width, Length thick) {
        boolean one = joint.word("split").filter("none"::equals).isPresent();
        // A tenon wider than six times its thickness is made as two (Port Townsend School of Woodworking, by report).
        return !one && width.compareTo(thick.times(6)) > 0 ? 2 : 1;
    }

    static Measure third(Measure wood, Surroundings surroundings) {
        Length third = wood.value().dividedBy(3);
        List<Length> chisels = surroundings.inches() ? CHISELS_IN : CHISELS_MM;
        Length value = chisels.getFirst();
        for (Length chisel : chisels) {
            if (chisel.minus(third).abs().compareTo(value.minus(third).abs()) < 0) {
                value = chisel;
            }
        }
        value = value.compareTo(wood.value()) < 0 ? value : third;
        return new Measure(
                value,
                wood.at(),
                Derivation.rule(
                        "thick",
                        Measure.datum(value),
                        "the chisel nearest to a third of the thickness",
                        "common practice, no source",
                        List.of(wood.how())));
    }

    private static Measure reach(
            Joint joint, Meeting meeting, Measure wall, boolean through, Surroundings surroundings) {
        if (through) {
            return new Measure(wall.value(), joint.at(), wall.how().named("through"));
        }
        boolean stub = joint.word("kind").filter("stub"::equals).isPresent();
        Measure from = stub ? meeting.right().part().thickness() : wall;
        Length share = stub ? from.value().dividedBy(3) : from.value().times(2).dividedBy(3);
        Length value = share.roundDownTo(surroundings.markOfTheRule()).max(surroundings.markOfTheRule());
        return new Measure(
                value,
                joint.at(),
                Derivation.rule(
                        "long",
                        Measure.datum(value),
                        stub
                                ? "as deep as a groove would be: a third of the thickness, on a mark of the rule"
                                : "two thirds of what it enters, on a mark of the rule",
                        "common practice, no source",
                        List.of(from.how())));
    }

    private static Measure asThick(Measure thick, Measure reach) {
        Length value = thick.value().min(reach.value());
        return new Measure(
                value,
                thick.at(),
                Derivation.rule("haunch", Measure.datum(value), "as long as the tenon is thick",
                        "Noyes, Handwork in Wood, no. 42: the groove about as deep as wide", List.of(thick.how())));
    }

    private static Measure zero(Joint joint) {
        return Measure.written("haunch", Length.ZERO, joint.at());
    }

    /** How far the tenon stays from an edge: little within the right part, a third of the width at its end. */
    private static Measure shoulder(Meeting meeting, Axis across, int sign, Surroundings surroundings) {
        Optional<Measure> given = meeting.joint().length("shoulder");
        if (given.isPresent()) {
            return given.get();
        }
        Measure width = meeting.left().along(across);
        boolean corner = atEnd(meeting, across, sign);
        Length value = corner
                ? width.value().dividedBy(3).roundDownTo(surroundings.markOfTheRule())
                : LEAST_SHOULDER.min(width.value().dividedBy(4));
        return new Measure(
                value,
                width.at(),
                Derivation.rule(
                        "shoulder",
                        Measure.datum(value),
                        corner ? "a third of the width, at the end of what it enters" : "enough to cover the mortise",
                        "common practice, no source",
                        List.of(width.how())));
    }

    /** Whether the left part lies flush with, or nearly at, the end of the right one on that side. */
    static boolean atEnd(Meeting meeting, Axis across, int sign) {
        if (meeting.right().measure(across) != 0) {
            return false;
        }
        Side side = Side.of(across, sign);
        Length beyond = Length.ofMm(meeting.right().box().coordinate(side)
                .subtract(meeting.left().box().coordinate(side))
                .multiply(sign));
        return beyond.compareTo(meeting.left().along(across).value().dividedBy(3)) < 0;
    }

    /** Whether a haunch fills the set-back on that side. */
    boolean haunched(Meeting meeting, int sign) {
        return haunch.value().signum() > 0 && atEnd(meeting, across, sign);
    }

    /** Where the tenons stand across the width, as boxes that reach the whole way in. */
    List<Box> tenons(Meeting meeting) {
        Box left = meeting.left().box();
        Box slab = Rebate.step(left, end, reach.value());
        Length from = Length.ofMm(left.min().get(across)).plus(low.value());
        Length to = Length.ofMm(left.max().get(across)).minus(high.value());
        Length one = to.minus(from).minus(thick.value().times(count - 1L)).dividedBy(count);
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Length start = from.plus(one.plus(thick.value()).times(i));
            boxes.add(between(thinned(slab, meeting), across, start.mm(), start.plus(one).mm()));
        }
        return boxes;
    }

    /** The haunches: from the tenon to the edge, short. */
    List<Box> haunches(Meeting meeting) {
        if (haunch.value().signum() <= 0) {
            return List.of();
        }
        Box left = meeting.left().box();
        Box slab = thinned(Rebate.step(left, end, haunch.value()), meeting);
        List<Box> boxes = new ArrayList<>();
        if (haunched(meeting, -1)) {
            boxes.add(between(
                    slab,
                    across,
                    left.min().get(across),
                    Length.ofMm(left.min().get(across)).plus(low.value()).mm()));
        }
        if (haunched(meeting, 1)) {
            boxes.add(between(
                    slab,
                    across,
                    Length.ofMm(left.max().get(across)).minus(high.value()).mm(),
                    left.max().get(across)));
        }
        return boxes;
    }

    private Box thinned(Box slab, Meeting meeting) {
        Box left = meeting.left().box();
        Length middle = Length.ofMm(left.min().get(thin)).plus(Length.ofMm(left.max().get(thin))).dividedBy(2);
        return between(
                slab,
                thin,
                middle.minus(thick.value().dividedBy(2)).mm(),
                middle.plus(thick.value().dividedBy(2)).mm());
    }

    /** {@code box} cut off at two places along {@code axis}. */
    static Box between(Box box, Axis axis, BigFraction low, BigFraction high) {
        return new Box(box.min().with(axis, low), box.max().with(axis, high));
    }
}

package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The sizes of a dowelled joint, given or by the rules of the trade (J-15).
 *
 * @param seat where the two parts touch
 * @param thick of a dowel
 * @param deep of the holes in the right part
 * @param deepLeft of the holes in the left part
 * @param dowel how long a dowel is
 * @param margin from the end of the row to the middle of its first dowel
 * @param count how many there are
 */
record DowelSizes(
        Joint joint,
        Seat seat,
        Measure thick,
        Measure deep,
        Measure deepLeft,
        Measure dowel,
        Length margin,
        int count) {

    /** What dowel rod is sold in: common practice, no source. */
    private static final List<Length> RODS_MM = List.of(16, 12, 10, 8, 6, 5, 4, 3).stream().map(Length::ofMm).toList();

    private static final List<Length> RODS_IN = List.of(8, 6, 5, 4, 3, 2).stream()
            .map(n -> Length.ofInches(n, 16))
            .toList();
    /** The usual dowel between boards, 7/8 to 1 1/4 in (Fairham); the upper end. */
    private static final Length USUAL = Length.ofMm(30);
    /** What the holes of a dowel are deeper than it is long, together (How To, Dowelling). */
    static final Length ROOM = Length.ofMm(3);
    /** From the end of an edge joint to its first dowel: 3/4 in (WOOD magazine, dowel tips). */
    private static final Length FROM_END = Length.ofInches(3, 4);

    /**
     * Where two parts touch: the row of dowels runs along the longer side of the common rectangle.
     *
     * @param face the side of the left part
     * @param run the axis of the row
     * @param along whether the grain of both runs along the row: an edge joint
     */
    record Seat(Meeting meeting, BoxContact.FaceToFace touch, Side face, Axis run, boolean along) {
        static Optional<Seat> of(Meeting meeting) {
            return touching(meeting).map(touch -> {
                Axis one = touch.side().axis() == Axis.X ? Axis.Y : Axis.X;
                Axis two = Meeting.third(touch.side().axis(), one);
                Axis run = extent(touch, one).compareTo(extent(touch, two)) >= 0 ? one : two;
                boolean along = meeting.left().measure(run) == 0 && meeting.right().measure(run) == 0;
                return new Seat(meeting, touch, touch.side(), run, along);
            });
        }

        /** The surface on which they touch; at a corner, once one of them runs through. */
        private static Optional<BoxContact.FaceToFace> touching(Meeting meeting) {
            if (meeting.contact() instanceof BoxContact.FaceToFace face) {
                return Optional.of(face);
            }
            return Butt.cover(meeting).flatMap(cover -> {
                boolean left = meeting.left().part().name().equals(cover.addition().part());
                Box runs = (left ? meeting.left() : meeting.right()).box();
                Box grown = runs.join(
                        Rebate.step(runs, cover.addition().side(), cover.addition().amount().value()));
                return (left ? grown.contact(meeting.right().box())
                        : meeting.left().box().contact(grown)) instanceof BoxContact.FaceToFace face ? Optional.of(face)
                                : Optional.empty();
            });
        }

        private static Length extent(BoxContact.FaceToFace touch, Axis axis) {
            return Length.ofMm(touch.max().get(axis).subtract(touch.min().get(axis)));
        }

        Axis thin() {
            return Meeting.third(face.axis(), run);
        }

        /** How long the row may be. */
        Length length() {
            return extent(touch, run);
        }

        /** How thick the wood is through which the dowels go. */
        Length wood() {
            return extent(touch, thin());
        }

        /** A spot in the middle of the thickness. */
        Vec3 at(Length fromStart) {
            BigFraction middle = touch.min().get(thin()).add(touch.max().get(thin())).divide(2);
            return touch.min().with(thin(), middle).with(run, touch.min().get(run).add(fromStart.mm()));
        }
    }

    static DowelSizes of(Seat seat, Surroundings surroundings) {
        Meeting meeting = seat.meeting();
        Joint joint = meeting.joint();
        Measure thick = joint.length("thick").orElseGet(() -> rod(seat, surroundings.inches()));
        Measure right = meeting.right().along(seat.face().axis());
        Measure left = meeting.left().along(seat.face().axis());
        Length halfOf = joint.length("long").map(Measure::value).orElse(USUAL).plus(ROOM).dividedBy(2);
        Measure deep = joint.length("deep").orElseGet(() -> hole("deep", right, halfOf, surroundings));
        Measure deepLeft = joint.length("long").map(dowel -> rest(dowel, deep))
                .orElseGet(() -> hole("deep_left", left, halfOf, surroundings));
        Measure dowel = joint.length("long").orElseGet(() -> dowel(deep, deepLeft));
        Length margin = margin(seat, thick.value());
        int count = joint.number("count").map(DovetailSizes::whole)
                .orElseGet(() -> count(seat, thick.value(), margin, joint, surroundings));
        return new DowelSizes(joint, seat, thick, deep, deepLeft, dowel, count == 1 ? seat.length().dividedBy(2)
                : margin, count);
    }

    /** The thickest usual rod that is not over half the wood. */
    private static Measure rod(Seat seat, boolean inches) {
        Length half = seat.wood().dividedBy(2);
        List<Length> rods = inches ? RODS_IN : RODS_MM;
        Length value = rods.stream().filter(each -> each.compareTo(half) <= 0).findFirst().orElse(rods.getLast());
        Measure wood = seat.meeting().left().along(seat.thin());
        return Ruled.of("thick", value, "the thickest usual rod up to half the wood", "WOOD magazine, dowel tips",
                wood);
    }

    /** Half the dowel and some room; in thin wood two thirds of it. */
    private static Measure hole(String label, Measure wood, Length half, Surroundings surroundings) {
        Length thirds = wood.value().times(2).dividedBy(3);
        Length value = half.min(thirds).roundDownTo(surroundings.markOfTheRule()).max(surroundings.markOfTheRule());
        return Ruled.of(label, value, "half a dowel and its room, in thin wood two thirds of it",
                "Fairham, Woodwork Joints: dowels of 7/8 to 1 1/4 in; two thirds: " + Ruled.PRACTICE, wood);
    }

    private static Measure rest(Measure dowel, Measure deep) {
        Length value = dowel.value().plus(ROOM).minus(deep.value());
        return new Measure(
                value,
                dowel.at(),
                Derivation.combined("deep_left", Measure.datum(value), "−", dowel.how().named("dowel and 3 mm"),
                        deep.how()));
    }

    private static Measure dowel(Measure deep, Measure deepLeft) {
        Length value = deep.value().plus(deepLeft.value()).minus(ROOM).max(Length.ZERO);
        return Ruled.at(deep.at(), "long", value, "3 mm shorter than both holes", "How To, Dowelling",
                List.of(deep.how(), deepLeft.how()));
    }

    /** Edge joints after the printed 3/4 in; at an end, two diameters, so that one and a half of wood stay beside it. */
    private static Length margin(Seat seat, Length thick) {
        return (seat.along() ? FROM_END : thick.times(2)).min(seat.length().dividedBy(4));
    }

    /** At an edge 240 mm apart (Fairham: 230 to 255), at an end 75 mm (common practice, no source); two at least. */
    private static int count(Seat seat, Length thick, Length margin, Joint joint, Surroundings surroundings) {
        if (seat.length().compareTo(thick.times(5)) < 0) {
            return 1;
        }
        Length usual = surroundings.inches()
                ? Length.ofInches(seat.along() ? 19 : 6, 2)
                : Length.ofMm(seat.along() ? 240 : 75);
        Length every = joint.length("every").map(Measure::value).filter(each -> each.signum() > 0).orElse(usual);
        Length between = seat.length().minus(margin.times(2));
        BigFraction parts = between.ratioTo(every);
        BigInteger whole = parts.getNumerator().add(parts.getDenominator()).subtract(BigInteger.ONE)
                .divide(parts.getDenominator());
        return whole.min(BigInteger.valueOf(DovetailSizes.MOST)).intValue() + 1;
    }

    /** From the middle of one dowel to the next. */
    Length apart() {
        return count < 2 ? Length.ZERO : seat.length().minus(margin.times(2)).dividedBy(count - 1L);
    }

    /** The middles of all, on the surface where the parts touch. */
    List<Vec3> middles() {
        List<Vec3> middles = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            middles.add(seat.at(margin.plus(apart().times(i))));
        }
        return middles;
    }

    List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("thick", thick, joint.given("thick").isEmpty()));
        figures.add(new Figure("deep", deep, joint.given("deep").isEmpty()));
        figures.add(new Figure("deep_left", deepLeft, true));
        figures.add(new Figure("long", dowel, joint.given("long").isEmpty()));
        figures.add(worked("margin", margin));
        if (count > 1) {
            figures.add(worked("apart", apart()));
        }
        figures.add(worked(MortiseTenon.GLUED, apart().times(count - 1L).plus(thick.value())));
        return figures;
    }

    private Figure worked(String name, Length value) {
        String text = count == 1 ? "one dowel in the middle" : count + " dowels evenly along the joint";
        return new Figure(name, Ruled.of(name, value, text, Ruled.PRACTICE, seat.meeting().left().along(seat.run())),
                true);
    }
}

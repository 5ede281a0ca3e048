package dev.treen.joinery;

import dev.treen.model.Derivation;
import dev.treen.model.Direction;
import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import dev.treen.wood.FastenerTable;
import dev.treen.wood.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Hinges with two leaves, let in where a lid or door meets its case (rules of the trade J-20).
 *
 * @param hung the lid or door as its other joints leave it
 * @param fixed the part that carries it
 * @param closing the side of the lid or door that closes on the other part
 * @param pin the side on which the pin lies
 * @param low where both meet, its lowest corner
 * @param high its highest corner
 * @param reach how long a hinge is
 * @param wide from the middle of the pin to the edge of a leaf
 * @param knuckle how thick the hinge is round its pin, which is what it is with its leaves closed
 * @param deepHung how deep it is let into the lid or door
 * @param deepFixed how deep into the other part
 * @param set how far the middle of the pin stands out of the face
 * @param end from each end of the line on which both meet to the nearest hinge
 * @param screws how long its screws are
 * @param count how many hinges
 * @param gap the room between both parts when closed
 */
record HingeSizes(
        Meeting meeting,
        Box hung,
        Box fixed,
        Side closing,
        Side pin,
        Vec3 low,
        Vec3 high,
        Measure reach,
        Measure wide,
        Measure knuckle,
        Measure deepHung,
        Measure deepFixed,
        Measure set,
        Measure end,
        Measure screws,
        int count,
        Length gap) {

    private static final String NOYES = "Noyes, Handwork in Wood, Hinging";

    static Optional<HingeSizes> of(Meeting meeting, Surroundings surroundings) {
        if (!(meeting.contact() instanceof BoxContact.FaceToFace(Side side, Vec3 min, Vec3 max))) {
            return Optional.empty();
        }
        return surroundings.line(meeting.right().part())
                .filter(line -> line.meeting().left().part().is(meeting.left().part()))
                .map(line -> Settling.at(line, meeting, surroundings, side).settled())
                .or(() -> Optional.of(new Settling(meeting, surroundings, side, min, max).settled()));
    }

    /** The side of the pin: as the project says, else where both are flush, else outside the lid, or the front. */
    static Side pin(Meeting meeting, Box hung, Box fixed, Side closing, Vec3 spans) {
        Axis one = closing.axis() == Axis.X ? Axis.Y : Axis.X;
        Axis other = Meeting.third(closing.axis(), one);
        boolean narrow = Length.ofMm(spans.get(one)).compareTo(Length.ofMm(spans.get(other))) < 0;
        return meeting.joint().word("pin")
                .flatMap(Direction::named)
                .filter(way -> Axes.of(way.axis()) != closing.axis())
                .map(way -> Side.of(Axes.of(way.axis()), way.sign()))
                .orElseGet(() -> usual(hung, fixed, narrow ? one : other));
    }

    private static Side usual(Box hung, Box fixed, Axis across) {
        Side low = Side.of(across, -1);
        Side high = Side.of(across, 1);
        boolean flushLow = Length.ofMm(hung.coordinate(low)).equals(Length.ofMm(fixed.coordinate(low)));
        boolean flushHigh = Length.ofMm(hung.coordinate(high)).equals(Length.ofMm(fixed.coordinate(high)));
        if (flushLow != flushHigh) {
            return flushHigh ? high : low;
        }
        Length ofFixed = Length.ofMm(fixed.centre().get(across));
        return ofFixed.compareTo(Length.ofMm(hung.centre().get(across))) > 0 ? high : low;
    }

    /** A hollow for the fingers in the middle of the free edge, in half the thickness, under the lid. */
    Box notch() {
        Figures figures = Figures.standard();
        Length half = Length.nearest(figures.value("lid.notch.wide"), Length.ofMm(1)).dividedBy(2);
        Length deep = Length.nearest(figures.value("lid.notch.deep"), Length.ofMm(1));
        Length middle = Length.ofMm(hung.centre().get(row()));
        Box band = TenonSizes.between(hung, row(), middle.minus(half).mm(), middle.plus(half).mm());
        Length edge = Length.ofMm(hung.coordinate(pin.opposite()));
        Length in = edge.plus(deep.times(pin.sign()));
        Box strip = TenonSizes.between(band, pin.axis(), edge.min(in).mm(), edge.max(in).mm());
        Length under = Length.ofMm(hung.coordinate(closing));
        Length up = under.minus(Length.ofMm(hung.extent(closing.axis())).dividedBy(2).times(closing.sign()));
        return TenonSizes.between(strip, closing.axis(), under.min(up).mm(), under.max(up).mm());
    }

    /** The way along the pin. */
    Axis row() {
        return Meeting.third(closing.axis(), pin.axis());
    }

    /** How long the line is on which both meet. */
    Length line() {
        return Length.ofMm(high.get(row())).minus(Length.ofMm(low.get(row())));
    }

    /** The coordinate of the face at which the pin lies. */
    Length face() {
        return Length.ofMm((pin.sign() > 0 ? high : low).get(pin.axis()));
    }

    /** The part that carries the leaf of the lid: of a lid that is cut free the wall, as that of the other leaf. */
    String hungName() {
        return hung.overlap(meeting.left().box()).isPresent() ? meeting.left().part().name()
                : meeting.right().part().name();
    }

    /** How far a leaf lies on the wood. */
    Length lies() {
        return wide.value().minus(set.value());
    }

    /** How much wood a part has behind the face that a leaf lies on, and how much beside the leaf. */
    Length behind(boolean ofHung) {
        return Length.ofMm((ofHung ? hung : fixed).extent(closing.axis()));
    }

    /** How wide the surface is that a leaf lies on. */
    Length surface(boolean ofHung) {
        return Length.ofMm((ofHung ? hung : fixed).extent(pin.axis()));
    }

    /** Where the hinges begin along the line. */
    List<Length> starts() {
        Length first = Length.ofMm(low.get(row())).plus(end.value());
        Length between = line().minus(end.value().times(2)).minus(reach.value());
        List<Length> starts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            starts.add(count == 1
                    ? Length.ofMm(low.get(row())).plus(line().minus(reach.value()).dividedBy(2))
                    : first.plus(between.times(i).dividedBy(count - 1L)));
        }
        return starts;
    }

    /** The recesses of one of the two parts. */
    List<Box> recesses(boolean ofHung) {
        Measure deep = ofHung ? deepHung : deepFixed;
        List<Box> boxes = new ArrayList<>();
        if (deep.value().signum() <= 0) {
            return boxes;
        }
        Side surface = ofHung ? closing : closing.opposite();
        Length top = Length.ofMm((ofHung ? hung : fixed).coordinate(surface));
        Length bottom = top.minus(deep.value().times(surface.sign()));
        Length in = face().minus(lies().times(pin.sign()));
        for (Length start : starts()) {
            Vec3 one = Vec3.ZERO.with(row(), start.mm()).with(closing.axis(), top.min(bottom).mm())
                    .with(pin.axis(), face().min(in).mm());
            Vec3 other = Vec3.ZERO.with(row(), start.plus(reach.value()).mm())
                    .with(closing.axis(), top.max(bottom).mm())
                    .with(pin.axis(), face().max(in).mm());
            boxes.add(new Box(one, other));
        }
        return boxes;
    }

    /** Settles one joint's numbers. */
    private static final class Settling {
        private final Meeting meeting;
        private final Joint joint;
        private final Surroundings surroundings;
        private final Box hung;
        private final Box fixed;
        private final Side closing;
        private final Side pin;
        private final Vec3 low;
        private final Vec3 high;
        private final Length gap;

        Settling(Meeting meeting, Surroundings surroundings, Side closing, Vec3 low, Vec3 high) {
            this.meeting = meeting;
            this.joint = meeting.joint();
            this.surroundings = surroundings;
            this.hung = surroundings.grown(meeting.left());
            this.fixed = surroundings.grown(meeting.right());
            this.closing = closing;
            this.low = low;
            this.high = high;
            this.pin = HingeSizes.pin(meeting, hung, fixed, closing, high.minus(low));
            this.gap = Length.ofMm(fixed.coordinate(closing.opposite()))
                    .minus(Length.ofMm(hung.coordinate(closing)))
                    .times(closing.sign());
        }

        private Settling(
                Meeting meeting, Surroundings surroundings, SawLine line, Side outside, Box wall) {
            this.meeting = meeting;
            this.joint = meeting.joint();
            this.surroundings = surroundings;
            this.hung = line.half(wall, true);
            this.fixed = line.half(wall, false);
            this.closing = line.towards().opposite();
            this.low = fixed.min();
            this.high = fixed.max();
            this.pin = joint.word("pin").isEmpty()
                    ? outside
                    : HingeSizes.pin(meeting, hung, fixed, closing, high.minus(low));
            // What the saw and the plane take is gone when it is shut.
            this.gap = Length.ZERO;
        }

        /** Of a lid that is cut free: both leaves lie in the one wall, on either side of the line. */
        static Settling at(SawLine line, Meeting meeting, Surroundings surroundings, Side outside) {
            return new Settling(meeting, surroundings, line, outside, meeting.right().box());
        }

        private Length span(Axis axis) {
            return Length.ofMm(high.get(axis)).minus(Length.ofMm(low.get(axis)));
        }

        HingeSizes settled() {
            Length line = span(Meeting.third(closing.axis(), pin.axis()));
            Measure reach = joint.length("long").orElseGet(() -> reach(line));
            Measure knuckle = joint.length("knuckle").orElseGet(() -> share("knuckle", "hinge.knuckle", reach, 3));
            Measure wide = joint.length("wide").orElseGet(() -> wide(reach));
            Measure set = joint.length("set").orElseGet(() -> ruled("set", Length.ZERO,
                    "the middle of the pin in the face, so that it opens all the way", Ruled.PRACTICE, List.of()));
            Measure end = joint.length("end").orElseGet(() -> ruled(
                    "end", reach.value().min(line.minus(reach.value().times(2)).dividedBy(2).max(Length.ZERO)),
                    "its own length in from each end", NOYES, List.of(reach.how())));
            Measure deepHung = deep(knuckle, meeting.left());
            Measure deepFixed = deep(knuckle, meeting.right());
            Measure screws = joint.length("screws").orElseGet(() -> screws(deepHung, deepFixed));
            int count = joint.number("count").map(n -> n.intValue()).orElseGet(() -> count(line));
            return new HingeSizes(meeting, hung, fixed, closing, pin, low, high, reach, wide, knuckle, deepHung,
                    deepFixed, set, end, screws, count, gap);
        }

        private static int count(Length line) {
            return line.toDoubleMm() > Figures.standard().value("hinge.three.from") ? 3 : 2;
        }

        private Measure reach(Length line) {
            Length wood = meeting.left().part().thickness().value().min(meeting.right().part().thickness().value());
            // Half its knuckle, a twentieth of its length, goes into a sixth of the wood at the most.
            Length most = line.dividedBy(6).min(wood.times(10).dividedBy(3));
            Length value = null;
            for (BigFraction size : FastenerTable.hingeLengths(surroundings.inches())) {
                Length each = surroundings.inches() ? Length.ofInches(size) : Length.ofMm(size);
                value = value == null || each.compareTo(most) <= 0 ? each : value;
            }
            return ruled("long", value == null ? most : value,
                    "the longest usual hinge up to a sixth of the line and ten thirds of the thickness", Ruled.PRACTICE,
                    List.of());
        }

        private Measure share(String label, String key, Measure of, long leastMm) {
            Length value = Length.nearest(
                    of.value().toDoubleMm() * Figures.standard().value(key), surroundings.markOfTheRule())
                    .max(Length.ofMm(leastMm));
            return ruled(label, value, Figures.standard().get(key).meaning(), Ruled.PRACTICE, List.of(of.how()));
        }

        /** A leaf as wide as is usual for its length, that leaves wood beside it. */
        private Measure wide(Measure reach) {
            Measure usual = share("wide", "hinge.leaf", reach, 5);
            Length wood = Length.ofMm(hung.extent(pin.axis())).min(Length.ofMm(fixed.extent(pin.axis())));
            Length most = wood.minus(beside());
            return most.compareTo(usual.value()) >= 0 || most.signum() <= 0
                    ? usual
                    : ruled("wide", most, "what leaves 3 mm of wood beside the leaf", Ruled.PRACTICE, List.of());
        }

        /** Half the knuckle, or all of it in one part; less what room there is between both. */
        private Measure deep(Measure knuckle, Meeting.Placed part) {
            Optional<Measure> given = joint.length("deep");
            Optional<String> only = joint.word("only");
            boolean other = only.filter(name -> !name.equals(part.part().name())).isPresent();
            if (other) {
                return ruled("deep", Length.ZERO, "the other part takes the whole hinge", NOYES, List.of());
            }
            if (given.isPresent()) {
                return given.get();
            }
            Length room = knuckle.value().minus(gap).max(Length.ZERO);
            return ruled("deep", only.isPresent() ? room : room.dividedBy(2),
                    only.isPresent()
                            ? "the whole knuckle, less the room between both"
                            : "half the knuckle in each part, less the room between both",
                    NOYES, List.of(knuckle.how()));
        }

        /** The longest usual ones that leave 2 mm of wood under their points, in both parts. */
        private Measure screws(Measure deepHung, Measure deepFixed) {
            Length room = Length.ofMm(hung.extent(closing.axis())).minus(deepHung.value())
                    .min(Length.ofMm(fixed.extent(closing.axis())).minus(deepFixed.value()));
            Length most = room.minus(Length.nearest(Figures.standard().value("screw.behind"), Length.ofMm(1)));
            Length value = null;
            for (BigFraction size : FastenerTable.screwLengths(surroundings.inches())) {
                Length each = surroundings.inches() ? Length.ofInches(size) : Length.ofMm(size);
                boolean fits = each.compareTo(most) <= 0
                        && each.toDoubleMm() <= Figures.standard().value("hinge.screw");
                value = fits ? each : value;
            }
            return ruled("screws", value == null ? most.max(Length.ZERO) : value,
                    "the longest usual ones that leave 2 mm of wood under their points", Ruled.PRACTICE, List.of());
        }

        private Length beside() {
            return Length.nearest(Figures.standard().value("hinge.beside"), Length.ofMm(1));
        }

        private Measure ruled(String label, Length value, String text, String source, List<Derivation> from) {
            return Ruled.at(joint.at(), label, value, text, source, from);
        }
    }
}

package dev.treen.joinery;

import dev.treen.model.Direction;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.Optional;

/**
 * Where a lid or door is hung: which faces close on each other, and on which side the pin lies.
 *
 * @param hung the lid or door as its other joints leave it
 * @param fixed the part that carries it
 * @param closing the side of the lid or door that closes on the other part
 * @param pin the side on which the pin lies
 * @param low where both meet, its lowest corner
 * @param high its highest corner
 * @param gap the room between both parts when closed
 */
record HingePlace(
        Meeting meeting, Box hung, Box fixed, Side closing, Side pin, Vec3 low, Vec3 high, Length gap) {

    /** Where both parts lie on each other, unless that is nowhere. */
    static Optional<HingePlace> of(Meeting meeting, Surroundings surroundings) {
        if (!(meeting.contact() instanceof BoxContact.FaceToFace(Side side, Vec3 min, Vec3 max))) {
            return Optional.empty();
        }
        return surroundings.line(meeting.right().part())
                .filter(line -> line.meeting().left().part().is(meeting.left().part()))
                .map(line -> cutFree(line, meeting, side))
                .or(() -> Optional.of(between(meeting, surroundings, side, min, max)));
    }

    private static HingePlace between(Meeting meeting, Surroundings surroundings, Side closing, Vec3 low, Vec3 high) {
        Box hung = surroundings.grown(meeting.left());
        Box fixed = surroundings.grown(meeting.right());
        Length gap = Length.ofMm(fixed.coordinate(closing.opposite()))
                .minus(Length.ofMm(hung.coordinate(closing)))
                .times(closing.sign());
        return new HingePlace(meeting, hung, fixed, closing, pin(meeting, hung, fixed, closing, high.minus(low)), low,
                high, gap);
    }

    /** Of a lid that is cut free: both leaves lie in the one wall, on either side of the line. */
    private static HingePlace cutFree(SawLine line, Meeting meeting, Side outside) {
        Box wall = meeting.right().box();
        Box hung = line.half(wall, true);
        Box fixed = line.half(wall, false);
        Side closing = line.towards().opposite();
        Side pin = meeting.joint().word("pin").isEmpty()
                ? outside
                : pin(meeting, hung, fixed, closing, fixed.size());
        // What the saw and the plane take is gone when it is shut.
        return new HingePlace(meeting, hung, fixed, closing, pin, fixed.min(), fixed.max(), Length.ZERO);
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

    /** One of the two parts. */
    Box body(boolean ofHung) {
        return ofHung ? hung : fixed;
    }

    /** How much wood a part has behind the face that a leaf lies on. */
    Length behind(boolean ofHung) {
        return Length.ofMm(body(ofHung).extent(closing.axis()));
    }

    /** How wide the surface is that a leaf lies on. */
    Length surface(boolean ofHung) {
        return Length.ofMm(body(ofHung).extent(pin.axis()));
    }
}

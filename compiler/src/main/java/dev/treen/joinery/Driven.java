package dev.treen.joinery;

import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.Optional;

/**
 * Where screws or nails go: from a face of the left part, through it, into the right one. Both are taken as their other
 * joints leave them: at a corner one runs past the other, in a housing the one lies in the other.
 *
 * @param held the left part with all that its joints add
 * @param entered the right part with all that its joints add
 * @param into the way in which they are driven
 * @param low the lowest corner of the surface over which both meet, as seen along {@code into}
 * @param high its highest corner
 */
record Driven(Meeting meeting, Box held, Box entered, Side into, Vec3 low, Vec3 high) {

    /** Where both parts of a meeting meet, unless that is nowhere. */
    static Optional<Driven> of(Meeting meeting, Surroundings surroundings) {
        Box held = surroundings.grown(meeting.left());
        Box entered = surroundings.grown(meeting.right());
        if (meeting.contact() instanceof BoxContact.FaceToFace(Side side, Vec3 min, Vec3 max)) {
            return Optional.of(new Driven(meeting, held, entered, side, min, max));
        }
        return switch (held.contact(entered)) {
            case BoxContact.FaceToFace(Side side, Vec3 min, Vec3 max) ->
                Optional.of(new Driven(meeting, held, entered, side, min, max));
            case BoxContact.Overlapping(Box shared) -> Optional.of(through(meeting, held, entered, shared));
            case BoxContact.Edge edge -> Optional.empty();
            case BoxContact.Corner corner -> Optional.empty();
            case BoxContact.Apart apart -> Optional.empty();
        };
    }

    /** At a rebated or mitred corner they go through the face of the left part, from its outside. */
    private static Driven through(Meeting meeting, Box held, Box entered, Box shared) {
        Axis axis = Axes.of(meeting.left().placing().thickness().axis());
        int sign = Length.ofMm(entered.centre().get(axis)).compareTo(Length.ofMm(held.centre().get(axis))) < 0 ? -1 : 1;
        return new Driven(meeting, held, entered, Side.of(axis, sign), shared.min(), shared.max());
    }

    /** The coordinate, along {@code into}, of the surface they are driven from. */
    Length surface() {
        return Length.ofMm(held.coordinate(into.opposite()));
    }

    /** How far they go through the left part before the right one begins. */
    Length through() {
        Length begin = Length.ofMm(entered.coordinate(into.opposite()));
        return begin.minus(surface()).times(into.sign()).max(Length.ZERO);
    }

    /** How far the right part reaches from where it begins. */
    Length depth() {
        Length end = Length.ofMm(entered.coordinate(into));
        return end.minus(surface()).times(into.sign()).minus(through());
    }

    /** Whether they enter the end grain of the right part. */
    boolean endGrain() {
        return meeting.right().measure(into.axis()) == 0;
    }

    /** The longer way of the surface over which both meet: a row of screws runs along it. */
    Axis row() {
        Axis one = into.axis() == Axis.X ? Axis.Y : Axis.X;
        Axis other = Meeting.third(into.axis(), one);
        return span(other).compareTo(span(one)) > 0 ? other : one;
    }

    /** The other way of that surface. */
    Axis beside() {
        return Meeting.third(into.axis(), row());
    }

    /** How far that surface reaches along an axis. */
    Length span(Axis axis) {
        return Length.ofMm(high.get(axis)).minus(Length.ofMm(low.get(axis)));
    }

    /** Its middle along an axis. */
    Length middle(Axis axis) {
        return Length.ofMm(high.get(axis)).plus(Length.ofMm(low.get(axis))).dividedBy(2);
    }

    /** A place on the surface they are driven from, so far below it, in the middle of the row's width. */
    Vec3 place(Length along, Length below) {
        return Vec3.ZERO
                .with(into.axis(), surface().plus(below.times(into.sign())).mm())
                .with(row(), along.mm())
                .with(beside(), middle(beside()).mm());
    }

    /** Across which way an edge or face that is entered is thin: its thickness, seen along {@code into}. */
    Optional<Axis> thin() {
        Axis thickness = Axes.of(meeting.right().placing().thickness().axis());
        return thickness == into.axis() ? Optional.empty() : Optional.of(thickness);
    }
}

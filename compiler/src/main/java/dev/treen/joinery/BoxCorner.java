package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Convex;
import dev.treen.solid.Origin;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A corner of a box at which the ends of two walls meet, written inside to inside. The corner itself is the block that
 * both would fill if both ran to the outside; dovetails and fingers share it out. Within it a place is told by how far it
 * lies out along the first wall, how far out along the second, and how high along the edge.
 *
 * @param first the wall that runs out by {@code outFirst}
 * @param outFirst the end of the first wall
 * @param outSecond the end of the second wall
 * @param edge the inner edge of the corner
 */
record BoxCorner(
        Meeting.Placed first, Meeting.Placed second, Side outFirst, Side outSecond, BoxContact.Edge edge) {

    /** The corner of a meeting, where the ends of both parts meet with the grain running into it. */
    static Optional<BoxCorner> of(Meeting meeting) {
        Optional<Side> left = meeting.endOfLeft();
        Optional<Side> right = meeting.endOfRight();
        if (left.isEmpty() || right.isEmpty() || left.get().axis() == right.get().axis()) {
            return Optional.empty();
        }
        boolean ends = meeting.left().measure(left.get().axis()) == 0
                && meeting.right().measure(right.get().axis()) == 0
                && meeting.left().measure(right.get().axis()) == 2
                && meeting.right().measure(left.get().axis()) == 2;
        return ends
                ? Optional.of(new BoxCorner(
                        meeting.left(), meeting.right(), left.get(), right.get(), meeting.edge().orElseThrow()))
                : Optional.empty();
    }

    /** The thickness of the first wall. */
    Measure thicknessOfFirst() {
        return first.along(outSecond.axis());
    }

    /** The thickness of the second wall. */
    Measure thicknessOfSecond() {
        return second.along(outFirst.axis());
    }

    /** The axis of the edge. */
    Axis axis() {
        return edge.along();
    }

    /** Where both walls begin, along the edge. */
    Length low() {
        return Length.ofMm(edge.from().get(axis()));
    }

    /** As far as both walls go, along the edge. */
    Length high() {
        return Length.ofMm(edge.to().get(axis()));
    }

    /** What a line at which a lid is cut free takes out of the corner, where one of its walls has any. */
    Optional<Heights> sawn(Surroundings surroundings) {
        return surroundings.line(first.part()).or(() -> surroundings.line(second.part()))
                .filter(line -> line.axis() == axis())
                .map(SawLine::slice)
                .filter(gone -> gone.from().compareTo(low()) > 0 && gone.to().compareTo(high()) < 0);
    }

    /** How high both walls are together. */
    Length height() {
        return high().minus(low());
    }

    /** The place so far out along the first wall, along the second, and at a height. */
    Vec3 place(Length alongFirst, Length alongSecond, Length height) {
        return edge.from()
                .with(axis(), height.mm())
                .plus(Vec3.along(outFirst.axis(), alongFirst.mm().multiply(outFirst.sign())))
                .plus(Vec3.along(outSecond.axis(), alongSecond.mm().multiply(outSecond.sign())));
    }

    /** The block of the corner between two heights. */
    Box block(Length from, Length to) {
        Vec3 inner = place(Length.ZERO, Length.ZERO, from);
        Vec3 outer = place(thicknessOfSecond().value(), thicknessOfFirst().value(), to);
        return new Box(lowest(inner, outer), lowest(inner.negate(), outer.negate()).negate());
    }

    private static Vec3 lowest(Vec3 a, Vec3 b) {
        return Vec3.of(
                Length.ofMm(a.x()).min(Length.ofMm(b.x())),
                Length.ofMm(a.y()).min(Length.ofMm(b.y())),
                Length.ofMm(a.z()).min(Length.ofMm(b.z())));
    }

    /**
     * A tail or a socket: {@code deep} into the first wall's thickness, {@code along} out along it, between two heights at
     * the inner edge and two at its end.
     */
    Convex wedge(Length along, Length deep, Heights inner, Heights end, Origin origin) {
        Length none = Length.ZERO;
        List<Vec3> outline = List.of(
                place(none, none, inner.from()),
                place(none, none, inner.to()),
                place(along, none, end.to()),
                place(along, none, end.from()));
        BigFraction through = deep.mm().multiply(outSecond.sign());
        return Convex.prism(outline, Vec3.along(outSecond.axis(), through), origin);
    }

    /** Half of the corner's block, cut along its diagonal: the half of the first wall or the other's. */
    Convex half(boolean ofFirst, Length from, Length to, Origin origin) {
        Length a = thicknessOfSecond().value();
        Length b = thicknessOfFirst().value();
        Vec3 corner = ofFirst ? place(Length.ZERO, b, from) : place(a, Length.ZERO, from);
        List<Vec3> outline = List.of(place(Length.ZERO, Length.ZERO, from), place(a, b, from), corner);
        return Convex.prism(outline, Vec3.along(axis(), to.minus(from)), origin);
    }

    /**
     * The lap of one wall before the tails and sockets, which are {@code alongFirst} by {@code alongSecond}; it is mitred
     * at the outer corner.
     */
    Convex lap(boolean ofFirst, Length alongFirst, Length alongSecond, Heights heights, Origin origin) {
        Length a = thicknessOfSecond().value();
        Length b = thicknessOfFirst().value();
        Length from = heights.from();
        Length none = Length.ZERO;
        List<Vec3> outline = ofFirst
                ? List.of(place(none, b, from), place(a, b, from), place(alongFirst, alongSecond, from),
                        place(none, alongSecond, from))
                : List.of(place(a, none, from), place(a, b, from), place(alongFirst, alongSecond, from),
                        place(alongFirst, none, from));
        return Convex.prism(outline, Vec3.along(axis(), heights.to().minus(from)), origin);
    }

    /** From one height to another. */
    record Heights(Length from, Length to) {
        /** Drawn in, or spread where {@code by} is below zero, at both ends. */
        Heights in(Length by) {
            return new Heights(from.plus(by), to.minus(by));
        }

        /** Whether it shares more than an edge with {@code other}. */
        boolean meets(Heights other) {
            return from.compareTo(other.to) < 0 && other.from.compareTo(to) < 0;
        }
    }
}

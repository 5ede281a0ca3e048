package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Convex;
import dev.treen.solid.Plane;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A corner at which two ends are mitred, written inside to inside. A place in it is told by how far it lies along the cut
 * from the inner corner, and how far square to the cut: those two ways are not rational, and are kept to a part in
 * 10^11; both parts get the same body, so that they fit exactly all the same.
 *
 * @param left the end of the left part
 * @param right the end of the right part
 */
record MitreCorner(Meeting meeting, Side left, Side right, BoxContact.Edge edge) {
    private static final long FINE = 1_000_000_000_000L;

    static Optional<MitreCorner> of(Meeting meeting) {
        Optional<Side> left = meeting.endOfLeft();
        Optional<Side> right = meeting.endOfRight();
        return left.isEmpty() || right.isEmpty() || left.get().axis() == right.get().axis()
                ? Optional.empty()
                : Optional.of(new MitreCorner(meeting, left.get(), right.get(), meeting.edge().orElseThrow()));
    }

    /** What the left part gains: the right one's thickness, or its width in a flat frame. */
    Measure toLeft() {
        return meeting.right().along(left.axis());
    }

    /** What the right part gains. */
    Measure toRight() {
        return meeting.left().along(right.axis());
    }

    /** The axis of the corner's edge. */
    Axis free() {
        return edge.along();
    }

    /** Whether it is the corner of a flat frame: both thicknesses lie along the edge. */
    boolean flat() {
        return meeting.left().measure(free()) == 2 && meeting.right().measure(free()) == 2;
    }

    /** How high the corner is along its edge. */
    Length height() {
        return high().minus(low());
    }

    /** Where the corner begins along its edge. */
    Length low() {
        return Length.ofMm(edge.from().get(free()));
    }

    /** Where the corner ends along its edge. */
    Length high() {
        return Length.ofMm(edge.to().get(free()));
    }

    /** The length of the cut, from the inner to the outer corner. */
    double cutMm() {
        return Math.hypot(toLeft().value().toDoubleMm(), toRight().value().toDoubleMm());
    }

    List<Addition> additions() {
        String corner = "corner with ";
        return List.of(
                new Addition(
                        meeting.left().part().name(),
                        left,
                        Mitre.named(toLeft(), corner + meeting.right().part().name())),
                new Addition(
                        meeting.right().part().name(),
                        right,
                        Mitre.named(toRight(), corner + meeting.left().part().name())));
    }

    private Vec3 outward() {
        return Vec3.along(left.axis(), toLeft().value().mm().multiply(left.sign()))
                .plus(Vec3.along(right.axis(), toRight().value().mm().multiply(right.sign())));
    }

    /** The plane through the inner and the outer edge of the corner; each part keeps its own side. */
    List<Cut> slices() {
        Vec3 normal = Vec3.along(free(), BigFraction.ONE).cross(outward());
        Plane plane = Plane.through(edge.from(), normal);
        Plane keepLeft = plane.side(meeting.left().box().centre()) <= 0 ? plane : plane.flip();
        return List.of(
                new Cut.Slice(meeting.left().part().name(), keepLeft, meeting.origin()),
                new Cut.Slice(meeting.right().part().name(), keepLeft.flip(), meeting.origin()));
    }

    /** A place: so far along the cut from the inner corner, so far square to it, and at a height. */
    private Vec3 place(BigFraction along, BigFraction square, BigFraction height) {
        BigFraction unit = BigFraction.of(Math.round(FINE / cutMm())).divide(FINE);
        Vec3 out = outward();
        Vec3 across = Vec3.along(free(), BigFraction.ONE).cross(out);
        return edge.from().with(free(), height)
                .plus(out.times(unit.multiply(along)))
                .plus(across.times(unit.multiply(square)));
    }

    /** A bar with its middle in the cut: from one place along the cut to another, so deep on each side. */
    Convex bar(BigFraction from, BigFraction to, BigFraction deep, BigFraction low, BigFraction high) {
        return Convex.prism(
                List.of(
                        place(from, deep.negate(), low),
                        place(to, deep.negate(), low),
                        place(to, deep, low),
                        place(from, deep, low)),
                Vec3.along(free(), high.subtract(low)),
                meeting.origin());
    }

    /** The three-cornered slot of a key, sawn in from the outer corner, its legs along the outer faces. */
    Convex slot(BigFraction leg, BigFraction low, BigFraction high) {
        Vec3 outer = edge.from().with(free(), low).plus(outward());
        return Convex.prism(
                List.of(
                        outer,
                        outer.plus(Vec3.along(left.axis(), leg.multiply(-left.sign()))),
                        outer.plus(Vec3.along(right.axis(), leg.multiply(-right.sign())))),
                Vec3.along(free(), high.subtract(low)),
                meeting.origin());
    }
}

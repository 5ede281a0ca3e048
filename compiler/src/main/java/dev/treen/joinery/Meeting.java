package dev.treen.joinery;

import dev.treen.model.Joint;
import dev.treen.model.Measure;
import dev.treen.model.Part;
import dev.treen.model.Placing;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.BoxContact;
import dev.treen.solid.Origin;
import dev.treen.solid.Side;
import dev.treen.solid.Vec3;
import java.util.Optional;

/**
 * A joint with its two parts where they lie.
 *
 * @param joint what the project says
 * @param left the seen box of the left part
 * @param right the seen box of the right part
 * @param contact how they lie to each other
 */
public record Meeting(Joint joint, Placed left, Placed right, BoxContact contact) {

    /** A part and the box that its seen size fills. */
    public record Placed(Part part, Placing placing, Box box) {
        /** The part in its place, where it has one and has a body. */
        static Optional<Placed> of(Part part) {
            return part.placing()
                    .flatMap(placing -> box(part, placing).map(box -> new Placed(part, placing, box)));
        }

        private static Optional<Box> box(Part part, Placing placing) {
            for (int axis = 0; axis < 3; axis++) {
                if (placing.extent(part, axis).signum() <= 0) {
                    return Optional.empty();
                }
            }
            Vec3 at = Vec3.of(placing.low(part, 0), placing.low(part, 1), placing.low(part, 2));
            Vec3 size = Vec3.of(placing.extent(part, 0), placing.extent(part, 1), placing.extent(part, 2));
            return Optional.of(Box.at(at, size));
        }

        /** How far the part reaches along {@code axis}, as a measure with its derivation. */
        public Measure along(Axis axis) {
            return part.measure(placing.measureAlong(Axes.number(axis)));
        }

        /** Which measure lies along {@code axis}: length 0, width 1, thickness 2. */
        public int measure(Axis axis) {
            return placing.measureAlong(Axes.number(axis));
        }
    }

    /** Which of their ends, edges and wide faces meet. */
    public String sentence() {
        String ofLeft = " of `" + joint.left().name() + "`";
        String ofRight = " of `" + joint.right().name() + "`";
        return switch (contact) {
            case BoxContact.FaceToFace face -> "The " + surface(left, face.side()) + ofLeft + " lies against the "
                    + surface(right, face.side()) + ofRight + ".";
            case BoxContact.Edge edge -> "They touch along one line, at a corner: the " + surface(left, edge.first())
                    + " and the " + surface(left, edge.second()) + ofLeft + " meet there with the "
                    + surface(right, edge.first()) + " and the " + surface(right, edge.second()) + ofRight + ".";
            case BoxContact.Corner _ -> "They touch at one point.";
            case BoxContact.Apart _ -> "They do not touch.";
            case BoxContact.Overlapping _ -> "They lie in the same place.";
        };
    }

    /** What a part has on a side: its end, its edge or its wide face. */
    private static String surface(Placed part, Side side) {
        return switch (part.measure(side.axis())) {
            case 0 -> "end";
            case 1 -> "edge";
            default -> "wide face";
        };
    }

    /** The side of the left part that touches the right one, where they meet on a surface. */
    public Optional<Side> face() {
        return contact instanceof BoxContact.FaceToFace face ? Optional.of(face.side()) : Optional.empty();
    }

    /** The corner, where they meet along an edge. */
    public Optional<BoxContact.Edge> edge() {
        return contact instanceof BoxContact.Edge edge ? Optional.of(edge) : Optional.empty();
    }

    /**
     * The side of the left part, at a corner, by which it is lengthened: its end, or, where its grain runs along the
     * corner, its edge.
     */
    public Optional<Side> endOfLeft() {
        return edge().map(edge -> end(edge.first(), edge.second(), left));
    }

    /** The side of the right part, at a corner, by which it is lengthened. */
    public Optional<Side> endOfRight() {
        return edge().map(edge -> end(edge.first().opposite(), edge.second().opposite(), right));
    }

    private static Side end(Side one, Side other, Placed of) {
        return of.measure(one.axis()) < of.measure(other.axis()) ? one : other;
    }

    /** The name that the faces this joint cuts carry. */
    Origin origin() {
        return Origin.cut(joint.name());
    }

    /** The third axis. */
    public static Axis third(Axis one, Axis other) {
        return Axes.of(3 - Axes.number(one) - Axes.number(other));
    }
}

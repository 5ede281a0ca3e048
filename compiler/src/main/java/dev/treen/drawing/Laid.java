package dev.treen.drawing;

import dev.treen.joinery.FinishedPart;
import dev.treen.model.Direction;
import dev.treen.model.Placing;
import dev.treen.quantity.Exact;
import dev.treen.quantity.Length;
import dev.treen.quantity.Size;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Placed;
import dev.treen.solid.Plane;
import dev.treen.solid.Side;
import dev.treen.solid.Solid;
import dev.treen.solid.SurfaceEdge;
import dev.treen.solid.Vec3;
import dev.treen.solid.View;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A part as its maker lays it before them: the face side to the eye, the face edge below, the grain from left to right.
 *
 * @param name of the part
 * @param solid its shape, in the assembly or by itself
 * @param face the way its face side looks
 * @param edge the way its face edge looks
 */
record Laid(String name, Solid solid, Side face, Side edge) {

    private static final Side[] UNPLACED = {Side.RIGHT, Side.TOP, Side.BACK};

    /**
     * The part on the bench. Its face side is the wide face that most cuts open, its face edge the edge nearest to a cut:
     * so every mark is gauged over the shortest way (common practice, no source). Where nothing decides, they are those
     * that look to the front or down.
     */
    static Laid of(FinishedPart part) {
        Side[] sides = part.solid().isPresent()
                ? part.part().placing().map(Laid::sides).orElse(UNPLACED)
                : UNPLACED;
        Solid solid = part.solid().filter(s -> !s.isEmpty()).orElseGet(() -> block(part.finished()));
        Side thick = sides[2];
        int one = cuts(solid, thick);
        int other = cuts(solid, thick.opposite());
        Side face = one != other ? (one > other ? thick : thick.opposite()) : negative(thick);
        Side wide = sides[1];
        int near = Exact.compare(nearest(solid, wide), nearest(solid, wide.opposite()));
        Side edge = near != 0 ? (near < 0 ? wide : wide.opposite()) : negative(wide);
        return new Laid(part.part().name(), solid, face, edge);
    }

    private static Side negative(Side side) {
        return side.sign() < 0 ? side : side.opposite();
    }

    private static Side[] sides(Placing placing) {
        return new Side[]{side(placing.length()), side(placing.width()), side(placing.thickness())};
    }

    /** The side to which a direction points. */
    static Side side(Direction direction) {
        Axis axis = direction.axis() == 0 ? Axis.X : direction.axis() == 1 ? Axis.Y : Axis.Z;
        return Side.of(axis, direction.sign());
    }

    private static Solid block(Size size) {
        Vec3 extents = Vec3.of(size.length(), size.thickness(), size.width());
        return Solid.of(Box.at(Vec3.of(0, 0, 0), extents));
    }

    /** How many edges lie inside a wide face: what cuts have opened there. */
    private static int cuts(Solid solid, Side side) {
        Box box = solid.bounds().orElseThrow();
        BigFraction at = box.coordinate(side);
        int count = 0;
        for (SurfaceEdge edge : solid.surface().edges()) {
            boolean onFace = edge.from().get(side.axis()).equals(at) && edge.to().get(side.axis()).equals(at);
            if (onFace && !onRim(edge, box, side.axis())) {
                count++;
            }
        }
        return count;
    }

    private static boolean onRim(SurfaceEdge edge, Box box, Axis out) {
        for (Side side : Side.values()) {
            BigFraction at = box.coordinate(side);
            if (side.axis() != out
                    && edge.from().get(side.axis()).equals(at)
                    && edge.to().get(side.axis()).equals(at)) {
                return true;
            }
        }
        return false;
    }

    /** How far the nearest mark inside the part is from the edge on the given side. */
    private static BigFraction nearest(Solid solid, Side side) {
        Box box = solid.bounds().orElseThrow();
        BigFraction at = box.coordinate(side);
        BigFraction least = box.extent(side.axis());
        for (SurfaceEdge edge : solid.surface().edges()) {
            BigFraction here = edge.from().get(side.axis());
            if (here.equals(edge.to().get(side.axis())) && !here.equals(at)) {
                BigFraction far = here.subtract(at).abs();
                least = Exact.compare(far, least) < 0 ? far : least;
            }
        }
        return least;
    }

    private Vec3 toViewer() {
        return face.unit();
    }

    private Vec3 up() {
        return edge.opposite().unit();
    }

    private Vec3 right() {
        return up().cross(toViewer());
    }

    /** The part by its name, as drawings want it. */
    Placed placed() {
        return new Placed(name, solid);
    }

    /** The view from one way; neighbouring views keep what they share in line. */
    View view(Way way) {
        return switch (way) {
            case FRONT -> new View(toViewer(), right(), up());
            case BACK -> new View(toViewer().negate(), right().negate(), up());
            case ABOVE -> new View(up(), right(), toViewer().negate());
            case BELOW -> new View(up().negate(), right(), toViewer());
            case LEFT -> new View(right().negate(), toViewer(), up());
            case RIGHT -> new View(right(), toViewer().negate(), up());
        };
    }

    private Vec3 arrow(Measured measured) {
        return switch (measured) {
            case LENGTH -> right();
            case WIDTH -> up();
            case THICKNESS -> toViewer().negate();
        };
    }

    /** How far a point is from the left end, the face edge or the face side. */
    Length measure(Measured measured, Vec3 point) {
        Box box = solid.bounds().orElseThrow();
        Vec3 arrow = arrow(measured);
        BigFraction one = arrow.dot(box.min());
        BigFraction other = arrow.dot(box.max());
        BigFraction least = Exact.compare(one, other) < 0 ? one : other;
        return Length.ofMm(arrow.dot(point).subtract(least));
    }

    /** Whether a face stands neither square to a measure nor along it. */
    boolean leans(Plane plane, Measured measured) {
        Vec3 along = arrow(measured);
        BigFraction share = along.dot(plane.normal());
        return share.signum() != 0 && !share.multiply(share).equals(plane.normal().lengthSquared());
    }

    /** The extent over all. */
    Length all(Measured measured) {
        Box box = solid.bounds().orElseThrow();
        return Length.ofMm(arrow(measured).dot(box.size())).abs();
    }

    List<SurfaceEdge> edges() {
        return solid.surface().edges();
    }
}

package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/** An area on a plane: flat convex bits that share no area, exact in every corner. It may have holes or be empty. */
public final class Region {

    private final Plane plane;
    private final List<Poly> polys;

    Region(Plane plane, List<Poly> polys) {
        this.plane = plane;
        this.polys = List.copyOf(polys);
    }

    /** The plane the area lies on, seen from where its normal points. */
    public Plane plane() {
        return plane;
    }

    List<Poly> polys() {
        return polys;
    }

    /** Whether there is no area. */
    public boolean isEmpty() {
        return polys.isEmpty();
    }

    /** The square of the area in mm⁴, exact on every plane. */
    public BigFraction areaSquared() {
        return flatArea().square().times(Frame.of(plane).stretchSquared()).toFraction();
    }

    /** The area in square millimetres, to double precision. */
    public double area() {
        return flatArea().toDouble() * Math.sqrt(Frame.of(plane).stretchSquared().toDouble());
    }

    /** The exact area in square millimetres, when the plane is square to an axis or its area has no root in it. */
    public Optional<BigFraction> exactArea() {
        Rat stretch = Frame.of(plane).stretchSquared();
        return Roots.exact(stretch).map(root -> root.times(flatArea()).toFraction());
    }

    private Rat flatArea() {
        Rat sum = Rat.ZERO;
        for (Poly poly : polys) {
            sum = sum.plus(poly.area());
        }
        return sum;
    }

    /** The convex bits, each counter-clockwise as seen from outside. */
    public List<List<Vec3>> pieces() {
        Frame frame = Frame.of(plane);
        return polys.stream().map(poly -> frame.lift(poly, plane)).toList();
    }

    /** The boundary as seen from outside: counter-clockwise around areas, clockwise around holes, true corners only. */
    public List<List<Vec3>> loops() {
        Frame frame = Frame.of(plane);
        return Outline.loops(patches()).stream().map(loop -> frame.lift(loop, plane)).toList();
    }

    private List<Patch> patches() {
        return polys.stream().map(poly -> new Patch(poly, Origin.STOCK)).toList();
    }

    /**
     * The area both share.
     *
     * @throws IllegalArgumentException if the other lies on another plane; facing the other way is allowed
     */
    public Region intersect(Region other) {
        checkSamePlane(other);
        List<Poly> shared = new ArrayList<>();
        for (Poly own : polys) {
            other.polys.forEach(poly -> own.intersect(poly).ifPresent(shared::add));
        }
        return new Region(plane, shared);
    }

    /**
     * This area without the other.
     *
     * @throws IllegalArgumentException if the other lies on another plane; facing the other way is allowed
     */
    public Region minus(Region other) {
        checkSamePlane(other);
        List<Patch> left = Patch.minus(patches(), other.patches());
        return new Region(plane, left.stream().map(Patch::poly).toList());
    }

    /**
     * The area of either.
     *
     * @throws IllegalArgumentException if the other lies on another plane; facing the other way is allowed
     */
    public Region union(Region other) {
        List<Poly> all = new ArrayList<>(polys);
        all.addAll(other.minus(this).polys);
        return new Region(plane, all);
    }

    /** Its areas one by one: what hangs together along an edge; two that touch at a point only are two. */
    public List<Region> apart() {
        return Clusters.of(polys).stream().map(area -> new Region(plane, area)).toList();
    }

    /** Whether a point of the plane lies in the area or on its border. */
    public boolean contains(Vec3 point) {
        Vec2 flat = Frame.of(plane).flatten(point);
        return plane.value(point).isZero() && polys.stream().anyMatch(poly -> poly.contains(flat));
    }

    private void checkSamePlane(Region other) {
        if (!plane.equals(other.plane) && !plane.equals(other.plane.flip())) {
            throw new IllegalArgumentException("regions on different planes: " + plane + " and " + other.plane);
        }
    }

    /** The lowest and the highest coordinates of its corners, or nothing for an empty region. */
    public Optional<Extent> extent() {
        return pieces().stream().flatMap(List::stream).map(p -> new Extent(p, p)).reduce(Extent::join);
    }

    /**
     * The corners of the smallest box around a flat thing; unlike a {@link Box} it may be flat.
     *
     * @param min the lowest coordinates
     * @param max the highest coordinates
     */
    public record Extent(Vec3 min, Vec3 max) {
        /** The extent of a straight stretch. */
        public static Extent around(Vec3 from, Vec3 to) {
            return new Extent(Box.lowest(from, to), Box.highest(from, to));
        }

        /** The extent of both together. */
        public Extent join(Extent other) {
            return new Extent(Box.lowest(min, other.min), Box.highest(max, other.max));
        }

        /** The length along an axis. */
        public BigFraction along(Axis axis) {
            return max.at(axis).minus(min.at(axis)).toFraction();
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Region that
                && plane.equals(that.plane)
                && minus(that).isEmpty()
                && that.minus(this).isEmpty();
    }

    @Override
    public int hashCode() {
        return plane.hashCode() * 31 + flatArea().hashCode();
    }

    @Override
    public String toString() {
        return "Region on " + plane + " " + loops();
    }
}

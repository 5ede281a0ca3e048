package dev.treen.solid;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A bounded convex piece of material with volume, exact in every corner and face.
 *
 * <p>There is no empty convex piece: whatever leaves no volume is an empty {@link Optional}. No two faces share a plane
 * and no corner lies within an edge, so faces, corners and edges are the true ones. Values are immutable.
 */
public final class Convex {

    private final List<Vec3> vertices;
    private final List<Facet> facets;
    private @Nullable Span span;
    private @Nullable Box bounds;

    Convex(List<Vec3> vertices, List<Facet> facets) {
        this.vertices = List.copyOf(vertices);
        this.facets = List.copyOf(facets);
    }

    /** A box whose faces carry the given origin. */
    public static Convex box(Box box, Origin origin) {
        return Shapes.box(box, origin);
    }

    /**
     * The intersection of half-spaces, or nothing when they share no volume.
     *
     * @throws IllegalArgumentException if the intersection is not bounded
     */
    public static Optional<Convex> of(Collection<Plane> planes, Origin origin) {
        return Shapes.intersection(planes, origin);
    }

    /**
     * A flat convex outline pushed along an arrow.
     *
     * @param outline three or more corners in one plane, in order either way round, each a true corner
     * @throws IllegalArgumentException if the outline is not flat and convex or the arrow lies in its plane
     */
    public static Convex prism(List<Vec3> outline, Vec3 along, Origin origin) {
        return Shapes.prism(outline, along, origin);
    }

    /**
     * The smallest convex piece around some points, meant for a handful of them (the work grows with the fourth power).
     *
     * @throws IllegalArgumentException if the points lie in one plane
     */
    public static Convex hull(Collection<Vec3> points, Origin origin) {
        return Shapes.hull(points, origin);
    }

    /** The corners, each once, in no particular order. */
    public List<Vec3> vertices() {
        return vertices;
    }

    /** The faces, one a plane, with outward normals. */
    public List<Face> faces() {
        return facets.stream().map(this::face).toList();
    }

    Face face(Facet facet) {
        List<Vec3> corners = new ArrayList<>(facet.loop().length);
        for (int index : facet.loop()) {
            corners.add(vertices.get(index));
        }
        return new Face(facet.plane(), corners, facet.origin());
    }

    List<Facet> facets() {
        return facets;
    }

    int edgeCount() {
        return facets.stream().mapToInt(facet -> facet.loop().length).sum() / 2;
    }

    /** The volume in cubic millimetres: the sum of the tetrahedra from one corner to the triangles of all faces. */
    public BigFraction volume() {
        return volumeRat().toFraction();
    }

    Rat volumeRat() {
        Vec3 apex = vertices.getFirst();
        Rat sixfold = Rat.ZERO;
        for (Facet facet : facets) {
            if (facet.plane().value(apex).isZero()) {
                continue;
            }
            int[] loop = facet.loop();
            Vec3 first = vertices.get(loop[0]).minus(apex);
            Vec3 before = vertices.get(loop[1]).minus(apex);
            for (int i = 2; i < loop.length; i++) {
                Vec3 next = vertices.get(loop[i]).minus(apex);
                sixfold = sixfold.plus(first.inner(before.cross(next)));
                before = next;
            }
        }
        return sixfold.times(Rat.of(1, 6));
    }

    /** The centre of volume. */
    public Vec3 centroid() {
        Vec3 apex = vertices.getFirst();
        Vec3 weighted = Vec3.ZERO;
        for (Facet facet : facets) {
            int[] loop = facet.loop();
            Vec3 first = vertices.get(loop[0]).minus(apex);
            for (int i = 2; i < loop.length; i++) {
                Vec3 b = vertices.get(loop[i - 1]).minus(apex);
                Vec3 c = vertices.get(loop[i]).minus(apex);
                weighted = weighted.plus(first.plus(b).plus(c).times(first.inner(b.cross(c))));
            }
        }
        // A tetrahedron's centre is a quarter of the sum of its corners (the apex counts zero); its volume a sixth.
        return apex.plus(weighted.times(Rat.of(1, 24).dividedBy(volumeRat())));
    }

    /** The smallest box along the axes around the piece. */
    public Box bounds() {
        Box known = bounds;
        if (known == null) {
            Vec3 low = vertices.getFirst();
            Vec3 high = low;
            for (Vec3 vertex : vertices) {
                low = Box.lowest(low, vertex);
                high = Box.highest(high, vertex);
            }
            known = new Box(low, high);
            bounds = known;
        }
        return known;
    }

    Span span() {
        Span known = span;
        if (known == null) {
            known = Span.of(bounds().min(), bounds().max());
            span = known;
        }
        return known;
    }

    /** Whether the piece is a box along the axes. */
    public boolean isBox() {
        return facets.size() == 6 && facets.stream().allMatch(facet -> facet.plane().side().isPresent());
    }

    /** Whether a point lies in the piece or on its surface. */
    public boolean contains(Vec3 point) {
        return facets.stream().allMatch(facet -> facet.plane().side(point) <= 0);
    }

    /** The part on the material side of a plane; the new face, if any, carries the given origin. */
    public Optional<Convex> clip(Plane plane, Origin origin) {
        return Optional.ofNullable(ConvexCut.inside(this, new Facet(plane, new int[0], origin)));
    }

    /** The part shared with another piece; its new faces carry the other's origins. */
    public Optional<Convex> intersect(Convex other) {
        if (span().apart(other.span()) || isBeyondAFace(other) || other.isBeyondAFace(this)) {
            return Optional.empty();
        }
        Convex rest = this;
        for (Facet facet : other.facets) {
            Convex kept = ConvexCut.inside(rest, facet);
            if (kept == null) {
                return Optional.empty();
            }
            rest = kept;
        }
        return Optional.of(rest);
    }

    /**
     * Whether this piece lies wholly beyond one face of another: then they share no volume. Parts that lie against each
     * other are told apart by this before anything is cut.
     */
    private boolean isBeyondAFace(Convex other) {
        for (Facet facet : other.facets) {
            boolean beyond = true;
            for (int i = 0; i < vertices.size() && beyond; i++) {
                beyond = facet.plane().side(vertices.get(i)) >= 0;
            }
            if (beyond) {
                return true;
            }
        }
        return false;
    }

    /**
     * What is left when another piece is taken away, as pieces that share no volume; the new faces carry the other's
     * origins.
     */
    public List<Convex> subtract(Convex cutter) {
        List<Convex> left = cutBy(cutter, true);
        return left == null ? List.of(this) : left;
    }

    /**
     * What {@link #subtract} gives, or null when both share no volume.
     *
     * @param lasting whether the cutter leaves a void, so that the faces it makes are its work; else it is material that
     *     stays there
     */
    @Nullable
    List<Convex> cutBy(Convex cutter, boolean lasting) {
        if (span().apart(cutter.span())) {
            return null;
        }
        List<Convex> left = new ArrayList<>();
        Convex rest = this;
        for (Facet facet : cutter.facets) {
            ConvexCut.Halves halves = ConvexCut.split(rest, facet,
                    lasting ? List.of(Paint.by(cutter, facet)) : List.of());
            Convex inside = halves.inside();
            Convex outside = halves.outside();
            if (inside == null) {
                return null;
            }
            if (outside != null) {
                left.add(outside);
            }
            rest = inside;
        }
        return left;
    }

    /** The piece moved by a vector. */
    public Convex translate(Vec3 by) {
        if (by.isZero()) {
            return this;
        }
        return new Convex(
                vertices.stream().map(by::plus).toList(),
                facets.stream().map(facet -> facet.translate(by)).toList());
    }

    /** The piece turned or mirrored about the origin. */
    public Convex turn(Turn turn) {
        List<Facet> turned = new ArrayList<>(facets.size());
        for (Facet facet : facets) {
            int[] loop = turn.mirrors() ? reversed(facet.loop()) : facet.loop();
            turned.add(facet.turn(turn, loop));
        }
        return new Convex(vertices.stream().map(turn::apply).toList(), turned);
    }

    private static int[] reversed(int[] loop) {
        int[] result = new int[loop.length];
        for (int i = 0; i < loop.length; i++) {
            result[i] = loop[loop.length - 1 - i];
        }
        return result;
    }

    /** The same piece with all its faces carrying one origin. */
    public Convex tagged(Origin origin) {
        return new Convex(vertices, facets.stream().map(facet -> facet.withOrigin(origin)).toList());
    }

    Convex withFacets(List<Facet> newFacets) {
        return new Convex(vertices, newFacets);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Convex that
                && java.util.Set.copyOf(vertices).equals(java.util.Set.copyOf(that.vertices));
    }

    @Override
    public int hashCode() {
        return java.util.Set.copyOf(vertices).hashCode();
    }

    @Override
    public String toString() {
        return "Convex" + vertices;
    }
}

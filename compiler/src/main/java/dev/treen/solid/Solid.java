package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;
import org.jspecify.annotations.Nullable;

/**
 * A part as a body: convex pieces that share no volume. Immutable; every operation gives a new solid.
 *
 * <p>The pieces are a way of keeping the body, not a property of it: faces where two pieces of one solid meet are not
 * surfaces, and {@link #surface()} leaves them out.
 */
public final class Solid {

    /** The solid without material. */
    public static final Solid EMPTY = new Solid(List.of());

    private static final int MANY = 32;

    private final List<Convex> pieces;
    private @Nullable Surface surface;
    private @Nullable Span span;
    private @Nullable Box bounds;
    private @Nullable BoxTree tree;

    private Solid(List<Convex> pieces) {
        this.pieces = List.copyOf(pieces);
    }

    /** A box of stock. */
    public static Solid of(Box box) {
        return of(Convex.box(box, Origin.STOCK));
    }

    /** A solid of one convex piece. */
    public static Solid of(Convex piece) {
        return new Solid(List.of(piece));
    }

    /** The union of convex pieces, which may share volume. */
    public static Solid of(List<Convex> pieces) {
        Solid sum = EMPTY;
        for (Convex piece : pieces) {
            sum = sum.union(of(piece));
        }
        return sum;
    }

    /** A solid of pieces that are known to share no volume. */
    static Solid disjoint(List<Convex> pieces) {
        return pieces.isEmpty() ? EMPTY : new Solid(pieces);
    }

    /** The pieces; no two share volume. */
    public List<Convex> pieces() {
        return pieces;
    }

    /** Whether there is no material. */
    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** The volume in cubic millimetres. */
    public BigFraction volume() {
        Rat sum = Rat.ZERO;
        for (Convex piece : pieces) {
            sum = sum.plus(piece.volumeRat());
        }
        return sum.toFraction();
    }

    /** The centre of volume, or nothing for an empty solid. */
    public Optional<Vec3> centroid() {
        if (isEmpty()) {
            return Optional.empty();
        }
        Vec3 weighted = Vec3.ZERO;
        for (Convex piece : pieces) {
            weighted = weighted.plus(piece.centroid().times(piece.volumeRat()));
        }
        return Optional.of(weighted.times(Rat.of(volume()).inverse()));
    }

    /** The smallest box along the axes around the solid, or nothing for an empty one. */
    public Optional<Box> bounds() {
        Box known = bounds;
        if (known == null) {
            known = pieces.stream().map(Convex::bounds).reduce(Box::join).orElse(null);
            bounds = known;
        }
        return Optional.ofNullable(known);
    }

    /** The extent of all pieces together; the solid must not be empty. */
    Span span() {
        Span known = span;
        if (known == null) {
            known = pieces.stream().map(Convex::span).reduce(Span::join).orElseThrow();
            span = known;
        }
        return known;
    }

    /** The pieces that may reach into an extent, in their order; a tree finds them where they are many. */
    List<Convex> near(Span place) {
        if (pieces.size() < MANY) {
            List<Convex> near = new ArrayList<>(pieces.size());
            for (Convex piece : pieces) {
                if (!piece.span().apart(place)) {
                    near.add(piece);
                }
            }
            return near;
        }
        List<Integer> found = new ArrayList<>();
        tree().near(place, found::add);
        return found.stream().sorted().map(pieces::get).toList();
    }

    /** Whether any piece that may reach into an extent is as asked; stops at the first. */
    boolean anyNear(Span place, Predicate<Convex> asked) {
        if (pieces.size() < MANY) {
            for (Convex piece : pieces) {
                if (!piece.span().apart(place) && asked.test(piece)) {
                    return true;
                }
            }
            return false;
        }
        return tree().any(place, number -> asked.test(pieces.get(number)));
    }

    private BoxTree tree() {
        BoxTree known = tree;
        if (known == null) {
            known = new BoxTree(pieces.stream().map(Convex::span).toList());
            tree = known;
        }
        return known;
    }

    /** The true surface: faces without seams, and edges between faces of different planes. Worked out once. */
    public Surface surface() {
        Surface known = surface;
        if (known == null) {
            known = SurfaceBuilder.build(this);
            surface = known;
        }
        return known;
    }

    /** This solid without the cutter; the faces the cut makes carry the given origin. */
    public Solid subtract(Convex cutter, Origin origin) {
        return subtract(cutter.tagged(origin));
    }

    /** This solid without the cutter; each face the cut makes carries the origin of the cutter's face that made it. */
    public Solid subtract(Convex cutter) {
        List<Convex> left = new ArrayList<>(pieces.size() + 4);
        boolean changed = false;
        for (Convex piece : pieces) {
            List<Convex> rest = piece.cutBy(cutter, true);
            changed |= rest != null;
            left.addAll(rest == null ? List.of(Seams.uncover(piece, cutter)) : rest);
        }
        return changed ? disjoint(left) : this;
    }

    /**
     * The same as {@link #subtract(Convex)} for a small hole with many faces: the pieces are first parted at the box round
     * it, so that its faces cut only the material near it.
     */
    public Solid bore(Convex hole) {
        Convex near = Convex.box(hole.bounds(), Origin.STOCK);
        List<Convex> left = new ArrayList<>(pieces.size() + 4);
        boolean changed = false;
        for (Convex piece : pieces) {
            List<Convex> outside = piece.cutBy(near, false);
            Optional<Convex> inside = outside == null ? Optional.empty() : piece.intersect(near);
            List<Convex> rest = inside.isEmpty() ? null : inside.get().cutBy(hole, true);
            if (outside == null || rest == null) {
                left.add(Seams.uncover(piece, hole));
            } else {
                changed = true;
                left.addAll(outside);
                left.addAll(rest);
            }
        }
        return changed ? disjoint(left) : this;
    }

    /** This solid without the other, whose face origins the new faces carry. */
    public Solid subtract(Solid other) {
        Solid rest = this;
        for (Convex piece : other.pieces) {
            rest = rest.subtract(piece);
        }
        return rest;
    }

    /** The material of both. */
    public Solid union(Solid other) {
        if (isEmpty()) {
            return other;
        }
        List<Convex> all = new ArrayList<>(pieces);
        for (Convex piece : other.pieces) {
            List<Convex> extra = List.of(piece);
            for (Convex own : pieces) {
                extra = extra.stream().flatMap(part -> beside(part, own).stream()).toList();
            }
            all.addAll(extra);
        }
        return disjoint(all);
    }

    private static List<Convex> beside(Convex part, Convex own) {
        List<Convex> rest = part.cutBy(own, false);
        return rest == null ? List.of(part) : rest;
    }

    /** The material both share; faces that come from the other solid carry its origins. */
    public Solid intersect(Solid other) {
        if (isEmpty() || other.isEmpty()) {
            return EMPTY;
        }
        List<Convex> shared = new ArrayList<>();
        for (Convex piece : near(other.span())) {
            for (Convex otherPiece : other.near(piece.span())) {
                piece.intersect(otherPiece).ifPresent(shared::add);
            }
        }
        return disjoint(shared);
    }

    /** The material on the inner side of a plane; the face the cut makes carries the given origin. */
    public Solid keep(Plane plane, Origin origin) {
        List<Convex> kept = new ArrayList<>(pieces.size());
        for (Convex piece : pieces) {
            piece.clip(plane, origin).ifPresent(kept::add);
        }
        return disjoint(kept);
    }

    /** The cross-section by a plane: the material's area on it, seen from the side the normal points to. */
    public Region section(Plane plane) {
        Frame frame = Frame.of(plane);
        List<Poly> polys = new ArrayList<>();
        for (Convex piece : pieces) {
            // A piece that only touches the plane from beyond has no part on the material side, and so no area here.
            Optional<Convex> inner = piece.clip(plane, Origin.STOCK);
            inner.ifPresent(half -> half.facets().stream()
                    .filter(facet -> facet.plane().equals(plane))
                    .forEach(facet -> polys.add(frame.flatten(half, facet))));
        }
        return new Region(plane, polys);
    }

    /** Whether a point lies in the material or on its surface. */
    public boolean contains(Vec3 point) {
        return pieces.stream().anyMatch(piece -> piece.contains(point));
    }

    /** The solid moved by a vector. */
    public Solid translate(Vec3 by) {
        return map(piece -> piece.translate(by));
    }

    /** The solid turned or mirrored about the origin. */
    public Solid turn(Turn turn) {
        return map(piece -> piece.turn(turn));
    }

    /** The solid with all its faces carrying one origin, for instance a tenon before it is added to a rail. */
    public Solid tagged(Origin origin) {
        return map(piece -> piece.tagged(origin));
    }

    private Solid map(UnaryOperator<Convex> change) {
        return disjoint(pieces.stream().map((Function<Convex, Convex>) change).toList());
    }

    /** Whether both fill the same space, however they are divided into pieces. */
    public boolean sameBody(Solid other) {
        return subtract(other).isEmpty() && other.subtract(this).isEmpty();
    }

    @Override
    public String toString() {
        return "Solid" + pieces;
    }
}

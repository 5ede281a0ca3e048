package dev.treen.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The wood that would be left between a cut and a face of its part, measured square to that face.
 *
 * @param face the face of the uncut part
 * @param squared the square of the thinnest place in square millimetres; zero where the cut reaches the face
 */
public record Wall(SurfaceFace face, BigFraction squared) {

    /** The thinnest place in millimetres, to double precision. */
    public double thickness() {
        return Math.sqrt(squared.doubleValue());
    }

    /** The exact thinnest place in millimetres, if it has no root in it; faces square to an axis always have one. */
    public Optional<BigFraction> exact() {
        return Roots.exact(Rat.of(squared)).map(Rat::toFraction);
    }

    /**
     * The walls between a cut and all faces that lie over it, thinnest first. For a part that has other cuts already,
     * their faces count as well, so the wood between a groove and a mortise is found.
     *
     * <p>Exact for faces of any slant: the cut is first narrowed to what lies square under the face. A void between the cut
     * and a far face does not make that far wall thinner, but the void's own near face is in the list.
     */
    public static List<Wall> beside(Solid part, Convex cut) {
        List<Convex> waste = new ArrayList<>();
        part.pieces().forEach(piece -> piece.intersect(cut).ifPresent(waste::add));
        List<Wall> walls = new ArrayList<>();
        for (SurfaceFace face : part.surface().faces()) {
            nearest(face, waste).ifPresent(squared -> walls.add(new Wall(face, squared.toFraction())));
        }
        walls.sort(Comparator.comparing((Wall wall) -> Rat.of(wall.squared())));
        return walls;
    }

    private static Optional<Rat> nearest(SurfaceFace face, List<Convex> waste) {
        Plane plane = face.plane();
        List<Rat> depths = new ArrayList<>();
        for (List<Vec3> outline : face.region().pieces()) {
            for (Convex piece : waste) {
                under(outline, plane, piece).ifPresent(part -> depths.add(depth(plane, part)));
            }
        }
        Rat length = plane.normal().square();
        return depths.stream().min(Comparator.naturalOrder()).map(depth -> depth.square().dividedBy(length));
    }

    /** The part of a piece that lies inside the face's plane and square under the outline. */
    private static Optional<Convex> under(List<Vec3> outline, Plane plane, Convex piece) {
        Optional<Convex> rest = piece.clip(plane, Origin.STOCK);
        for (int i = 0; i < outline.size() && rest.isPresent(); i++) {
            Vec3 from = outline.get(i);
            Vec3 edge = outline.get((i + 1) % outline.size()).minus(from);
            Plane beside = Plane.through(from, edge.cross(plane.normal()));
            rest = rest.flatMap(part -> part.clip(beside, Origin.STOCK));
        }
        return rest;
    }

    /** How far below the plane the highest corner lies, times the length of the normal. */
    private static Rat depth(Plane plane, Convex piece) {
        Rat highest = plane.value(piece.vertices().getFirst());
        for (Vec3 vertex : piece.vertices()) {
            highest = highest.max(plane.value(vertex));
        }
        return highest.negate();
    }
}

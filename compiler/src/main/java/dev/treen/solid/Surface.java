package dev.treen.solid;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The true surface of a solid.
 *
 * @param faces the areas open to the outside, one for each plane and origin
 * @param edges where the surface turns from one plane into another; two faces of one plane have no edge between them
 */
public record Surface(List<SurfaceFace> faces, List<SurfaceEdge> edges) {

    /** Takes its own copies of the lists. */
    public Surface {
        faces = List.copyOf(faces);
        edges = List.copyOf(edges);
    }

    /** The total area in square millimetres, to double precision. */
    public double area() {
        return faces.stream().mapToDouble(face -> face.region().area()).sum();
    }

    /** How far the faces made by the cut of this name reach, or nothing where it left none. */
    public Optional<Region.Extent> extent(String cut) {
        return madeBy(cut).flatMap(face -> face.region().extent().stream()).reduce(Region.Extent::join);
    }

    /** The faces made by the cut of this name. */
    public Stream<SurfaceFace> madeBy(String cut) {
        return faces.stream().filter(face -> face.origin().name().equals(cut));
    }
}

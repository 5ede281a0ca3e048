package dev.treen.solid;

import java.util.List;

/**
 * Keeps the origins of faces right when a cut takes away one piece beside a seam and leaves the other untouched.
 *
 * <p>Where the cutter lay, the untouched piece's seam has then become a surface, and that cut made it.
 */
final class Seams {

    private Seams() {
    }

    /** The piece, its seams painted where the cutter lies against them. */
    static Convex uncover(Convex piece, Convex cutter) {
        if (piece.span().apart(cutter.span()) || piece.facets().stream().noneMatch(Facet::seam)) {
            return piece;
        }
        List<Facet> facets = piece.facets().stream().map(facet -> uncover(piece, facet, cutter)).toList();
        return facets.equals(piece.facets()) ? piece : piece.withFacets(facets);
    }

    private static Facet uncover(Convex piece, Facet facet, Convex cutter) {
        if (!facet.seam()) {
            return facet;
        }
        Plane across = facet.plane().flip();
        for (Facet other : cutter.facets()) {
            if (other.plane().equals(across)) {
                Frame frame = Frame.of(across);
                boolean meets = frame.flatten(piece, facet).intersect(frame.flatten(cutter, other)).isPresent();
                return meets ? facet.laidOpen(Paint.by(cutter, other)) : facet;
            }
        }
        return facet;
    }
}

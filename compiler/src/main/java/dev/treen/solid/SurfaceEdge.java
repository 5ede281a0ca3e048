package dev.treen.solid;

import java.util.List;

/**
 * A straight stretch where faces of different planes meet.
 *
 * @param from one end
 * @param to the other end
 * @param rims the faces that end here: two, or more where the body touches itself along an edge
 */
public record SurfaceEdge(Vec3 from, Vec3 to, List<Rim> rims) {

    /**
     * A face that ends at an edge.
     *
     * @param plane the plane of the face, looking out of the material
     * @param origin the cut that made the face
     */
    public record Rim(Plane plane, Origin origin) {}

    /** Takes its own copy of the rims. */
    public SurfaceEdge {
        rims = List.copyOf(rims);
    }

    /** Whether the edge lies between two facets of one round surface, and so is no edge to the eye. */
    public boolean isSmooth() {
        return rims.size() == 2
                && rims.get(0).origin().round()
                && rims.get(0).origin().equals(rims.get(1).origin());
    }
}

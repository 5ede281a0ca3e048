package dev.treen.solid;

/**
 * A flat area of a solid's surface.
 *
 * @param origin the cut that made it
 * @param region its plane, whose normal points out of the material, and its area, which may be in several bits and have
 *     holes
 */
public record SurfaceFace(Origin origin, Region region) {

    /** The plane of the face; its normal points out of the material. */
    public Plane plane() {
        return region.plane();
    }
}

package dev.treen.solid;

/** A face of a convex piece, its corners as indexes into the piece's vertices, counter-clockwise from outside. */
final class Facet {

    private final Plane plane;
    private final int[] loop;
    private final Origin origin;
    private final boolean seam;

    /** The loop is handed over: the caller does not change it any more. */
    Facet(Plane plane, int[] loop, Origin origin, boolean seam) {
        this.plane = plane;
        this.loop = loop;
        this.origin = origin;
        this.seam = seam;
    }

    Plane plane() {
        return plane;
    }

    /** The corners' indexes; not to be changed. */
    int[] loop() {
        return loop;
    }

    Origin origin() {
        return origin;
    }

    boolean seam() {
        return seam;
    }

    Facet with(Origin newOrigin, boolean newSeam) {
        return new Facet(plane, loop, newOrigin, newSeam);
    }
}

package dev.treen.solid;

/**
 * Where a face of a solid came from: the stock itself, or a cut named by the caller (a joint, a chamfer, a hole).
 *
 * @param name the caller's name for the cut; empty for the faces of the stock
 * @param round whether the face is one facet of a round surface; the edge between two facets of the same round surface is
 *     drawn only where it is a silhouette
 */
public record Origin(String name, boolean round) {

    /** The faces a part had before anything was cut. */
    public static final Origin STOCK = new Origin("", false);

    /** A flat face made by the cut with this name. */
    public static Origin cut(String name) {
        return new Origin(name, false);
    }

    /** A facet of a round face made by the cut with this name. */
    public static Origin round(String name) {
        return new Origin(name, true);
    }

    /** Whether the face was there before any cut. */
    public boolean isStock() {
        return name.isEmpty() && !round;
    }
}

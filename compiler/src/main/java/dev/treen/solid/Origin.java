package dev.treen.solid;

/**
 * Where a face of a solid came from: the stock itself, or a cut named by the caller (a joint, a chamfer, a hole).
 *
 * @param name the caller's name for the cut; empty for the faces of the stock
 * @param form whether the face is one facet of a round surface; the edge between two facets of the same round surface is
 *     drawn only where it is a silhouette
 */
public record Origin(String name, Form form) {
    /** The surface that a face belongs to. */
    public enum Form {
        /** A plane. */
        FLAT,
        /** A cylinder. */
        ROUND,
        /** A cone. */
        CONE
    }

    /** The faces a part had before anything was cut. */
    public static final Origin STOCK = new Origin("", Form.FLAT);

    /** A flat face made by the cut with this name. */
    public static Origin cut(String name) {
        return new Origin(name, Form.FLAT);
    }

    /** A facet of a round face made by the cut with this name. */
    public static Origin round(String name) {
        return new Origin(name, Form.ROUND);
    }

    /** A facet of a cone made by the cut with this name. */
    public static Origin cone(String name) {
        return new Origin(name, Form.CONE);
    }

    /** Whether the face is a facet of a round surface. */
    public boolean round() {
        return form != Form.FLAT;
    }

    /** Whether the face was there before any cut. */
    public boolean isStock() {
        return name.isEmpty() && !round();
    }
}

package dev.treen.solid;

/**
 * A way of looking at parts from far away, so that parallel lines stay parallel on paper.
 *
 * <p>Three arrows square to each other: to the viewer, to the right on paper and up on paper. They need not be of length
 * one, so a pictorial view too has whole numbers in it and all questions of what hides what are answered exactly; only
 * {@link #onPaper(Vec2)} brings in the roots.
 *
 * @param toViewer from the parts to the viewer
 * @param right to the right on paper
 * @param up up on paper
 */
public record View(Vec3 toViewer, Vec3 right, Vec3 up) {

    /** Looking at the front: x to the right, z up. */
    public static final View FRONT = from(Side.FRONT);
    /** Looking from above: x to the right, y up. */
    public static final View TOP = from(Side.TOP);
    /** Looking at the right end: y to the right, z up. */
    public static final View RIGHT = from(Side.RIGHT);

    /**
     * From the front, the right and above, with the three axes shortened alike (ISO 5456-3 isometric: all axes at 120°;
     * from memory).
     */
    public static final View ISOMETRIC = pictorial(Vec3.of(1, -1, 1));

    /**
     * From the front and a little to the right and above: width and height full, depth half (ISO 5456-3 dimetric, axes at
     * 7° and 42°; from memory). The viewer's arrow is (1, −√7, 1) with 127/48 for √7, which turns it by less than 0.002°.
     */
    public static final View DIMETRIC = pictorial(Vec3.of(48, -127, 48));

    /**
     * Checks the arrows.
     *
     * @throws IllegalArgumentException if they are not square to each other, or "to the viewer" is not on the side from
     *     which "up" lies to the left of "right"
     */
    public View {
        boolean square = toViewer.inner(right).isZero() && right.inner(up).isZero() && up.inner(toViewer).isZero();
        if (!square || right.cross(up).inner(toViewer).signum() <= 0) {
            throw new IllegalArgumentException("a view needs three arrows square to each other, by the right hand");
        }
    }

    /** Looking at one side; ends and front stand upright, top and bottom have x to the right. */
    public static View from(Side side) {
        Vec3 up = switch (side) {
            case FRONT, BACK, LEFT, RIGHT -> Side.TOP.unit();
            case TOP -> Side.BACK.unit();
            case BOTTOM -> Side.FRONT.unit();
        };
        return new View(side.unit(), up.cross(side.unit()), up);
    }

    /**
     * Looking against an arrow, with z upright on paper.
     *
     * @throws IllegalArgumentException if the arrow is upright itself or zero
     */
    public static View pictorial(Vec3 toViewer) {
        Vec3 right = Side.TOP.unit().cross(toViewer);
        return new View(toViewer, right, toViewer.cross(right).primitive());
    }

    /** The exact flat coordinates of a point, in multiples of the arrows: millimetres where these are of length one. */
    public Vec2 flatten(Vec3 point) {
        return new Vec2(right.inner(point), up.inner(point));
    }

    /** Where flat coordinates lie on paper at full scale, in millimetres. */
    public Spot onPaper(Vec2 flat) {
        return new Spot(flat.u.toDouble() / right.length(), flat.v.toDouble() / up.length());
    }

    /** Where a point lies on paper at full scale, in millimetres. */
    public Spot onPaper(Vec3 point) {
        return onPaper(flatten(point));
    }

    /** Flat coordinates and, as third, how near to the viewer. */
    Vec3 withDepth(Vec3 point) {
        return new Vec3(right.inner(point), up.inner(point), toViewer.inner(point));
    }

    /**
     * A spot on paper.
     *
     * @param x to the right, in millimetres
     * @param y up, in millimetres
     */
    public record Spot(double x, double y) {}
}

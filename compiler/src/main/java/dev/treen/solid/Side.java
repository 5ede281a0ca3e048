package dev.treen.solid;

/** One of the six ways along an axis, named after the surface of a part that looks that way. */
public enum Side {
    /** Towards smaller x. */
    LEFT(Axis.X, -1),
    /** Towards greater x. */
    RIGHT(Axis.X, 1),
    /** Towards smaller y, to the viewer. */
    FRONT(Axis.Y, -1),
    /** Towards greater y. */
    BACK(Axis.Y, 1),
    /** Towards smaller z. */
    BOTTOM(Axis.Z, -1),
    /** Towards greater z. */
    TOP(Axis.Z, 1);

    private final Axis axis;
    private final int sign;

    Side(Axis axis, int sign) {
        this.axis = axis;
        this.sign = sign;
    }

    /** The axis this way runs along. */
    public Axis axis() {
        return axis;
    }

    /** Plus one when this way goes towards greater coordinates, else minus one. */
    public int sign() {
        return sign;
    }

    /** The other way along the same axis. */
    public Side opposite() {
        return of(axis, -sign);
    }

    /** The vector of length one that points this way. */
    public Vec3 unit() {
        return Vec3.along(axis, Rat.of(sign));
    }

    /** The way along {@code axis} with the given sign: plus one or minus one. */
    public static Side of(Axis axis, int sign) {
        return switch (axis) {
            case X -> sign < 0 ? LEFT : RIGHT;
            case Y -> sign < 0 ? FRONT : BACK;
            case Z -> sign < 0 ? BOTTOM : TOP;
        };
    }
}

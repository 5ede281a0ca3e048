package dev.treen.solid;

/**
 * A line in flat coordinates in one canonical form, so that pieces of the same line find each other by equality.
 *
 * @param way its direction: whole numbers without a common divisor, pointing to greater u, or to greater v when upright
 * @param offset the cross product of the direction with any point of the line
 */
record Line2(Vec2 way, Rat offset) {

    static Line2 through(Vec2 from, Vec2 to) {
        Vec2 along = to.minus(from);
        Rat factor = Rat.primitiveFactor(along.u, along.v, Rat.ZERO);
        boolean back = along.u.signum() < 0 || (along.u.isZero() && along.v.signum() < 0);
        Rat signed = back ? factor.negate() : factor;
        Vec2 way = new Vec2(along.u.times(signed), along.v.times(signed));
        return new Line2(way, way.cross(from));
    }

    private boolean upright() {
        return way.u.isZero();
    }

    /** Where a point of the line lies along it. */
    Rat parameter(Vec2 point) {
        return upright() ? point.v : point.u;
    }

    /** The point of the line with the given parameter. */
    Vec2 point(Rat parameter) {
        // way.u · v − way.v · u = offset
        return upright()
                ? new Vec2(offset.dividedBy(way.v).negate(), parameter)
                : new Vec2(parameter, offset.plus(way.v.times(parameter)).dividedBy(way.u));
    }
}

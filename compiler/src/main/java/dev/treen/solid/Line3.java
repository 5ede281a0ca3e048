package dev.treen.solid;

/**
 * A line in space in one canonical form, so that pieces of the same line find each other by equality.
 *
 * @param way its direction: whole numbers without a common divisor, the first that is not zero positive
 * @param moment the cross product of any point of the line with the direction (the line's Plücker moment)
 */
record Line3(Vec3 way, Vec3 moment) {

    static Line3 through(Vec3 from, Vec3 to) {
        Vec3 way = to.minus(from).primitive();
        if (way.at(leading(way)).signum() < 0) {
            way = way.negate();
        }
        return new Line3(way, from.cross(way));
    }

    private static Axis leading(Vec3 way) {
        return !way.x.isZero() ? Axis.X : !way.y.isZero() ? Axis.Y : Axis.Z;
    }

    /** Where a point of the line lies along it. */
    Rat parameter(Vec3 point) {
        return point.at(leading(way));
    }

    /** The point of the line with the given parameter. */
    Vec3 point(Rat parameter) {
        // The point nearest the origin is way × moment / |way|²; from there along the line to the parameter.
        Vec3 nearest = way.cross(moment).times(way.inner(way).inverse());
        Axis axis = leading(way);
        Rat steps = parameter.minus(nearest.at(axis)).dividedBy(way.at(axis));
        return nearest.plus(way.times(steps));
    }
}

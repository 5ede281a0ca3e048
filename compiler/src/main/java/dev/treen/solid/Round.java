package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Round things as solids: dowels, screws, the holes and countersinks for them.
 *
 * <p>A round body is a prism of {@link #SIDES} sides whose corners lie exactly on the circle. Its sides lie inside the
 * circle by at most r (1 − cos(180°/SIDES)), 0.9 % of the radius, and its volume is that of a {@link #SIDES}-gon. A dowel
 * and the hole of the same radius get the same prism, so they fit face to face. A cone has {@link #SIDES} sides whose
 * corners lie on the circles at both of its ends; its volume is less than the true one in the same share. Checks that depend on the last percent of
 * a hole's radius must be made on the radius, not on the solid.
 */
public final class Round {

    /** The number of sides: a multiple of four, so that the corners reach the circle along both axes. */
    public static final int SIDES = 24;

    private Round() {
    }

    /**
     * A rod or hole along an axis.
     *
     * @param start the middle of the end it starts from
     * @param to the way it runs
     * @param length its length in millimetres, above zero
     * @param radius its radius in millimetres, above zero
     * @param name the name its faces carry; its long faces are drawn as one round surface
     */
    public static Convex rod(Vec3 start, Side to, BigFraction length, BigFraction radius, String name) {
        Convex rod = Shapes.prismOfRound(outline(start, to, radius), to.unit().times(length), Origin.round(name));
        return withFlatEnds(rod, to, name);
    }

    /**
     * A countersink: the frustum of a cone along an axis, its corners on both circles.
     *
     * @param start the middle of its wider or narrower end
     * @param to the way it runs from there
     * @param length its length in millimetres, above zero
     * @param first the radius at its start, above zero
     * @param last the radius at its other end, above zero
     * @param name the name its faces carry; its leaning faces are drawn as one round surface
     */
    public static Convex cone(
            Vec3 start, Side to, BigFraction length, BigFraction first, BigFraction last, String name) {
        Vec3 end = start.plus(to.unit().times(length));
        Convex cone = Shapes.frustumOfRound(outline(start, to, first), outline(end, to, last), Origin.cone(name));
        return withFlatEnds(cone, to, name);
    }

    private static List<Vec3> outline(Vec3 middle, Side to, BigFraction radius) {
        List<Vec3> outline = new ArrayList<>(SIDES);
        Rat r = Rat.of(radius);
        for (int i = 0; i < SIDES; i++) {
            Vec2 spot = Directions.rational(360.0 * i / SIDES);
            Rat a = spot.u.times(r);
            Rat b = spot.v.times(r);
            outline.add(middle.plus(switch (to.axis()) {
                case X -> new Vec3(Rat.ZERO, a, b);
                case Y -> new Vec3(b, Rat.ZERO, a);
                case Z -> new Vec3(a, b, Rat.ZERO);
            }));
        }
        return outline;
    }

    private static Convex withFlatEnds(Convex round, Side to, String name) {
        return round.withFacets(round.facets().stream()
                .map(f -> f.plane().side().map(Side::axis).filter(to.axis()::equals).isPresent()
                        ? f.withOrigin(Origin.cut(name)) : f)
                .toList());
    }
}

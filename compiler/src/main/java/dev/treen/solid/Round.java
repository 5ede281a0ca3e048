package dev.treen.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Round things as solids: dowels, screws and the holes for them.
 *
 * <p>A round body is a prism of {@link #SIDES} sides whose corners lie exactly on the circle. Its sides lie inside the
 * circle by at most r (1 − cos(180°/SIDES)), 0.9 % of the radius, and its volume is that of a {@link #SIDES}-gon. A dowel
 * and the hole of the same radius get the same prism, so they fit face to face. Checks that depend on the last percent of
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
        List<Vec3> outline = new ArrayList<>(SIDES);
        Rat r = Rat.of(radius);
        for (int i = 0; i < SIDES; i++) {
            Vec2 spot = Directions.rational(360.0 * i / SIDES);
            Rat a = spot.u.times(r);
            Rat b = spot.v.times(r);
            outline.add(start.plus(switch (to.axis()) {
                case X -> new Vec3(Rat.ZERO, a, b);
                case Y -> new Vec3(b, Rat.ZERO, a);
                case Z -> new Vec3(a, b, Rat.ZERO);
            }));
        }
        Convex rod = Shapes.prismOfRound(outline, to.unit().times(length), Origin.round(name));
        return rod.withFacets(rod.facets().stream()
                .map(f -> f.plane().side().map(Side::axis).filter(to.axis()::equals).isPresent()
                        ? f.withOrigin(Origin.cut(name)) : f)
                .toList());
    }
}

package dev.treen.wood;

import java.util.OptionalDouble;

/**
 * What wood weighs with the water in it. Wood Handbook FPL-GTR-190 ch. 4: shrinkage goes evenly with moisture from fibre
 * saturation down (Eq. 4-7), is 26.5 times the basic specific gravity in percent when ovendry (Eq. 4-10), and raises the
 * specific gravity as the volume shrinks (Eq. 4-11); density is that with the mass of the water (Eq. 4-12).
 */
public final class Density {
    /** Who says how density goes with moisture. */
    public static final String SOURCE = "Wood Handbook FPL-GTR-190 ch. 4, Eq. 4-7 and 4-10 to 4-12";

    private static final double WATER = 1000;
    private static final double TABLES = 12;

    private Density() {
    }

    /**
     * The density of a species in kg/m³, on the volume at that moisture.
     *
     * @param strength its row of the tables, whose specific gravity is ovendry mass on the volume at 12 % or on the green one
     * @param moisture in percent; above fibre saturation wood swells no more and only gets heavier
     */
    public static OptionalDouble of(Strength strength, double moisture, Figures figures) {
        OptionalDouble basic = basic(strength, figures);
        return basic.isEmpty() ? basic : OptionalDouble.of(ofBasic(basic.getAsDouble(), moisture, figures));
    }

    /** The density in kg/m³ at some moisture in percent of wood of a basic specific gravity: ovendry mass on green volume. */
    public static double ofBasic(double gravity, double moisture, Figures figures) {
        double now = gravity / (1 - shrinkage(moisture, figures) * gravity);
        return WATER * now * (1 + moisture / 100);
    }

    private static OptionalDouble basic(Strength strength, Figures figures) {
        if (strength.density().isPresent()) {
            return OptionalDouble.of(
                    green(strength.density().getAsDouble() / WATER / (1 + TABLES / 100), figures));
        }
        return strength.specificGravity().isPresent()
                ? OptionalDouble.of(green(strength.specificGravity().getAsDouble(), figures))
                : strength.basicSpecificGravity();
    }

    /** The basic specific gravity of what has {@code gravity} at 12 %: Eq. 4-11 solved for it. */
    private static double green(double gravity, Figures figures) {
        return gravity / (1 + shrinkage(TABLES, figures) * gravity);
    }

    /** How much smaller the volume is than the green one, as a share, for each unit of basic specific gravity. */
    private static double shrinkage(double moisture, Figures figures) {
        double saturation = figures.value("movement.fibre-saturation");
        return figures.value("density.shrinkage") * Math.max(0, 1 - moisture / saturation);
    }
}

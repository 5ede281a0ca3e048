package dev.treen.wood;

import java.util.OptionalDouble;

/**
 * Sag of shelves (rules S-01 and S-02): Wood Handbook FPL-GTR-190 ch. 9, eq. 9-2 and Table 9-1, with the shear term.
 * A guide for furniture, not a structural design: what people stand or lie on, and what hangs over heads, is for
 * the local code and licensed practice.
 */
public final class Shelves {

    private Shelves() {
    }

    /** How the ends are held. */
    public enum Ends {
        /** Lying on supports: the safe assumption. */
        RESTING(5.0 / 384, 1.0 / 48),
        /**
         * Housed and glued in stiff sides: half-way between resting and clamped (1/384 and 1/192), which is the most to
         * count on (common practice, no source).
         */
        HOUSED_AND_GLUED(3.0 / 384, 2.5 / 192);

        private final double even;
        private final double middle;

        Ends(double even, double middle) {
            this.even = even;
            this.middle = middle;
        }
    }

    /** What lies on a shelf. */
    public sealed interface Load {
        /** Spread evenly, in N for each mm of span; the shelf's own weight is added by the caller. */
        record Even(double perMm) implements Load {}

        /** At mid-span, in N. */
        record Middle(double newtons) implements Load {}
    }

    /**
     * A shelf under load.
     *
     * @param bendingMm first sag by bending
     * @param shearMm what shear adds to it
     * @param laterMm the sum after years under the same load
     * @param spanOverSag span divided by {@code laterMm}
     * @param verdict against {@code shelf-sags}
     */
    public record Sag(double bendingMm, double shearMm, double laterMm, double spanOverSag, Verdict verdict) {

        /** Both loads at once: small deflections add up. */
        public Sag and(Sag other, double spanMm, Figures figures) {
            double later = laterMm + other.laterMm;
            return new Sag(
                    bendingMm + other.bendingMm,
                    shearMm + other.shearMm,
                    later,
                    spanMm / later,
                    judge(spanMm, later, figures));
        }

        /** The first sag in all. */
        public double firstMm() {
            return bendingMm + shearMm;
        }
    }

    /**
     * The sag of a shelf: {@code k_b·W·L³/(E·I) + k_s·W·L/(G·A')} with k_b 5/384 and k_s 1/8 for an even load, 1/48 and
     * 1/4 for one in the middle, and A' = 5/6 of the section.
     *
     * @param spanMm between the supports
     * @param section its cross-section, of moduli already lowered for knots and luck
     */
    public static Sag sag(double spanMm, Section section, Load load, Ends ends, Figures figures) {
        double whole = switch (load) {
            case Load.Even even -> even.perMm() * spanMm;
            case Load.Middle middle -> middle.newtons();
        };
        double bendingFactor = switch (load) {
            case Load.Even even -> ends.even;
            case Load.Middle middle -> ends.middle;
        };
        double shearFactor = switch (load) {
            case Load.Even even -> 1.0 / 8;
            case Load.Middle middle -> 1.0 / 4;
        };
        double bending = bendingFactor * whole * spanMm * spanMm * spanMm / section.stiffness();
        double shear = shearFactor * whole * spanMm / section.shearStiffness(figures.value("shelf.shear-ratio"));
        double later = (bending + shear) * figures.value("shelf.creep");
        return new Sag(bending, shear, later, spanMm / later, judge(spanMm, later, figures));
    }

    /** How a sag stands against the span ({@code shelf-sags}). */
    public static Verdict judge(double spanMm, double sagMm, Figures figures) {
        Figure error = figures.get("shelf-sags.error");
        Figure warning = figures.get("shelf-sags.warning");
        return sagMm > spanMm / error.value()
                ? Verdict.crossed(error)
                : sagMm > spanMm / warning.value() ? Verdict.crossed(warning) : Verdict.FINE;
    }

    /**
     * The longest span, in mm, that sags no more at first than a share of itself, by bending alone, with its ends
     * resting: the form behind the published span tables.
     *
     * @param spanOverSag the limit, such as 144
     * @param perMm even load in N for each mm
     */
    public static double longestSpanMm(Section section, double perMm, double spanOverSag) {
        return Math.cbrt(section.stiffness() / (Ends.RESTING.even * spanOverSag * perMm));
    }

    /** The modulus to reckon with, in MPa: the species' mean, lowered for knots and luck; empty where none is known. */
    public static OptionalDouble modulusMpa(Species species, Figures figures) {
        double share = figures.value("shelf.modulus-share");
        return species.strength()
                .map(strength -> strength.modulusOfElasticity().stream()
                        .map(mean -> mean * share)
                        .findFirst())
                .orElseGet(OptionalDouble::empty);
    }

    /** Mass of a board in kg. */
    public static double massKg(double lengthMm, double widthMm, double thicknessMm, double densityKgM3) {
        return lengthMm * widthMm * thicknessMm * 1e-9 * densityKgM3;
    }
}

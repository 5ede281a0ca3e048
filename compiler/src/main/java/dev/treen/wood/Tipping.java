package dev.treen.wood;

/**
 * Hints about cases that tip forward (rule S-06). Statics only: carpets, climbing children and worn floors are not in
 * it. Furniture for sale, and clothing storage above all, is for the product law of the place; a case that could fall
 * on someone is fixed to the wall whatever this says.
 */
public final class Tipping {

    private Tipping() {
    }

    /**
     * The downward push on a drawer's front that just tips a case, with every drawer open.
     *
     * @param caseKg mass of the case without drawers
     * @param caseMm distance of its centre of mass behind the front feet
     * @param drawersKg mass of all drawers with what is in them
     * @param reachMm distance of their common centre of mass before the front feet
     * @param pushMm distance of the push before the front feet
     * @return the push in N; zero or less means it falls by itself
     */
    public static double pushN(
            double caseKg, double caseMm, double drawersKg, double reachMm, double pushMm, Figures figures) {
        return figures.value("gravity") * (caseKg * caseMm - drawersKg * reachMm) / pushMm;
    }

    /** Whether a case is so high for its depth, or so high at all, that it wants fixing ({@code needs-anchor}). */
    public static Verdict needsAnchor(double heightMm, double depthMm, Figures figures) {
        Figure ratio = figures.get("needs-anchor.ratio");
        Verdict slender = heightMm > ratio.value() * depthMm ? Verdict.crossed(ratio) : Verdict.FINE;
        return slender.or(Verdict.above(heightMm, figures.get("needs-anchor.height")));
    }

    /**
     * Whether a free-standing unit for clothes is large enough for the rule of US law on clothing storage, all three
     * limits reached; that rule asks for tests, a restraint and labels, and defers to nobody's arithmetic.
     */
    public static boolean isClothingStorage(double heightMm, double massKg, double enclosedDm3, Figures figures) {
        return heightMm >= figures.value("clothing-storage.height")
                && massKg >= figures.value("clothing-storage.mass")
                && enclosedDm3 >= figures.value("clothing-storage.volume");
    }
}

package dev.treen.wood;

/** How boards go hollow across their width (rules M-17 and M-18, derived). */
public final class Cupping {

    private Cupping() {
    }

    /** The face that goes hollow. */
    public enum Hollow {
        /** The face that looked to the bark, on drying. */
        BARK_SIDE,
        /** The face that looked to the pith, on swelling. */
        PITH_SIDE,
        /** Neither. */
        NONE
    }

    /**
     * A board gone hollow through its rings.
     *
     * @param depthMm of the hollow at mid-width
     * @param hollow which face
     */
    public record Cup(double depthMm, Hollow hollow) {}

    /**
     * The hollow of a flat-sawn board (M-17). Under uniform strain along and across the rings a point at radius r and
     * angle ψ about the pith goes to {@code (r(1 + ε_R), ψ·k)} with {@code k = (1 + ε_T)/(1 + ε_R)}; a flat face at
     * distance R from the pith becomes an arc of depth
     * {@code (1 + ε_R)·|√(R² + x²)·cos(k·atan(x/R)) − R|}, x being half the width.
     *
     * @param widthMm of the board
     * @param pithMm distance of the face from the pith
     * @param fromPercent moisture content when it was flat
     * @param toPercent moisture content now
     */
    public static Cup ofRings(
            double widthMm, double pithMm, Coefficients coefficients, double fromPercent, double toPercent) {
        double tangential = strain(coefficients, coefficients.tangential(), fromPercent, toPercent);
        double radial = strain(coefficients, coefficients.radial(), fromPercent, toPercent);
        double half = widthMm / 2;
        double turned = (1 + tangential) / (1 + radial) * Math.atan(half / pithMm);
        double depth = (1 + radial) * Math.abs(Math.hypot(pithMm, half) * Math.cos(turned) - pithMm);
        Hollow hollow = tangential < radial
                ? Hollow.BARK_SIDE
                : tangential > radial ? Hollow.PITH_SIDE : Hollow.NONE;
        return new Cup(depth, hollow);
    }

    private static double strain(Coefficients of, double perPercent, double from, double to) {
        Coefficient alone = new Coefficient(perPercent, Direction.WIDTH, 0, of, of.citation());
        return Movement.change(1, alone, from, to).changeMm();
    }

    /** Whether a hollow shows on a free face. */
    public static Verdict judge(Cup cup, Figures figures) {
        return Verdict.above(cup.depthMm(), figures.get("cups.warning"));
    }

    /** Whether a hollow harms a lid, which must lie true. */
    public static Verdict judgeLid(Cup cup, Figures figures) {
        return Verdict.above(cup.depthMm(), figures.get("cups.lid.warning"));
    }

    /**
     * The hollow of a resawn leaf once its faces even out, in mm (M-18): curvature {@code C·ΔM/t}, depth an eighth of
     * the width squared times that. The wetter face shrinks more and becomes hollow. Case-hardened stock moves at once
     * and by more; no formula tells, so test a fork cut from the board.
     *
     * @param widthMm of the leaf
     * @param thicknessMm of the leaf
     * @param coefficient of its width
     * @param points moisture of one face less that of the other
     */
    public static double ofResawingMm(
            double widthMm, double thicknessMm, Coefficient coefficient, double points) {
        return coefficient.perPercent() * Math.abs(points) * widthMm * widthMm / (8 * thicknessMm);
    }
}

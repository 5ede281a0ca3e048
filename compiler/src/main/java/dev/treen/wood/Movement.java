package dev.treen.wood;

/** Swelling and shrinking of one size with moisture (rules M-02 to M-04 and M-22). */
public final class Movement {

    private Movement() {
    }

    /**
     * The change of a size between two moisture contents. Between 6 and 14 % it goes in proportion to moisture
     * (M-02); beyond, by way of total shrinkage (M-02b), which is taken from the same coefficient so that the
     * two meet near the border. Above fibre saturation wood does not move.
     *
     * @param sizeMm the size at {@code fromPercent}, in mm
     * @param coefficient how much it moves
     * @param fromPercent moisture content before
     * @param toPercent moisture content after
     */
    public static Change change(double sizeMm, Coefficient coefficient, double fromPercent, double toPercent) {
        double saturation = coefficient.from().fibreSaturation();
        double from = Math.min(fromPercent, saturation);
        double to = Math.min(toPercent, saturation);
        boolean linear = Math.min(from, to) >= Limits.LINEAR_FROM && Math.max(from, to) <= Limits.LINEAR_TO;
        double grown = linear
                ? sizeMm * coefficient.perPercent() * (to - from)
                : fromGreen(sizeMm, shrinkageOf(coefficient.perPercent(), saturation), saturation, from, to);
        return new Change(
                sizeMm,
                fromPercent,
                toPercent,
                coefficient,
                linear ? Change.Method.LINEAR : Change.Method.FROM_GREEN,
                grown);
    }

    /** The change of a size from the bench to the wettest the part ever is; never negative. */
    public static Change swelling(double sizeMm, Coefficient coefficient, Seasons seasons) {
        return change(sizeMm, coefficient, seasons.bench(), seasons.wettest());
    }

    /** The change of a size from the bench to the driest the part ever is; never positive. */
    public static Change shrinking(double sizeMm, Coefficient coefficient, Seasons seasons) {
        return change(sizeMm, coefficient, seasons.bench(), seasons.driest());
    }

    /** How far a size travels in all between its extremes, reckoned from its size at the bench; in mm. */
    public static double travelMm(double sizeMm, Coefficient coefficient, Seasons seasons) {
        return swelling(sizeMm, coefficient, seasons).changeMm()
                - shrinking(sizeMm, coefficient, seasons).changeMm();
    }

    /**
     * Rule M-02b: {@code D·(M2 − M1) / (100·F/S − F + M1)}, where F is fibre saturation, 30 % in the handbook
     * (eq. 13-3 of FPL-GTR-190; form from memory, algebra checked: size is the green size less a shrinkage in
     * proportion to the moisture lost below F).
     *
     * @param sizeMm the size at {@code fromPercent}, in mm
     * @param shrinkagePercent total shrinkage from green to ovendry, in percent of the green size
     * @param fibreSaturation F in percent; neither moisture may be above it
     * @param fromPercent moisture content before
     * @param toPercent moisture content after
     * @return growth in mm; negative is shrinkage
     */
    public static double fromGreen(
            double sizeMm,
            double shrinkagePercent,
            double fibreSaturation,
            double fromPercent,
            double toPercent) {
        double span = fibreSaturation * 100 / shrinkagePercent - fibreSaturation + fromPercent;
        return sizeMm * (toPercent - fromPercent) / span;
    }

    /**
     * Rule M-02c: the coefficient per 1 % that a total shrinkage stands for at 10 % moisture,
     * {@code 1 / (100·F/S − F + 10)} (Wood Handbook FPL-GTR-282 eq. 13-2).
     */
    public static double coefficientOf(double shrinkagePercent, double fibreSaturation) {
        return 1 / (fibreSaturation * 100 / shrinkagePercent - fibreSaturation + 10);
    }

    /** The total shrinkage in percent that a coefficient stands for: rule M-02c turned round. */
    public static double shrinkageOf(double perPercent, double fibreSaturation) {
        return fibreSaturation * 100 / (1 / perPercent + fibreSaturation - 10);
    }

    /**
     * The change of a corner that was square (rule M-04).
     *
     * @param degrees of the corner, always positive
     * @param coefficients of the species
     * @param ringDegrees angle of the rings to a face
     * @param points change of moisture, signed
     * @param verdict against {@code leg-diamonds}
     */
    public record Diamond(
            double degrees, Coefficients coefficients, double ringDegrees, double points, Verdict verdict) {}

    /**
     * How far a square section goes out of square: {@code (C_T − C_R)·sin 2θ·ΔM} in radians, twice the shear term
     * of the strain turned by θ (rule M-04, derived).
     */
    public static Diamond diamond(Coefficients coefficients, Rings rings, double points, Figures figures) {
        double ringDegrees = rings.degrees(figures);
        double shear = (coefficients.tangential() - coefficients.radial())
                * Math.sin(2 * Math.toRadians(ringDegrees))
                * points;
        double degrees = Math.toDegrees(Math.abs(shear));
        return new Diamond(
                degrees,
                coefficients,
                ringDegrees,
                points,
                Verdict.above(degrees, figures.get("leg-diamonds.note")));
    }

    /** Read once: every change asks for them. */
    private static final class Limits {
        static final double LINEAR_FROM = Figures.standard().value("movement.linear.from");
        static final double LINEAR_TO = Figures.standard().value("movement.linear.to");
    }
}

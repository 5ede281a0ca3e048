package dev.treen.wood;

/** What being out of square and cuts at a wrong angle come to (rules F-02, F-03 and F-05, derived). */
public final class Squareness {

    private Squareness() {
    }

    /**
     * How much the diagonals of a frame differ that leans: {@code 2ab·δ / √(a² + b²)}, from
     * {@code d1² − d2² = 4ab·sin δ}.
     *
     * @param lean in radians
     */
    public static double diagonalsMm(double aMm, double bMm, double lean) {
        double squared = aMm * aMm + bMm * bMm;
        double both = 4 * aMm * bMm * Math.sin(lean);
        return Math.sqrt(squared + both / 2) - Math.sqrt(squared - both / 2);
    }

    /** How far, in radians, an opening may lean before a square part with so much room on each side binds in it. */
    public static double lean(double roomMm, double lengthMm) {
        return Math.asin(Math.clamp(2 * roomMm / lengthMm, 0, 1));
    }

    /**
     * By how much diagonals usually differ in good work: 0.5 mm in small boxes, 1 mm to 600, 1.6 mm to 1200 and beyond
     * (rule F-05, common practice without a source).
     */
    public static double usualDiagonalsMm(double aMm, double bMm, Figures figures) {
        double longer = Math.max(aMm, bMm);
        if (longer <= figures.value("square.small.to")) {
            return figures.value("square.small");
        }
        return longer <= figures.value("square.middle.to")
                ? figures.value("square.middle")
                : figures.value("square.large");
    }

    /** The error of angle of usual work, in degrees. */
    public static double usualDegrees(Figures figures) {
        return Math.toDegrees(Math.atan(figures.value("tolerance.square") / 100));
    }

    /** The gap at the open end of a mitre of which one cut is off by an angle: the length of the cut times its tangent. */
    public static double mitreGapMm(double widthMm, double degrees) {
        return widthMm / Math.cos(Math.PI / 4) * Math.tan(Math.toRadians(degrees));
    }

    /** The gap at the last of {@code corners} corners when every cut of all is off alike: √2·w·tan(2nη). */
    public static double lastMitreGapMm(double widthMm, double degrees, int corners) {
        return Math.sqrt(2) * widthMm * Math.tan(Math.toRadians(2 * corners * degrees));
    }
}

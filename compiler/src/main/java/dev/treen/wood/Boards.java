package dev.treen.wood;

/** Boards side by side, and boards that have to settle (rules M-20 and M-23). */
public final class Boards {

    private Boards() {
    }

    /**
     * A back of loose boards, lapped or tongued.
     *
     * @param gapMm to leave in each joint at the bench
     * @param lapMm least lap or tongue at the bench that still covers when driest
     * @param swelling growth of one board
     * @param shrinking its change to the driest; negative
     */
    public record Back(double gapMm, double lapMm, Change swelling, Change shrinking) {}

    /**
     * Gap and lap for boards of {@code boardMm} (M-20). The lap is the overlap at the bench with the gap in place; it
     * loses what one board shrinks.
     */
    public static Back back(double boardMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change swelling = Movement.swelling(boardMm, coefficient, seasons);
        Change shrinking = Movement.shrinking(boardMm, coefficient, seasons);
        return new Back(
                swelling.changeMm() + figures.value("back-buckles.clear"),
                -shrinking.changeMm() + figures.value("back-buckles.lap"),
                swelling,
                shrinking);
    }

    /**
     * A board against the room it will be worked or kept in.
     *
     * @param distancePoints how far its moisture is from the room's
     * @param waitDays how long to let it lie in stick; 0 when it is near enough
     * @param verdict against {@code not-acclimatised}
     */
    public record Settling(double distancePoints, double waitDays, Verdict verdict) {}

    /**
     * Whether a board has to settle, and for how long (M-23). The printed wait is for boards about 25 mm thick; it
     * grows with the square of the thickness, as drying by diffusion does. Rough: two weighings a few days apart that
     * agree are the real test.
     */
    public static Settling settling(
            double thicknessMm, double boardPercent, double roomPercent, Figures figures) {
        double distance = Math.abs(boardPercent - roomPercent);
        Verdict verdict = Verdict.above(distance, figures.get("not-acclimatised.warning"));
        boolean near = verdict.grade() == Verdict.Grade.FINE;
        return new Settling(distance, near ? 0 : waitDays(thicknessMm, figures), verdict);
    }

    /** The wait for a board of this thickness, in days. */
    public static double waitDays(double thicknessMm, Figures figures) {
        double scale = thicknessMm / figures.value("acclimatise.thickness");
        return figures.value("acclimatise.days.usual") * scale * scale;
    }
}

package dev.treen.wood;

/** A solid drawer in its opening (rules M-10 and M-11, derived). */
public final class Drawers {

    private Drawers() {
    }

    /**
     * A solid bottom, grain from side to side, fixed at the front and running under the back.
     *
     * @param drawsInMm how far its back edge draws in when driest: the overlap it needs past the back
     * @param overlapLeftMm what of the given overlap is left then
     * @param shrinking change of its depth from the bench; negative
     * @param verdict against {@code drawer-bottom-short}
     */
    public record Bottom(double drawsInMm, double overlapLeftMm, Change shrinking, Verdict verdict) {}

    /** How a bottom of {@code depthMm} with {@code overlapMm} under the back fares in the dry season (M-10). */
    public static Bottom bottom(
            double depthMm, double overlapMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change shrinking = Movement.shrinking(depthMm, coefficient, seasons);
        double left = overlapMm + shrinking.changeMm();
        Verdict verdict = Verdict.atOrBelow(left, figures.get("drawer-bottom.error"))
                .or(Verdict.below(left, figures.get("drawer-bottom.warning")));
        return new Bottom(-shrinking.changeMm(), left, shrinking, verdict);
    }

    /** The slot in the bottom for its screw at the back (M-10). */
    public static Slot bottomSlot(
            double depthMm, double shankMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return Slot.at(depthMm, shankMm, figures.value("drawer-bottom.slot.ease"), coefficient, seasons);
    }

    /**
     * Clearance of a drawer in its height or width.
     *
     * @param neededMm clearance to leave at the bench: the growth and the running clearance
     * @param growthMm what the season takes from it
     * @param runMm clearance it should still have then
     */
    public record Clearance(double neededMm, double growthMm, double runMm) {

        /** How a clearance of the drawing stands, when wettest ({@code drawer-sticks}). */
        public Verdict judge(double clearanceMm, Figures figures) {
            double left = clearanceMm - growthMm;
            return Verdict.below(left, figures.get("drawer-sticks.error"))
                    .or(Verdict.below(left, figures.get("drawer-sticks.warning")));
        }
    }

    /** Clearance above a drawer whose front or sides are {@code heightMm} high (M-11). */
    public static Clearance height(double heightMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return clearance(Movement.swelling(heightMm, coefficient, seasons).changeMm(), figures);
    }

    /**
     * Clearance beside a drawer (M-11): its two sides grow in their thickness, the case not at all.
     *
     * @param coefficient of the sides' thickness, tangential in quartered sides
     */
    public static Clearance width(double sideMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return clearance(2 * Movement.swelling(sideMm, coefficient, seasons).changeMm(), figures);
    }

    private static Clearance clearance(double growth, Figures figures) {
        double run = figures.value("drawer.run");
        return new Clearance(growth + run, growth, run);
    }

    /**
     * Room behind a drawer.
     *
     * @param neededMm room at the bench
     * @param shrinking change of the case's depth; negative
     * @param clearMm room it should still have when the case is shallowest
     */
    public record Behind(double neededMm, Change shrinking, double clearMm) {}

    /** Room behind a drawer in a case whose solid sides, grain upright, are {@code caseMm} deep (M-11). */
    public static Behind behind(double caseMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change shrinking = Movement.shrinking(caseMm, coefficient, seasons);
        double clear = figures.value("drawer.behind");
        return new Behind(clear - shrinking.changeMm(), shrinking, clear);
    }

    /**
     * How much a framed opening closes when its rails swell (M-11): half of each neighbouring rail's growth, as a rail
     * fixed along its middle grows to both sides.
     */
    public static double openingClosesMm(
            double railAboveMm, double railBelowMm, Coefficient coefficient, Seasons seasons) {
        return Movement.swelling(railAboveMm + railBelowMm, coefficient, seasons).changeMm() / 2;
    }
}

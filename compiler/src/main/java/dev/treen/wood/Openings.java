package dev.treen.wood;

/** Doors and sliding lids in their openings (rules M-13 and M-14, derived). */
public final class Openings {

    private Openings() {
    }

    /**
     * The gap at a door's lock side, or at the front of a lid hinged at the back.
     *
     * @param neededMm to leave at the bench
     * @param swelling growth of all the wood across the grain between hinge and lock
     * @param clearMm gap it should still have when wettest
     */
    public record DoorGap(double neededMm, Change swelling, double clearMm) {

        /** How a gap of the drawing stands when wettest ({@code door-binds}). */
        public Verdict judge(double gapMm, Figures figures) {
            double left = gapMm - swelling.changeMm();
            return Verdict.below(left, figures.get("door-binds.error"))
                    .or(Verdict.below(left, figures.get("door-binds.warning")));
        }
    }

    /**
     * The gap to leave at the lock side (M-13). The hinged edge stays, so the lock edge makes the whole movement.
     *
     * @param acrossMm width across the grain: the whole of a slab, both stiles of a framed door
     */
    public static DoorGap door(double acrossMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change swelling = Movement.swelling(acrossMm, coefficient, seasons);
        double clear = figures.value("door.gap");
        return new DoorGap(swelling.changeMm() + clear, swelling, clear);
    }

    /**
     * The widest sliding lid whose grain runs along the slide (M-14). A lid of cross grain keeps its width and grows in
     * length instead.
     *
     * @param betweenMm between the bottoms of the two grooves
     */
    public static Panels.Widest slidingLid(
            double betweenMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return Panels.widest(betweenMm, 0, figures.value("lid.side"), coefficient, seasons);
    }
}

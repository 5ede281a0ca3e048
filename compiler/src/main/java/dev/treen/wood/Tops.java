package dev.treen.wood;

/**
 * A solid top on its frame (rule M-09, derived): fixed along one line, at the middle or at one edge, and free to travel
 * at every other fixing.
 */
public final class Tops {

    private Tops() {
    }

    /**
     * A button whose tongue stands in a groove of a rail parallel to the grain, and moves in and out of it.
     *
     * @param behindMm room to leave before the tongue's end, in the direction the top grows
     * @param engagedDriestMm what of the tongue is left in the groove when driest
     * @param swelling growth between the fixed line and the button
     * @param shrinking change to the driest; negative
     * @param verdict against {@code top-held}: too little of the tongue left
     */
    public record Button(
            double behindMm, double engagedDriestMm, Change swelling, Change shrinking, Verdict verdict) {}

    /**
     * The room for a button, {@code distanceMm} from the fixed line, whose tongue stands {@code engagedMm} in its
     * groove at the bench.
     */
    public static Button button(
            double distanceMm, double engagedMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change swelling = Movement.swelling(distanceMm, coefficient, seasons);
        Change shrinking = Movement.shrinking(distanceMm, coefficient, seasons);
        // The tongue points away from the fixed line, so it goes deeper when wet and draws out when dry.
        double engaged = engagedMm + shrinking.changeMm();
        return new Button(
                swelling.changeMm() + figures.value("top.button.ease"),
                engaged,
                swelling,
                shrinking,
                Verdict.below(engaged, figures.get("top.button.engaged")));
    }

    /** The length of a mortise in which a button of {@code buttonMm} slides sideways, beside an end rail. */
    public static Slot buttonMortise(
            double distanceMm, double buttonMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return Slot.at(distanceMm, buttonMm, figures.value("top.button.sideways"), coefficient, seasons);
    }

    /** The slot for a screw of {@code shankMm}, {@code distanceMm} from the fixed line. */
    public static Slot screwSlot(
            double distanceMm, double shankMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return Slot.at(distanceMm, shankMm, figures.value("top.slot.ease"), coefficient, seasons);
    }

    /** Whether figure-eight plates still serve a top of this width. */
    public static Verdict figureEight(double topMm, Figures figures) {
        return Verdict.above(topMm, figures.get("top.figure-eight.to"));
    }
}

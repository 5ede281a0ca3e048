package dev.treen.wood;

/**
 * A slot that lets a pin, screw or peg travel with the wood; lengths in mm along the travel.
 *
 * @param lengthMm length of the slot in all
 * @param shankMm thickness of what runs in it
 * @param swelling growth, from the bench, of the wood between the fixed line and the slot
 * @param shrinking its change from the bench to the driest; negative
 * @param easeMm room in all beyond the travel
 */
public record Slot(double lengthMm, double shankMm, Change swelling, Change shrinking, double easeMm) {

    /**
     * A slot at a distance from the fixed line. The slotted piece moves, its shank stands still: when the piece swells
     * outward the shank ends up nearer to the fixed line within the slot.
     */
    static Slot at(double distanceMm, double shankMm, double easeMm, Coefficient coefficient, Seasons seasons) {
        Change swelling = Movement.swelling(distanceMm, coefficient, seasons);
        Change shrinking = Movement.shrinking(distanceMm, coefficient, seasons);
        double length = shankMm + swelling.changeMm() - shrinking.changeMm() + easeMm;
        return new Slot(length, shankMm, swelling, shrinking, easeMm);
    }

    /** Reach beyond the shank toward the fixed line, from where the shank stands at the bench. */
    public double inwardMm() {
        return swelling.changeMm() + easeMm / 2;
    }

    /** Reach beyond the shank away from the fixed line. */
    public double outwardMm() {
        return -shrinking.changeMm() + easeMm / 2;
    }
}

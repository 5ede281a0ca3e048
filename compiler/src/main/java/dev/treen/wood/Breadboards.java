package dev.treen.wood;

/** A cross-piece at the end of a top, glued at its middle and pegged in slots elsewhere (rule M-08, derived). */
public final class Breadboards {

    private Breadboards() {
    }

    /**
     * The slot in the tenon for a peg, along the breadboard.
     *
     * @param distanceMm of the peg from the glued middle
     * @param pegMm thickness of the peg
     * @param coefficient how the top's width moves
     */
    public static Slot pegSlot(
            double distanceMm, double pegMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        return Slot.at(distanceMm, pegMm, 2 * figures.value("breadboard.ease"), coefficient, seasons);
    }

    /**
     * Room for the outer tenon.
     *
     * @param roomMm to leave in the mortise beyond the tenon's outer edge, at the bench
     * @param swelling growth between the middle and that edge
     * @param easeMm room beyond the travel
     */
    public record EndRoom(double roomMm, Change swelling, double easeMm) {}

    /** The room beyond the outer edge of the outer tenon, {@code edgeMm} from the glued middle. */
    public static EndRoom endRoom(double edgeMm, Coefficient coefficient, Seasons seasons, Figures figures) {
        Change swelling = Movement.swelling(edgeMm, coefficient, seasons);
        double ease = figures.value("breadboard.end-room");
        return new EndRoom(swelling.changeMm() + ease, swelling, ease);
    }

    /**
     * How far the top stands past the ends of its breadboard.
     *
     * @param wettestMm at each edge when wettest
     * @param driestMm at each edge when driest; negative, the breadboard stands proud
     */
    public record Overhang(double wettestMm, double driestMm, Change swelling, Change shrinking) {}

    /** The overhang of a top flush at the bench; it never stays flush. */
    public static Overhang overhang(double topMm, Coefficient coefficient, Seasons seasons) {
        Change swelling = Movement.swelling(topMm / 2, coefficient, seasons);
        Change shrinking = Movement.shrinking(topMm / 2, coefficient, seasons);
        return new Overhang(swelling.changeMm(), shrinking.changeMm(), swelling, shrinking);
    }

    /** Whether the glued zone at the middle is narrow enough ({@code breadboard-glue-zone}). */
    public static Verdict glueZone(double zoneMm, Figures figures) {
        return Verdict.above(zoneMm, figures.get("breadboard-glue-zone.error"));
    }
}

package dev.treen.cutting;

/**
 * Where the wood of the boards goes, in square millimetres of face; a leaf counts as a board.
 *
 * @param boards all boards and leaves that are cut
 * @param finished parts at their finished size
 * @param rough parts at their rough size
 * @param kerf saw dust
 * @param offcuts leftovers worth keeping
 */
public record Areas(double boards, double finished, double rough, double kerf, double offcuts) {
    /** No boards. */
    public static final Areas NONE = new Areas(0, 0, 0, 0, 0);

    /** The share of the boards that is in the finished parts, in percent (rules of the trade Y-06). */
    public double yieldPercent() {
        return percent(finished);
    }

    /** What saw and plane take off the parts. */
    public double allowances() {
        return rough - finished;
    }

    /** Ends, flaws and pieces too small to keep. */
    public double waste() {
        return Math.max(0, boards - rough - kerf - offcuts);
    }

    /** {@code area} as a share of the boards, in percent. */
    public double percent(double area) {
        return boards == 0 ? 0 : 100 * area / boards;
    }
}

package dev.treen.yield;

/** Told how a search goes: whenever something better is found, and now and then between. */
@FunctionalInterface
public interface Progress {

    /** One report. */
    void report(Report report);

    /** Tells nobody. */
    static Progress none() {
        return report -> {
        };
    }

    /**
     * Where the search stands.
     *
     * @param steps steps done
     * @param ofSteps steps allowed
     * @param score best so far, as in {@link Layout#score()}
     * @param bound best bound so far
     * @param unplaced parts not yet in any board
     * @param better whether this report comes with a better layout
     */
    record Report(long steps, long ofSteps, long score, long bound, int unplaced, boolean better) {

        /** How far the score may be from the best possible, as a share of the score. */
        public double gap() {
            return score == 0 ? 0 : Math.abs((double) score - bound) / Math.abs((double) score);
        }
    }
}

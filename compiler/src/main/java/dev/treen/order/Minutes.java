package dev.treen.order;

/**
 * Hands-on time, as an honest range in steps of five minutes.
 *
 * @param least for somebody who knows the tools
 * @param most for a learner
 */
public record Minutes(int least, int most) {
    private static final int STEP = 5;

    /** No time at all; where sums begin. */
    public static final Minutes NONE = new Minutes(0, 0);

    /** The range that {@code least} and {@code most} lie in, rounded outward to five minutes and never empty. */
    public static Minutes around(double least, double most) {
        int low = Math.max(STEP, (int) Math.floor(least / STEP) * STEP);
        int high = (int) Math.ceil(most / STEP) * STEP;
        return new Minutes(low, Math.max(low + STEP, high));
    }

    /** Both after each other. */
    public Minutes plus(Minutes other) {
        return new Minutes(least + other.least, most + other.most);
    }
}

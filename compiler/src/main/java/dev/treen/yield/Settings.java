package dev.treen.yield;

import java.time.Duration;
import java.util.Optional;

/**
 * How the boards are cut and how long to look.
 *
 * @param kerf what the saw takes at every cut
 * @param endWaste lost at each end of every board
 * @param edgeWaste lost at each edge of every board
 * @param minOffcutLength least length of a leftover worth keeping
 * @param minOffcutWidth least width of a leftover worth keeping
 * @param plain how much smaller the largest leftover may be for fewer cuts, as a share of it
 * @param strip the longest rip that is one cut's work; a longer one counts as several
 * @param steps how many steps to search; the same steps give the same layout on any machine
 * @param timeLimit stop after this time as well; then the result depends on the machine
 * @param objective what to look for
 * @param seed start of the random choices
 */
public record Settings(
        long kerf,
        long endWaste,
        long edgeWaste,
        long minOffcutLength,
        long minOffcutWidth,
        double plain,
        long strip,
        long steps,
        Optional<TimeLimit> timeLimit,
        Objective objective,
        long seed) {

    /** Steps that take well under a second for a few dozen parts. */
    public static final long USUAL_STEPS = 20_000;

    /** A saw of this kerf, no wasted ends, the usual number of steps, least cost. */
    public static Settings kerf(long kerf) {
        return new Settings(
                kerf, 0, 0, 1, 1, 0, Long.MAX_VALUE, USUAL_STEPS, Optional.empty(), Objective.ALL_PARTS_LEAST_COST, 1);
    }

    /** The same with another number of steps. */
    public Settings steps(long count) {
        return new Settings(
                kerf, endWaste, edgeWaste, minOffcutLength, minOffcutWidth, plain, strip, count, timeLimit, objective,
                seed);
    }

    /** The same with a limit in time as it passes. */
    public Settings within(Duration limit) {
        return within(new TimeLimit(limit, TimeLimit.Clock.WALL));
    }

    /** The same with a limit in time by some clock. */
    public Settings within(TimeLimit limit) {
        return new Settings(
                kerf, endWaste, edgeWaste, minOffcutLength, minOffcutWidth, plain, strip, steps, Optional.of(limit),
                objective, seed);
    }

    /** The same with another objective. */
    public Settings aiming(Objective aim) {
        return new Settings(
                kerf, endWaste, edgeWaste, minOffcutLength, minOffcutWidth, plain, strip, steps, timeLimit, aim, seed);
    }

    /** The same with waste at the ends and edges. */
    public Settings wasting(long ends, long edges) {
        return new Settings(
                kerf, ends, edges, minOffcutLength, minOffcutWidth, plain, strip, steps, timeLimit, objective, seed);
    }

    /** The same, keeping leftovers of at least this size. */
    public Settings keeping(long length, long width) {
        return new Settings(
                kerf, endWaste, edgeWaste, length, width, plain, strip, steps, timeLimit, objective, seed);
    }

    /** The same, giving so much of the largest leftover for fewer cuts, of which a rip is one up to so long. */
    public Settings plain(double share, long longest) {
        return new Settings(
                kerf, endWaste, edgeWaste, minOffcutLength, minOffcutWidth, share, longest, steps, timeLimit,
                objective, seed);
    }

    /** The same with another seed. */
    public Settings seed(long number) {
        return new Settings(
                kerf, endWaste, edgeWaste, minOffcutLength, minOffcutWidth, plain, strip, steps, timeLimit, objective,
                number);
    }
}

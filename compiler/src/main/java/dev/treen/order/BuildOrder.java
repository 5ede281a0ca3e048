package dev.treen.order;

import java.util.List;

/**
 * The steps in their order.
 *
 * @param steps what to do
 * @param settings how often a gauge, fence or stop is set
 * @param separately how often it would be, were every part made by itself
 * @param settingsAtLeast how often it must be set in any order that keeps the rules
 * @param fewest whether no valid order needs fewer settings
 * @param best whether of all valid orders none has fewer settings, and of those none takes fewer days, and of those
 *     none changes tools less often
 * @param cautions what holds for the whole work
 * @param calendar when what is done
 * @param soFar what is there already, where something has been measured
 */
public record BuildOrder(
        List<Step> steps,
        int settings,
        int separately,
        int settingsAtLeast,
        boolean fewest,
        boolean best,
        List<String> cautions,
        Calendar calendar,
        SoFar soFar) {
    /** Keeps its own copies. */
    public BuildOrder {
        steps = List.copyOf(steps);
        cautions = List.copyOf(cautions);
    }

    /** The same with other cautions. */
    BuildOrder minding(List<String> others) {
        return new BuildOrder(
                steps, settings, separately, settingsAtLeast, fewest, best, others, calendar, soFar);
    }

    /** The same with what is there already. */
    BuildOrder after(SoFar done) {
        return new BuildOrder(
                steps, settings, separately, settingsAtLeast, fewest, best, cautions, calendar, done);
    }

    /** What is set, in the order in which it is set. */
    public List<Setups.Setup> setups() {
        return Setups.of(steps);
    }

    /** Hands-on time of all steps for which a figure is known. */
    public Minutes minutes() {
        return calendar.handsOn();
    }

    /** Hours in which nothing can be done but wait: the least and the most. */
    public Wait waiting() {
        return calendar.idle();
    }
}

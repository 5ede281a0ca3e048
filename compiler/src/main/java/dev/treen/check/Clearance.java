package dev.treen.check;

import dev.treen.joinery.FinishedPart;
import dev.treen.joinery.MadeJoint;
import dev.treen.joinery.Making;
import dev.treen.joinery.Nature;
import dev.treen.model.Derivation;
import dev.treen.source.Span;
import dev.treen.wood.Movement;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Room that must neither vanish nor grow too large: at the bench, through the seasons, and with the errors of making. Both
 * are reckoned into one number at its tightest and one at its loosest.
 *
 * @param of the part that moves
 * @param made the joint that leaves it
 * @param name what the room is called: {@code gap}, {@code clearance}
 * @param how the room at the bench, from the dimensions that make it
 * @param at where the dimension stands that should change
 * @param benchMm the room at the bench, each side
 * @param nature how the part's wood moves
 * @param measure which measure of it takes the room: 1 the width, 2 the thickness, 0 none
 * @param movesMm how much of that measure acts on this room: half of the width of a panel free on both sides
 * @param deviations what each made dimension may add or take
 */
record Clearance(
        FinishedPart of,
        MadeJoint made,
        String name,
        Derivation how,
        Span at,
        double benchMm,
        Nature nature,
        int measure,
        double movesMm,
        List<Deviation> deviations) {

    /** Keeps its own copy. */
    Clearance {
        deviations = List.copyOf(deviations);
    }

    /**
     * What one made dimension may do to the room.
     *
     * @param what the dimension in words
     * @param at where it is written
     * @param kind how it is made
     * @param slope how much the room changes for each mm of it, exactly
     * @param tolerance plus or minus
     */
    record Deviation(String what, Span at, Making.Kind kind, double slope, Making.Tolerance tolerance) {
        /** The most that it takes or gives. */
        double mm() {
            return Math.abs(slope) * tolerance.mm();
        }
    }

    /** All errors of making at once, in the worst way: what must go in has to stand it (rules of the trade F-06). */
    double worstMm() {
        return deviations.stream().mapToDouble(Deviation::mm).sum();
    }

    /** What the errors come to as a rule: the root of the sum of their squares. */
    double likelyMm() {
        return Math.sqrt(deviations.stream().mapToDouble(e -> e.mm() * e.mm()).sum());
    }

    /** The errors that count most, the largest first. */
    List<Deviation> largest() {
        return deviations.stream()
                .filter(error -> error.mm() > 0)
                .sorted(Comparator.comparingDouble(Deviation::mm).reversed())
                .toList();
    }

    /** The room as the wood moves, made as drawn. */
    double seasonMm(double moisture) {
        if (nature.still()) {
            return benchMm;
        }
        return measure == 0
                ? benchMm
                : benchMm - Movement.change(movesMm, nature.coefficient(measure), nature.seasons().bench(), moisture)
                        .changeMm();
    }

    /** What the season takes at its worst. */
    double swellingMm() {
        return nature.swelling(measure, 1) == 0 ? 0 : share(nature.swelling(measure, widthMm()));
    }

    /** What the season gives at its most. */
    double shrinkingMm() {
        return share(nature.shrinking(measure, widthMm()));
    }

    private double widthMm() {
        return measure == 0 ? 0 : of.part().measure(measure).value().toDoubleMm();
    }

    private double share(double whole) {
        return measure == 0 || widthMm() == 0 ? 0 : whole * movesMm / widthMm();
    }

    /** One end of what the room may be: how large, when, and what did most to it. */
    record Extreme(double mm, String when, String cause) {}

    /** The least that is left, the season and the making both at their worst. */
    Extreme tightest() {
        double season = seasonMm(nature.seasons().wettest());
        return new Extreme(season - worstMm(), Year.when(nature, true), cause(benchMm - season));
    }

    /** The most that there may be. */
    Extreme loosest() {
        double season = seasonMm(nature.seasons().driest());
        return new Extreme(season + worstMm(), Year.when(nature, false), cause(season - benchMm));
    }

    private String cause(double ofSeason) {
        Optional<Deviation> first = largest().stream().findFirst();
        boolean making = first.isPresent() && first.get().mm() > Math.abs(ofSeason);
        return making ? "the " + first.orElseThrow().what() : "the season";
    }
}

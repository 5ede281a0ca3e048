package dev.treen.joinery;

import dev.treen.model.Measure;
import dev.treen.quantity.Length;
import dev.treen.solid.Axis;
import dev.treen.solid.Box;
import dev.treen.solid.Side;
import java.util.Optional;

/**
 * A panel's groove where a tenon goes: the mortise stands in it, its haunch fills it, or it takes an edge off the tenon
 * (rules of the trade J-10: groove frames).
 *
 * @param wide how wide the groove is
 * @param deep how deep
 * @param trench where it lies
 */
record GrooveNear(Measure wide, Measure deep, Box trench) {

    /** The groove ploughed in a part on one of its sides, where there is one. */
    static Optional<GrooveNear> of(Meeting.Placed part, Side side, Surroundings surroundings) {
        return surroundings.ploughed(part.part(), side)
                .filter(groove -> groove.face().isPresent())
                // One of no size is not made, and is told where it is written.
                .filter(groove -> groove.joint().length("wide").map(wide -> wide.value().signum() > 0).orElse(true))
                .filter(groove -> groove.joint().length("deep").map(deep -> deep.value().signum() > 0).orElse(true))
                .map(groove -> {
                    Side face = groove.face().orElseThrow();
                    GrooveSizes sizes = GrooveSizes.of(groove, face, surroundings);
                    return new GrooveNear(sizes.wide(), sizes.deep(), Groove.trench(groove, face, sizes));
                });
    }

    /** Its middle along an axis across it. */
    Length middle(Axis axis) {
        return Length.ofMm(trench.min().get(axis)).plus(Length.ofMm(trench.max().get(axis))).dividedBy(2);
    }

    /** Whether it lies wholly within a part, seen along an axis. */
    boolean within(Box part, Axis axis) {
        return Length.ofMm(trench.min().get(axis)).compareTo(Length.ofMm(part.min().get(axis))) > 0
                && Length.ofMm(trench.max().get(axis)).compareTo(Length.ofMm(part.max().get(axis))) < 0;
    }
}

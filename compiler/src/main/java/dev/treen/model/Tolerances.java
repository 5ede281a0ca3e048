package dev.treen.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * How exactly the project or one of its parts says that things are made, each plus or minus; what is not said is as usual
 * by hand or by machine.
 *
 * @param grade the class of ISO 2768-1, by its designation, which says the rest by size
 */
public record Tolerances(
        Optional<String> grade,
        Optional<Measure> length,
        Optional<Measure> width,
        Optional<Measure> thickness,
        Optional<Measure> depth,
        Optional<Measure> measured) {
    /** Nothing said. */
    public static final Tolerances NONE = new Tolerances(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether anything is said. */
    public boolean stated() {
        return grade.isPresent()
                || Stream.of(length, width, thickness, depth, measured).anyMatch(Optional::isPresent);
    }

    /**
     * What holds where these are said within {@code around}: the nearer word counts. A class says all sizes, so it also
     * puts aside the single figures that are said farther off.
     */
    public Tolerances within(Tolerances around) {
        Tolerances rest = grade.isPresent()
                ? new Tolerances(grade, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                        around.measured)
                : around;
        return new Tolerances(
                rest.grade,
                length.or(() -> rest.length),
                width.or(() -> rest.width),
                thickness.or(() -> rest.thickness),
                depth.or(() -> rest.depth),
                measured.or(() -> rest.measured));
    }
}

package dev.treen.model;

import java.util.Optional;

/**
 * How exactly the project says that things are made, each plus or minus; what it does not say is as usual by hand or by
 * machine.
 */
public record Tolerances(
        Optional<Measure> length,
        Optional<Measure> width,
        Optional<Measure> thickness,
        Optional<Measure> depth,
        Optional<Measure> measured) {
    /** Nothing said. */
    public static final Tolerances NONE = new Tolerances(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether the project says anything of it. */
    public boolean stated() {
        return length.isPresent() || width.isPresent() || thickness.isPresent() || depth.isPresent()
                || measured.isPresent();
    }
}

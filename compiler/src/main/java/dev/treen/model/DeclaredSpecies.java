package dev.treen.model;

import dev.treen.source.Span;
import java.util.OptionalDouble;

/**
 * A wood that the project describes itself.
 *
 * @param name as boards call it
 * @param nameAt where it is declared
 * @param tangential along the rings, by {@code kind}
 * @param radial across the rings
 * @param kind what the two figures are
 * @param gravity specific gravity at 12 %, where given
 * @param stiffness in GPa, where given
 */
public record DeclaredSpecies(
        String name,
        Span nameAt,
        double tangential,
        double radial,
        Kind kind,
        OptionalDouble gravity,
        OptionalDouble stiffness) {

    /** What the two figures of a declared species are. */
    public enum Kind {
        /** The change for each 1 % of moisture, as a fraction. */
        MOVEMENT,
        /** The whole shrinkage from green to ovendry, in percent. */
        SHRINKAGE
    }
}

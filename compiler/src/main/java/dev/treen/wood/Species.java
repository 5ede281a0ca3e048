package dev.treen.wood;

import java.util.Optional;

/**
 * A species of solid wood with what the tables know of it.
 *
 * @param id the name as the language writes it, such as {@code black_cherry}
 * @param commonName as people say it, such as {@code black cherry}
 * @param botanicalName such as {@code Prunus serotina}; empty for groups and declared species
 * @param kind hardwood, softwood, or unknown for a declared species
 * @param coefficients movement; empty for the one species whose tangential shrinkage is not printed
 * @param shrinkage total shrinkage, where a table holds it
 * @param strength weight, stiffness and strength, where a table holds them
 */
public record Species(
        String id,
        String commonName,
        String botanicalName,
        Kind kind,
        Optional<Coefficients> coefficients,
        Optional<Shrinkage> shrinkage,
        Optional<Strength> strength)
        implements Material {

    /** The two great classes of trees. */
    public enum Kind {
        /** From broad-leaved trees. */
        HARDWOOD,
        /** From conifers. */
        SOFTWOOD,
        /** A species the project declared without saying. */
        UNKNOWN
    }

    /** A species the project declares, with its own coefficients per 1 % of moisture content. */
    public static Species declared(String id, double tangential, double radial) {
        return new Species(
                id,
                id.replace('_', ' '),
                "",
                Kind.UNKNOWN,
                Optional.of(Coefficients.declared(tangential, radial)),
                Optional.empty(),
                Optional.empty());
    }

    /** The same wood with what is known of its strength. */
    public Species with(Strength known) {
        return new Species(id, commonName, botanicalName, kind, coefficients, shrinkage, Optional.of(known));
    }

    /** The coefficients, or those used for an unknown species; their citation says which. */
    public Coefficients coefficientsOrUnknown(Figures figures) {
        return coefficients.orElseGet(() -> Coefficients.ofUnknownSpecies(figures));
    }
}

package dev.treen.joinery;

import dev.treen.model.Board;
import dev.treen.model.DeclaredSpecies;
import dev.treen.wood.Citation;
import dev.treen.wood.Figures;
import dev.treen.wood.Movement;
import dev.treen.wood.Species;
import dev.treen.wood.SpeciesTable;
import dev.treen.wood.Strength;
import java.util.Optional;
import java.util.OptionalDouble;

/** The wood of a board: of the tables, or as the project describes it. */
public final class Woods {
    private Woods() {
    }

    /** The species of a board, where one is named and known. */
    public static Optional<Species> of(Board board) {
        return board.declared()
                .map(Woods::declared)
                .or(() -> board.species().flatMap(id -> SpeciesTable.published().get(id)));
    }

    /** What the wood of a board is called; empty where no species is named. */
    public static String name(Board board) {
        return of(board).map(Species::commonName)
                .orElse(board.species().map(id -> id.replace('_', ' ')).orElse(""));
    }

    private static Species declared(DeclaredSpecies wood) {
        double saturation = Figures.standard().value("movement.fibre-saturation");
        Species species = switch (wood.kind()) {
            case MOVEMENT -> Species.declared(wood.name(), wood.tangential(), wood.radial());
            case SHRINKAGE -> Species.declared(
                    wood.name(),
                    Movement.coefficientOf(wood.tangential(), saturation),
                    Movement.coefficientOf(wood.radial(), saturation));
        };
        return species.with(strength(wood));
    }

    private static Strength strength(DeclaredSpecies wood) {
        OptionalDouble none = OptionalDouble.empty();
        OptionalDouble modulus = wood.stiffness().isPresent()
                ? OptionalDouble.of(wood.stiffness().getAsDouble() * 1000)
                : none;
        return new Strength(12, wood.gravity(), none, none, modulus, none, none, none, Citation.declared());
    }
}

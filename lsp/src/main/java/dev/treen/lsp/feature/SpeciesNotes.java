package dev.treen.lsp.feature;

import dev.treen.wood.Coefficients;
import dev.treen.wood.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What the tables say of a wood, in a line or a few. */
final class SpeciesNotes {
    private SpeciesNotes() {
    }

    /** In one line: whether it is hard or soft, and how much it moves. */
    static String shortly(Species wood) {
        List<String> said = new ArrayList<>();
        kind(wood).ifPresent(said::add);
        wood.coefficients().ifPresent(moves -> said.add(moved(moves)));
        return String.join(", ", said);
    }

    /** In a few lines, each with its source. */
    static List<String> fully(Species wood) {
        List<String> lines = new ArrayList<>();
        lines.add(wood.commonName() + (wood.botanicalName().isEmpty() ? "" : " (" + wood.botanicalName() + ")")
                + kind(wood).map(kind -> ", " + kind).orElse(""));
        wood.coefficients().ifPresent(moves -> lines.add("For each 1 % of moisture its width moves by "
                + percent(moves.tangential()) + " flat sawn, " + percent(moves.radial()) + " quartered ("
                + moves.citation().source() + ")."));
        wood.strength().ifPresent(strength -> strength.specificGravity().ifPresent(gravity -> lines.add(String.format(
                Locale.ROOT, "Specific gravity %.2f at 12 %% moisture (%s).", gravity, strength.citation().source()))));
        return lines;
    }

    private static Optional<String> kind(Species wood) {
        return switch (wood.kind()) {
            case HARDWOOD -> Optional.of("hardwood");
            case SOFTWOOD -> Optional.of("softwood");
            case UNKNOWN -> Optional.empty();
        };
    }

    private static String moved(Coefficients moves) {
        return "moves " + percent(moves.tangential()) + " flat, " + percent(moves.radial()) + " quartered a 1 %";
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.2f %%", fraction * 100);
    }
}

package dev.treen.lsp.feature;

import dev.treen.wood.SpeciesTable;
import java.util.Optional;

/** What the published tables say of a wood, as a page to be read. */
public final class SpeciesPage {
    private SpeciesPage() {
    }

    /** The page of the species with that name, in Markdown; nothing where the tables have none. */
    public static Optional<String> of(String id) {
        return SpeciesTable.published().get(id).map(wood -> "# " + id.replace('_', ' ') + "\n\n"
                + String.join("\n\n", SpeciesNotes.fully(wood))
                + "\n\nA project that knows its wood better declares its own `species`.\n");
    }
}

package dev.treen.wood;

import java.util.ArrayList;
import java.util.List;

/** The cautions of {@code safety.csv}. */
public final class Cautions {

    private Cautions() {
    }

    /** All of them, in the order of the file. */
    public static List<Caution> all() {
        return Published.ENTRIES.stream().map(Entry::caution).toList();
    }

    /** Those of a kind, such as {@code fire}. */
    public static List<Caution> ofKind(String kind) {
        return all().stream().filter(caution -> caution.kind().equals(kind)).toList();
    }

    /** Those reported for a species; silence is no promise that a wood is harmless. */
    public static List<Caution> forSpecies(Species species) {
        return Published.ENTRIES.stream()
                .filter(entry -> entry.species().contains(species.id()))
                .map(Entry::caution)
                .toList();
    }

    private record Entry(Caution caution, List<String> species) {}

    private static final class Published {
        static final List<Entry> ENTRIES = read();

        private static List<Entry> read() {
            List<Entry> entries = new ArrayList<>();
            for (Csv.Row row : Csv.load("safety.csv").rows()) {
                Caution caution = new Caution(
                        row.text("id"),
                        row.text("kind"),
                        row.text("hazard"),
                        row.text("trigger"),
                        row.text("caution"),
                        row.text("limit"),
                        Citation.of(row));
                entries.add(new Entry(
                        caution, List.of(row.text("species_ids").replace('-', '_').split(";"))));
            }
            return List.copyOf(entries);
        }
    }
}

package dev.treen.wood;

import dev.treen.spelling.Near;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The species of the published tables, and those a project declares beside them.
 *
 * <p>Nothing is read before the first question, and a question about one species splits the rows of that one
 * only. Safe to share between threads.
 */
public final class SpeciesTable {

    private static final SpeciesTable PUBLISHED = new SpeciesTable(Map.of());

    /** The answer to a name. */
    public sealed interface Lookup {

        /** Exactly one species has this name. */
        record Found(Species species) implements Lookup {}

        /**
         * The name is one of the trade that stands for several species, or for one of a longer name.
         *
         * @param name as asked
         * @param candidates the names it may stand for, in the order of the alphabet; never empty
         */
        record Candidates(String name, List<String> candidates) implements Lookup {}

        /**
         * No species has this name.
         *
         * @param name as asked
         * @param near names spelt like it, best first; may be empty
         */
        record Unknown(String name, List<String> near) implements Lookup {}
    }

    private final Map<String, Species> declared;

    private SpeciesTable(Map<String, Species> declared) {
        this.declared = declared;
    }

    /** The published species alone. */
    public static SpeciesTable published() {
        return PUBLISHED;
    }

    /** This table and one species more; it hides a published one of the same name. */
    public SpeciesTable with(Species species) {
        Map<String, Species> more = new TreeMap<>(declared);
        more.put(species.id(), species);
        return new SpeciesTable(Collections.unmodifiableMap(more));
    }

    /** The species with exactly this name. */
    public Optional<Species> get(String id) {
        Species own = declared.get(id);
        if (own != null) {
            return Optional.of(own);
        }
        return Published.get(id);
    }

    /** The names of all species, in the order of the alphabet. */
    public List<String> ids() {
        if (declared.isEmpty()) {
            return Names.SORTED;
        }
        Set<String> all = new LinkedHashSet<>(Names.SORTED);
        all.addAll(declared.keySet());
        return all.stream().sorted().toList();
    }

    /** All species, in the order of their names. Splits every row: for lists, not for a compile. */
    public List<Species> all() {
        return ids().stream().map(id -> get(id).orElseThrow()).toList();
    }

    /** Every published pair of coefficients of a species, whatever the edition; the one in use comes first. */
    public List<Coefficients> editions(String id) {
        List<Coefficients> editions = new ArrayList<>();
        for (Csv.Row row : Published.MOVEMENT.rowsOf(Published.key(id))) {
            editions.add(Published.isPreferred(row) ? 0 : editions.size(), Coefficients.of(row));
        }
        return List.copyOf(editions);
    }

    /**
     * Looks a name up as a person may write it: case does not matter, blanks and hyphens are underscores.
     *
     * @param name such as {@code black_cherry}, {@code Black cherry}, {@code cherry} or {@code hard_maple}
     */
    public Lookup find(String name) {
        String id = name.strip().toLowerCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
        Optional<Species> exact = get(id);
        if (exact.isPresent()) {
            return new Lookup.Found(exact.get());
        }
        List<String> ids = ids();
        Set<String> candidates = new TreeSet<>();
        for (Csv.Row row : Names.TRADE_NAMES.rowsOf(id)) {
            candidates.add(Published.id(row.text("species_id")));
        }
        List<String> words = List.of(id.split("_"));
        if (!words.isEmpty()) {
            ids.stream().filter(known -> List.of(known.split("_")).containsAll(words)).forEach(candidates::add);
        }
        return candidates.isEmpty()
                ? new Lookup.Unknown(name, Near.of(id, ids))
                : new Lookup.Candidates(name, List.copyOf(candidates));
    }

    /** The files, read together when the first species is asked for. */
    private static final class Published {
        static final Csv MOVEMENT = Csv.load("dimensional_change.csv");
        static final Csv SHRINKAGE = Csv.load("shrinkage.csv");
        static final Csv STRENGTH = Csv.load("mechanical.csv");
        static final Csv SPOKEN = Csv.load("spoken_names.csv");
        static final Map<String, Species> CACHE = new ConcurrentHashMap<>();

        /** The files join on hyphens; the language has no hyphens in names. */
        static String id(String key) {
            return key.replace('-', '_');
        }

        static String key(String id) {
            return id.replace('_', '-');
        }

        static boolean isPreferred(Csv.Row row) {
            return row.text("preferred").equals("1");
        }

        static Optional<Species> get(String id) {
            Species known = CACHE.get(id);
            if (known != null) {
                return Optional.of(known);
            }
            // What has a hyphen or a comma is no name of the language, and would match lines it should not.
            if (id.indexOf('-') >= 0 || id.indexOf(',') >= 0) {
                return Optional.empty();
            }
            Optional<Species> read = read(id);
            if (read.isPresent()) {
                CACHE.put(id, read.get());
            }
            return read;
        }

        private static Optional<Species> read(String id) {
            Optional<Csv.Row> movement = preferred(MOVEMENT, id);
            Optional<Csv.Row> shrinkage = preferred(SHRINKAGE, id);
            Optional<Csv.Row> strength = preferred(STRENGTH, id);
            Optional<Csv.Row> any = movement.isPresent() ? movement : shrinkage.isPresent() ? shrinkage : strength;
            if (any.isEmpty()) {
                return Optional.empty();
            }
            Csv.Row row = any.get();
            return Optional.of(new Species(
                    id,
                    spoken(id).orElse(row.text("common_name")),
                    row.text("botanical_name"),
                    row.text("wood_type").equals("softwood") ? Species.Kind.SOFTWOOD : Species.Kind.HARDWOOD,
                    movement.isPresent() ? Optional.of(Coefficients.of(movement.get())) : Optional.empty(),
                    shrinkage.isPresent() ? Optional.of(Shrinkage.of(shrinkage.get())) : Optional.empty(),
                    strength.isPresent() ? Optional.of(Strength.of(strength.get())) : Optional.empty()));
        }

        /** The tables turn some names round, for the sake of their order: here they stand as people say them. */
        private static Optional<String> spoken(String id) {
            return SPOKEN.rowsOf(key(id)).stream().map(row -> row.text("spoken")).findFirst();
        }

        private static Optional<Csv.Row> preferred(Csv csv, String id) {
            for (Csv.Row row : csv.rowsOf(key(id))) {
                if (isPreferred(row)) {
                    return Optional.of(row);
                }
            }
            return Optional.empty();
        }
    }

    /** What only lists and misspellings need: all names, and the names of the trade. */
    private static final class Names {
        static final Csv TRADE_NAMES = Csv.load("trade_names.csv");
        static final List<String> SORTED = read();

        private static List<String> read() {
            Set<String> keys = new TreeSet<>();
            Published.MOVEMENT.addKeysTo(keys);
            Published.SHRINKAGE.addKeysTo(keys);
            Published.STRENGTH.addKeysTo(keys);
            return keys.stream().map(Published::id).sorted().toList();
        }
    }
}

package dev.treen.model;

import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The names that can be said at a place, those outside included. */
final class Scope {
    private final @Nullable Scope outer;
    private final Unit units;
    private final @Nullable Scope home;
    private final Map<String, Entry> entries = new LinkedHashMap<>();

    Scope(@Nullable Scope outer, Unit units) {
        this(outer, units, null);
    }

    private Scope(@Nullable Scope outer, Unit units, @Nullable Scope home) {
        this.outer = outer;
        this.units = units;
        this.home = home;
    }

    /** One round of a repeat in {@code outer}: names of its own, but numbered parts belong outside. */
    static Scope within(Scope outer) {
        return new Scope(outer, outer.units, outer.home());
    }

    /** The scope to which numbered parts belong. */
    Scope home() {
        return home == null ? this : home;
    }

    /** What a name means. */
    sealed interface Entry permits Constant, PartEntry, BoardEntry, Array, Other {
        Span nameAt();
    }

    /** A let, or the variable of a repeat. */
    record Constant(Span nameAt, Cell cell) implements Entry {}

    /** Parts with numbers. */
    record Array(Span nameAt, String path, Map<Integer, PartEntry> elements) implements Entry {}

    /** The names of a used file. */
    record Other(Span nameAt, Scope scope) implements Entry {}

    /** What a bare number means in the file of this scope. */
    Unit units() {
        return units;
    }

    Map<String, Entry> entries() {
        return entries;
    }

    Optional<Entry> find(String name) {
        for (Scope at = this; at != null; at = at.outer) {
            Entry found = at.entries.get(name);
            if (found != null) {
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** All names that can be said here. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        for (Scope at = this; at != null; at = at.outer) {
            names.addAll(at.entries.keySet());
        }
        return names;
    }
}

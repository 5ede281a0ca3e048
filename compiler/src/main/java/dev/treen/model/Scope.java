package dev.treen.model;

import dev.treen.quantity.Unit;
import dev.treen.source.Span;
import dev.treen.syntax.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** The names that can be said at a place, those outside included. */
final class Scope {
    private final @Nullable Scope outer;
    private final Unit units;
    private final @Nullable Scope home;
    private final String prefix;
    private final Optional<InstanceEntry> instance;
    private final @Nullable Asked asked;
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Map<String, Parameter> choices = new LinkedHashMap<>();
    private final List<Used> used = new ArrayList<>();

    private Scope(
            @Nullable Scope outer,
            Unit units,
            @Nullable Scope home,
            String prefix,
            Optional<InstanceEntry> instance,
            @Nullable Asked asked) {
        this.outer = outer;
        this.units = units;
        this.home = home;
        this.prefix = prefix;
        this.instance = instance;
        this.asked = asked;
    }

    /** Who wants to know which names a file is asked for. */
    interface Asked {
        /** {@code name} was asked for, and stands for this. */
        void forName(String name, Optional<Entry> found);
    }

    /** The scope of the project's own file, which tells {@code asked} what it is asked for. */
    static Scope file(Unit units, Asked asked) {
        return new Scope(null, units, null, "", Optional.empty(), asked);
    }

    /** Whether this is the scope of the project's own file. */
    boolean tellsWhatItIsAsked() {
        return asked != null;
    }

    /** Forgets all names, for the file to be read anew. */
    void begin() {
        entries.clear();
        choices.clear();
        used.clear();
    }

    /** The scope of a file; {@code prefix} goes before the names of its parts and boards. */
    static Scope file(Unit units, String prefix) {
        return new Scope(null, units, null, prefix, Optional.empty(), null);
    }

    /** The inside of an instance: it knows the names of the file in which its pattern is written. */
    static Scope inside(InstanceEntry instance) {
        Scope written = instance.pattern().home();
        return new Scope(written, written.units, null, instance.path() + ".", Optional.of(instance), null);
    }

    /** One round of a repeat in {@code outer}: names of its own, but numbered parts belong outside. */
    static Scope within(Scope outer) {
        return new Scope(outer, outer.units, outer.home(), outer.prefix, outer.instance, null);
    }

    /** The scope to which numbered parts belong. */
    Scope home() {
        return home == null ? this : home;
    }

    /** What a name means. */
    sealed interface Entry
            permits Constant, Parameter, PartEntry, BoardEntry, Array, Other, PatternEntry, InstanceEntry, Preset {
        Span nameAt();

        /** The value that has this name, where it is a value. */
        default Optional<Cell> held() {
            return switch (this) {
                case Constant constant -> Optional.of(constant.cell());
                case Parameter parameter -> Optional.of(parameter.cell());
                case PartEntry p -> Optional.empty();
                case BoardEntry b -> Optional.empty();
                case Array a -> Optional.empty();
                case Other o -> Optional.empty();
                case PatternEntry p -> Optional.empty();
                case InstanceEntry i -> Optional.empty();
                case Preset p -> Optional.empty();
            };
        }
    }

    /** A let, or the variable of a repeat. */
    record Constant(Span nameAt, Cell cell) implements Entry {}

    /**
     * A parameter of the instance whose inside this is.
     *
     * @param choices the words that it may be; empty where it is not one of a few
     * @param options what goes with the choice, each with its value
     */
    record Parameter(Span nameAt, Cell cell, List<String> choices, Map<String, Cell> options) implements Entry {}

    /** Things with numbers: parts or instances. */
    record Array(Span nameAt, String path, Map<Integer, Entry> elements) implements Entry {}

    /** The names of a used file. */
    record Other(Span nameAt, Scope scope) implements Entry {}

    /** Settings of the shop under a name: a saw, allowances, the air of a room. */
    record Preset(Span nameAt, Statement.Property statement, Scope scope) implements Entry {
        String kind() {
            return statement.name().text();
        }
    }

    /** A file whose names can be said without more words. */
    record Used(Span at, Scope scope) {}

    /** What a bare number means in the file of this scope. */
    Unit units() {
        return units;
    }

    /** What goes before the name of a part declared here. */
    String prefix() {
        return prefix;
    }

    /** The instance whose inside this is. */
    Optional<InstanceEntry> instance() {
        return instance;
    }

    Map<String, Entry> entries() {
        return entries;
    }

    /** Parameters that are one of a few words; a part may have the name of one. */
    Map<String, Parameter> choices() {
        return choices;
    }

    List<Used> used() {
        return used;
    }

    /** What {@code name} means among the names declared here and nowhere else. */
    Optional<Entry> own(String name) {
        Entry found = entries.get(name);
        return Optional.ofNullable(found == null ? choices.get(name) : found);
    }

    Optional<Entry> find(String name) {
        for (Scope at = this; at != null; at = at.outer) {
            Optional<Entry> found = at.own(name).or(at.fromUsed(name));
            at.tell(name, found);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private void tell(String name, Optional<Entry> found) {
        if (asked != null) {
            asked.forName(name, found);
        }
    }

    private java.util.function.Supplier<Optional<Entry>> fromUsed(String name) {
        return () -> used.stream().flatMap(file -> file.scope().own(name).stream()).findFirst();
    }

    /** The parameter called {@code name} that is one of a few words, even where a part has the same name. */
    Optional<Parameter> choice(String name) {
        for (Scope at = this; at != null; at = at.outer) {
            at.tell(name, at.own(name));
            if (at.choices.containsKey(name)) {
                return Optional.ofNullable(at.choices.get(name));
            }
            if (at.entries.containsKey(name)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** All names that can be said here. */
    Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        for (Scope at = this; at != null; at = at.outer) {
            names.addAll(at.entries.keySet());
            names.addAll(at.choices.keySet());
            at.used.forEach(file -> names.addAll(file.scope().entries.keySet()));
        }
        return names;
    }

    /**
     * Those of the names that can be said here that stand for a value that is {@code wanted}, and not for a thing or for
     * settings.
     */
    Set<String> figures(Predicate<Cell> wanted) {
        Set<String> names = new LinkedHashSet<>();
        for (Scope at = this; at != null; at = at.outer) {
            names.addAll(at.choices.keySet());
            addFigures(at, names, wanted);
            at.used.forEach(file -> addFigures(file.scope(), names, wanted));
        }
        return names;
    }

    private static void addFigures(Scope scope, Set<String> names, Predicate<Cell> wanted) {
        scope.entries.forEach((name, entry) -> {
            if (entry.held().filter(wanted).isPresent()) {
                names.add(name);
            }
        });
    }

    /** The names declared here and nowhere else. */
    Set<String> ownNames() {
        Set<String> names = new LinkedHashSet<>(entries.keySet());
        names.addAll(choices.keySet());
        return names;
    }
}

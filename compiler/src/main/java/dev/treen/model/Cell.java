package dev.treen.model;

import dev.treen.source.Span;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value worked out when it is first asked for, and remembered. */
final class Cell {
    private final Session session;
    private final Optional<InstanceEntry> instance;
    private final String path;
    private final String label;
    private final Span at;
    private final Supplier<Derived> make;
    private final Notes notes;
    private @Nullable Derived value;
    private int height;
    private boolean running;

    /** A value that belongs to {@code scope} and is called {@code label} there. */
    Cell(Session session, Scope scope, String label, Span at, Supplier<Derived> make) {
        this.session = session;
        this.instance = scope.instance();
        this.path = scope.prefix() + label;
        this.label = label;
        this.at = at;
        this.make = make;
        this.notes = session.notes();
    }

    /** Its whole name, which no other value of the project has. */
    String path() {
        return path;
    }

    Span at() {
        return at;
    }

    Derived value() {
        Derived found = known();
        session.isBehind(height);
        return found;
    }

    /** The value where it has been worked out already. */
    Optional<Derived> ifKnown() {
        return Optional.ofNullable(value);
    }

    private Derived known() {
        if (value != null) {
            return value;
        }
        if (running) {
            session.circle(this);
            return Expressions.unknown(at);
        }
        if (!session.enter(this)) {
            return Expressions.unknown(at);
        }
        running = true;
        try {
            Derived made = session.noting(notes, () -> session.within(instance, make));
            Derived named = new Derived(made.value(), made.how().named(label));
            value = session.measured.inPlaceOf(path, named);
            return value;
        } finally {
            running = false;
            height = session.leave();
        }
    }
}

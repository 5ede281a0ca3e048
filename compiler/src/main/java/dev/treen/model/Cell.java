package dev.treen.model;

import dev.treen.source.Span;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value worked out when it is first asked for, and remembered. */
final class Cell {
    private final Session session;
    private final String label;
    private final Span at;
    private final Supplier<Derived> make;
    private @Nullable Derived value;
    private boolean running;

    Cell(Session session, String label, Span at, Supplier<Derived> make) {
        this.session = session;
        this.label = label;
        this.at = at;
        this.make = make;
    }

    String label() {
        return label;
    }

    Span at() {
        return at;
    }

    Derived value() {
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
            Derived made = make.get();
            Derived named = new Derived(made.value(), made.how().named(label));
            value = named;
            return named;
        } finally {
            running = false;
            session.leave();
        }
    }
}

package dev.treen.solid;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Set;

/** Unmodifiable sets that keep the order of their making, so that results read the same every time. */
final class Sets {

    private Sets() {
    }

    // A set of names cannot be changed and keeps an order of its own.
    @SuppressWarnings("unchecked")
    static <T> Set<T> ordered(Collection<T> items) {
        return items instanceof NameSet ? (Set<T>) items : Collections.unmodifiableSet(new LinkedHashSet<>(items));
    }
}

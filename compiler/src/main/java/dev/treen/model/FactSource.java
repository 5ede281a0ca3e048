package dev.treen.model;

import java.util.List;
import java.util.Optional;

/**
 * What is only known of a thing when its joints are made and it has been checked: how far a shelf sags, how much room a
 * lid keeps. Only `require` may ask for it, since a size must not wait for a check of that same size.
 */
public interface FactSource {
    /** The fact {@code name} of the thing called {@code path}, where it has one. */
    Optional<Derived> fact(String path, String name);

    /** The names of all facts of the thing called {@code path}. */
    List<String> names(String path);

    /** Nothing is known: sizes alone. */
    FactSource NONE = new FactSource() {
        @Override
        public Optional<Derived> fact(String path, String name) {
            return Optional.empty();
        }

        @Override
        public List<String> names(String path) {
            return List.of();
        }
    };
}

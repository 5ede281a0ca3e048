package dev.treen.model;

import java.util.List;
import java.util.Optional;

/** A kind of block: its word, what it is for, an example, and its properties. */
public record BlockSchema(String word, String doc, String example, List<PropertySchema> properties) {
    /** Keeps its own copy. */
    public BlockSchema {
        properties = List.copyOf(properties);
    }

    /** The property called {@code name}. */
    public Optional<PropertySchema> property(String name) {
        return properties.stream().filter(p -> p.name().equals(name)).findFirst();
    }
}

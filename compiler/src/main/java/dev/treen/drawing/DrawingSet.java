package dev.treen.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * All drawings of a project.
 *
 * @param sheets by what they show: each part under its name, then the whole assembled and taken apart
 * @param assembled the parts where they stand; empty where none has a place
 * @param apart the parts out of their joints; empty where there are fewer than two
 * @param loose the parts that have no place, as blocks beside each other; empty where all have one
 */
public record DrawingSet(
        Map<String, Sheet> sheets, Optional<Scene> assembled, Optional<Scene> apart, Optional<Scene> loose) {
    /** Keeps its own copy, in the same order. */
    public DrawingSet {
        sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
    }
}

package dev.treen.joinery;

import dev.treen.model.Part;
import dev.treen.model.Settings;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** How the wood of each part moves, worked out when it is first asked for: many checks ask for the same part. */
public final class Natures {
    private final Settings settings;
    private final Map<String, Nature> known = new ConcurrentHashMap<>();

    /** Those of a project with these settings. */
    public Natures(Settings settings) {
        this.settings = settings;
    }

    /** How a part's wood moves. */
    public Nature of(Part part) {
        return known.computeIfAbsent(part.name(), name -> Nature.of(part, settings));
    }
}

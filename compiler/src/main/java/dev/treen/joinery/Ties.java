package dev.treen.joinery;

import java.util.HashMap;
import java.util.Map;

/** Parts tied to each other, one by one or through others: all that are tied have one name that stands for them. */
public final class Ties {
    private final Map<String, String> leaders = new HashMap<>();

    /** Nothing is tied yet. */
    public Ties() {
    }

    /** Ties two parts, with all that are tied to either. */
    public void tie(String one, String other) {
        String first = leader(one);
        String second = leader(other);
        if (!first.equals(second)) {
            leaders.put(second, first);
        }
    }

    /** The name that stands for all that are tied to a part: its own, where none is. */
    public String leader(String part) {
        String at = part;
        String next = leaders.getOrDefault(at, at);
        while (!next.equals(at)) {
            String beyond = leaders.getOrDefault(next, next);
            leaders.put(at, beyond);
            at = next;
            next = beyond;
        }
        return at;
    }
}

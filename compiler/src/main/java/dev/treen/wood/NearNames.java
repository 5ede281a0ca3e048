package dev.treen.wood;

import dev.treen.spelling.Slips;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Names that a misspelt one may have meant. */
final class NearNames {

    private record Near(String name, int distance) {}

    private NearNames() {
    }

    /**
     * The nearest names, best first; names of the same distance in the order of the alphabet.
     *
     * @param word what was written
     * @param names what could have been meant
     * @param limit at most this many
     */
    static List<String> of(String word, Collection<String> names, int limit) {
        // One slip for every three letters, and one more: short words must not match everything.
        int tolerated = 1 + word.length() / 3;
        List<Near> near = new ArrayList<>();
        for (String name : names) {
            if (Math.abs(name.length() - word.length()) <= tolerated) {
                int distance = Slips.between(word, name);
                if (distance <= tolerated) {
                    near.add(new Near(name, distance));
                }
            }
        }
        near.sort(Comparator.comparingInt(Near::distance).thenComparing(Near::name));
        return near.stream().limit(limit).map(Near::name).toList();
    }
}

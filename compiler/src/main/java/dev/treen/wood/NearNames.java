package dev.treen.wood;

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
                int distance = distance(word, name);
                if (distance <= tolerated) {
                    near.add(new Near(name, distance));
                }
            }
        }
        near.sort(Comparator.comparingInt(Near::distance).thenComparing(Near::name));
        return near.stream().limit(limit).map(Near::name).toList();
    }

    /** The least number of letters to add, drop, change or swap with their neighbour (optimal alignment). */
    static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(last[j - 1] + change, 1 + Math.min(last[j], now[j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            int[] spare = before;
            before = last;
            last = now;
            now = spare;
        }
        return last[b.length()];
    }
}

package dev.treen.finding;

import dev.treen.spelling.Slips;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which of the words that exist somebody may have meant. */
public final class NearWords {
    private static final int MOST = 3;
    private static final int LONGEST = 64;

    private NearWords() {
    }

    /**
     * The words of {@code known} at most two slips (a letter more, less, other, or two swapped) from {@code typed}, one
     * slip for short words; the nearest first, at most three.
     */
    public static List<String> of(String typed, Collection<String> known) {
        if (typed.isEmpty() || typed.length() > LONGEST) {
            return List.of();
        }
        int allowed = typed.length() <= 3 ? 1 : 2;
        record Near(String word, int slips) {}
        return known.stream()
                .filter(word -> Math.abs(word.length() - typed.length()) <= allowed)
                .map(word -> new Near(word, Slips.between(typed, word)))
                .filter(near -> near.slips() <= allowed && near.slips() < typed.length())
                .sorted(Comparator.comparingInt(Near::slips).thenComparing(Near::word))
                .limit(MOST)
                .map(Near::word)
                .toList();
    }

    /** `a`, `b` or `c`, in back quotes; for the sentence "… is near". */
    public static String quoted(List<String> words) {
        return "`" + String.join("`, `", words) + "`";
    }
}

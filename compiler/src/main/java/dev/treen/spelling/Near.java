package dev.treen.spelling;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Which of the words that exist somebody may have meant: one measure for names, properties, units and species. */
public final class Near {
    private static final int MOST = 3;
    private static final int LONGEST = 64;
    private static final int SHORT = 3;
    private static final int LONG = 12;

    private Near() {
    }

    /**
     * The words of {@code known} that a few slips of the pen lie from {@code typed}: one in a word of up to three letters,
     * three in one of twelve or more, two in others. The nearest first, those of the same distance in the order of the
     * alphabet, at most three.
     */
    public static List<String> of(String typed, Collection<String> known) {
        if (typed.isEmpty() || typed.length() > LONGEST) {
            return List.of();
        }
        int allowed = typed.length() <= SHORT ? 1 : typed.length() < LONG ? 2 : 3;
        record Found(String word, int slips) {}
        return known.stream()
                .filter(word -> Math.abs(word.length() - typed.length()) <= allowed)
                .map(word -> new Found(word, Slips.between(typed, word)))
                .filter(near -> near.slips() <= allowed && near.slips() < typed.length())
                .sorted(Comparator.comparingInt(Found::slips).thenComparing(Found::word))
                .limit(MOST)
                .map(Found::word)
                .toList();
    }
}

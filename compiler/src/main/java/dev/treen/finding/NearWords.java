package dev.treen.finding;

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
                .map(word -> new Near(word, slips(typed, word)))
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

    // Optimal string alignment distance: Damerau 1964, restricted so that no stretch is edited twice.
    private static int slips(String a, String b) {
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                cost[i][j] = i == 0 ? j : j == 0 ? i : cheapest(cost, a, b, i, j);
            }
        }
        return cost[a.length()][b.length()];
    }

    private static int cheapest(int[][] cost, String a, String b, int i, int j) {
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int best = Math.min(Math.min(cost[i - 1][j], cost[i][j - 1]) + 1, cost[i - 1][j - 1] + same);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}

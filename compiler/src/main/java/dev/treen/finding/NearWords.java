package dev.treen.finding;

import dev.treen.spelling.Near;
import java.util.Collection;
import java.util.List;

/** Which of the words that exist somebody may have meant, for findings. */
public final class NearWords {
    private NearWords() {
    }

    /** The words of {@code known} that are near {@code typed}, the nearest first, at most three; see {@link Near}. */
    public static List<String> of(String typed, Collection<String> known) {
        return Near.of(typed, known);
    }

    /** `a`, `b` or `c`, in back quotes; for the sentence "… is near". */
    public static String quoted(List<String> words) {
        return "`" + String.join("`, `", words) + "`";
    }
}

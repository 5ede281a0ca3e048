package dev.treen.finding;

import dev.treen.source.Span;
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

    /** What to write at {@code at} instead: safe where only one word is near, else as many choices. */
    public static List<Remedy> remedies(String typed, Span at, Collection<String> known) {
        List<String> near = of(typed, known);
        return near.stream()
                .map(each -> near.size() == 1
                        ? Remedy.safe("write `" + each + "`", new Edit(at, each))
                        : Remedy.choice("write `" + each + "`", new Edit(at, each)))
                .toList();
    }

    /** `a`, `b` or `c`, in back quotes; for the sentence "… is near". */
    public static String quoted(List<String> words) {
        return "`" + String.join("`, `", words) + "`";
    }
}

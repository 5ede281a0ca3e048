package dev.treen.finding;

import dev.treen.source.Span;
import java.util.Comparator;
import java.util.List;

/** Put {@code text} in the place of {@code at}. */
public record Edit(Span at, String text) {
    /** {@code text} with edits that do not overlap carried out; of several at one place the first comes first. */
    public static String applied(String text, List<Edit> edits) {
        StringBuilder changed = new StringBuilder(text);
        edits.reversed().stream()
                .sorted(Comparator.comparingInt((Edit edit) -> edit.at.start()).reversed())
                .forEach(edit -> changed.replace(edit.at.start(), edit.at.end(), edit.text));
        return changed.toString();
    }
}

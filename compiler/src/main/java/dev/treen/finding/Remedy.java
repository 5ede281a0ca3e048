package dev.treen.finding;

import java.util.List;

/**
 * A way out of a finding, in the imperative, with the exact text to write where there is one.
 *
 * @param text what to do, for people
 * @param grade how much thought it still needs
 * @param edits what an editor would change; empty where only a person can do it
 */
public record Remedy(String text, Grade grade, List<Edit> edits) {
    /** How much thought a remedy still needs. */
    public enum Grade {
        /** Safe to apply: the finding goes away and nothing else breaks. */
        SAFE,
        /** A value has to be filled in. */
        NEEDS_VALUE,
        /** One of several ways out: a person chooses. */
        CHOICE
    }

    /** Keeps its own copy of the edits. */
    public Remedy {
        edits = List.copyOf(edits);
    }

    /** A remedy that an editor may apply without a question. */
    public static Remedy safe(String text, Edit... edits) {
        return new Remedy(text, Grade.SAFE, List.of(edits));
    }

    /** A remedy that is one of several. */
    public static Remedy choice(String text, Edit... edits) {
        return new Remedy(text, Grade.CHOICE, List.of(edits));
    }
}

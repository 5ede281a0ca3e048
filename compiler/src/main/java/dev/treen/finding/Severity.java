package dev.treen.finding;

/** How bad a finding is. */
public enum Severity {
    /** The output would be wrong or cannot be made: it will break, jam, fall out. Cannot be accepted away. */
    ERROR("error"),
    /** It can be made, and is likely regretted. */
    WARNING("warning"),
    /** A fact worth knowing. */
    NOTE("note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /** The word shown to people and written to JSON. */
    public String word() {
        return word;
    }
}

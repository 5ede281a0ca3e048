package dev.treen.finding;

/**
 * One kind of finding, declared once as a constant beside the check that raises it.
 *
 * @param code stable for ever, kebab-case; `accept`, `explain`, the catalogue page and the editor's link use it
 * @param severity how bad it is unless a finding says otherwise
 * @param title what it is about, a short sentence without names or numbers, for lists of codes
 */
public record FindingKind(String code, Severity severity, String title) {
    /** Refuses a code that is not kebab-case: it could not be written after {@code accept}. */
    public FindingKind {
        if (!code.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("not a finding code: " + code);
        }
    }

    /** An error of this code. */
    public static FindingKind error(String code, String title) {
        return new FindingKind(code, Severity.ERROR, title);
    }

    /** A warning of this code. */
    public static FindingKind warning(String code, String title) {
        return new FindingKind(code, Severity.WARNING, title);
    }

    /** A note of this code. */
    public static FindingKind note(String code, String title) {
        return new FindingKind(code, Severity.NOTE, title);
    }
}

package dev.treen.syntax;

import dev.treen.finding.FindingKind;
import java.util.List;

/** Everything that reading a text can find, before anyone asks what it means. */
public final class SyntaxFindings {
    /** More text than one file may hold. */
    public static final FindingKind FILE_TOO_LARGE = FindingKind.error("file-too-large",
            "A file is longer than Treen reads");
    /** Not a text at all. */
    public static final FindingKind NOT_TEXT = FindingKind.error("not-text", "A file is not plain text");
    /** Something stands where it cannot. */
    public static final FindingKind UNREADABLE_LINE = FindingKind.error("unreadable-line",
            "A line does not read as a statement");
    /** Something is missing. */
    public static final FindingKind UNFINISHED_LINE = FindingKind.error("unfinished-line",
            "Something is missing in a line");
    /** A brace that nothing closes. */
    public static final FindingKind BRACE_NOT_CLOSED = FindingKind.error("brace-not-closed",
            "An opening brace is never closed");
    /** A block without its opening brace. */
    public static final FindingKind BRACE_NOT_OPENED = FindingKind.error("brace-not-opened",
            "A block has no opening brace");
    /** A brace that closes nothing. */
    public static final FindingKind STRAY_BRACE = FindingKind.error("stray-brace", "A closing brace closes nothing");
    /** Text whose closing quote is missing. */
    public static final FindingKind TEXT_NOT_CLOSED = FindingKind.error("text-not-closed",
            "A text has no closing quote");
    /** A comment whose end is missing. */
    public static final FindingKind COMMENT_NOT_CLOSED = FindingKind.error("comment-not-closed",
            "A comment is never closed");
    /** A unit that Treen does not have. */
    public static final FindingKind UNKNOWN_UNIT = FindingKind.error("unknown-unit", "A unit is not one of Treen's");
    /** Too many digits. */
    public static final FindingKind NUMBER_TOO_LONG = FindingKind.error("number-too-long",
            "A number has more digits than Treen reads");
    /** A fraction without a value. */
    public static final FindingKind UNREADABLE_NUMBER = FindingKind.error("unreadable-number", "A figure has no value");
    /** A character that no word or mark begins with. */
    public static final FindingKind STRAY_CHARACTER = FindingKind.error("stray-character",
            "A character means nothing in Treen");
    /** A name with characters that cannot be seen. */
    public static final FindingKind HIDDEN_CHARACTER = FindingKind.error("hidden-character",
            "A name has characters that cannot be seen");
    /** Braces or brackets within each other beyond all need. */
    public static final FindingKind NESTED_TOO_DEEP = FindingKind.error("nested-too-deep",
            "Blocks or brackets are nested too deep");
    /** The list of findings ends here. */
    public static final FindingKind MORE_FINDINGS = FindingKind.note("more-syntax-findings",
            "A file has more findings than are shown");

    private SyntaxFindings() {
    }

    /** Every kind, in the order in which a catalogue lists them. */
    public static List<FindingKind> all() {
        return List.of(
                UNREADABLE_LINE,
                UNFINISHED_LINE,
                BRACE_NOT_CLOSED,
                BRACE_NOT_OPENED,
                STRAY_BRACE,
                TEXT_NOT_CLOSED,
                COMMENT_NOT_CLOSED,
                UNKNOWN_UNIT,
                UNREADABLE_NUMBER,
                NUMBER_TOO_LONG,
                STRAY_CHARACTER,
                HIDDEN_CHARACTER,
                NESTED_TOO_DEEP,
                FILE_TOO_LARGE,
                NOT_TEXT,
                MORE_FINDINGS);
    }
}

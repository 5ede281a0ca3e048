package dev.treen.syntax;

/**
 * A token or comment of the text, for colouring and formatting. Tokens with the blanks between them cover the file.
 *
 * @param start first UTF-16 unit
 * @param end one past the last
 */
public record Token(Kind kind, int start, int end) {
    /** What kind of token it is. */
    public enum Kind {
        /** A declaration word, contextual. */
        WORD,
        /** Any other name. */
        NAME,
        /** A word reserved for expressions. */
        RESERVED,
        /** A figure. */
        NUMBER,
        /** The unit after a figure. */
        UNIT,
        /** Text in quotes. */
        TEXT,
        /** An operator or a mark of punctuation. */
        MARK,
        /** A brace or bracket. */
        BRACKET,
        /** The end of a line. */
        NEW_LINE,
        /** A comment that documents what follows. */
        DOC_COMMENT,
        /** Any other comment. */
        COMMENT,
        /** Something that no token begins with. */
        STRAY
    }
}

package dev.treen.syntax;

/**
 * A token or comment of the text, for colouring and formatting. Tokens with the blanks between them cover the file.
 *
 * @param start first UTF-16 unit
 * @param end one past the last
 */
public record Token(Kind kind, int start, int end) {
    /** Whether a statement ends with it, or another begins, in {@code text}: the end of a line, a brace or a semicolon. */
    public boolean parts(String text) {
        return switch (kind) {
            case NEW_LINE -> true;
            case BRACKET, MARK -> start < text.length() && "{};".indexOf(text.charAt(start)) >= 0;
            case WORD, NAME, RESERVED, NUMBER, UNIT, TEXT, DOC_COMMENT, COMMENT, STRAY -> false;
        };
    }

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

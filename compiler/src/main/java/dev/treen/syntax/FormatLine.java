package dev.treen.syntax;

import dev.treen.syntax.FormatFacts.Column;

/** One line that the formatter is writing. Filled in by {@link FormatWriter} alone. */
final class FormatLine {
    final int indent;
    final int section;
    final StringBuilder text = new StringBuilder();
    final StringBuilder comment = new StringBuilder();
    boolean blankBefore;
    boolean verbatim;
    boolean hasCode;
    Column column = Column.NONE;
    int stop = -1;
    int brace = -1;

    /**
     * An empty line.
     *
     * @param section lines of the same section may line up
     */
    FormatLine(int indent, int section) {
        this.indent = indent;
        this.section = section;
    }

    boolean isEmpty() {
        return text.isEmpty() && comment.isEmpty();
    }

    /** How wide it is without its comment. */
    int width() {
        int last = text.lastIndexOf("\n");
        return last < 0 ? indent + text.length() : text.length() - last - 1;
    }

    void stretch(int at, int by) {
        text.insert(at, " ".repeat(by));
    }

    /** The line as it goes into the file, with its comment from {@code commentColumn} on. */
    String written(int commentColumn) {
        if (verbatim || isEmpty()) {
            return text.toString();
        }
        StringBuilder line = new StringBuilder(" ".repeat(indent)).append(text);
        if (!comment.isEmpty()) {
            line.append(" ".repeat(text.isEmpty() ? 0 : Math.max(2, commentColumn - width()))).append(comment);
        }
        return line.toString();
    }
}

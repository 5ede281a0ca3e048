package dev.treen.source;

import java.util.Arrays;

/**
 * One text, under the name by which people know it, with an index of its lines.
 *
 * <p>Offsets count UTF-16 code units from 0, as Java strings do. Lines end at LF, CR LF or a lone CR. Two files are the
 * same when both name and text are.
 */
public final class SourceFile {
    private final String name;
    private final String text;
    private final int[] lineStarts;

    /** Takes {@code text} under {@code name} (a path or an address, shown to people as it is). */
    public SourceFile(String name, String text) {
        this.name = name;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[16];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
            if (ends) {
                if (count == starts.length) {
                    starts = Arrays.copyOf(starts, count * 2);
                }
                starts[count++] = i + 1;
            }
        }
        return Arrays.copyOf(starts, count);
    }

    /** The name by which people know the file. */
    public String name() {
        return name;
    }

    /** The whole text. */
    public String text() {
        return text;
    }

    /** How many lines there are; an empty text has one. */
    public int lineCount() {
        return lineStarts.length;
    }

    /** The line, counted from 0, that holds {@code offset}; offsets outside the text fall to its ends. */
    public int lineOf(int offset) {
        int at = Arrays.binarySearch(lineStarts, Math.max(0, Math.min(offset, text.length())));
        return at >= 0 ? at : -at - 2;
    }

    /** Where {@code line} (from 0) begins. */
    public int lineStart(int line) {
        return lineStarts[line];
    }

    /** The text of {@code line} (from 0) without its line ending. */
    public String lineText(int line) {
        int end = line + 1 < lineStarts.length ? lineStarts[line + 1] : text.length();
        while (end > lineStarts[line] && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return text.substring(lineStarts[line], end);
    }

    /** The column, counted from 0 in UTF-16 units, of {@code offset} in its line. */
    public int columnOf(int offset) {
        int inside = Math.max(0, Math.min(offset, text.length()));
        return inside - lineStarts[lineOf(inside)];
    }

    /** The span from {@code start} to {@code end}, both brought inside the text. */
    public Span span(int start, int end) {
        int from = Math.max(0, Math.min(start, text.length()));
        return new Span(this, from, Math.max(from, Math.min(end, text.length())));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof SourceFile file && file.name.equals(name) && file.text.equals(text);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + text.length();
    }

    @Override
    public String toString() {
        return name;
    }
}

package dev.treen.source;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * One text, under the name by which people know it, with an index of its lines.
 *
 * <p>Offsets count UTF-16 code units from 0, as Java strings do. Lines end at LF, CR LF or a lone CR. Two files are the
 * same when both name and text are.
 *
 * <p>While a text is edited, each statement is a {@link #piece} of its own: what was worked out of one stays true when
 * others grow or shrink, and only where it lies is told anew. A piece is the same as itself alone.
 */
public final class SourceFile {
    private final String name;
    private final String text;
    private final int[] lineStarts;
    private volatile @Nullable Lie lie;

    /** Where a piece lies in the text that it belongs to. */
    record Lie(SourceFile whole, int offset) {}

    /** Takes {@code text} under {@code name} (a path or an address, shown to people as it is). */
    public SourceFile(String name, String text) {
        this.name = name;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    /** A piece of an edited text, until {@link #lies} is called a text of its own. */
    public static SourceFile piece(String name, String text) {
        SourceFile piece = new SourceFile(name, text);
        piece.lies(piece, 0);
        return piece;
    }

    /** Says that this piece now begins at {@code offset} of {@code whole}; all its spans move with it. */
    public void lies(SourceFile whole, int offset) {
        lie = new Lie(whole, offset);
    }

    /** Where this text lies: a whole file in itself. */
    Lie lie() {
        Lie known = lie;
        return known == null ? new Lie(this, 0) : known;
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
        return this == other || (lie == null && other instanceof SourceFile file && file.lie == null
                && file.name.equals(name) && file.text.equals(text));
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

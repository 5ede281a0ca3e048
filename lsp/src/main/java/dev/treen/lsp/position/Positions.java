package dev.treen.lsp.position;

import java.util.Arrays;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * Translates between offsets into one text and the protocol's positions in it. An offset counts the units of a Java
 * string. Nothing that a client can send is refused: a place outside the text, past the end of a line or inside a
 * character is moved to the nearest place before it that exists, as the protocol asks for the end of a line.
 *
 * <p>Lines end with {@code \n}, {@code \r\n} or {@code \r}, and a line's end is not part of it.
 */
public final class Positions {

    private final String text;
    private final PositionEncoding encoding;
    /** Where each line begins; the first at 0. */
    private final int[] lineStarts;

    private Positions(String text, PositionEncoding encoding, int[] lineStarts) {
        this.text = text;
        this.encoding = encoding;
        this.lineStarts = lineStarts;
    }

    /** Finds the lines of a text. */
    public static Positions of(String text, PositionEncoding encoding) {
        int[] starts = new int[Math.max(16, text.length() / 32)];
        int lines = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean ends = c == '\n' || (c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n'));
            if (ends) {
                if (lines == starts.length) {
                    starts = Arrays.copyOf(starts, 2 * lines);
                }
                starts[lines++] = i + 1;
            }
        }
        return new Positions(text, encoding, Arrays.copyOf(starts, lines));
    }

    /** How many lines there are: one more than line ends. */
    public int lineCount() {
        return lineStarts.length;
    }

    /** The offset of a position. */
    public int offset(Position position) {
        if (position.getLine() < 0) {
            return 0;
        }
        if (position.getLine() >= lineStarts.length) {
            return text.length();
        }
        int end = lineEnd(position.getLine());
        int offset = lineStarts[position.getLine()];
        int left = position.getCharacter();
        while (offset < end) {
            int codePoint = text.codePointAt(offset);
            left -= encoding.width(codePoint);
            if (left < 0) {
                break;
            }
            offset += Character.charCount(codePoint);
        }
        return offset;
    }

    /** The position of an offset. */
    public Position position(int offset) {
        int wanted = Math.clamp(offset, 0, text.length());
        int found = Arrays.binarySearch(lineStarts, wanted);
        int line = found >= 0 ? found : -found - 2;
        return new Position(line, character(line, wanted));
    }

    /** How far {@code offset}, which lies in {@code line}, is from its start as the client counts. */
    public int character(int line, int offset) {
        int end = Math.min(offset, lineEnd(line));
        if (encoding == PositionEncoding.UTF16) {
            boolean inside = end > lineStarts[line] && end < text.length()
                    && Character.isSurrogatePair(text.charAt(end - 1), text.charAt(end));
            return end - lineStarts[line] - (inside ? 1 : 0);
        }
        int character = 0;
        int at = lineStarts[line];
        while (at < end) {
            int codePoint = text.codePointAt(at);
            at += Character.charCount(codePoint);
            if (at <= end) {
                character += encoding.width(codePoint);
            }
        }
        return character;
    }

    /** The offsets of a range, in order even where the client has them the wrong way round. */
    public Span span(Range range) {
        int start = offset(range.getStart());
        int end = offset(range.getEnd());
        return new Span(Math.min(start, end), Math.max(start, end));
    }

    /** The range between two offsets. */
    public Range range(int start, int end) {
        return new Range(position(start), position(end));
    }

    /** Two offsets into the text, the first not after the second. */
    public record Span(int start, int end) {}

    private int lineEnd(int line) {
        if (line + 1 == lineStarts.length) {
            return text.length();
        }
        int end = lineStarts[line + 1] - 1;
        boolean two = text.charAt(end) == '\n' && end > lineStarts[line] && text.charAt(end - 1) == '\r';
        return two ? end - 1 : end;
    }
}

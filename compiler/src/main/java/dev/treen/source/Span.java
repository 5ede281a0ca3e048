package dev.treen.source;

/**
 * A stretch of one file: from its start up to, not including, its end, in UTF-16 units. An empty span is a place between
 * two characters: where something is missing.
 *
 * @param source the file, or the piece of it that the span was read from
 * @param from the start in {@code source}
 * @param to the end in {@code source}
 */
public record Span(SourceFile source, int from, int to) {

    /** The file, as it is now where it is being edited. */
    public SourceFile file() {
        return source.lie().whole();
    }

    /** Where it begins in the file. */
    public int start() {
        return source.lie().offset() + from;
    }

    /** Where it ends in the file. */
    public int end() {
        return source.lie().offset() + to;
    }

    /** From the start of this span to the end of {@code other}, or this span alone where the other lies before it. */
    public Span to(Span other) {
        return new Span(source, Math.min(from, other.from), Math.max(to, other.to));
    }

    /** The first {@code length} characters of it, no more than there are. */
    public Span first(int length) {
        return new Span(source, from, Math.min(to, from + length));
    }

    /** The empty span {@code behind} characters behind its start. */
    public Span pointAt(int behind) {
        return new Span(source, from + behind, from + behind);
    }

    /** The text that the span covers. */
    public String text() {
        return source.text().substring(from, to);
    }

    /** Whether the text of {@code other} stands at its beginning. */
    public boolean startsWith(Span other) {
        int length = other.to - other.from;
        return length <= to - from && source.text().regionMatches(from, other.source.text(), other.from, length);
    }

    /** The line of its start, counted from 1 as people count. */
    public int line() {
        return file().lineOf(start()) + 1;
    }

    /** The column of its start, counted from 1 as people count. */
    public int column() {
        return file().columnOf(start()) + 1;
    }

    /** The empty span at the end of this one. */
    public Span endPoint() {
        return new Span(source, to, to);
    }

    /** Whether {@code offset} lies in the span or at its end, where a cursor that has just typed it stands. */
    public boolean touches(int offset) {
        return start() <= offset && offset <= end();
    }

    /** {@code file:line:column}, as terminals make it clickable. */
    @Override
    public String toString() {
        return source.name() + ":" + line() + ":" + column();
    }
}

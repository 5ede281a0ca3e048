package dev.treen.source;

/**
 * A stretch of one file: from {@code start} up to, not including, {@code end}, in UTF-16 units. An empty span is a place
 * between two characters: where something is missing.
 */
public record Span(SourceFile file, int start, int end) {

    /** From the start of this span to the end of {@code other}, or this span alone where the other lies before it. */
    public Span to(Span other) {
        return new Span(file, Math.min(start, other.start), Math.max(end, other.end));
    }

    /** The text that the span covers. */
    public String text() {
        return file.text().substring(start, end);
    }

    /** The line of its start, counted from 1 as people count. */
    public int line() {
        return file.lineOf(start) + 1;
    }

    /** The column of its start, counted from 1 as people count. */
    public int column() {
        return file.columnOf(start) + 1;
    }

    /** The empty span at the end of this one. */
    public Span endPoint() {
        return new Span(file, end, end);
    }

    /** Whether {@code offset} lies in the span or at its end, where a cursor that has just typed it stands. */
    public boolean touches(int offset) {
        return start <= offset && offset <= end;
    }

    /** {@code file:line:column}, as terminals make it clickable. */
    @Override
    public String toString() {
        return file.name() + ":" + line() + ":" + column();
    }
}

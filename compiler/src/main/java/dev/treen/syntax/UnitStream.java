package dev.treen.syntax;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;

/** A text as ANTLR reads it, one UTF-16 unit at a time, so that its offsets are those of the Java string. */
final class UnitStream implements CharStream {
    private final String name;
    private final String text;
    private int at;

    UnitStream(String name, String text) {
        this.name = name;
        this.text = text;
    }

    @Override
    public String getText(Interval interval) {
        int start = Math.min(interval.a, text.length());
        return text.substring(start, Math.max(start, Math.min(interval.b + 1, text.length())));
    }

    @Override
    public void consume() {
        at++;
    }

    @Override
    public int LA(int i) {
        int index = i > 0 ? at + i - 1 : at + i;
        return i == 0 || index < 0 || index >= text.length() ? IntStream.EOF : text.charAt(index);
    }

    @Override
    public int mark() {
        return -1;
    }

    @Override
    public void release(int marker) {
        // The whole text stays at hand: nothing to release.
    }

    @Override
    public int index() {
        return at;
    }

    @Override
    public void seek(int index) {
        at = index;
    }

    @Override
    public int size() {
        return text.length();
    }

    @Override
    public String getSourceName() {
        return name;
    }
}

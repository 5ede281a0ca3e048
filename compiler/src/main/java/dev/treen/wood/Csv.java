package dev.treen.wood;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One of the package's CSV resources, kept as text and split row by row when asked.
 *
 * <p>A compile mostly wants one species of two hundred, and start-up counts: finding the lines that begin with a key
 * costs one search through the text, so nothing else is split. For the same reason this path and its callers use no
 * lambdas and no {@code +} on strings: the first of each costs a short command more than all the data does.
 *
 * <p>The files use quotes only around cells with commas, never inside cells and never across lines; a test holds them
 * to it.
 */
final class Csv {

    private final String text;
    private final List<String> header;

    private Csv(String text) {
        this.text = text.endsWith("\n") ? text : text + "\n";
        this.header = split(this.text.substring(0, this.text.indexOf('\n')));
    }

    /** Reads a resource that lies beside this class; a missing one is a broken build. */
    static Csv load(String name) {
        try (InputStream in = Csv.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + name);
            }
            return of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same for text at hand. */
    static Csv of(String text) {
        return new Csv(text);
    }

    /** All rows, in the order of the file. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        int start = text.indexOf('\n') + 1;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            rows.add(new Row(header, split(text.substring(start, end))));
            start = end + 1;
        }
        return rows;
    }

    /** The rows whose first cell is {@code key}. */
    List<Row> rowsOf(String key) {
        List<Row> rows = new ArrayList<>();
        String mark = "\n".concat(key).concat(",");
        int at = text.indexOf(mark);
        while (at >= 0) {
            int end = text.indexOf('\n', at + 1);
            rows.add(new Row(header, split(text.substring(at + 1, end))));
            at = text.indexOf(mark, end);
        }
        return rows;
    }

    /** Adds the first cell of every row, in the order of the file. */
    void addKeysTo(Set<String> keys) {
        int start = text.indexOf('\n') + 1;
        while (start < text.length()) {
            keys.add(text.substring(start, text.indexOf(',', start)));
            start = text.indexOf('\n', start) + 1;
        }
    }

    private static List<String> split(String line) {
        List<String> cells = new ArrayList<>(16);
        int start = 0;
        while (start <= line.length()) {
            boolean quoted = start < line.length() && line.charAt(start) == '"';
            int from = quoted ? start + 1 : start;
            int end = line.indexOf(quoted ? '"' : ',', from);
            if (end < 0) {
                end = line.length();
            }
            cells.add(line.substring(from, end));
            start = end + (quoted ? 2 : 1);
        }
        return cells;
    }

    /** One row; cells are asked for by the name of their column. */
    record Row(List<String> header, List<String> cells) {

        String text(String column) {
            int index = header.indexOf(column);
            if (index < 0) {
                throw new IllegalArgumentException("no column " + column + " in " + header);
            }
            return cells.get(index);
        }

        /** The number in a cell, or nothing where the cell is empty. */
        OptionalDouble number(String column) {
            String cell = text(column);
            return cell.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(cell));
        }

        /** The number in a cell that must not be empty. */
        double required(String column) {
            String cell = text(column);
            if (cell.isEmpty()) {
                throw new IllegalStateException("empty " + column + " in " + cells);
            }
            return Double.parseDouble(cell);
        }
    }
}

package dev.treen.order;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of a tab-separated resource beside this class, by their first cell; the last cell is the source. */
final class Figures {
    private Figures() {
    }

    /** All rows of {@code name} but the headings; a missing resource is a broken build. */
    static Map<String, List<String>> of(String name) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        try (InputStream in = Figures.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + name);
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().skip(1).map(line -> List.of(line.split("\t"))).forEach(row -> rows.put(row.getFirst(), row));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    /** The row called {@code key}; a missing one is a broken build. */
    static List<String> row(Map<String, List<String>> rows, String key) {
        List<String> row = rows.get(key);
        if (row == null) {
            throw new IllegalStateException("no figure called " + key);
        }
        return row;
    }
}

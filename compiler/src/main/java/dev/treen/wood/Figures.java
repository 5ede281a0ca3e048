package dev.treen.wood;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The figures of the rules by name, from {@code thresholds.csv}. A project may overrule any of them; what it
 * changed then says so in its citation.
 */
public final class Figures {

    private final Map<String, Figure> byKey;

    private Figures(Map<String, Figure> byKey) {
        this.byKey = byKey;
    }

    /** The figures as the data file gives them. */
    public static Figures standard() {
        return Standard.FIGURES;
    }

    /**
     * One figure.
     *
     * @throws IllegalArgumentException if no figure has this key: keys are written in code, not by users
     */
    public Figure get(String key) {
        Figure figure = byKey.get(key);
        if (figure == null) {
            throw new IllegalArgumentException("no figure " + key);
        }
        return figure;
    }

    /** The number of one figure, in the unit of the data file. */
    public double value(String key) {
        return get(key).value();
    }

    /** These figures with one number changed, cited as declared in the project. */
    public Figures with(String key, double value) {
        Map<String, Figure> changed = new HashMap<>(byKey);
        changed.put(key, get(key).withValue(value));
        return new Figures(Map.copyOf(changed));
    }

    /** All figures, by key. */
    public List<Figure> all() {
        return byKey.values().stream()
                .sorted((a, b) -> a.key().compareTo(b.key()))
                .toList();
    }

    private static final class Standard {
        static final Figures FIGURES = read(Csv.load("thresholds.csv"));

        private static Figures read(Csv csv) {
            Map<String, Figure> figures = new LinkedHashMap<>();
            for (Csv.Row row : csv.rows()) {
                Figure figure = new Figure(
                        row.text("key"),
                        row.text("rule"),
                        row.text("code"),
                        role(row.text("severity")),
                        row.required("value"),
                        row.text("unit"),
                        row.text("meaning"),
                        Citation.of(row));
                figures.put(figure.key(), figure);
            }
            return new Figures(figures);
        }

        private static Figure.Role role(String word) {
            for (Figure.Role role : Figure.Role.values()) {
                if (role.name().equalsIgnoreCase(word)) {
                    return role;
                }
            }
            throw new IllegalStateException("unknown severity " + word);
        }
    }
}

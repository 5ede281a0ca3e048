package dev.treen.rewrite;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What an instance says of the parameters of its pattern; of what it does not, the standard holds.
 *
 * @param words what each choice is
 * @param measures lengths and sizes in millimetres
 * @param others counts and boards, as they are written
 */
record Given(Map<String, String> words, Map<String, List<BigFraction>> measures, Map<String, String> others) {
    static final Given NOTHING = new Given(Map.of(), Map.of(), Map.of());

    /** Keeps its own copies. */
    Given {
        words = Map.copyOf(words);
        measures = Map.copyOf(measures);
        others = Map.copyOf(others);
    }

    Given with(String choice, String word) {
        return new Given(plus(words, choice, word), measures, others);
    }

    Given with(String parameter, List<BigFraction> values) {
        return new Given(words, plus(measures, parameter, List.copyOf(values)), others);
    }

    Given saying(String parameter, String text) {
        return new Given(words, measures, plus(others, parameter, text));
    }

    /** The same with all measures changed. */
    Given changed(Map<String, List<BigFraction>> to) {
        return new Given(words, to, others);
    }

    private static <T> Map<String, T> plus(Map<String, T> map, String key, T value) {
        Map<String, T> more = new LinkedHashMap<>(map);
        more.put(key, value);
        return more;
    }

    /** The lines of the block, where {@code written} writes the measures of a parameter. */
    List<String> lines(List<Parameter> parameters, UnaryOperator<String> written) {
        List<String> lines = new ArrayList<>();
        for (Parameter each : parameters) {
            if (each.isInner()) {
                continue;
            }
            if (!each.isChoice()) {
                value(each, written).forEach(value -> lines.add(each.name() + " " + value));
                continue;
            }
            List<String> inner = new ArrayList<>();
            parameters.stream()
                    .filter(option -> option.key().startsWith(each.key() + "."))
                    .forEach(option -> value(option, written).forEach(
                            value -> inner.add(option.name() + " " + value)));
            String word = words.get(each.key());
            if (word != null && (!inner.isEmpty() || !word.equals(each.word()))) {
                lines.add(each.name() + " " + word
                        + (inner.isEmpty() ? "" : " { " + String.join("; ", inner) + " }"));
            }
        }
        return lines;
    }

    private List<String> value(Parameter parameter, UnaryOperator<String> written) {
        String said = others.get(parameter.key());
        if (said != null) {
            return List.of(said);
        }
        return measures.containsKey(parameter.key()) ? List.of(written.apply(parameter.key())) : List.of();
    }
}

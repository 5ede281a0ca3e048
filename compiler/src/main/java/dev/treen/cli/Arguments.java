package dev.treen.cli;

import dev.treen.finding.NearWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What follows the name of a command, read by hand.
 *
 * @param names what is no option, in order
 * @param options options with their values; a bare one has an empty value
 * @param wrong what makes no sense, where something does not
 */
record Arguments(List<String> names, Map<String, String> options, Optional<String> wrong) {
    /** Reads {@code given}; {@code valued} lists the options that take a value. After {@code --} all are names. */
    static Arguments read(List<String> given, Set<String> valued) {
        return read(given, valued, Set.of());
    }

    /** The same with the options that stand alone, {@code bare}. */
    static Arguments read(List<String> given, Set<String> valued, Set<String> bare) {
        List<String> known = Stream.concat(valued.stream(), bare.stream()).toList();
        List<String> names = new ArrayList<>();
        Map<String, String> options = new HashMap<>();
        for (int i = 0; i < given.size(); i++) {
            String each = given.get(i);
            if (each.equals("--")) {
                names.addAll(given.subList(i + 1, given.size()));
                break;
            }
            if (!each.startsWith("-") || each.equals("-")) {
                names.add(each);
            } else if (each.equals("--help") || each.equals("-h")) {
                options.put("--help", "");
            } else if (bare.contains(each)) {
                options.put(each, "");
            } else if (!valued.contains(each)) {
                return wrong("unknown option " + each + near(each, known));
            } else if (i + 1 == given.size()) {
                return wrong(each + " wants a value after it");
            } else {
                options.put(each, given.get(++i));
            }
        }
        return new Arguments(List.copyOf(names), Map.copyOf(options), Optional.empty());
    }

    private static Arguments wrong(String what) {
        return new Arguments(List.of(), Map.of(), Optional.of(what));
    }

    private static String near(String option, List<String> known) {
        List<String> near = NearWords.of(option, known);
        return near.isEmpty() ? "" : "; near is " + near.getFirst();
    }

    boolean help() {
        return options.containsKey("--help");
    }

    Optional<String> option(String name) {
        return Optional.ofNullable(options.get(name));
    }
}

package dev.treen.order;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The names of parts in the sentence of a joint's work: what it is done to or marked from can be taken out, so that like
 * sentences can be compared, and put in again.
 */
final class Wording {
    /** No name in a project holds this character. */
    private static final String HOLE = "\u0001";
    private static final String LEAD = "(?<=\\b(?:for|of|Make|Plane|Fit|Notch|Cut|to|into) )";

    private Wording() {
    }

    /** The action of {@code operation} with a hole where it names the parts it is marked from, or else is done to. */
    static String nameless(Operation operation) {
        return naming(operation, operation.parts(), operation.with(), names -> HOLE);
    }

    /** The action with other names in the place of its own. */
    static String naming(
            Operation operation, List<String> parts, List<String> with, Function<Collection<String>, String> words) {
        String action = operation.action();
        String named = replaced(action, operation.with(), words.apply(with));
        return named.equals(action) ? replaced(action, operation.parts(), words.apply(parts)) : named;
    }

    private static String replaced(String action, List<String> names, String by) {
        if (names.isEmpty()) {
            return action;
        }
        String quoted = "`" + String.join("`, `", names) + "`";
        if (action.contains(quoted)) {
            return action.replace(quoted, by);
        }
        return Pattern.compile(LEAD + Pattern.quote(String.join(", ", names)) + "(?![\\w\\[.`])")
                .matcher(action)
                .replaceFirst(Matcher.quoteReplacement(by));
    }
}

package dev.treen.syntax;

/** Characters that cannot be seen, or that turn the reading direction: two names with them can look the same. */
final class Hidden {
    private Hidden() {
    }

    /** Whether {@code c} is such a character. */
    static boolean is(char c) {
        return Character.getType(c) == Character.FORMAT || (Character.isISOControl(c) && !Character.isWhitespace(c));
    }

    /** Whether there is one in {@code text}. */
    static boolean in(String text) {
        return text.chars().anyMatch(c -> is((char) c));
    }

    /** The text without them. */
    static String without(String text) {
        StringBuilder seen = new StringBuilder();
        text.chars().filter(c -> !is((char) c)).forEach(c -> seen.append((char) c));
        return seen.toString();
    }

    /** The text with each of them written as {@code \}{@code u202E}, short enough for a sentence. */
    static String shown(String text) {
        StringBuilder shown = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (shown.length() > 60) {
                return shown.append('…').toString();
            }
            if (is(c) || Character.isISOControl(c)) {
                shown.append(String.format("\\u%04X", (int) c));
            } else {
                shown.append(c);
            }
        }
        return shown.toString();
    }
}

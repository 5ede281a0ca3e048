package dev.treen.lsp;

import java.util.Random;

/** Edits as hands make them, good and bad, the same for the same seed. */
final class SeededEdits {
    private static final String[] TYPED = {"", "", "{", "}", "\n", "\"", " ", "x", "9", "°", "½", "🪵", "/*", "*/",
            "//",
            "part p", "joint mitre ", "let a = 1\n", ";", ".", "-", "\r\n"};
    private static final int LONGEST_CUT = 12;

    private final Random random;

    SeededEdits(long seed) {
        random = new Random(seed);
    }

    /** A stretch of the old text, and what stands in its place then. */
    record Edit(int start, int end, String with) {
        String in(String text) {
            return text.substring(0, start) + with + text.substring(end);
        }
    }

    /** The next edit of {@code text}. No half of a character is ever left alone. */
    Edit next(String text) {
        int start = whole(text, random.nextInt(text.length() + 1));
        int end = random.nextBoolean()
                ? start
                : whole(text, Math.min(text.length(), start + random.nextInt(LONGEST_CUT)));
        return new Edit(start, Math.max(start, end), TYPED[random.nextInt(TYPED.length)]);
    }

    private static int whole(String text, int offset) {
        boolean inside = offset > 0 && offset < text.length()
                && (Character.isLowSurrogate(text.charAt(offset))
                        || (text.charAt(offset - 1) == '\r' && text.charAt(offset) == '\n'));
        return inside ? offset - 1 : offset;
    }
}

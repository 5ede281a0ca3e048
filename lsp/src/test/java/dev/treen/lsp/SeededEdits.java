package dev.treen.lsp;

import java.util.Random;

/** Edits as hands make them, good and bad, the same for the same seed. */
final class SeededEdits {
    private static final String[] TYPED = {"", "", "{", "}", "\n", "\"", " ", "x", "9", "°", "½", "🪵", "/*", "*/",
            "//",
            "part p", "joint mitre ", "let a = 1\n", ";", ".", "-", "\r\n"};
    private static final int LONGEST_CUT = 12;
    private static final int KINDS = 4;
    private static final int DIGITS = 10;

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
        if (random.nextInt(KINDS) == 0) {
            return line(text);
        }
        if (random.nextInt(KINDS) == 0) {
            return figure(text);
        }
        int start = whole(text, random.nextInt(text.length() + 1));
        int end = random.nextBoolean()
                ? start
                : whole(text, Math.min(text.length(), start + random.nextInt(LONGEST_CUT)));
        return new Edit(start, Math.max(start, end), TYPED[random.nextInt(TYPED.length)]);
    }

    /** A line is taken out, or stands there twice. */
    private Edit line(String text) {
        int at = random.nextInt(text.length() + 1);
        int start = text.lastIndexOf('\n', at - 1) + 1;
        int end = text.indexOf('\n', at) < 0 ? text.length() : text.indexOf('\n', at) + 1;
        return new Edit(start, end, random.nextBoolean() ? "" : text.substring(start, end).repeat(2));
    }

    /** A figure becomes another. */
    private Edit figure(String text) {
        int at = random.nextInt(text.length() + 1);
        while (at < text.length() && !(text.charAt(at) >= '0' && text.charAt(at) <= '9')) {
            at++;
        }
        return new Edit(at, Math.min(text.length(), at + 1), Integer.toString(random.nextInt(DIGITS)));
    }

    private static int whole(String text, int offset) {
        boolean inside = offset > 0 && offset < text.length()
                && (Character.isLowSurrogate(text.charAt(offset))
                        || (text.charAt(offset - 1) == '\r' && text.charAt(offset) == '\n'));
        return inside ? offset - 1 : offset;
    }
}

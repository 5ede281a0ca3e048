package dev.treen.lsp.stdio;

/**
 * Follows the outline of one JSON object, byte by byte, as it arrives: where strings and brackets are, how deep it is,
 * and whether it can still be JSON. Finding that out before parsing costs no stack, and a message whose length is
 * claimed wrongly is noticed at its first wrong byte, long before the claimed bytes have arrived.
 *
 * <p>It rests on this: JSON has no bare line end inside a string and no bare words outside of one, so the header of a
 * message can never be part of the message before it.
 */
final class JsonShape {

    /** What is known so far. */
    enum State {
        /** All is well, and the object is not closed yet. */
        OPEN,
        /** The object is closed, and only blanks followed. */
        COMPLETE,
        /** This is no JSON object. */
        BROKEN
    }

    private State state = State.OPEN;
    private int depth;
    private int deepest;
    private boolean inString;
    private boolean escaped;

    State state() {
        return state;
    }

    /** The most brackets that were open at once. */
    int deepest() {
        return deepest;
    }

    /** Goes on with the next bytes; gives the index of the first that cannot be there, or {@code end}. */
    int follow(byte[] bytes, int start, int end) {
        for (int i = start; i < end; i++) {
            if (!accepts(bytes[i])) {
                state = State.BROKEN;
                return i;
            }
        }
        return end;
    }

    private boolean accepts(byte b) {
        if (inString) {
            return acceptsInString(b);
        }
        if (b == ' ' || b == '\n' || b == '\r' || b == '\t') {
            return true;
        }
        if (state == State.COMPLETE) {
            return false;
        }
        return switch (b) {
            case '{', '[' -> opens(b);
            case '}', ']' -> closes();
            case '"' -> {
                inString = true;
                yield depth > 0;
            }
            case ',', ':', '-', '+', '.', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> depth > 0;
            // The letters of true, false, null and of an exponent.
            case 't', 'r', 'u', 'e', 'f', 'a', 'l', 's', 'n', 'E' -> depth > 0;
            default -> false;
        };
    }

    private boolean acceptsInString(byte b) {
        if (escaped) {
            escaped = false;
        } else if (b == '\\') {
            escaped = true;
        } else if (b == '"') {
            inString = false;
        }
        // Bytes of UTF-8 beyond ASCII are negative in Java; control characters have to be escaped.
        return b < 0 || b >= ' ';
    }

    private boolean opens(byte b) {
        if (depth == 0 && b != '{') {
            return false;
        }
        depth++;
        deepest = Math.max(deepest, depth);
        return true;
    }

    private boolean closes() {
        depth--;
        if (depth == 0) {
            state = State.COMPLETE;
        }
        return depth >= 0;
    }
}
